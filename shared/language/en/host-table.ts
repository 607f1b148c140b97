import type { KitItem } from '../../../core/session/state.ts';
import { several } from '../counting.ts';

const list = new Intl.ListFormat('en', { type: 'conjunction' });

/** The host's words for the table and for what stands in the drawers of the conducting page. */
export const hostAtTable = {
  table: {
    title: 'The table',
    readsFirst: (names: readonly string[]) =>
      `${list.format(names)} came late and ${names.length === 1 ? 'reads' : 'read'} the cautions and the rules first.`,
    silent: (names: readonly string[]) => `Not heard of for two minutes: ${list.format(names)}.`,
    behind: (names: readonly string[]) => `Still on an earlier step: ${list.format(names)}.`,
    notRead: (names: readonly string[]) => `Cautions not read yet: ${list.format(names)}.`,
    onlyWater: 'water only',
    care: 'Unwell, or had too much',
    notAgreed: (names: readonly string[]) => `Not agreed yet: ${list.format(names)}.`,
    counts: {
      here: (here: number, seated: number) => `${here} of ${seated} here`,
      ready: (ready: number) => `${ready} ready`,
      cautions: (read: number, seated: number) => `${read} of ${seated} have read the cautions`,
      rules: (accepted: number, seated: number) => `${accepted} of ${seated} have agreed to the rules`,
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
      kitNotReady: 'kit not ready',
      kitMisses: (items: readonly string[]) => `still missing: ${list.format(items)}`,
      items: {
        vials: 'vials',
        lids: 'lids',
        water: 'water',
        'spit-cup': 'spit cup',
        'white-paper': 'white paper',
      } satisfies Record<KitItem, string>,
      slow: 'slow line',
      line: (ms: number) => `line ${ms}\u00a0ms`,
    },
    leftHanded: 'left hand',
    missed: (glasses: number) => `missed ${glasses}`,
    everybody: 'Whole table',
    letIn: 'Let in',
    answer: 'Done',
    answered: 'Done',
    newPhone: 'Link for another phone',
    newPhoneHint:
      'Scan this with the other phone, once. It then has this seat; only the guest opens its notes, on the old phone or with four words.',
    newPhoneLabel: (name: string) => `A QR code that opens the seat of ${name} on another phone`,
    remove: 'Close this seat',
    removed: (name: string) => `The seat of ${name} is closed; they keep their notes.`,
    restore: 'Back to the table',
    gone: 'No longer at the table',
    left: 'left',
    takenOff: 'seat closed',
    nobody: 'The table is empty. Tap Doors for the QR code and the address.',
  },

  tools: {
    remind: 'Remind',
    pause: 'Break',
    glasses: 'Glasses',
    doors: 'Doors',
    screenAsks: 'Doors: a screen asks',
    care: 'Unwell?',
    more: 'More',
  },

  remind: {
    title: 'Remind the room',
    lead: 'It stays on every phone until the next step.',
    water: 'Drink some water',
    spit: 'Spit, please',
    quiet: 'Quiet, please',
    nudge: 'Nudge the last ones',
  },

  pause: {
    title: 'Call a break now',
    lead: 'Afterwards this step starts again from the beginning.',
    minutes: (minutes: number) => several(minutes, 'minute', 'minutes'),
    called: (minutes: number) => `Break for ${several(minutes, 'minute', 'minutes')}.`,
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
    tellAll: 'Tell all names now',
    drop: 'Drop',
    restore: 'Put back',
    swap: 'Another bottle',
    mend: 'Correct',
    add: 'Add a pour',
    order: 'Another order',
    droppedNow: (name: string) => `${name} is dropped from the evening.`,
    closedNow: 'The talk is closed.',
    sure: {
      open: 'Open the talk for this glass now? Everybody’s words are sealed as they are; anything added later is marked.',
      'open-all':
        'Open the talk for every glass tasted so far? Everybody’s words are sealed as they are; anything added later is marked.',
      tell: 'Tell everybody the name of this glass now? You cannot take it back.',
      'tell-all':
        'Tell everybody the names of all glasses of this round now, not one after the other? You cannot take it back.',
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
      'Scan this with the second host’s device. It can do everything this one can, for this evening only.',
    secondHostLabel: 'A QR code that opens this evening on a second host’s device',
  },

  screens: {
    title: 'A screen for the room',
    address: 'On the television or projector, open this address and type the code:',
    asks: (number: number) => `A screen asks to join: ${number}`,
    check: 'Let it in if you see this number on your own screen.',
    letIn: 'Let in',
    notOurs: 'Not ours',
    named: (what: string, number: number) => `${what}: screen ${number}`,
    shown: (screens: number) => `${several(screens, 'screen shows', 'screens show')} the evening.`,
    off: 'Turn off all screens',
    isOff: 'All screens are off.',
  },

  more: {
    title: 'More',
    mendTitle: 'Correct the title',
    pacing: 'Who sets the pace',
    pacings: { host: 'You', steps: 'Steps run', clock: 'The clock', room: 'The room' },
    pacingHints: {
      host: 'until you say so',
      steps: 'the steps of a glass run by themselves and wait at its end',
      clock: 'until time is up',
      room: 'until most are ready',
    },
    gates: 'Breaks, talks and names always wait for you.',
    waitForRemote: 'Wait for guests at home',
    waitForRemoteHint: 'nobody moves on until they are ready',
    share: 'How many must be ready',
    shares: { '0.5': 'half', '0.75': 'three of four', '1': 'everybody' },
    light: 'Light in the room',
    lights: { auto: 'Like the device', linen: 'Linen', cellar: 'Cellar' },
    lightHints: { auto: 'switches by itself', linen: 'for bright rooms', cellar: 'for dim rooms' },
    hand: 'Your hand',
    hands: { right: 'Right', left: 'Left' },
    keys: 'Keyboard shortcuts',
    finish: 'Finish the evening',
    pouring: 'Pouring',
    paper: 'Paper',
    home: 'All evenings',
  },

  finish: {
    title: 'Finish the evening?',
    body: 'Guests get their notes with the names of every glass they tasted. You can open the evening again.',
    untasted: (glasses: number) => `${several(glasses, 'glass has', 'glasses have')} not been tasted.`,
    talked: 'Did the table talk about a glass whose talk was never opened?',
    talkedHint:
      'Your look back includes only glasses with an open talk. Turn on the ones the table talked about: their notes are sealed as they are, and what guests share or let count is included. Private pages stay private.',
    go: 'Finish',
    stay: 'Not yet',
  },

  cover: {
    hold: 'hold to see the name',
    switch: 'Cover the names',
    switchHint: 'Blind pours show only their code. Hold a finger on it to see the name.',
  },

  keys: {
    title: 'Keyboard shortcuts',
    list: [
      { keys: ['Space', '→', 'Page down'], does: 'Next, like the big button' },
      { keys: ['←', 'Page up'], does: 'Back' },
      { keys: ['H'], does: 'Hold and resume' },
      { keys: ['?'], does: 'This list' },
    ],
    remote: 'A presentation remote sends page down and page up, so it works too.',
  },
};

export type HostAtTableWords = typeof hostAtTable;
