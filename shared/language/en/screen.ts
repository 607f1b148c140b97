import { several } from '../counting.ts';
/** What the screen for the whole room says beside the cue's own words. Another language is one more file of this shape. */
export const screenWords = {
  page: 'Room screen · Quietpour',
  door: {
    title: 'Show an evening here',
    lead: 'This screen is for everybody in the room. It shows nobody’s notes unless they are shared.',
    code: 'Code of the tasting',
    codeHint: 'Letters and numbers, from the host’s tablet.',
    codeShort: 'That code is not complete. It has six or nine letters and numbers.',
    go: 'Ask the host',
  },
  waiting: {
    asking: 'Asking the host…',
    title: 'This screen’s number',
    lead: 'The host lets it in: on the tablet, tap Doors.',
    light: 'Press T to switch between the linen and cellar themes.',
  },
  refused: {
    title: 'Not shown here',
    notOurs: 'The host has not let this screen in.',
    dark: 'The host has turned this screen off.',
    again: 'Ask again',
    otherCode: 'Another code',
  },
  link: {
    connecting: 'Finding the room…',
    lost: 'Connection lost. Trying again.',
    deleted: 'This tasting has been deleted.',
  },
  madeDark: 'The host has made this screen dark.',
  soon: 'The doors open soon.',
  welcomeCare:
    'You may skip any glass. Anything you must not have? Tell your host now. Not when pregnant or breastfeeding; with medicines or an illness, ask first. Let someone who has not tasted drive.',
  gathering: {
    hostedBy: (host: string) => `with ${host}`,
    join: 'Come in with your phone',
    address: 'Address',
    code: 'Code',
    scan: (code: string) => `A QR code that takes a phone to the guests’ page with code ${code}`,
    noPhone: 'No phone? There is paper for you. Just ask.',
  },
  place: {
    glassOf: (position: number, total: number) => `Glass ${position} of ${total}`,
    glass: (position: number) => `Glass ${position}`,
    aGlass: 'One of the glasses',
    odd: 'Find the odd one',
    coded: (code: string) => `No. ${code}`,
    arc: (current: number | null, total: number) =>
      current === null
        ? several(total, 'glass', 'glasses')
        : `Glass ${current} of ${total} is in everybody’s hand`,
  },
  time: {
    label: 'Time left',
    phases: { running: 'left', held: 'on hold', over: 'time is up, but no hurry' },
  },
  practice: 'Practice with plain water',
  spitToo: 'Then spit, and a sip of water.',
  goOnAt: (clock: string) => `We start again at about ${clock}.`,
  reminders: {
    water: 'A sip of water, please.',
    spit: 'Please spit.',
    quiet: 'Quiet, please: no words about the glass yet.',
  },
  waterDue: 'Time for a sip of water.',
  talk: {
    closed: 'Pens down. Your host opens the talk in a moment.',
    title: 'On the table',
    none: 'Nobody has shared yet. You decide, each on your own phone.',
    said: (people: number) => several(people, 'person', 'people'),
    remote: 'at home',
    unnamed: 'without a name',
    later: 'added later',
    structure: 'How much of each',
    step: (step: string, people: number) => `${step}: ${several(people, 'person', 'people')}`,
    places: 'Ranking, best on top',
    place: (place: number) => `Place ${place}`,
    turn: (now: string, then: string) => `About now: ${now}. Then ${then}.`,
    found: (right: number, of: number) => `${right} of ${of} found it`,
    guessed: (guesses: number) => several(guesses, 'guess', 'guesses'),
  },
  reveal: {
    soon: 'And now the names.',
    unnamed: 'not named yet',
    photo: (name: string) => `The label of ${name}`,
  },
  goodbye: {
    finished: 'Thank you for coming',
    keepsake: 'Your notes are on your phones. Take them home.',
    care: 'Drink some water now. Let someone who has not tasted drive, tonight and early tomorrow.',
  },
};

export type ScreenWords = typeof screenWords;
