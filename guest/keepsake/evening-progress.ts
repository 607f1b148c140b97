import { type GuessProgress, guessProgress } from '../../shared/guess/guess-progress.ts';
import { type NoteValues, wordFields } from '../../shared/notes/entry.ts';
import { isBlank } from '../../shared/notes/value.ts';
import type { Keepsake, KeepsakePour } from '../../shared/wire/http.ts';
import { wordKey } from '../../shared/words/word-sheet.ts';

/** What one evening has to tell about somebody who learns to taste. */
export interface EveningProgress {
  /** Glasses with something put down. */
  readonly glasses: number;
  /** Different words tapped. */
  readonly words: number;
  /** Of those, not met in an earlier evening. */
  readonly fresh: number;
  /** Words for a glass that has any notes, to one decimal; 0 without one. */
  readonly perGlass: number;
  /** Odd-one-outs whose answer is known. */
  readonly odd: { readonly right: number; readonly of: number };
  /** Null in an evening without guesses whose names are told. */
  readonly guesses: GuessProgress | null;
  /** Named pours with the highest liking of the evening. */
  readonly best: readonly string[];
}

/** Evening by evening; the first of the list is the oldest. */
export function progressOf(evenings: readonly Keepsake[]): EveningProgress[] {
  const met = new Set<string>();
  return evenings.map((evening) => {
    const glasses = evening.pours.filter(({ entries }) => entries.some(({ value }) => !isBlank(value)));
    const perGlass = glasses.map(wordsOf);
    const all = new Set(perGlass.flatMap((words) => [...words]));
    const fresh = [...all].filter((word) => !met.has(word)).length;
    for (const word of all) met.add(word);
    const total = perGlass.reduce((sum, words) => sum + words.size, 0);
    const known = evening.trials.filter(({ odd, picked }) => odd !== null && picked !== null);
    return {
      glasses: glasses.length,
      words: all.size,
      fresh,
      perGlass: glasses.length === 0 ? 0 : Math.round((total / glasses.length) * 10) / 10,
      odd: {
        right: known.filter(({ odd, picked }) => picked?.glass === odd).length,
        of: known.length,
      },
      guesses: guessProgress(evening),
      best: likedBest(evening.pours),
    };
  });
}

const wordsOf = ({ entries }: KeepsakePour): Set<string> =>
  new Set(
    wordFields.flatMap((field) => {
      const value = entries.find((entry) => entry.field === field)?.value;
      return value !== null && typeof value === 'object' ? Object.keys(value).map(wordKey) : [];
    }),
  );

function likedBest(pours: readonly KeepsakePour[]): string[] {
  const liked = pours.flatMap(({ facts, entries }) => {
    const value = entries.find(({ field }) => field === 'liking')?.value as NoteValues['liking'] | undefined;
    return facts === null || typeof value !== 'number' ? [] : [{ name: facts.name, value }];
  });
  const most = Math.max(...liked.map(({ value }) => value));
  return liked.filter(({ value }) => value === most && value > 5).map(({ name }) => name);
}
