import { several } from '../counting.ts';

/** Everything else that a guest's screen says. Another language is one more file of this shape. */
const list = (parts: readonly string[]): string =>
  new Intl.ListFormat('en', { style: 'long', type: 'conjunction' }).format(parts);

export const guestWords = {
  language: 'en',
  app: 'Quietpour',

  door: {
    title: 'Come in',
    code: 'Code of the tasting',
    codeHint: 'Letters and numbers, from your host or the table card.',
    codeShort: 'That code is not complete. It has six or nine letters and numbers.',
    go: 'Go in',
    keptTitle: 'Your seat is kept',
    keptUntitled: 'A tasting on this phone',
    back: (title: string) => `Back to ${title}`,
    evenings: 'All my evenings on this phone',
    brokenLink: 'That seat link is incomplete. Show it again on the other phone, or come in with the code.',
    noSeat: 'This phone has no seat yet. Come in with the code.',
    looking: 'Looking for your tasting…',
  },

  invitation: {
    hostedBy: (host: string) => `with ${host}`,
    name: 'Your name',
    nameHint: 'What the table should call you.',
    nameMissing: 'Please give a name, so your host knows who is sitting here.',
    nameLong: 'That name is too long. Please keep it to 60 characters.',
    hand: 'Which hand do you write with?',
    right: 'Right',
    left: 'Left',
    where: 'Where are you?',
    atTable: 'At the table',
    atHome: 'At home',
    sit: 'Take my seat',
    otherCode: 'Another code',
    notYet: 'The doors are not open yet. Stay on this page; it checks by itself.',
    closed: 'The doors are closed. Please ask your host to open them for you.',
    finished: 'This tasting is over. If you had a seat, open this page on the phone you used.',
    ask: 'Your host lets people in one by one.',
    age: (age: number) => `From ${age} on. Your host may ask for an identity card.`,
  },

  cautions: {
    title: 'Before the first glass',
    list: [
      'Spit every sip; tasting needs no swallowing.',
      'Drink water between the glasses.',
      'Eat something before, and in the breaks.',
      'Let someone who has not tasted drive, tonight and early tomorrow. Spitting does not change that.',
      'For people of legal age only. You may skip any glass.',
      'Anything you must not have? Tell your host now: it may be in a glass, and the bread has gluten.',
      'Not when pregnant or breastfeeding. With medicines or an illness, ask your doctor or pharmacist first.',
      'If you do not drink, or no longer do, you are welcome to look, nose and write.',
    ],
    law: 'The law where you are decides, and your doctor knows better than this page.',
    accept: 'I have read this',
  },

  glass: {
    of: (position: number, total: number) => `Glass ${position} of ${total}`,
    nth: (position: number) => `Glass ${position}`,
    coded: (code: string) => `No. ${code}`,
    arc: (current: number | null, total: number) =>
      current === null
        ? `Your place: ${several(total, 'glass', 'glasses')}`
        : `Your place: glass ${current} of ${total} is in your hand`,
    timeLabel: 'Time for this step',
    time: { running: 'left', held: 'on hold', over: 'time is up, but no hurry' },
    spitAndWater: 'Spit into the cup, then a sip of water.',
    onlyWater: 'Practice with plain water',
    reminder: {
      water: 'Your host reminds you: drink some water.',
      spit: 'Your host reminds you: please spit.',
      quiet: 'Your host asks for quiet: no words about the glass yet.',
      nudge: 'Take the time you need, and tap Ready when you are.',
    },
    waterDue: 'It has been a while: drink some water.',
    staysOn: 'Set this screen to stay on if you can. If it sleeps, nothing is lost.',
    breakUntil: (clock: string) => `We start again at about ${clock}.`,
    callLink: 'Other call',
    waitingRoom: 'Your host will let you in. Keep this page open.',
    left: 'You have left the table. Your notes are safe.',
    comeBack: 'To come back, please tell your host.',
    starting: 'Taking you to your seat…',
  },

  kit: {
    title: 'Your kit at home',
    items: {
      vials: 'Vials, in the order of their numbers',
      lids: 'Something to cover the glasses',
      water: 'Water, and plain bread',
      'spit-cup': 'A cup to spit into',
      'white-paper': 'A white sheet of paper',
    },
  },

  rules: {
    title: 'The rules of the table',
    list: [
      'Everybody spits.',
      'Nobody speaks about what they see, smell or taste until the host opens the talk.',
      'There are no wrong words.',
      'Nobody reads your notes unless you share them.',
    ],
    accept: 'I agree',
    accepted: 'Thank you. We move on when everybody is ready.',
  },

  signals: {
    ready: 'Ready',
    moreTime: 'More time',
    needsHost: 'I need you',
    given: {
      ready: 'Your host sees that you are ready.',
      'more-time': 'Your host sees that you want more time.',
      'needs-host': 'Your host sees that you need them.',
    },
    taken: 'Undone.',
  },

  banner: {
    roomAt: (where: string) => `The room is at: ${where}`,
    keepWriting: 'Your words are safe.',
    go: 'Go there',
  },

  spoken: {
    /** Each part as a sentence of its own, so that it is read with a pause. */
    cue: (parts: readonly string[]) =>
      parts.map((part) => (/[.?!]$/.test(part) ? part : `${part}.`)).join(' '),
    start: (seconds: number) =>
      seconds >= 90
        ? `${several(Math.round(seconds / 60), 'minute', 'minutes')}.`
        : `${several(seconds, 'second', 'seconds')}.`,
    marks: {
      60: 'One minute left.',
      20: 'Twenty seconds left.',
      0: 'Time is up.',
    },
    writeOn: 'You may finish writing.',
  },

  fields: { look: 'Look', nose: 'Nose', palate: 'Palate', finish: 'Finish', thoughts: 'Thoughts' },
  fieldHints: {
    look: 'Colour, clarity, what clings to the glass',
    nose: 'Whatever comes to mind; there are no wrong words',
    palate: 'Taste, feel, warmth',
    finish: 'What stays, and for how long',
    thoughts: 'A memory, a mood, who should taste this',
  },
  inField: (field: string, glass: string) => `${field}, ${glass}`,

  saved: {
    empty: 'Only you can read this.',
    saved: 'Saved',
    onPhone: 'On this phone, not saved yet',
    waiting: 'Not saved yet: keep this page open',
    tooLong: (over: number) =>
      `Too long to save by ${several(over, 'character', 'characters')}. Please shorten it; it stays on this phone.`,
    refused: (why: string) => `Not saved; it stays on this phone. ${why}`,
    later: 'The talk has started: anything you add now is marked as added later.',
  },

  notes: {
    title: 'My notes',
    open: 'My notes',
    back: 'Back to the room',
    none: 'No glass yet',
    noneHint: 'Each glass gets a page here when the room reaches it.',
    private: 'Only you can see this page.',
    choose: 'Which glass?',
  },

  missed: {
    title: 'Catch up',
    notice: (positions: readonly string[]) => `You missed ${list(positions)}; catch up in a break.`,
    inBreak: 'You missed these. Taste them now if you like: slowly, spit every sip, and drink water.',
    tick: (glass: string) => `${glass}: done`,
    write: 'Write',
  },

  pour: {
    years: (years: number) => `${several(years, 'year', 'years')} old`,
    abv: (abv: number) =>
      `${new Intl.NumberFormat('en', { maximumFractionDigits: 1 }).format(abv)}\u00a0%\u00a0vol`,
    more: 'More about it',
    labels: {
      front: (name: string) => `Front label of ${name}`,
      back: (name: string) => `Back label of ${name}`,
    },
  },

  keepsake: {
    title: 'Your evening',
    care: 'Drink some water now. Let someone who has not tasted drive, tonight and early tomorrow.',
    open: 'Take my notes home',
    unnamed: 'not named yet',
  },

  seat: { open: 'My seat', spoken: 'Spoken prompts' },

  link: {
    connecting: 'Looking for the room…',
    lost: 'No connection. Trying again; your words are safe on this phone.',
    lostKeepsNothing: 'No connection. Trying again; keep this page open.',
    noAnswer: 'No answer from the room. Please try again in a moment.',
    refusedTitle: 'This seat cannot be opened',
    wrongProtocol: 'This page is out of date. Reload it; your words are safe.',
    reload: 'Reload',
    toDoor: 'Come in with the code',
    dismissed: {
      removed: 'Your host has closed this seat. Your notes are safe; please speak to your host.',
      'key-withdrawn': 'This link no longer opens the seat. Please ask your host for a new one.',
      'tasting-deleted': 'This tasting has been deleted by its host, with everything in it.',
      'too-many-devices': 'Your seat is open on five newer devices. To go on here, reload this page.',
      'server-stopping': 'A short technical pause. Keep this page open.',
    },
  },

  close: 'Close',
};

export type GuestWords = typeof guestWords;
