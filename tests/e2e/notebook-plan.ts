import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { demoWords } from '../../shared/language/en/demo.ts';
import { closingText } from '../../shared/words/en/closing.ts';
import { spiritText } from '../../shared/words/en/spirit.ts';

/** The demo evening with everything that a notebook can be asked for. */
export const plan = planSchema.parse({
  ...demoEvening,
  level: 'devotees',
  practice: false,
  ranking: 'each-flight',
  liking: true,
  extraWords: ['ferry rope', 'Salt/pepper'],
  trials: [
    {
      id: 'lastlamp',
      flight: 0,
      a: 'kV7nQ2xd',
      b: 'b9TzLw4h',
      codes: { a: ['311', '577'], b: ['642', '909'] },
      orders: ['ABA', 'BBA'],
    },
  ],
  pours: demoEvening.pours?.map((pour) => ({
    ...pour,
    reading: [{ title: 'A walk through the Fennmark hills', link: 'https://example.test/walk' }],
  })),
});

/** What is tapped in it, as its pages say it. */
export const tapped = {
  firstName: demoWords.pours.orchardWall.name,
  honey: spiritText.colours.honey,
  amber: spiritText.colours.amber,
  orchard: spiritText.families.orchard,
  pear: spiritText.words.pear,
  quince: spiritText.words.quince,
  vanilla: spiritText.words.vanilla,
  ...closingText.strengths,
  sweet: spiritText.marks.sweet.name,
  touchSweet: spiritText.marks.sweet.steps[1],
  stillThere: closingText.review['still-there'],
  gone: closingText.review.gone,
  weaker: closingText.review.weaker,
  curious: closingText.feelings.curious,
  prompt: closingText.prompts['reminds-me'],
};
