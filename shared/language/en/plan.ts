import { several } from '../counting.ts';
import { hostWords } from './host.ts';
import { planBefore } from './plan-before.ts';
import { planFigures } from './plan-figures.ts';
import { planLineup } from './plan-lineup.ts';
import { planPours } from './plan-pours.ts';
import { planRehearsal } from './plan-rehearsal.ts';

/** Every word of the plan page, in English. Another language is one more file of this type. */
export const planWords = {
  page: (title: string) => `${title === '' ? 'Plan' : title} · Quietpour`,
  untitled: 'An evening without a title',
  home: 'All evenings',
  doors: 'Doors',
  doorsNeed: 'Add one pour, and you can open the doors.',
  undo: 'Undo',
  done: 'Done',
  notNow: 'Not now',
  allParts: 'All parts',
  next: (part: string) => `Next: ${part}`,
  underWay: 'The doors are open, so the plan is fixed. What can still change, you change while you conduct.',
  finished: 'This evening is over, so its plan cannot change. Duplicate it to host it again.',

  keeping: {
    kept: 'All changes saved',
    changed: 'Changed',
    sending: 'Saving…',
    failedAgain: 'Not saved yet: the server is not answering. Keep this page open. Trying again.',
    failed: 'Not saved: the server refused the plan. Undo the last change, or reload the page.',
    doorsOpen: 'Not saved: the doors have been opened since, and the plan is fixed. Reload the page.',
    wrongKey: 'Not saved: this device’s key no longer opens this plan. Open the host’s link again.',
    elsewhereTitle: 'Another device has changed this plan',
    elsewhere: (title: string, pours: number) =>
      `There it is called “${title}” and has ${several(pours, 'pour', 'pours')}. You can only keep one: choose.`,
    takeTheirs: 'Use the other one',
    keepMine: 'Keep this one',
    taken: 'Another device has changed this plan; this is the new version.',
  },

  parts: {
    pours: 'The pours',
    guests: 'Who is coming',
    evening: 'When and where',
    course: 'How it runs',
    strength: 'Strength and care',
    shopping: 'What to get',
    table: 'The table',
    before: 'Before the evening',
    copies: 'Copies and files',
  },
  summary: {
    noPours: 'none yet',
    pours: (pours: number, flights: number) =>
      flights < 2 ? several(pours, 'pour', 'pours') : `${pours} in ${flights} flights`,
    guests: (guests: number, remote: number, level: string) =>
      remote === 0 ? `${guests} · ${level}` : `${guests} and ${remote} at home · ${level}`,
    noDate: 'no date yet',
    strength: (grams: string, drinks: string) => `${grams}\u00a0g each · ${drinks}`,
    strengthLoud: (grams: string) => `${grams}\u00a0g each: too much`,
    strengthUnknown: 'strengths are missing',
    bottles: (bottles: number) => several(bottles, 'bottle', 'bottles'),
    bottlesCost: (bottles: number, money: string) =>
      `${several(bottles, 'bottle', 'bottles')} · ${money} a seat`,
    table: 'places drawn to scale',
    before: 'invite, print, pour',
    copies: 'duplicate, save, list',
  },

  drinks: { spirit: 'Spirit', wine: 'Wine', beer: 'Beer' },
  drinksOf: { spirit: 'Spirits', wine: 'Wine', beer: 'Beer' },
  levels: { newcomers: 'newcomers', regulars: 'regulars', devotees: 'devotees' },

  evening: {
    title: 'Title',
    titleHint: 'It appears on the invitation and on every phone.',
    date: 'Date',
    time: 'Doors open at',
    clear: 'No date yet',
    noSuchTime: 'The clocks skip this time on that day. Choose another.',
    past: 'This day has passed. Check the date and its year.',
    notADate: 'Give the date with year, month and day.',
    zone: 'Time zone',
    zoneNow: (zone: string) => `Time of ${zone}`,
    place: 'Place',
    placeHint: 'So that guests can find it.',
    hostName: 'Your name',
    hostNameHint: 'So that guests know who to ask.',
    welcome: 'Welcome',
    welcomeHint: 'A few lines that guests read before the first glass.',
    more: 'For guests at home',
    callLink: 'Link of the video call',
    callHint: 'Guests at home see it on their page.',
    linkWrong: 'A link starts with http:// or https://.',
    test: 'Open the call to test it',
  },

  guests: {
    guests: 'Guests at the table',
    remote: 'Guests at home',
    tooMany: 'An evening can have up to 200 guests. Enter a number from 0 to 200.',
    nobody: 'Nobody yet. You can still plan.',
    level: 'How used are they to tasting?',
    levels: { newcomers: 'Newcomers', regulars: 'Regulars', devotees: 'Devotees' },
    levelHints: {
      newcomers: '3 pours, slow and guided',
      regulars: '6 pours in 2 flights',
      devotees: '9 pours in 3 flights',
    },
    terms: 'Words on guests’ pages',
    termsOf: { plain: 'Plain words', trade: 'The trade’s words' },
    termsHints: { plain: 'grip, freshness, weight', trade: 'tannin, acidity, body' },
    advice: (level: string, pours: number, usual: number) =>
      pours === usual
        ? `${several(pours, 'pour is', 'pours are')} usual for ${level}.`
        : `${several(usual, 'pour is', 'pours are')} usual for ${level}; the plan has ${pours}.`,
    spread: 'A mixed crowd?',
    spreadLead: 'Say how many of each you expect, and we suggest a size that suits the whole room.',
    count: { newcomers: 'Newcomers', regulars: 'Regulars', devotees: 'Devotees' },
    advised: (level: string, pours: number, flights: number) =>
      flights > 1
        ? `This room is best served as ${level}: ${several(pours, 'pour', 'pours')} in ${flights} flights.`
        : `This room is best served as ${level}: ${several(pours, 'pour', 'pours')} in one flight.`,
    noAdvice: 'Say how many are coming to get a suggestion.',
    notes: {
      'newcomers-among-them': (guests: number) =>
        `${several(guests, 'newcomer', 'newcomers')} among them: the practice with water is on.`,
      'devotees-among-them': (guests: number) =>
        `${several(guests, 'devotee', 'devotees')} among them: give them more to read, not more to drink.`,
      'wide-spread': () => 'Newcomers and devotees in one room: this aims at the middle.',
      'not-placed': (guests: number) =>
        `${several(guests, 'guest has', 'guests have')} not answered enough to be placed.`,
      'mostly-unknown': () => 'Fewer than half have answered. Ask again, or choose yourself.',
    },
    takeAdvice: 'Use this',
    adviceTaken: 'Level set.',
    country: 'Country',
    countryHint: 'For standard drinks and the legal age.',
    noCountry: 'Not chosen',
  },

  course: {
    talk: 'Talk',
    talks: { 'each-pour': 'After each pour', 'each-flight': 'After each flight', 'at-the-end': 'At the end' },
    naming: 'Names of blind pours',
    namings: { 'one-by-one': 'One by one', 'all-at-once': 'All at once' },
    namingHints: {
      'one-by-one': 'each with its label and its story',
      'all-at-once': 'all glasses of a talk together',
    },
    ranking: 'Ranking',
    rankings: { none: 'No', 'each-flight': 'Each flight', 'at-the-end': 'At the end' },
    practice: 'Practice with water first',
    practiceHint: 'The moves, before the first glass.',
    closing: 'Closing pass',
    closingHint: 'Review the notes, then reflect.',
    rankNamed: 'Tell the names first',
    rankNamedHint:
      'Not advised: what one knows is what one tastes, so the order then says as much about the labels as about the glasses.',
    liking: 'Ask how much they like each pour',
    breaks: 'Break, minutes',
    breaksWrong: 'Enter 5 to 60 minutes.',
    pacing: 'Who sets the pace',
    pacings: { host: 'You', steps: 'Steps run', clock: 'The clock', room: 'The room' },
    pacingHints: {
      host: 'a step ends when you say so',
      steps: 'the steps of a glass end with their time, and wait for you at its end',
      clock: 'a step ends with its time',
      room: 'a step ends when enough are ready',
    },
    share: 'How many must be ready',
    shares: { '0.5': 'Half', '0.75': 'Three of four', '1': 'Everybody' },
    pace: 'Shorter or longer',
    paces: { look: 'Look', nose: 'Nose', sip: 'Sip', write: 'Write', discussion: 'Talk' },
    shorter: (what: string) => `${what}: shorter`,
    longer: (what: string) => `${what}: longer`,
    times: (factor: string) => `× ${factor}`,
    schedule: 'The evening by the clock',
    total: (length: string) => `${length} from the opening of the doors`,
    until: (time: string) => `until about ${time}`,
    noClock: 'Set a date to see these as clock times.',
    hours: (hours: number, minutes: number) =>
      hours === 0
        ? `${minutes}\u00a0min`
        : minutes === 0
          ? `${hours}\u00a0h`
          : `${hours}\u00a0h ${minutes}\u00a0min`,
    stretches: {
      ...hostWords.cue.kinds,
      gathering: 'Guests arrive',
      practice: 'Practice with water',
    },
    finishBy: 'Finish by a time',
    finishAt: 'Everybody can leave at',
    fitsAlready: 'It already fits.',
    wouldCut: (what: string) =>
      `To finish by then, this gets shorter: ${what}. Spitting, water and breaks keep what they need.`,
    tooLong: (over: string) =>
      `Even at its shortest the evening is ${over} too long. Remove a pour, or end later.`,
    cutOf: {
      senses: (length: string) => `looking, nosing and sipping by ${length}`,
      writing: (length: string) => `writing by ${length}`,
      talk: (length: string) => `talk by ${length}`,
      rest: (length: string) => `breaks and water by ${length}`,
      ceremony: (length: string) => `welcome and goodbye by ${length}`,
    },
    shorten: 'Shorten',
    shortened: 'The evening is now shorter.',
    stepsOf: (what: string) => `${what}: each step`,
    stepsLead: 'Seconds for each step, and your own words to say instead of ours.',
    secondsWrong: (least: number) => `Enter whole seconds from ${least} to 7200.`,
    stepSeconds: (step: string) => `${step}, seconds`,
    ownWords: (step: string) => `To say at: ${step}`,
    edited: (count: number) => `${several(count, 'step has', 'steps have')} your own time or words.`,
    forgetEdits: 'Reset all times and words',
    editsForgotten: 'All times and words are reset.',
  },

  copies: {
    remove: {
      lead: 'This deletes the plan, the answers to the survey and every link to them. You cannot undo it.',
      goes: [
        'Links that you sent stop working.',
        'Anything you have not saved as a file or printed is gone.',
        'Nobody can bring it back, and there is no undo.',
      ],
      gone: 'Evening deleted. We checked: the server has nothing left of it.',
    },
    duplicate: 'Duplicate this evening',
    duplicateHint: 'The same plan, without a date, as a new evening.',
    copyOf: (title: string) => `${title}, again`,
    save: 'Save the plan as a file',
    saveHint: 'A JSON file with everything except photos, to keep or pass on.',
    load: 'Load a plan from a file',
    loadHint: 'It replaces this plan; you can undo that.',
    loaded: 'Plan loaded.',
    notJson: 'This file is not a saved plan. Choose a file that was saved here.',
    problems: 'This plan cannot be opened:',
    problem: (where: string, what: string) => `${where}: ${what}`,
    whole: 'The file',
    issues: {
      tooBig: (most: string) => `it is too large or too long; at most ${most}.`,
      tooSmall: (least: string) => `it is too small or too short; at least ${least}.`,
      kind: 'this is the wrong kind of value.',
      unknownValue: (known: string) => `it has to be one of: ${known}.`,
      unknownKeys: (keys: string) => `a plan has no such field: ${keys}.`,
      format: 'it is not in the right format.',
      doubled: 'it appears twice.',
    },
    tooLarge: 'This file is larger than 2\u00a0MB, so it is not a saved plan.',
    csv: 'Save the lineup as a list',
    csvHint: 'A CSV file for any spreadsheet; you can read it back in full.',
    fileName: (title: string) => (title === '' ? 'plan' : title),
  },

  ...planPours,
  ...planRehearsal,
  ...planLineup,
  ...planBefore,
  figures: planFigures,
};

export type PlanWords = typeof planWords;
