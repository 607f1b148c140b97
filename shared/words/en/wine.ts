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
    sour: { name: 'Sour', steps: ['not sour', 'fresh', 'sour', 'very sour', 'puckering'] },
    grip: { name: 'Grip', steps: ['no grip', 'soft', 'firm', 'strong', 'rough'] },
    warmth: { name: 'Warmth', steps: ['no warmth', 'mild', 'warm', 'hot', 'burns'] },
    body: { name: 'Body', steps: ['like water', 'light', 'rounded', 'full', 'heavy'] },
    fizz: { name: 'Bubbles', steps: ['still', 'a tingle', 'lively', 'very lively', 'foaming'] },
    length: { name: 'Length', steps: ['gone at once', 'brief', 'some breaths', 'long', 'very long'] },
  },
  colours: plainEnglish(
    wineBoard.swatches.map(({ word }) => word),
    {
      breath: 'a breath of colour',
      petal: 'rose petal',
    },
  ),
};
