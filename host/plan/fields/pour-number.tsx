import type { Pour } from '../../../core/tasting.ts';
import { words } from '../words.ts';
import { NumberField } from './number-field.tsx';

/** Each fact of a pour that is a number: its words, and its limits as the plan's schema has them. */
const facts = {
  ageYears: { said: 'age', wrong: 'ageWrong', least: 0, most: 150, whole: false },
  vintage: { said: 'vintage', wrong: 'vintageWrong', least: 1700, most: 2200, whole: true },
  body: { said: 'body', wrong: 'bodyWrong', least: 1, most: 5, whole: true },
  tannin: { said: 'tannin', wrong: 'bodyWrong', least: 1, most: 5, whole: true },
  sugarGPerL: { said: 'sugar', wrong: 'sugarWrong', least: 0, most: 800, whole: false },
  srm: { said: 'srm', wrong: 'srmWrong', least: 0, most: 200, whole: false },
  ibu: { said: 'ibu', wrong: 'ibuWrong', least: 0, most: 1000, whole: false },
} as const;
type NumberFact = keyof typeof facts;

interface PourNumberProps<Fact extends NumberFact> {
  readonly pour: Pick<Pour, Fact>;
  /** Undefined takes the fact away. */
  readonly set: (fact: Fact, value: number | undefined) => void;
  readonly of: Fact;
}

export function PourNumber<Fact extends NumberFact>({ pour, set, of }: PourNumberProps<Fact>) {
  const { said, wrong, ...limits } = facts[of];
  return (
    <NumberField
      label={words.pour[said]}
      value={pour[of]}
      {...limits}
      optional
      wrong={words.pour[wrong]}
      onNumber={(value) => set(of, value)}
    />
  );
}
