import { describe, expect, it } from 'vitest';
import { exportsOf, filesOf, type Home, homes, languagesOf } from '../../support/languages.ts';
import { alikeIn, international } from './alike.ts';
import { type Leaf, leavesOf, type Placed } from './leaves.ts';
import { mentioned, ownWords, saidFor, samplesFor, withOtherNumbers } from './sampled.ts';
import { samples } from './samples.ts';

/** English is what every other folder is held against; a new folder is held as soon as it stands. */
const yardstick = 'en';

interface Pair {
  readonly path: string;
  readonly english: Leaf;
  readonly other: Leaf | undefined;
}

interface Compared {
  readonly language: string;
  readonly home: Home;
  readonly file: string;
  readonly pairs: readonly Pair[];
  /** Leaves that English does not have. */
  readonly strays: readonly string[];
}

async function compare(language: string, home: Home, file: string): Promise<Compared> {
  const read = async (of: string): Promise<readonly Placed[]> =>
    leavesOf(await exportsOf(home, of, file), file);
  const english = new Map(await read(yardstick));
  const other = new Map(await read(language));
  return {
    language,
    home,
    file,
    pairs: [...english].map(([path, leaf]) => ({ path, english: leaf, other: other.get(path) })),
    strays: [...other.keys()].filter((path) => !english.has(path)),
  };
}

const folders = homes.flatMap((home) =>
  languagesOf(home)
    .filter((language) => language !== yardstick)
    .map((language) => ({ home, language })),
);
const compared = await Promise.all(
  folders.flatMap(({ home, language }) =>
    filesOf(home, language)
      .filter((file) => filesOf(home, yardstick).includes(file))
      .map((file) => compare(language, home, file)),
  ),
);

/** What is wrong with each pair, by its path; an empty list is a whole file. */
const faults = (pairs: readonly Pair[], faultOf: (pair: Pair) => string | undefined): readonly string[] =>
  pairs.flatMap((pair) => {
    const fault = faultOf(pair);
    return fault === undefined ? [] : [`${pair.path}: ${fault}`];
  });

const isText = (leaf: Leaf | undefined): leaf is string => typeof leaf === 'string';

/** Whether a text has a word that a language would say in its own way; a single letter is a symbol or a key. */
const hasWords = (text: string): boolean =>
  /\p{L}{2}/u.test(
    international.reduce((left, symbol) => left.replaceAll(symbol, ' '), text.replaceAll('\u00a0', ' ')),
  );

/** Arguments for the English function, made up or set apart for it. */
const givenTo = (saying: Exclude<Leaf, string>) => samples.get(saying) ?? samplesFor(saying);

it('there is a language beside English, in every home of words', () => {
  expect(new Set(homes.map((home) => String(languagesOf(home)))).size).toBe(1);
  expect(folders.map(({ language }) => language)).toContain('de');
});

describe.each(folders)('$home/$language', ({ home, language }) => {
  it('has the same files as English', () => {
    expect(filesOf(home, language)).toEqual(filesOf(home, yardstick));
  });
});

describe.each(compared)('$language $file', ({ language, pairs, strays }) => {
  const alike = alikeIn[language] ?? [];

  it('says all that English says, in the same places, and nothing else', () => {
    const kind = (leaf: Leaf | undefined) => typeof leaf;
    expect(
      faults(pairs, ({ english, other }) => (kind(english) === kind(other) ? undefined : 'missing')),
    ).toEqual([]);
    expect(strays).toEqual([]);
  });

  it('leaves no text empty that is not empty in English', () => {
    expect(
      faults(pairs, ({ english, other }) =>
        isText(other) && other.trim() === '' && english !== other ? 'empty' : undefined,
      ),
    ).toEqual([]);
  });

  it('names its own language where it names one', () => {
    expect(
      faults(pairs, ({ path, other }) =>
        /\.language$/.test(path) && isText(other) && other.split('-')[0] !== language ? other : undefined,
      ),
    ).toEqual([]);
  });

  it('leaves nothing in English', () => {
    expect(
      faults(pairs, ({ english, other }) =>
        isText(english) && english === other && hasWords(english) && !alike.includes(english)
          ? `“${english}”`
          : undefined,
      ),
    ).toEqual([]);
  });

  it('speaks of the same arguments, in words of its own', () => {
    const faultOf = ({ english, other }: Pair): string | undefined => {
      if (isText(english) || other === undefined || isText(other)) return undefined;
      const given = givenTo(english);
      if (given.length === 0) return 'no sample arguments: set some apart in samples.ts';
      const wrongs = given.map((each) => wrongFor(english, other, each));
      // A made-up argument may be of the wrong type for this language alone; one that is set apart may not.
      return samples.has(english) ? wrongs.find(Boolean) : wrongs.includes(undefined) ? undefined : wrongs[0];
    };
    const wrongFor = (
      english: Exclude<Leaf, string>,
      other: Exclude<Leaf, string>,
      given: readonly unknown[],
    ): string | undefined => {
      for (const each of [given, ...withOtherNumbers(given)]) {
        const inEnglish = saidFor(english, each);
        if (inEnglish === undefined) continue;
        const said = saidFor(other, each);
        if (said === undefined) return `says nothing for ${JSON.stringify(each)}`;
        const lost = mentioned(inEnglish, each).filter((mark) => !mentioned(said, each).includes(mark));
        // One and none are often words ("ein Glas"), and arithmetic may meet them by chance.
        if (lost.some((mark) => !/^[0-2]$/.test(mark))) return `“${said}” lacks ${lost.join(', ')}`;
        const left = ownWords(said, each);
        if (left === ownWords(inEnglish, each) && hasWords(left) && !alike.includes(left.trim()))
          return `“${said}” is English`;
      }
      return undefined;
    };
    expect(faults(pairs, faultOf)).toEqual([]);
  });
});

it.each(Object.entries(alikeIn))(
  'the list of what %s shares with English holds nothing else',
  (language, alike) => {
    const shared = compared
      .filter((each) => each.language === language)
      .flatMap(({ pairs }) =>
        pairs.filter(({ english, other }) => english === other).map(({ other }) => other),
      );
    expect(alike.filter((text) => !shared.includes(text))).toEqual([]);
  },
);
