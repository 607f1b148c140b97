import { several } from '../counting.ts';
import { hostWords } from './host.ts';

/** The words on paper and around it, in English. */
export const paperWords = {
  kinds: {
    mats: 'Mats',
    notes: 'Note sheets',
    labels: 'Vial labels',
    'run-sheet': 'Run sheet',
    shopping: 'Shopping list',
  },
  title: 'On paper',
  back: 'Back to the doors',
  print: 'Print',
  printHow: {
    mats: 'In the print window choose this paper and “actual size” or 100\u00a0%. Then measure the line: it must be 100\u00a0mm long. If it is not, change the scale and print again.',
    labels:
      'In the print window choose this paper and “actual size” or 100\u00a0%. Then measure one label before you cut.',
  },
  printFlow: 'Your device’s print window previews the pages.',
  planChanged:
    'The plan has changed on another device since this page was opened. Try again to see it as it is now, then print it once more.',
  numbersNotKept:
    'The numbers on this print could not be saved. Try again before you move a glass: otherwise the numbers on paper may no longer match.',
  sheet: (kind: string, number: number) => `${kind}, sheet ${number}`,
  sheets: (count: number) => several(count, 'sheet', 'sheets'),
  size: 'Paper',
  sizes: { A4: 'A4', Letter: 'US Letter', A3: 'A3' },
  untitled: 'A tasting',
  noPours: 'The plan has no pours yet',
  noPoursHint: 'Add pours to the plan, and there is something to print.',
  toPlan: 'Plan',

  glass: (position: number) => `Glass ${position}`,
  place: (place: number) => `Place ${place}`,
  hands: { left: 'left hand' },
  flight: (flight: number) => `Flight ${flight}`,
  oddOne: 'Odd one out',
  ruler: '100\u00a0mm: measure me',

  mats: {
    foot: 'Foot of a glass, across (mm)',
    footHint: 'Measure the foot of one glass. The circles print at this size.',
    bowl: 'Widest part of a glass (mm)',
    bowlHint: 'Leave this empty if the foot is the widest part.',
    wrong: 'Measure the glass across in millimetres: from 20 to 150.',
    set: 'On one mat',
    sets: { evening: 'All glasses of the evening', flight: 'The glasses of one flight' },
    left: 'Left-handed places',
    leftHint: 'Their numbers, such as 2, 5. Guests who are already here say so on their phone.',
    leftWrong: (places: number) => `Enter numbers from 1 to ${places}, with commas between them.`,
    each: 'One mat for each place',
    eachHint: 'Off: one for each hand, to copy.',
    eachForced: 'Each place has its own order, so each needs its own mat.',
    tooMany: (most: number, paper: string) =>
      most === 0
        ? `No glass of this size fits on ${paper}.`
        : `On ${paper} only ${several(most, 'glass', 'glasses')} of this size can stand.`,
    tryPaper: (paper: string) => `Use ${paper}.`,
    tryFlight: 'Use one mat for each flight.',
    trySmaller: 'Use glasses with a smaller foot, or spread them over two mats.',
    copy: (hand: 'right' | 'left'): string => (hand === 'right' ? 'For right-handers' : 'For left-handers'),
  },

  notes: {
    name: 'Name',
    date: 'Date',
    each: 'One for each place',
    eachHint: 'Off: one to copy.',
    fields: hostWords.board.fields,
    liking: 'How much I like it',
    likingScale: ['1 dislike extremely', '', '', '', '5 neither', '', '', '', '9 like extremely'],
    quiet:
      'Spit every sip, drink water between the glasses, and keep your words to yourself until the talk is open. You may skip any glass. Not when pregnant or breastfeeding; with medicines or an illness, ask first. Let someone who has not tasted drive.',
  },

  labels: {
    width: 'Width of a label (mm)',
    height: 'Height of a label (mm)',
    wrong: (paper: string) =>
      `Give a size that fits on ${paper}: from 20 to 150\u00a0mm wide and from 12 to 150\u00a0mm high.`,
    presets: 'Size',
    sizes: {
      small: '38 × 21\u00a0mm',
      middle: '50 × 25\u00a0mm',
      large: '63.5 × 38.1\u00a0mm',
      own: 'Another size',
    },
    edges: 'Cutting lines',
    edgesHint: 'Turn off for pre-cut sheets.',
    none: 'No guests at home',
    noneHint: 'The plan has no guests at home, so there are no vials to label.',
    count: (labels: number, guests: number) =>
      `${several(labels, 'label', 'labels')}: one for each pour and each of ${several(guests, 'guest', 'guests')} at home.`,
    strength: (abv: number) => `${abv}\u00a0%\u00a0vol`,
    alcohol: 'Contains alcohol',
    age: (age: number) => `${age} and over`,
    adults: 'legal age only',
    shipping:
      'In many places sending alcohol is forbidden or needs a licence. Ask your local authority before you post a kit.',
  },

  runSheet: {
    columns: { at: 'At', lasts: 'Lasts', what: 'What', say: 'Say aloud' },
    say: 'Include what to say',
    sayHint: 'Steps are written in full for the first glass only.',
    story: 'Include the stories',
    storyHint: 'Label, facts and story of each glass, where you tell them.',
    eyes: 'For the host’s eyes only: it names the pours.',
    gate: 'waits for you',
    ends: (time: string) => `Ends about ${time}.`,
    fromDoors: 'Times count from when the doors open.',
    practice: 'Practice with water',
    care: 'Everybody spits. Put water at every place, and make sure everybody has eaten. Let someone who has not tasted drive, tonight and early tomorrow: know how everybody gets home. Pour only for people of legal age. Nobody tastes who is pregnant or breastfeeding; with medicines or an illness, they ask their doctor or pharmacist first. Whoever does not drink, or no longer does, is welcome to look, nose and write. No candles near open strong spirits. The law where you are and the rules of your licence come first.',
    seconds: (seconds: number) =>
      seconds < 60
        ? `${seconds}\u00a0s`
        : `${Math.floor(seconds / 60)}\u00a0min${seconds % 60 === 0 ? '' : ` ${seconds % 60}\u00a0s`}`,
  },

  shopping: {
    drinks: 'To pour',
    table: 'For the table',
    home: 'For guests at home',
    paper: 'On paper',
    washed: 'Glasses are washed between flights',
    washedHint: 'Then you only need glasses for the longest flight.',
    bottles: (count: number) => several(count, 'bottle', 'bottles'),
    ofSize: (size: string) => `of ${size}`,
    assumed: 'usual size assumed',
    pours: (pours: number, each: string) => `${several(pours, 'pour', 'pours')} of ${each}`,
    tooSmall: (bottle: string, pour: string) => `A bottle of ${bottle} is smaller than a pour of ${pour}.`,
    reckoned:
      'Enough for every guest, in the room and at home, one pour for you to taste ahead, one to taste along, and one in ten to spare.',
    items: {
      tastingGlasses: (count: number) => several(count, 'tasting glass', 'tasting glasses'),
      lids: (count: number) => several(count, 'lid', 'lids'),
      waterGlasses: (count: number) => several(count, 'water glass', 'water glasses'),
      water: (volume: string) => `${volume} of still water`,
      spitCups: (count: number) => several(count, 'spit cup', 'spit cups'),
      napkins: (count: number) => several(count, 'white napkin', 'white napkins'),
      droppers: (count: number) => several(count, 'dropper', 'droppers'),
      food: 'Plain bread or crackers (wheat is gluten; ask about milk and sesame, and get another kind for whoever needs it), and something to eat before',
    },
    vials: (count: number, size: string) => `${several(count, 'vial', 'vials')} of ${size}`,
    noVial: (name: string) => `No standard vial holds a pour of ${name}.`,
    mats: (count: number) => several(count, 'mat', 'mats'),
    noteSheets: (count: number) => `Note sheets for anyone without a phone, up to ${count}`,
    labels: (count: number) => several(count, 'label', 'labels'),
    cost: (total: string, seat: string) => `${total} in all, ${seat} for each guest`,
    uncounted: (count: number) =>
      `without ${several(count, 'pour that is', 'pours that are')} larger than the bottle`,
    unpriced: (count: number) => `without ${several(count, 'pour that has', 'pours that have')} no price yet`,
    care: 'Spit cups, water and food are essentials. Local law governs serving and sending alcohol.',
  },
};
export type PaperWords = typeof paperWords;
