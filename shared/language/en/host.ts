import type { CueKind, Move, Pass, Sense, Step } from '../../../core/running-order/cue.ts';
import type { ReminderKind } from '../../../core/session/state.ts';
import type { TextField } from '../../notes/entry.ts';
import type { Dismissal } from '../../wire/protocol.ts';
import { several } from '../counting.ts';
import { hostHome } from './host-home.ts';
import { hostPace } from './host-pace.ts';
import { hostAtTable } from './host-table.ts';

/** Every word of the host's app, in English. Another language is one more file of this type. */
export const hostWords = {
  page: (title: string) => (title === '' ? 'Quietpour, for the host' : `${title} · Quietpour`),
  close: 'Close',
  cancel: 'Not now',
  undo: 'Undo',
  untitled: 'An evening without a title',
  loading: 'One moment.',
  tryAgain: 'Try again',
  noAnswer:
    'The server is not answering. Check that it is running and that this device is on its network, then try again.',
  noAnswerToAsk: 'The server has not answered. It may have worked; check the room before you try again.',

  key: {
    title: 'Unlock your evenings on this tablet',
    lead: 'The server printed the host’s link when it started. Open that link here, or paste it.',
    field: 'The host’s link',
    hint: 'It ends with #key= and a string of letters.',
    open: 'Open',
    notALink: 'There is no key in what you pasted. Copy the whole host’s link, from http to the last letter.',
    wrong:
      'This key does not fit this server. Paste the host’s link that the server printed when it started.',
    notKept:
      'This browser cannot save anything, so keep the host’s link: you will need it after you close this page.',
  },

  home: hostHome,

  doors: {
    title: 'The doors',
    toPlan: 'Plan',
    elsewhere: 'Other pages',
    toHome: 'All evenings',
    code: 'The code',
    address: 'The guests’ address',
    otherAddress: 'Another address of this server',
    scan: (code: string) => `A QR code that takes a phone to the guests’ page with code ${code}`,
    how: 'Guests scan the QR code with their camera, or type the address and the code.',
    sameNetwork: 'Phones must be on the same network as this server.',
    plainHttp:
      'This page came over plain http: anybody on the same network could read along, notes and keys included. Use your own network with a password, or give the server a certificate for https.',
    open: 'Open the doors',
    opening: 'Opening the doors',
    notOpen: 'Guests can sit down once you open the doors.',
    noPours: 'The plan has no pours yet. Add one before you open the doors.',
    addPours: 'Go to the plan',
    isOpen: 'The doors are open. Start when your table is complete; latecomers can still join.',
    toRoom: 'Start hosting',
    isFinished: 'This evening is finished.',
    seats: 'At the table',
    nobody: 'Nobody has sat down yet.',
    nobodyHint: 'People appear here as soon as they open the page and give a name.',
    places: 'What each place needs',
    placeItems: {
      glass: 'one glass for each pour of a flight, poured and in position',
      lids: 'a lid on every glass',
      water: 'a glass of water, and a jug within reach',
      spit: 'a spit cup',
      white: 'something white as a background: a napkin or a sheet of paper',
      paper: 'pen and paper for anyone without a phone',
      bread: 'plain bread or crackers, nothing with a strong smell',
    },
    care: 'Looking after your guests',
    careItems: {
      spit: 'Everybody spits. Say it first and do it yourself, and nobody feels odd.',
      water: 'Put water at every place, and make sure everybody has eaten.',
      drive:
        'Let someone who has not tasted drive, tonight and early tomorrow. Before you start, know how everybody gets home.',
      age: 'Pour only for people of legal age where you are.',
      not: 'Nobody tastes who is pregnant or breastfeeding. With medicines or an illness, they ask their doctor or pharmacist first. Whoever does not drink, or no longer does, is welcome to look, nose and write.',
      flame: 'No candles near open strong spirits.',
      law: 'Local law and the terms of your licence come before anything on this page.',
    },
    screen: 'This page cannot keep the tablet awake. Set its screen to stay on for the evening.',
  },

  link: {
    connecting: 'Finding the room',
    live: 'Live',
    lost: 'Connection lost, trying again',
    lostLong: 'Connection lost. Trying again. Guests keep what they see; the room waits at the next stop.',
    dismissed: {
      removed: 'Another host has removed this device. Open the host’s link again to carry on.',
      'key-withdrawn': 'This device’s key was withdrawn. Ask for a new host’s link.',
      'server-stopping': 'The server is stopping. Wait a moment, then reload this page.',
      'tasting-deleted': 'This tasting has been deleted.',
      'too-many-devices': 'Too many devices are open. To go on here, reload this page.',
    } satisfies Record<Dismissal, string>,
    hosts: (hosts: number) => `${hosts} hosts’ devices`,
  },

  cue: {
    kinds: {
      gathering: 'Gathering',
      welcome: 'Welcome',
      'ground-rules': 'Ground rules',
      water: 'Water',
      break: 'Break',
      farewell: 'Goodbye',
      ranking: 'Ranking',
      'odd-one-out': 'Find the odd one',
      discussion: 'Talk',
      result: 'Result',
      reveal: 'Names',
    } satisfies Record<Exclude<CueKind, 'step' | 'practice'>, string>,
    calledBreak: 'Extra break',
    drops: 'Add 3 drops',
    steps: {
      swirl: 'Swirl',
      look: 'Look',
      nose: 'Nose',
      sip: 'Sip',
      spit: 'Spit',
      write: 'Write',
      review: 'Review',
      reflect: 'Reflect',
    } satisfies Record<Step, string>,
    writes: {
      look: 'Write the look',
      nose: 'Write the nose',
      palate: 'Write the palate',
      finish: 'Write the finish',
    } satisfies Record<Sense, string>,
    passes: { first: 'first pass', writing: 'writing pass', closing: 'closing pass' } satisfies Record<
      Pass,
      string
    >,
    threeGlasses: 'three coded glasses, two of them the same',
    practice: (move: Move) =>
      ({
        swirl: 'Practice: swirl',
        look: 'Practice: look',
        nose: 'Practice: nose',
        sip: 'Practice: sip',
        spit: 'Practice: spit',
      })[move],
    practiceAll: 'Practice with water',
    glassOf: (position: number, of: number) => `Glass ${position} of ${of}`,
    glass: (position: number) => `Glass ${position}`,
    flight: (flight: number) => `flight ${flight}`,
    glasses: (positions: readonly number[]) => {
      const [first = 0, second] = positions;
      const last = positions.at(-1) ?? first;
      if (second === undefined) return `glass ${first}`;
      const inARow = positions.length > 2 && last - first === positions.length - 1;
      return `glasses ${inARow ? `${first} to ${last}` : positions.join(', ')}`;
    },
  },

  room: {
    say: 'Say aloud',
    time: 'Time left for this step',
    phasesAtGate: { running: 'left, then it waits', held: 'on hold', over: 'time is up, it waits for you' },
    phases: { running: 'left', held: 'on hold', over: 'over time' },
    order: 'The evening',
    now: 'now',
    next: 'Next',
    openTalk: 'Open the talk',
    openTalkHint: 'Open it when all pens are down. Everybody’s words are sealed as they are.',
    tellResult: 'Tell the result',
    tellResultHint: 'It appears on every phone and on the television, as it stands now, and stays so.',
    tellNames: 'Tell the names',
    tellName: (glass: string) => `Tell the name: ${glass}`,
    namesLeft: (names: number) => `then: ${several(names, 'more name', 'more names')}`,
    tellNamesHint: 'The names appear on every phone. You cannot take it back.',
    tellNameHint:
      'Its name and its story appear on every screen, the others stay secret. You cannot take it back.',
    finish: 'Finish the evening',
    afterwards: (what: string) => `then: ${what}`,
    back: 'Back',
    hold: 'Hold',
    resume: 'Resume',
    minute: '+1\u00a0min',
    minuteLabel: '+1\u00a0min: one minute more',
    jump: {
      title: (what: string) => `Go to “${what}”?`,
      body: 'Every screen goes there with you. Nobody loses a word.',
      go: 'Go there',
      stay: 'Stay here',
      change: 'Length and words',
      changed: (what: string) => `“${what}” is changed.`,
      done: (what: string) => `The room is now at “${what}”.`,
    },
    reminder: (kind: ReminderKind) =>
      ({
        water: 'The reminder for water is on every phone.',
        spit: 'The reminder to spit is on every phone.',
        quiet: 'The reminder to be quiet is on every phone.',
        nudge: 'Guests who are not ready have been nudged.',
      })[kind],
    clearReminder: 'Remove it',
    pacedBy: {
      steps: 'the steps run',
      clock: 'the clock sets the pace',
      room: 'the room sets the pace',
    },
    steps: {
      run: 'Steps run',
      label: 'Steps run by themselves to the end of a glass',
      offer:
        'Shall the steps of a glass run by themselves? They wait for you at its end, and Next always works.',
      yes: 'Let them run',
      no: 'By hand',
      chosen: 'The steps run from the next glass on. To take over again, tap Steps run beside Next.',
    },
    sayNext: 'In a moment, say',
    firstHints: {
      next: 'The big button moves every phone on with you. Tap it when everybody is seated.',
      table: 'The table shows who has agreed. Move on when everybody has, or has told you so.',
      time: 'The time is a guide: Hold stops it and +1\u00a0min adds to it, on every phone.',
      back: 'Tapped too soon? Back takes everybody with you, and nobody loses a word.',
      tools: 'Water, a break, a glass to drop: use the small buttons. You can undo all of it.',
    },
    moved: (what: string) => `Now: ${what}.`,
  },

  board: {
    title: 'What was shared',
    show: 'Board',
    showSay: 'Say aloud',
    showCard: 'Card',
    showScreen: 'Screen',
    empty: 'Nothing is on the table yet. Every phone asks what may go there.',
    chosen: (chosen: number, of: number) => `${chosen} of ${of} have said what goes to the table.`,
    later: 'added later',
    remote: 'at home',
    fields: {
      look: 'Look',
      nose: 'Nose',
      palate: 'Palate',
      finish: 'Finish',
      thoughts: 'Thoughts',
    } satisfies Record<TextField, string>,
  },

  finished: {
    title: 'The evening is finished',
    body: 'Your guests have their notes with the names of the pours. Thank you for hosting.',
    home: 'See everybody off: nobody who has tasted drives.',
    reopen: 'Open it again',
    reopenHint: 'Finished by mistake? The room picks up where it was, and nothing is lost.',
    toHome: 'All evenings',
    tasted: (glasses: number) => several(glasses, 'glass tasted', 'glasses tasted'),
    guests: (guests: number) => several(guests, 'guest', 'guests'),
    lasted: (from: string, to: string) => `from ${from} to ${to}`,
  },

  ...hostAtTable,
  ...hostPace,
};

export type HostWords = typeof hostWords;
