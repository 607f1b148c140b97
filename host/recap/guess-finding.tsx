import type { ToldFact } from '../../core/recap/guess-recap.ts';
import { chanceText, factName } from '../../shared/guess/guess-texts.ts';
import { guessWords } from '../../shared/language/en/guess.ts';
import { recapWords } from '../../shared/language/en/recap.ts';
import { Finding } from './finding.tsx';

interface GuessFindingProps {
  readonly facts: readonly ToldFact[];
  readonly drink: 'spirit' | 'wine' | 'beer';
}

/** What the room could tell of blind glasses, and what not: of everybody together, never of one. */
export function GuessFinding({ facts, drink }: GuessFindingProps) {
  const words = guessWords.recap;
  const told = facts
    .filter(({ meaning }) => meaning === 'could-tell')
    .map(({ fact }) => factName(fact, drink));
  const untold = facts
    .filter(({ meaning }) => meaning === 'not-shown')
    .map(({ fact }) => factName(fact, drink));
  return (
    <Finding
      title={words.title}
      said={facts.length === 0 ? words.none : words.said(told, untold)}
      table={
        facts.length === 0
          ? undefined
          : {
              caption: words.title,
              columns: [
                words.columns.fact,
                words.columns.glasses,
                words.columns.guesses,
                words.columns.nearer,
              ],
              rows: facts.map(({ fact, pours, guesses, mean }) => [
                factName(fact, drink),
                String(pours),
                String(guesses),
                words.share(1 - mean),
              ]),
            }
      }
      reckoned={facts.map(({ fact, chance, approximate }) =>
        [
          `${factName(fact, drink)}: ${chanceText(chance)}`,
          ...(approximate ? [recapWords.limits['approximate-p']()] : []),
        ].join(' '),
      )}
    />
  );
}
