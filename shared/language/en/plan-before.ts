import type { DrynessTerm } from '../../../core/planning/order/mark-steps.ts';
import type { OrderLimit } from '../../../core/planning/serving/serving-orders.ts';
import { several } from '../counting.ts';

/** What the drawn orders cannot keep level, in a host's words. `least` and `most`: how often a pour has one position. */
function limitSentence(limit: OrderLimit, least: number, most: number): string {
  const flight = `Flight ${limit.flight + 1}`;
  switch (limit.code) {
    case 'seats-do-not-fill-design': {
      const often = least === most ? several(least, 'time', 'times') : `${least} or ${most} times`;
      return `${flight}: with ${several(limit.seats, 'guest', 'guests')} each pour stands ${often} in each position, and neighbours are nearly even. With ${limit.needed} it would be exact.`;
    }
    case 'nothing-to-vary':
      return `${flight}: a single pour has nothing to swap places with.`;
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
    lead: 'Five questions on their phone, and what they must not have, with no name and no account. You see how the answers spread, never who gave them.',
    link: 'Survey link',
    copy: 'Copy',
    copied: 'Copied. Paste it into your message.',
    selected: 'The link is selected. Now copy it.',
    square: 'As a QR code',
    scan: 'A QR code that takes a phone to the survey',
    answered: (answered: number, guests: number) =>
      answered === 0
        ? 'Nobody has answered yet.'
        : guests === 0
          ? `${answered} answered.`
          : `${answered} answered, ${several(guests, 'guest is', 'guests are')} expected.`,
    noAnswer: 'Could not load the answers. Trying again.',
    spread: 'How the answers spread',
    notPlaced: 'Not enough answers',
    standsSo: 'This is already in the plan.',
  },

  orders: {
    title: 'Who is served what',
    draw: 'Draw new orders',
    drawn: 'New orders drawn.',
    level:
      'Every pour comes equally often in each position and after each other pour, so the effects of the order cancel out.',
    limitSentence,
    nobody: 'Say how many guests are coming to see the orders here, place by place.',
    caption: 'Codes in the order of tasting, place by place',
    place: 'Place',
    places: 'Places are numbered as guests sit down.',
  },

  trials: {
    title: 'Find the odd one out',
    lead: 'Three coded glasses, two of them the same. Everybody picks the odd one; pure luck finds it one time in three.',
    none: 'none',
    some: (trials: number) => String(trials),
    needsTwo: 'You need two pours in the lineup for this.',
    add: 'Add an odd one out',
    full: 'An evening can have three of these.',
    one: 'One drink',
    other: 'The other',
    after: 'Served after',
    flight: (flight: number) => `flight ${flight}`,
    codes: (a: string, aCodes: string, b: string, bCodes: string) => `${a}: ${aCodes}. ${b}: ${bCodes}.`,
    and: ' and ',
    orders: (orders: number) =>
      `The six orders are drawn for ${several(orders, 'place', 'places')}: in each six, every order comes up once.`,
    number: (number: number) => `Odd one out ${number}`,
    away: 'Remove it',
    gone: 'Odd one out removed.',
    draw: 'Draw new codes and orders',
    drawn: 'New codes and orders drawn.',
    counted: 'Its three glasses count towards strength and shopping.',
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
    cut: 'Put the pours in order to split the flights this way.',
    each: 'Each flight by itself',
    inFlight: (flight: number, fault: string) => `Flight ${flight}: ${fault}`,
  },

  ahead: {
    title: 'Taste ahead',
    open: 'Taste ahead',
    toPlan: 'Plan',
    care: 'You taste them all before anybody else: spit, drink water, eat, and do not drive afterwards.',
    none: 'No pours yet',
    noneHint: 'Add the bottles to the plan, then taste them here one by one.',
    which: 'Pour',
    option: (number: number, name: string, tasted: boolean) => `${number} · ${name}${tasted ? ' ✓' : ''}`,
    labels: 'Label photos',
    labelsHint: 'Guests see them once you have told the name.',
    sides: { front: 'Front label', back: 'Back label' },
    photoOf: (side: string, name: string) => `${side} of ${name}`,
    take: 'Take a photo',
    takeOf: (side: string) => `Take a photo: ${side}`,
    choose: 'Choose one',
    chooseOf: (side: string) => `Choose one: ${side}`,
    sending: 'Sending…',
    sendingOf: (side: string) => `Sending… ${side}`,
    away: 'Remove',
    awayOf: (side: string) => `Remove: ${side}`,
    gone: 'Photo removed.',
    kept: (side: string) => `${side}: photo saved.`,
    noPhoto: 'This file cannot be read as a photo. Take it again, or choose a JPEG or PNG.',
    enlarge: (what: string) => `${what}, larger`,
    marks: 'Your quick marks',
    pungency: { name: 'Quiet to powerful', low: 'quiet', high: 'powerful' },
    powerSteps: [
      'hardly there',
      'very weak',
      'weak',
      'distinct',
      'strong',
      'very strong',
      'extremely strong',
    ],
    drynessTerms: {
      sweet: 'sweet',
      medium: 'medium',
      'medium-dry': 'medium dry',
      dry: 'dry',
    } satisfies Record<DrynessTerm, string>,
    measures: {
      pungency: 'How strong the smell is, in the seven steps of VDI 3882.',
      dryness:
        'As wine labels say it: dry to 4, medium dry to 12, medium to 45\u00a0g/L of sugar, sweet above.',
    },
    dryness: { name: 'Sweet to dry', low: 'sweet', high: 'dry' },
    mark: (value: string, step: string) => `${value} of 10: ${step}`,
    noMark: 'not marked',
    less: (name: string) => `${name}: less`,
    more: (name: string) => `${name}: more`,
    noMarkAgain: 'Remove the mark',
    noMarkAgainOf: (name: string) => `Remove the mark: ${name}`,
    order: 'What the order needs',
    orderMissing: (facts: string) => `To be surer of the order, add: ${facts}.`,
    orderKnown: 'The order has all it needs for this pour.',
    line: 'A line',
    lineHint: 'For you only; guests never see it.',
    before: 'Previous',
    next: 'Next',
    done: 'Done',
    fixed: 'The doors are open, so the plan is fixed.',
    onPhone: 'On your phone',
    onPhoneHint: 'Opens this tasting on your phone, as its host. Do not give it to anybody else.',
    onPhoneLabel: 'A QR code that opens this tasting on your phone as its host',
  },
};

export type PlanBeforeWords = typeof planBefore;
