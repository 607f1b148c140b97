import { plainEnglish } from '../plain-english.ts';
import { wineBoard } from '../wine.ts';
import type { BoardText } from '../word-board.ts';

export const wineText: BoardText<typeof wineBoard> = {
  families: {
    hedgerow: 'Hedgerow',
    orchard: 'Orchard',
    grove: 'Lemon grove',
    market: 'Fruit stall',
    meadow: 'Meadow',
    kitchenGarden: 'Kitchen garden',
    spiceDrawer: 'Spice drawer',
    bakery: 'Bakery',
    pantry: 'Pantry',
    workshop: 'Workshop',
    ground: 'Wet ground',
    amiss: 'Something amiss',
    mouth: 'In the mouth',
    leaving: 'As it leaves',
  },
  words: plainEnglish(Object.values(wineBoard.families).flat(), {
    iron: 'iron nail',
    barn: 'farmyard',
    mousy: 'mouse cage',
    grippy: 'grips the gums',
    'mouth-waters': 'the mouth waters',
    'dry-end': 'dry at the end',
    'sweet-end': 'sweet at the end',
    'bitter-end': 'bitter at the end',
    'salty-end': 'salty at the end',
    'clean-end': 'clean at the end',
  }),
  marks: {
    sweet: { name: 'Sweet', steps: ['not sweet', 'a touch sweet', 'sweet', 'very sweet', 'like syrup'] },
    sour: { name: 'Freshness', steps: ['flat', 'soft', 'fresh', 'lively', 'puckering'] },
    grip: { name: 'Grip', steps: ['no grip', 'soft', 'firm', 'strong', 'rough'] },
    warmth: { name: 'Warmth', steps: ['no warmth', 'mild', 'warm', 'hot', 'burns'] },
    body: { name: 'Weight', steps: ['like water', 'light', 'rounded', 'full', 'heavy'] },
    fizz: { name: 'Bubbles', steps: ['still', 'a tingle', 'lively', 'very lively', 'foaming'] },
    length: {
      name: 'How long it stays',
      steps: ['gone at once', 'brief', 'some breaths', 'long', 'very long'],
    },
  },
  tradeMarks: {
    sweet: { name: 'Sweetness', steps: ['dry', 'medium dry', 'medium sweet', 'sweet', 'very sweet'] },
    sour: {
      name: 'Acidity',
      steps: ['low acidity', 'soft acidity', 'fresh acidity', 'high acidity', 'very high acidity'],
    },
    grip: {
      name: 'Tannin',
      steps: ['no tannin', 'soft tannin', 'firm tannin', 'strong tannin', 'rough tannin'],
    },
    warmth: {
      name: 'Alcohol',
      steps: ['no warmth', 'low alcohol', 'medium alcohol', 'high alcohol', 'hot alcohol'],
    },
    body: {
      name: 'Body',
      steps: ['very light body', 'light body', 'medium body', 'full body', 'very full body'],
    },
    length: {
      name: 'Finish',
      steps: ['very short finish', 'short finish', 'medium finish', 'long finish', 'very long finish'],
    },
  },
  colours: plainEnglish(
    wineBoard.swatches.map(({ word }) => word),
    {
      breath: 'a breath of colour',
      petal: 'rose petal',
    },
  ),
};
