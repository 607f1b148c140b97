import { type Leaf, leavesOf } from './leaves.ts';

type Saying = Extract<Leaf, (...given: never) => unknown>;
type Given = readonly unknown[];

/** What an argument may be, each told apart from its neighbours by its place. */
const kinds = (place: number): Given => [
  17 + place,
  `Quitte${place}`,
  [`Feige${place}`, `Dattel${place}`],
  [53 + place, 63 + place],
];

const everyGiven = (length: number): readonly Given[] =>
  Array.from({ length }, (_, place) => kinds(place)).reduce<readonly Given[]>(
    (before, choices) => before.flatMap((given) => choices.map((choice) => [...given, choice])),
    [[]],
  );

/**
 * What the function says, in one text. Undefined where it cannot be called so: it fails, says nothing or something
 * senseless, or hands back what it was given, as a switch without an answer does.
 */
export function saidFor(saying: Saying, given: Given): string | undefined {
  try {
    const answer = saying(...given);
    if (given.includes(answer) && typeof answer === 'object') return undefined;
    const said = leavesOf(answer, '').map(([, leaf]) => (typeof leaf === 'string' ? leaf : ''));
    const text = said.join(' ');
    return text.trim() === '' || /undefined|NaN|\[object|=>/.test(text) ? undefined : text;
  } catch {
    return undefined;
  }
}

/** Small letters alone are a code, which every language says in its own way. */
const isCode = (text: string) => /^[a-z][A-Za-z-]*$/.test(text);

function marks(given: unknown): readonly string[] {
  if (typeof given === 'number') return [String(given)];
  if (typeof given === 'string') return isCode(given) ? [] : [given];
  return typeof given === 'object' && given !== null ? Object.values(given).flatMap(marks) : [];
}

/** Those of the arguments that a text holds; a number counts when it stands by itself. */
export const mentioned = (text: string, given: Given): readonly string[] =>
  marks(given).filter((mark) =>
    /^\d+$/.test(mark) ? new RegExp(`(?<!\\d)${mark}(?!\\d)`).test(text) : text.includes(mark),
  );

/** The text without its arguments: what is left is the language's own. */
export const ownWords = (text: string, given: Given): string =>
  mentioned(text, given).reduce((left, mark) => left.replaceAll(mark, ''), text);

/**
 * Arguments that the function speaks of as fully as it can; several, as a number often does for a text too. A
 * function that takes only certain codes or objects answers to none of them: give it a sample by its path.
 */
export function samplesFor(saying: Saying): readonly Given[] {
  const tried = everyGiven(saying.length).flatMap((given) => {
    const text = saidFor(saying, given);
    if (text === undefined) return [];
    // By arguments: a list of two is not worth more than a number.
    const spoken = given.filter((each) => mentioned(text, [each]).length === marks(each).length);
    return [{ given, mentions: spoken.length }];
  });
  const most = Math.max(...tried.map(({ mentions }) => mentions));
  return tried.filter(({ mentions }) => mentions === most).map(({ given }) => given);
}

/** The same arguments with other numbers: one for a singular, none, and many. */
export const withOtherNumbers = (given: Given): readonly Given[] =>
  given.some((each) => typeof each === 'number')
    ? [0, 1, 2, 417].map((number) => given.map((each) => (typeof each === 'number' ? number : each)))
    : [];
