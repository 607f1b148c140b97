import { beerBoard } from '../beer.ts';
import { plainEnglish } from '../plain-english.ts';
import type { BoardText } from '../word-board.ts';

export const beerText: BoardText<typeof beerBoard> = {
  families: {
    field: 'Field',
    bakery: 'Bakery',
    sweetJar: 'Sweet jar',
    coffeeHouse: 'Coffee house',
    hopGarden: 'Hop garden',
    grove: 'Lemon grove',
    orchard: 'Orchard',
    market: 'Fruit stall',
    spiceDrawer: 'Spice drawer',
    meadow: 'Meadow',
    cellar: 'Old cellar',
    hearth: 'Hearth',
    amiss: 'Something amiss',
    mouth: 'In the mouth',
    leaving: 'As it leaves',
  },
  words: plainEnglish(Object.values(beerBoard.families).flat(), {
    husk: 'grain husk',
    rye: 'rye bread',
    barn: 'farmyard',
    bacon: 'smoked bacon',
    'leaf-fire': 'burning leaves',
    'sweetcorn-tin': 'tinned sweetcorn',
    'stale-sunlight': 'left in the sun',
    'dry-end': 'dry at the end',
    'sweet-end': 'sweet at the end',
    'bitter-end': 'bitter at the end',
    'sour-end': 'sour at the end',
    'clean-end': 'clean at the end',
  }),
  marks: {
    sweet: { name: 'Sweet', steps: ['not sweet', 'a touch sweet', 'sweet', 'very sweet', 'like syrup'] },
    bitter: {
      name: 'Bitter',
      steps: ['not bitter', 'a touch bitter', 'bitter', 'very bitter', 'fiercely bitter'],
    },
    sour: { name: 'Sour', steps: ['not sour', 'fresh', 'sour', 'very sour', 'puckering'] },
    fizz: { name: 'Bubbles', steps: ['still', 'a tingle', 'lively', 'very lively', 'foaming'] },
    body: { name: 'Weight', steps: ['like water', 'light', 'rounded', 'full', 'heavy'] },
    length: {
      name: 'How long it stays',
      steps: ['gone at once', 'brief', 'some breaths', 'long', 'very long'],
    },
  },
  tradeMarks: {
    sour: {
      name: 'Acidity',
      steps: ['low acidity', 'soft acidity', 'fresh acidity', 'high acidity', 'very high acidity'],
    },
    bitter: {
      name: 'Bitterness',
      steps: [
        'no bitterness',
        'low bitterness',
        'medium bitterness',
        'high bitterness',
        'very high bitterness',
      ],
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
    beerBoard.swatches.map(({ word }) => word),
    {
      fox: 'fox red',
      black: 'nearly black',
    },
  ),
};
