/**
 * An answer that its guest allows into the recap. There is no third consent: what a guest keeps cannot be put
 * into these words, so it cannot be passed on by mistake.
 */
export type Consent = 'shared' | 'anonymous';

export interface PermittedAnswer<Answer> {
  readonly consent: Consent;
  /** For an answer of several parts that were permitted one by one: each part's consent, null where it is empty. */
  readonly byPart?: readonly (Consent | null)[];
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
  /** Answers that lost a part for the same reason, and are still in it. */
  readonly cut?: number;
}

/**
 * What may be counted: `usable` picks out of an answer what the question needs, null where it is not there. `part`:
 * the question is about this part only.
 *
 * Anonymous guests must hide each other in every part. Where too few do, their whole answers go; that may leave
 * another part with too few, so it is looked at again until nothing more has to go.
 */
export function usableAnswers<Given, Usable>(
  permitted: readonly PermittedAnswer<Given>[],
  usable: (answer: Given) => Usable | null,
  part?: number,
): UsableAnswers<Usable> {
  const found = permitted.flatMap((each) => {
    const value = usable(each.answer);
    return value === null ? [] : [{ consents: consentsOf(each, part), value }];
  });
  let counted = found;
  for (let exposed = exposedParts(counted); exposed.size > 0; exposed = exposedParts(counted)) {
    const gone = exposed;
    counted = counted.filter(
      ({ consents }) => !consents.some((consent, index) => consent === 'anonymous' && gone.has(index)),
    );
  }
  return {
    answers: counted.map(({ value }) => value),
    incomplete: permitted.length - found.length,
    unhidden: found.length - counted.length,
  };
}

function consentsOf(
  { consent, byPart }: PermittedAnswer<unknown>,
  part: number | undefined,
): readonly (Consent | null)[] {
  if (byPart === undefined) return [consent];
  return part === undefined ? byPart : [byPart[part] ?? null];
}

/** Parts with an anonymous answer or two. */
function exposedParts(found: readonly { readonly consents: readonly (Consent | null)[] }[]): Set<number> {
  const anonymous = new Map<number, number>();
  for (const { consents } of found) {
    consents.forEach((consent, index) => {
      if (consent === 'anonymous') anonymous.set(index, (anonymous.get(index) ?? 0) + 1);
    });
  }
  return new Set([...anonymous].filter(([, count]) => count < LEAST_ANONYMOUS).map(([index]) => index));
}

/**
 * For a question that looks at each part by itself: an anonymous part that too few have goes, and the rest of the
 * answer stays.
 */
export function usableParts<Part>(
  permitted: readonly PermittedAnswer<readonly (Part | null)[]>[],
): UsableAnswers<readonly (Part | null)[]> {
  const found = permitted.flatMap(({ consent, byPart, answer }) => {
    if (answer.every((part) => part === null)) return [];
    const consents = answer.map((part, index) => (part === null ? null : byPart ? byPart[index] : consent));
    return [{ answer, consents: consents.map((each) => each ?? null) }];
  });
  const exposed = exposedParts(found);
  const kept = found.map(({ answer, consents }) =>
    answer.map((part, index) => (consents[index] === 'anonymous' && exposed.has(index) ? null : part)),
  );
  const answers = kept.filter((answer) => answer.some((part) => part !== null));
  const losers = found.filter(({ consents }) =>
    consents.some((consent, index) => consent === 'anonymous' && exposed.has(index)),
  );
  const unhidden = found.length - answers.length;
  return {
    answers,
    incomplete: permitted.length - found.length,
    unhidden,
    cut: losers.length - unhidden,
  };
}

/** The row when it has a finite number for each of `length` pours, else null. */
export function completeRow(row: readonly (number | null)[], length: number): readonly number[] | null {
  const present = row.filter((value): value is number => value !== null && Number.isFinite(value));
  return length > 0 && row.length === length && present.length === length ? present : null;
}
