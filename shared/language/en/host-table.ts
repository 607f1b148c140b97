import type { KitItem } from '../../../core/session/state.ts';

const several = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** The host's words for the table and for what stands in the drawers of the conducting page. */
export const hostAtTable = {
  table: {
    title: 'The table',
    counts: {
      here: (here: number, seated: number) => `${here} of ${seated} here`,
      asking: (asking: number) => several(asking, 'asks', 'ask'),
      ready: (ready: number) => `${ready} ready`,
      rules: (accepted: number, seated: number) => `${accepted} of ${seated} accept the rules`,
    },
    states: {
      'at-door': 'at the door',
      'needs-host': 'needs you',
      'more-time': 'asks for time',
      away: 'away',
      ready: 'ready',
      tasting: 'here',
    },
    remote: 'at home',
    home: {
      title: 'At home',
      here: (here: number, seated: number) => `${here} of ${seated} here`,
      ready: (ready: number) => `${ready} ready`,
      kits: (kits: number, seated: number) => `${kits} of ${seated} kits ready`,
      waits: 'the room waits for them',
      kitReady: 'kit ready',
      kitMisses: (items: readonly string[]) => `still to lay out: ${items.join(', ')}`,
      items: {
        vials: 'vials',
        lids: 'lids',
        water: 'water',
        'spit-cup': 'spit cup',
        'white-paper': 'white paper',
      } satisfies Record<KitItem, string>,
      line: (ms: number) => `line ${ms} ms`,
    },
    leftHanded: 'left hand',
    missed: (glasses: number) => `missed ${glasses}`,
    everybody: 'Whole table',
    letIn: 'Let in',
    answer: 'Seen to',
    answered: 'Done',
    newPhone: 'Link for another phone',
    newPhoneHint:
      'Scan this with the other phone. It opens this seat only, with its notes; the old phone goes on working.',
    newPhoneLabel: (name: string) => `A square code that opens the seat of ${name} on another phone`,
    remove: 'Take off the table',
    removed: (name: string) => `${name} was taken off the table and keeps their notes.`,
    restore: 'Back to the table',
    gone: 'No longer at the table',
    left: 'left',
    takenOff: 'taken off',
    more: (name: string) => `${name}: more`,
    nobody: 'The table is empty. The square code and the address are behind Doors.',
  },

  tools: {
    remind: 'Remind',
    pause: 'Break',
    glasses: 'Glasses',
    doors: 'Doors',
    screenAsks: 'Doors: a screen asks',
    more: 'More',
  },

  remind: {
    title: 'Remind the room',
    lead: 'It stands on every phone until the next step.',
    water: 'Drink some water',
    spit: 'Spit, please',
    quiet: 'Quiet, please',
    nudge: 'Ask the last ones',
  },

  pause: {
    title: 'Call a break now',
    lead: 'The step is taken up again from its beginning afterwards.',
    minutes: (minutes: number) => several(minutes, 'minute', 'minutes'),
    called: (minutes: number) => `A break of ${several(minutes, 'minute', 'minutes')} is called.`,
  },

  glasses: {
    title: 'The glasses',
    code: (code: string) => `code ${code}`,
    notYet: 'not yet tasted',
    tasted: 'tasted',
    dropped: 'dropped',
    talkOpen: 'talk open',
    talkClosed: 'talk closed',
    named: 'named',
    unnamed: 'not named',
    openTalk: 'Open talk',
    openAll: 'Open talk on all tasted',
    closeTalk: 'Close talk',
    tellName: 'Tell the name',
    drop: 'Drop',
    restore: 'Put back',
    droppedNow: (name: string) => `${name} is dropped from the evening.`,
    closedNow: 'The talk is closed.',
    sure: {
      open: 'Open the talk for this glass now? Everybody’s words are sealed as they stand; what they add later is marked.',
      'open-all':
        'Open the talk for every glass tasted so far? Everybody’s words are sealed as they stand; what they add later is marked.',
      tell: 'Tell everybody the name of this glass now? This cannot be taken back.',
    },
  },

  doorway: {
    title: 'Doors and latecomers',
    legend: 'Who may sit down',
    open: 'Open',
    openHint: 'anybody with the code',
    ask: 'Ask me',
    askHint: 'you let each one in',
    closed: 'Closed',
    closedHint: 'nobody else',
    secondHost: 'Link for a second host’s device',
    secondHostHint:
      'Scan this with the helper’s device. It may do everything that this one may, for this evening only.',
    secondHostLabel: 'A square code that opens this evening on a second host’s device',
  },

  screens: {
    title: 'A screen for the room',
    address: 'On the television or projector, open this address and type the code:',
    asks: (number: number) => `A screen asks to join: ${number}`,
    check: 'Let it in if you read this number on your own screen.',
    letIn: 'Let in',
    notOurs: 'Not ours',
    named: (what: string, number: number) => `${what}: screen ${number}`,
    shown: (screens: number) => `${several(screens, 'screen shows', 'screens show')} the evening.`,
    off: 'Switch off all screens',
    isOff: 'All screens are switched off.',
  },

  more: {
    title: 'More',
    pacing: 'Who sets the pace',
    pacings: { host: 'You', clock: 'The clock', room: 'The room' },
    pacingHints: {
      host: 'until you say so',
      clock: 'until time is up',
      room: 'until most are ready',
    },
    gates: 'Breaks, talks and names wait for you in any case.',
    waitForRemote: 'Wait for guests at home',
    waitForRemoteHint: 'nobody goes on before they are ready',
    share: 'How many must be ready',
    shares: { '0.5': 'half', '0.75': 'three of four', '1': 'everybody' },
    light: 'Light of the room',
    lights: { auto: 'As the device', linen: 'Linen', cellar: 'Cellar' },
    lightHints: { auto: 'light or dark by itself', linen: 'for bright rooms', cellar: 'for candle light' },
    hand: 'Your hand',
    hands: { right: 'Right', left: 'Left' },
    keys: 'Keys of the keyboard',
    finish: 'Finish the evening',
    plan: 'To the plan',
    home: 'All evenings',
  },

  finish: {
    title: 'Finish the evening?',
    body: 'Guests get their notes with the names of all glasses tasted. You can open the evening again.',
    untasted: (glasses: number) => `${several(glasses, 'glass has', 'glasses have')} not been tasted.`,
    talked: 'Talked about, though nobody opened the talk?',
    talkedHint:
      'Only glasses with an open talk are in your summary. Switch on what the table talked about: those notes are sealed as they stand, and what guests share or let count comes in. Private pages stay private.',
    go: 'Finish',
    stay: 'Go on',
  },

  keys: {
    title: 'Keys',
    list: [
      { keys: ['Space', '→', 'Page down'], does: 'Next, as the big button says' },
      { keys: ['←', 'Page up'], does: 'Back' },
      { keys: ['H'], does: 'Hold, and go on' },
      { keys: ['?'], does: 'This list' },
    ],
    remote: 'A presentation remote sends page down and page up, so it works too.',
  },
};

export type HostAtTableWords = typeof hostAtTable;
