import { plainEnglish } from '../plain-english.ts';
import { spiritBoard } from '../spirit.ts';
import type { BoardText } from '../word-board.ts';

export const spiritText: BoardText<typeof spiritBoard> = {
  families: {
    orchard: 'Orchard',
    market: 'Fruit stall',
    sweetJar: 'Sweet jar',
    field: 'Field',
    bakery: 'Bakery',
    pantry: 'Pantry',
    spiceDrawer: 'Spice drawer',
    meadow: 'Meadow',
    workshop: 'Workshop',
    hearth: 'Hearth',
    shore: 'Shore',
    amiss: 'Something amiss',
    mouth: 'In the mouth',
    leaving: 'As it leaves',
  },
  words: plainEnglish(Object.values(spiritBoard.families).flat(), {
    rye: 'rye bread',
    bacon: 'smoked bacon',
    'warm-glow': 'a warm glow',
    'dry-end': 'dry at the end',
    'sweet-end': 'sweet at the end',
    'bitter-end': 'bitter at the end',
    'clean-end': 'clean at the end',
  }),
  marks: {
    sweet: { name: 'Sweet', steps: ['not sweet', 'a touch sweet', 'sweet', 'very sweet', 'like syrup'] },
    bite: { name: 'Bite', steps: ['no bite', 'gentle', 'warm', 'hot', 'burns'] },
    smoke: { name: 'Smoke', steps: ['no smoke', 'a wisp', 'smoky', 'very smoky', 'a bonfire'] },
    dryness: { name: 'Drying', steps: ['not drying', 'slightly drying', 'drying', 'very drying', 'parched'] },
    body: { name: 'Weight', steps: ['like water', 'light', 'rounded', 'full', 'heavy'] },
    length: {
      name: 'How long it stays',
      steps: ['gone at once', 'brief', 'some breaths', 'long', 'very long'],
    },
  },
  tradeMarks: {
    dryness: {
      name: 'Astringency',
      steps: ['no astringency', 'slight astringency', 'clear astringency', 'strong astringency', 'parched'],
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
    spiritBoard.swatches.map(({ word }) => word),
    {
      breath: 'a breath of colour',
      fox: 'fox red',
    },
  ),
};
