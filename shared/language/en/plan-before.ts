import type { OrderLimit } from '../../../core/planning/serving/serving-orders.ts';

const several = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** What the drawn orders cannot keep level, in a host's words. `least` and `most`: how often a pour has one position. */
function limitSentence(limit: OrderLimit, least: number, most: number): string {
  const flight = `Flight ${limit.flight + 1}`;
  switch (limit.code) {
    case 'seats-do-not-fill-design': {
      const often = least === most ? several(least, 'time', 'times') : `${least} or ${most} times`;
      return `${flight}: with ${several(limit.seats, 'guest', 'guests')} each pour stands ${often} in each position, and neighbours are nearly even. With ${limit.needed} all of it would be exact.`;
    }
    case 'nothing-to-vary':
      return `${flight}: a single pour has nothing to change places with.`;
    case 'forced-place-breaks-balance':
      return `${flight}: a pour that stands in the same place for everybody cannot be told from its place.`;
    default:
      return limit satisfies never;
  }
}

/** The words of what happens before the evening: the survey, the orders by lot, tasting ahead. */
export const planBefore = {
  survey: {
    title: 'Ask your guests',
    lead: 'Five questions on their phone, without a name and without an account. You see how the answers spread, never who gave them.',
    link: 'The survey’s link',
    copy: 'Copy',
    copied: 'Copied. Paste it into your message.',
    selected: 'The link is selected. Copy it with your device’s own command.',
    square: 'As a square code',
    scan: 'A square code that leads a phone to the survey',
    answered: (answered: number, guests: number) =>
      answered === 0
        ? 'Nobody has answered yet.'
        : guests === 0
          ? `${answered} answered.`
          : `${answered} answered, ${several(guests, 'guest is', 'guests are')} expected.`,
    noAnswer: 'The answers could not be fetched. They are tried again by themselves.',
    spread: 'How the answers spread',
    notPlaced: 'Not enough answers',
    standsSo: 'The plan has it so.',
  },

  orders: {
    title: 'Who is served what',
    draw: 'Draw the orders anew',
    drawn: 'New orders are drawn.',
    level:
      'Every pour stands equally often in each position and follows each other pour equally often, so that the order cancels out.',
    limitSentence,
    nobody: 'Say how many guests come; then the orders stand here, place by place.',
    caption: 'Codes in the order of tasting, place by place',
    place: 'Place',
    places: 'Places are numbered as guests sit down.',
  },

  trials: {
    title: 'Find the odd one out',
    lead: 'Three coded glasses, two of them alike. Everybody points at the odd one; chance alone finds it in one of three.',
    none: 'none',
    some: (trials: number) => String(trials),
    needsTwo: 'It needs two pours in the lineup.',
    add: 'Add an odd one out',
    full: 'An evening holds three of them.',
    one: 'One drink',
    other: 'The other',
    after: 'Served after',
    flight: (flight: number) => `flight ${flight}`,
    codes: (a: string, aCodes: string, b: string, bCodes: string) => `${a}: ${aCodes}. ${b}: ${bCodes}.`,
    and: ' and ',
    orders: (orders: number) =>
      `The six orders are drawn for ${orders} places: in each six, every order comes up once.`,
    number: (number: number) => `Odd one out ${number}`,
    away: 'Take it out',
    gone: 'The odd one out is taken out.',
    draw: 'Draw codes and orders anew',
    drawn: 'Codes and orders are drawn anew.',
    counted: 'Its three glasses are counted in strength and in what to get.',
  },

  themeMore: {
    held: 'The same in all',
    nothingHeld: 'Nothing in particular',
    flights: 'How the sides meet',
    flightsOf: { 'side-by-side': 'A flight for each side', matched: 'Each flight one of each side' },
    flightHints: {
      'side-by-side': 'first one side, then the other',
      matched: 'the lightest of both together, then the next',
    },
    cut: 'Put the pours in order to cut the flights this way.',
  },

  ahead: {
    title: 'Taste ahead',
    open: 'Taste ahead',
    openHint: 'On your phone, with the bottle in front of you: label photos, marks, strength and a line.',
    toPlan: 'To the plan',
    care: 'You taste them all before anybody else does: spit, drink water, eat, and do not drive afterwards.',
    none: 'No pours yet',
    noneHint: 'Put the bottles into the plan; then taste them here, one by one.',
    which: 'Pour',
    option: (number: number, name: string, tasted: boolean) => `${number} · ${name}${tasted ? ' ✓' : ''}`,
    labels: 'Label photos',
    labelsHint: 'Guests see them once the pour may be known.',
    sides: { front: 'Front label', back: 'Back label' },
    photoOf: (side: string, name: string) => `${side} of ${name}`,
    take: 'Take a photo',
    takeOf: (side: string) => `Take a photo: ${side}`,
    choose: 'Choose one',
    chooseOf: (side: string) => `Choose one: ${side}`,
    sending: 'Being sent…',
    sendingOf: (side: string) => `Being sent… ${side}`,
    away: 'Remove',
    awayOf: (side: string) => `Remove: ${side}`,
    gone: 'The photo is removed.',
    kept: (side: string) => `${side}: the photo is kept.`,
    noPhoto: 'This file is no photo that can be read. Take it again, or choose a JPEG or PNG.',
    enlarge: (what: string) => `${what}, larger`,
    marks: 'Your quick marks',
    pungency: { name: 'Light to pungent', low: 'light', high: 'pungent' },
    dryness: { name: 'Sweet to dry', low: 'sweet', high: 'dry' },
    mark: (value: string) => `${value} of 10`,
    noMark: 'not marked',
    less: (name: string) => `${name}: less`,
    more: (name: string) => `${name}: more`,
    noMarkAgain: 'Take the mark away',
    noMarkAgainOf: (name: string) => `Take the mark away: ${name}`,
    order: 'What the order asks for',
    orderMissing: (facts: string) => `The order would be surer with: ${facts}.`,
    orderKnown: 'The order knows what it needs of this pour.',
    line: 'A line',
    lineHint: 'Yours alone; guests never see it.',
    before: 'The one before',
    next: 'The next',
    done: 'Done',
    fixed: 'The doors have been opened, so the plan stands as it is.',
    onPhone: 'On your phone',
    onPhoneHint: 'Opens this tasting on your phone as its host. Give it to nobody else.',
    onPhoneLabel: 'A square code that opens this tasting on your phone as its host',
  },
};

export type PlanBeforeWords = typeof planBefore;
