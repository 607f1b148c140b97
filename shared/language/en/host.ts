import type { CueKind, Move, Pass, Sense, Step } from '../../../core/running-order/cue.ts';
import type { ReminderKind } from '../../../core/session/state.ts';
import type { TextField } from '../../notes/entry.ts';
import type { Dismissal } from '../../wire/protocol.ts';
import { hostPace } from './host-pace.ts';
import { hostAtTable } from './host-table.ts';

const several = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** Every word of the host's app, in English. Another language is one more file of this type. */
export const hostWords = {
  name: 'Quietpour',
  page: (title: string) => (title === '' ? 'Quietpour, for the host' : `${title} · Quietpour`),
  close: 'Close',
  cancel: 'Not now',
  undo: 'Undo',
  untitled: 'An evening without a title',
  loading: 'One moment.',
  tryAgain: 'Try again',
  noAnswer:
    'The server does not answer. Check that it runs and that this device is on its network, then try again.',
  noAnswerToAsk: 'The server has not answered. It may still be done; look at the room before you ask again.',
  drinks: { spirit: 'Spirits', wine: 'Wine', beer: 'Beer' },

  key: {
    title: 'Open this tablet to your evenings',
    lead: 'The server printed the host’s link when it started. Open that link here, or paste it.',
    field: 'The host’s link',
    hint: 'It ends in #key= and a row of letters.',
    open: 'Open',
    notALink: 'No key is in what you pasted. Copy the whole host’s link, from http to its last letter.',
    wrong:
      'This key does not open this server. Look at what the server printed when it started, and paste the host’s link from there.',
    notKept:
      'This browser keeps nothing, so keep the host’s link: you need it again after closing this page.',
  },

  home: {
    title: 'Your evenings',
    list: 'Planned, under way and past',
    begin: 'Begin a new one',
    demo: 'Look around with the demo evening',
    demoHint: 'An invented evening with six pours. Nothing can break, and nobody is invited.',
    blank: { spirit: 'Blank, for spirits', wine: 'Blank, for wine', beer: 'Blank, for beer' },
    blankHint: 'You add the pours one by one.',
    paste: 'Paste a list of pours',
    pasteHint: 'From a table or a file: name, producer, strength and so on, in any order of columns.',
    none: 'No evening yet',
    noneHint: 'Begin with the demo: it takes a minute and shows you everything that your guests will see.',
    stages: { planned: 'Planned', 'under-way': 'Under way', finished: 'Finished' },
    code: (code: string) => `code ${code}`,
    made: (day: string) => `made ${day}`,
    plan: 'Plan',
    doors: 'Doors',
    room: 'Conduct',
    recap: 'Look back',
    oneOnly:
      'This device holds the key to single evenings only. For all of them, open the host’s link of the server.',
  },

  doors: {
    title: 'The doors',
    toPlan: 'Plan',
    elsewhere: 'Other pages',
    toHome: 'All evenings',
    code: 'The code',
    address: 'The guests’ address',
    otherAddress: 'Another address of this server',
    scan: (code: string) => `A square code that leads a phone to the guests’ page with code ${code}`,
    how: 'Guests scan the square with their camera, or type the address and the code.',
    sameNetwork: 'Phones must be on the same network as this server.',
    plainHttp:
      'This page came over plain http: whoever is on the same network could read along, notes and keys included. Use a network of your own with a password, or give the server a certificate for https.',
    open: 'Open the doors',
    opening: 'Opening the doors',
    notOpen: 'Guests can sit down once the doors are open. You can still change the plan until then.',
    noPours: 'There is no pour in the plan yet. Add one before you open the doors.',
    addPours: 'Go to the plan',
    isOpen: 'The doors are open. Begin when your table is complete; whoever comes later is let in too.',
    toRoom: 'Go and conduct',
    isFinished: 'This evening is finished.',
    seats: 'At the table',
    nobody: 'Nobody has sat down yet.',
    nobodyHint: 'As soon as somebody opens the page and gives a name, they appear here.',
    places: 'What lies on each place',
    placeItems: {
      glass: 'one glass for each pour of a flight, filled and in its place',
      lids: 'a lid on every glass',
      water: 'a glass of water, and a jug within reach',
      spit: 'a spit cup of their own',
      white: 'something white to look against: a napkin or a sheet of paper',
      paper: 'pen and paper for whoever has no phone',
      bread: 'plain bread or crackers, nothing with a strong smell',
    },
    care: 'Your care as the host',
    careItems: {
      spit: 'Everybody spits. Say so first, do so yourself, and nobody feels odd.',
      water: 'Water stands on every place, and food was eaten before.',
      drive: 'Nobody who has tasted drives. Know before you begin how everybody gets home.',
      age: 'Pour only for people of legal age where you are.',
      not: 'Who is pregnant, takes medicines or would rather not drink is welcome to look, nose and write.',
      law: 'The law where you are and the rules of your licence come before anything that this page says.',
    },
    screen: 'This tablet cannot be kept awake from here. Set its screen to stay on for the evening.',
  },

  link: {
    connecting: 'Finding the room',
    live: 'Live',
    lost: 'Link lost, trying again',
    lostLong:
      'The link to the server is lost and is being found again by itself. Guests keep what they see; the room waits at the next gate.',
    dismissed: {
      removed: 'This device was let go by another host. Open the host’s link again to carry on.',
      'key-withdrawn': 'The key of this device was withdrawn. Ask for a new host’s link.',
      'server-stopping': 'The server is stopping. Wait a moment, then load this page again.',
      'tasting-deleted': 'This tasting has been deleted.',
      'too-many-devices': 'Too many devices are open. To go on here, load this page again.',
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
      farewell: 'Farewell',
      ranking: 'Put in order',
      'odd-one-out': 'Find the odd one',
      discussion: 'Talk',
      reveal: 'The names',
    } satisfies Record<Exclude<CueKind, 'step' | 'practice'>, string>,
    calledBreak: 'Break, called',
    steps: {
      swirl: 'Swirl',
      look: 'Look',
      nose: 'Nose',
      sip: 'Sip',
      spit: 'Spit',
      write: 'Write',
      review: 'Read again',
      reflect: 'Thoughts',
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
    threeGlasses: 'three coded glasses, two of them alike',
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
    phasesAtGate: { running: 'left, then it waits', held: 'held', over: 'over, it waits for you' },
    phases: { running: 'left', held: 'held', over: 'over time' },
    order: 'The evening',
    now: 'now',
    next: 'Next',
    openTalk: 'Open the talk',
    openTalkHint: 'Open it when all pens are down. Everybody’s words are sealed as they stand.',
    tellNames: 'Tell the names',
    tellNamesHint: 'The names appear on every phone. This cannot be taken back.',
    finish: 'Finish the evening',
    afterwards: (what: string) => `then: ${what}`,
    back: 'Back',
    hold: 'Hold',
    resume: 'Resume',
    minute: '+1 min',
    minuteLabel: '+1 min: one minute more',
    jump: {
      title: (what: string) => `Go to “${what}”?`,
      body: 'Everybody’s screen goes there with you. Nobody loses a word.',
      go: 'Go there',
      stay: 'Stay here',
      done: (what: string) => `The room has gone to “${what}”.`,
    },
    reminder: (kind: ReminderKind) =>
      ({
        water: 'The reminder for water is on every phone.',
        spit: 'The reminder to spit is on every phone.',
        quiet: 'The reminder to be quiet is on every phone.',
        nudge: 'Those who are not ready are asked to come along.',
      })[kind],
    clearReminder: 'Take it down',
    pacedBy: { host: 'you set the pace', clock: 'the clock sets the pace', room: 'the room sets the pace' },
    firstHints: {
      next: 'The large button takes every phone on with you. Press it when everybody sits.',
      table: 'The table counts who has agreed. Go on when all have, or when you have heard it from them.',
      time: 'The time is a guide: Hold stops it, and +1 min adds to it, on every phone.',
      back: 'Pressed too soon? Back takes everybody with you, and nobody loses a word.',
      tools: 'Water, a break, a glass to leave out: the small buttons have it, and all of it can be undone.',
    },
    moved: (what: string) => `Now: ${what}.`,
  },

  board: {
    title: 'What was shared',
    show: 'Board',
    showSay: 'Say aloud',
    empty: 'Nothing has been shared yet. Each guest decides for each glass.',
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
    reopenHint: 'If this was a mistake: the room stands where it stood, and nothing is lost.',
    toHome: 'All evenings',
    tasted: (glasses: number) => several(glasses, 'glass tasted', 'glasses tasted'),
    guests: (guests: number) => several(guests, 'guest', 'guests'),
    lasted: (from: string, to: string) => `from ${from} to ${to}`,
  },

  ...hostAtTable,
  ...hostPace,
};

export type HostWords = typeof hostWords;
