import type { CautionCode } from '../../../core/planning/strength/cautions.ts';

/** An amount in grams for women and men; said once where it is the same. */
const eachSex = (women: string, men: string): string =>
  women === men ? `${women}\u00a0g` : `${women}\u00a0g for women and ${men}\u00a0g for men`;

/** What a country advises, and the cautions of every tasting, as the host's page of its strength says them. */
export const strengthWords = {
  advice: (country: string, amount: string) => `Official advice (${country}): ${amount}.`,
  adviceNone: (country: string) =>
    `Official advice (${country}): no number for a day or an evening; the less, the better.`,
  adviceAmount: {
    occasion: (women: string, men: string) => `on any one day at most ${eachSex(women, men)}`,
    day: (women: string, men: string) =>
      `as a daily habit at most ${eachSex(women, men)}, and days without any`,
    week: (women: string, men: string) => `at most ${eachSex(women, men)} a week, spread over several days`,
  },
  adviceAbove: 'Swallowed, tonight’s pours are above it: say so, and see that everybody spits.',
  cautions: 'For every tasting',
  ageIs: (age: number) =>
    `Never pour for anybody under ${age}, the highest age that this country’s law names.`,
  ageCheck: 'Ask everybody who looks younger than 25 for an identity card, before the first glass.',
  cautionWords: {
    'spit-every-sip': 'Everybody spits every sip, the host too.',
    'spitting-still-leaves-some': 'Even if you spit, you take in some alcohol.',
    'water-between-pours': 'Water between pours, and as much of it as anybody likes.',
    'eat-first': 'Everybody has eaten before the first glass.',
    'anyone-may-skip-a-pour': 'Anybody may skip any pour, no questions asked.',
    'nobody-drives-after-tasting': 'Nobody who has tasted drives.',
    'no-sum-tells-when-to-drive': 'No calculation, this one included, can tell you when you may drive again.',
    'arrange-the-way-home': 'Before the first glass, know how everybody gets home.',
    'no-alcohol-below-age': 'Never pour for anybody under the legal age.',
    'ask-local-law-for-age': 'Local law sets the minimum age; check it.',
    'no-alcohol-in-pregnancy': 'No alcohol in pregnancy.',
    'no-alcohol-when-breastfeeding': 'No alcohol while breastfeeding.',
    'no-alcohol-with-medicines': 'With medicines or an illness, ask a doctor or pharmacist first.',
    'no-alcohol-with-dangerous-work': 'No alcohol before work with machines or at heights.',
    'no-alcohol-when-others-depend-on-you': 'No alcohol while you are looking after somebody.',
    'no-alcohol-before-important-decisions': 'No alcohol before decisions that matter.',
    'no-safe-amount-known': 'No amount of alcohol is known to be safe.',
    'law-on-serving': 'Serving alcohol may need a licence where you are.',
    'law-on-shipping':
      'In many places sending alcohol by post or courier is forbidden or regulated; ask first.',
    'follow-published-guide': 'ASTM E1879 is the published guide for tasting drinks with alcohol.',
    'licensed-practice-decides': 'Local codes and licensed practice come before anything on this page.',
  } satisfies Record<CautionCode, string>,
};

export type StrengthWords = typeof strengthWords;
