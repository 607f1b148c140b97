import { planBefore } from './plan-before.ts';
import { planFigures } from './plan-figures.ts';
import { planLineup } from './plan-lineup.ts';
import { planPours } from './plan-pours.ts';
import { planRehearsal } from './plan-rehearsal.ts';

const several = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** Every word of the plan page, in English. Another language is one more file of this type. */
export const planWords = {
  page: (title: string) => `${title === '' ? 'Plan' : title} · Quietpour`,
  untitled: 'An evening without a title',
  home: 'All evenings',
  doors: 'To the doors',
  doorsNeed: 'One pour is all that the doors wait for.',
  undo: 'Undo',
  close: 'Close',
  done: 'Done',
  notNow: 'Not now',
  allParts: 'All parts',
  next: (part: string) => `Next: ${part}`,
  underWay:
    'The doors are open, so the plan stands as it is. What may still change, you change on the conducting page.',
  finished: 'This evening is over, so its plan stands as it was. Duplicate it to host it again.',

  keeping: {
    kept: 'Everything is kept',
    changed: 'Changed',
    sending: 'Being kept',
    failedAgain: 'Not kept yet: the server does not answer. Leave this page open; it tries again by itself.',
    failed: 'Not kept: the server has refused the plan. Undo the last change, or load the page again.',
    doorsOpen:
      'Not kept: the doors have been opened in the meantime, and the plan stands as it was then. Load the page again.',
    wrongKey:
      'Not kept: the key of this device does not open this plan any more. Open the host’s link again.',
    elsewhereTitle: 'Another device has changed this plan',
    elsewhere: (title: string, pours: number) =>
      `There it is called “${title}” and has ${several(pours, 'pour', 'pours')}. Both cannot be kept: choose one.`,
    takeTheirs: 'Take the other one',
    keepMine: 'Keep what is here',
    taken: 'Another device has changed this plan; you see it as it is now.',
  },

  parts: {
    pours: 'The pours',
    guests: 'Who is coming',
    evening: 'When and where',
    course: 'How it goes',
    strength: 'Strength and care',
    shopping: 'What to get',
    table: 'The table',
    copies: 'Copies and files',
  },
  summary: {
    noPours: 'none yet',
    pours: (pours: number, flights: number) =>
      flights < 2 ? several(pours, 'pour', 'pours') : `${pours} in ${flights} flights`,
    guests: (guests: number, remote: number, level: string) =>
      remote === 0 ? `${guests} · ${level}` : `${guests} and ${remote} at home · ${level}`,
    noDate: 'no date yet',
    strength: (grams: string, drinks: string) => `${grams} g each · ${drinks}`,
    strengthLoud: (grams: string) => `${grams} g each: too much`,
    strengthUnknown: 'strengths are missing',
    bottles: (bottles: number) => several(bottles, 'bottle', 'bottles'),
    bottlesCost: (bottles: number, money: string) =>
      `${several(bottles, 'bottle', 'bottles')} · ${money} a seat`,
    table: 'places drawn to scale',
    copies: 'duplicate, save, list',
  },

  volumeUnits: { ml: 'mL', 'fl-oz-us': 'fl oz', 'fl-oz-imperial': 'fl oz' },
  drinks: { spirit: 'Spirit', wine: 'Wine', beer: 'Beer' },
  drinksOf: { spirit: 'Spirits', wine: 'Wine', beer: 'Beer' },
  levels: { newcomers: 'newcomers', regulars: 'regulars', devotees: 'devotees' },

  evening: {
    title: 'Title',
    titleHint: 'What stands on the invitation and on every phone.',
    date: 'Date',
    time: 'Doors open at',
    clear: 'No date yet',
    noSuchTime: 'The clocks jump over this time on that day. Choose another.',
    notADate: 'Give the date with year, month and day.',
    zone: 'Time zone',
    zoneNow: (zone: string) => `Time of ${zone}`,
    otherZone: 'Another time zone',
    place: 'Place',
    placeHint: 'As guests would ask for it.',
    hostName: 'Your name',
    hostNameHint: 'So that guests know whom to ask.',
    welcome: 'Welcome',
    welcomeHint: 'A few lines that guests read before the first glass.',
    more: 'For guests at home',
    callLink: 'Link of the video call',
    callHint: 'Guests at home find it on their page.',
    linkWrong: 'A link starts with http:// or https://.',
    test: 'Open the call to test it',
  },

  guests: {
    guests: 'Guests at the table',
    remote: 'Guests at home',
    tooMany: 'An evening holds up to 200 guests. Write a number from 0 to 200.',
    nobody: 'Nobody yet. You can plan all the same.',
    level: 'How used are they to tasting?',
    levels: { newcomers: 'Newcomers', regulars: 'Regulars', devotees: 'Devotees' },
    levelHints: {
      newcomers: '3 pours, slow and guided',
      regulars: '6 pours in 2 flights',
      devotees: '9 pours in 3 flights',
    },
    advice: (level: string, pours: number, usual: number) =>
      pours === usual
        ? `${pours} pours are usual for ${level}.`
        : `${usual} pours are usual for ${level}; the plan has ${pours}.`,
    spread: 'A mixed crowd?',
    spreadLead: 'Say how many of each you expect, and the size that suits the whole room is found.',
    count: { newcomers: 'Newcomers', regulars: 'Regulars', devotees: 'Devotees' },
    advised: (level: string, pours: number, flights: number) =>
      flights > 1
        ? `This room is best served as ${level}: ${pours} pours in ${flights} flights.`
        : `This room is best served as ${level}: ${pours} pours in one flight.`,
    noAdvice: 'Say how many come, and a size is advised.',
    notes: {
      'newcomers-among-them': (guests: number) =>
        `${several(guests, 'newcomer', 'newcomers')} among them: the practice with water is on.`,
      'devotees-among-them': (guests: number) =>
        `${several(guests, 'devotee', 'devotees')} among them: offer more to read, not more to drink.`,
      'wide-spread': () => 'Newcomers and devotees in one room: the middle is served, neither end.',
      'not-placed': (guests: number) =>
        `${several(guests, 'guest has', 'guests have')} not answered enough to be placed.`,
      'mostly-unknown': () => 'Fewer than half are known. Ask again, or choose by hand.',
    },
    takeAdvice: 'Take this',
    adviceTaken: 'The level is set.',
    country: 'Country',
    countryHint: 'For standard drinks and the legal age.',
    noCountry: 'Not chosen',
  },

  course: {
    talk: 'Talk',
    talks: { 'each-pour': 'After each pour', 'each-flight': 'After each flight', 'at-the-end': 'At the end' },
    ranking: 'Putting in order of liking',
    rankings: { none: 'No', 'each-flight': 'Each flight', 'at-the-end': 'At the end' },
    practice: 'Practice with water first',
    practiceHint: 'The moves, before the first glass.',
    closing: 'Closing pass',
    closingHint: 'Notes from top to bottom, then thoughts.',
    liking: 'Ask how much each pour is liked',
    breaks: 'Break, minutes',
    breaksWrong: 'Write from 5 to 60 minutes.',
    pacing: 'Who sets the pace',
    pacings: { host: 'You', clock: 'The clock', room: 'The room' },
    pacingHints: {
      host: 'a step ends when you say so',
      clock: 'a step ends with its time',
      room: 'a step ends when enough are ready',
    },
    share: 'How many must be ready',
    shares: { '0.5': 'Half', '0.75': 'Three of four', '1': 'Everybody' },
    pace: 'Shorter or longer',
    paces: { look: 'Looks', nose: 'Noses', sip: 'Sips', write: 'Writing', discussion: 'Talk' },
    shorter: (what: string) => `${what}: shorter`,
    longer: (what: string) => `${what}: longer`,
    times: (factor: string) => `× ${factor}`,
    schedule: 'The evening by the clock',
    total: (length: string) => `${length} from the opening of the doors`,
    until: (time: string) => `until about ${time}`,
    noClock: 'Set a date, and the times stand here as clock times.',
    hours: (hours: number, minutes: number) =>
      hours === 0 ? `${minutes} min` : minutes === 0 ? `${hours} h` : `${hours} h ${minutes} min`,
    stretches: {
      gathering: 'Guests arrive',
      welcome: 'Welcome',
      'ground-rules': 'Ground rules',
      practice: 'Practice with water',
      break: 'Break',
      ranking: 'Putting in order',
      'odd-one-out': 'Find the odd one',
      discussion: 'Talk',
      reveal: 'The names',
      farewell: 'Farewell',
    },
    finishBy: 'Finish by a time',
    finishAt: 'Everybody can leave at',
    fitsAlready: 'It fits as it is.',
    wouldCut: (what: string) =>
      `To be done by then, this is shortened: ${what}. Spitting, water and breaks keep what they need.`,
    tooLong: (over: string) =>
      `Even at its shortest the evening is ${over} too long. Take out a pour, or end later.`,
    cutOf: {
      senses: (length: string) => `looking, nosing and sipping by ${length}`,
      writing: (length: string) => `writing by ${length}`,
      talk: (length: string) => `talk by ${length}`,
      rest: (length: string) => `rests by ${length}`,
      ceremony: (length: string) => `welcome and farewell by ${length}`,
    },
    shorten: 'Shorten',
    shortened: 'The evening is shortened.',
    stepsOf: (what: string) => `${what}: each step`,
    stepsLead: 'Seconds for each step, and what you would rather say aloud than the usual words.',
    secondsWrong: (least: number) => `Write whole seconds from ${least} to 7200.`,
    stepSeconds: (step: string) => `${step}, seconds`,
    ownWords: (step: string) => `To say at: ${step}`,
    steps: {
      swirl: 'Swirl',
      look: 'Look',
      nose: 'Nose',
      sip: 'Sip',
      spit: 'Spit',
      write: 'Write',
      review: 'Review',
      reflect: 'Thoughts',
    },
    writing: {
      look: 'Write the look',
      nose: 'Write the nose',
      palate: 'Write the palate',
      finish: 'Write the finish',
    },
    water: 'Water',
    edited: (count: number) => `${several(count, 'step has', 'steps have')} a time or text of your own.`,
    forgetEdits: 'Back to the usual times and texts',
    editsForgotten: 'All steps have their usual times and texts.',
  },

  copies: {
    duplicate: 'Duplicate this evening',
    duplicateHint: 'The same plan without its date, as an evening of its own.',
    copyOf: (title: string) => `${title}, again`,
    save: 'Save the plan as a file',
    saveHint: 'A JSON file with everything but the photos, to keep or to hand on.',
    load: 'Load a plan from a file',
    loadHint: 'It takes the place of this one; you can undo it.',
    loaded: 'The plan of the file is here now.',
    notJson: 'This file is not a saved plan. Choose a file that was saved here.',
    problems: 'This plan cannot be opened as it is:',
    problem: (where: string, what: string) => `${where}: ${what}`,
    whole: 'The file',
    issues: {
      tooBig: (most: string) => `it is too large or too long; at most ${most}.`,
      tooSmall: (least: string) => `it is too small or too short; at least ${least}.`,
      kind: 'something else is needed there.',
      unknownValue: (known: string) => `it has to be one of: ${known}.`,
      unknownKeys: (keys: string) => `no plan has this: ${keys}.`,
      format: 'it is not written as such a thing is.',
      doubled: 'it stands there twice.',
    },
    tooLarge: 'This file is larger than 2 MB, so it is not a saved plan.',
    csv: 'Save the lineup as a list',
    csvHint: 'A CSV file for any spreadsheet; it can be read back without loss.',
    fileName: (title: string) => (title === '' ? 'plan' : title),
  },

  ...planPours,
  ...planRehearsal,
  ...planLineup,
  ...planBefore,
  figures: planFigures,
};

export type PlanWords = typeof planWords;
