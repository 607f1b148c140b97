/**
 * An answer that its guest allows into the recap. There is no third consent: what a guest keeps cannot be put
 * into these words, so it cannot be passed on by mistake.
 */
export interface PermittedAnswer<Answer> {
  readonly consent: 'shared' | 'anonymous';
  readonly answer: Answer;
}

/**
 * With one or two anonymous answers in a sum, anyone who sees the shared ones can take them off and read the
 * rest. Below this number anonymous answers are left out.
 */
export const LEAST_ANONYMOUS = 3;

export interface UsableAnswers<Answer> {
  readonly answers: readonly Answer[];
  /** Answers with a gap that the question cannot bear. */
  readonly incomplete: number;
  /** Anonymous answers left out because too few would hide each other. */
  readonly unhidden: number;
}

/** What may be counted: `usable` picks out of an answer what the question needs, null where it is not there. */
export function usableAnswers<Given, Usable>(
  permitted: readonly PermittedAnswer<Given>[],
  usable: (answer: Given) => Usable | null,
): UsableAnswers<Usable> {
  const found = permitted.flatMap(({ consent, answer }) => {
    const value = usable(answer);
    return value === null ? [] : [{ consent, value }];
  });
  const anonymous = found.filter(({ consent }) => consent === 'anonymous').length;
  const hidden = anonymous >= LEAST_ANONYMOUS;
  const counted = found.filter(({ consent }) => consent === 'shared' || hidden);
  return {
    answers: counted.map(({ value }) => value),
    incomplete: permitted.length - found.length,
    unhidden: hidden ? 0 : anonymous,
  };
}

/** The row when it has a finite number for each of `length` pours, else null. */
export function completeRow(row: readonly (number | null)[], length: number): readonly number[] | null {
  const present = row.filter((value): value is number => value !== null && Number.isFinite(value));
  return length > 0 && row.length === length && present.length === length ? present : null;
}
