import { exportsOf, filesOf, type Home, homes } from '../../support/languages.ts';
import { type Leaf, leavesOf } from './leaves.ts';
import { saidFor, samplesFor, withOtherNumbers } from './sampled.ts';
import { samples } from './samples.ts';

/** A text as people read it, with where it stands. */
export interface SaidText {
  readonly path: string;
  readonly text: string;
}

type Saying = Exclude<Leaf, string>;

/** A text as it stands, or all that a function says for its sample arguments and for other numbers. */
function textsOf(leaf: Leaf, english: Leaf | undefined): readonly string[] {
  if (typeof leaf === 'string') return [leaf];
  const model: Saying = typeof english === 'function' ? english : leaf;
  const given = samples.get(model) ?? samplesFor(model);
  return given
    .flatMap((each) => [each, ...withOtherNumbers(each)])
    .flatMap((each) => saidFor(leaf, each) ?? []);
}

async function textsIn(home: Home, language: string, file: string): Promise<readonly SaidText[]> {
  const english = new Map(leavesOf(await exportsOf(home, 'en', file), file));
  return leavesOf(await exportsOf(home, language, file), file).flatMap(([path, leaf]) =>
    [...new Set(textsOf(leaf, english.get(path)))].map((text) => ({ path, text })),
  );
}

/** Everything that a language says, in all its files, in the order of the files. */
export async function saidTexts(language: string): Promise<readonly SaidText[]> {
  const texts = homes.flatMap((home) => filesOf(home, language).map((file) => textsIn(home, language, file)));
  return (await Promise.all(texts)).flat();
}
