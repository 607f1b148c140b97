import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId, seatId } from '../../../core/ids.ts';
import type { PageMarks } from '../../../core/recap/permitted-page.ts';
import { type HiddenParts, hiddenParts, mayFollow, namedVersions } from '../../../core/recap/release.ts';

const blank: PageMarks = {
  colour: null,
  words: [],
  structure: {},
  liking: null,
  place: null,
  oddGlass: null,
};

interface Told {
  readonly consent?: 'shared' | 'anonymous';
  readonly sealed?: Partial<PageMarks>;
  readonly version?: string;
}
const page = (seat: string, pour: string, marks: Partial<PageMarks>, told: Told = {}) => {
  const { consent = 'anonymous', sealed = {}, version = '1' } = told;
  return {
    seat: seatId(seat),
    pour: pourId(pour),
    consents: {
      colour: consent,
      words: consent,
      structure: consent,
      liking: consent,
      place: consent,
      oddGlass: consent,
    },
    sealed: { ...blank, ...sealed },
    current: { ...blank, ...marks },
    versions: {
      colour: version,
      words: version,
      structure: version,
      liking: version,
      place: version,
      oddGlass: version,
    },
  } as const;
};
const liked = (...seats: string[]): HiddenParts =>
  hiddenParts(
    seats.map((seat) => page(seat, 'ash', { liking: 5 })),
    [],
  );

describe('what may be told of a recap after another one', () => {
  it('[Q8] never differs from any shown before by one guest or two, whoever comes, goes or changes', () => {
    const versions = fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd', 'e'), fc.constantFrom('1', '2'));
    const state = fc.dictionary(fc.constantFrom('liking ash', 'words ash'), versions);
    fc.assert(
      fc.property(fc.array(state, { maxLength: 3 }), state, (shown, now) => {
        const smallest = shown.flatMap((before) =>
          ['liking ash', 'words ash'].map(
            (part) =>
              ['a', 'b', 'c', 'd', 'e'].filter((seat) => before[part]?.[seat] !== now[part]?.[seat]).length,
          ),
        );
        const betrays = smallest.some((changed) => changed === 1 || changed === 2);
        expect(mayFollow(shown as HiddenParts[], now as HiddenParts)).toBe(!betrays);
      }),
    );
  });

  it('[Q8] waits for the third of those who come later', () => {
    const shown = [liked('a', 'b', 'c')];
    expect(mayFollow(shown, liked('a', 'b', 'c', 'd'))).toBe(false);
    expect(mayFollow(shown, liked('a', 'b', 'c', 'd', 'e'))).toBe(false);
    expect(mayFollow(shown, liked('a', 'b', 'c', 'd', 'e', 'f'))).toBe(true);
  });

  it('[Q8] compares with all that was shown, not with the last only', () => {
    const first = liked('a', 'b', 'c', 'd');
    const second = liked('a', 'b', 'c', 'd', 'e', 'f', 'g');
    expect(mayFollow([second], liked('a', 'b', 'c'))).toBe(true);
    expect(mayFollow([first, second], liked('a', 'b', 'c'))).toBe(false);
  });

  it('[Q8] sees the one whole row among three who each changed one glass', () => {
    const pours = [pourId('ash'), pourId('birch')];
    const ash = ['a', 'b', 'c', 'd'].flatMap((seat) => [
      page(seat, 'ash', { place: 1 }),
      ...(seat === 'd' ? [] : [page(seat, 'birch', { place: 2 })]),
    ]);
    const later = ['d', 'e', 'f'].map((seat) => page(seat, 'birch', { place: 1 }));
    const before = hiddenParts(ash, []);
    expect(mayFollow([before], hiddenParts([...ash, ...later], []))).toBe(true);
    const rows = hiddenParts(ash, [pours]);
    expect(mayFollow([rows], hiddenParts([...ash, ...later], [pours]))).toBe(false);
  });

  it('[Q3, Q8] takes no change of an answer that is sealed for a change, so that nobody hides behind it', () => {
    const before = page('a', 'ash', { liking: 5 }, { sealed: { liking: 5 }, version: '1' });
    const after = page('a', 'ash', { liking: 9 }, { sealed: { liking: 5 }, version: '2' });
    expect(hiddenParts([before], [])).toEqual(hiddenParts([after], []));
    const unsealed = [page('a', 'ash', { liking: 5 }), page('a', 'ash', { liking: 9 }, { version: '2' })];
    expect(new Set(unsealed.map((each) => JSON.stringify(hiddenParts([each], [])))).size).toBe(2);
  });

  it('tells nothing of what was answered, and named pages apart from those that only count', () => {
    const pages = [
      page('a', 'ash', { words: ['own:canary'], liking: 7 }),
      page('b', 'ash', { words: ['own:canary'] }, { consent: 'shared' }),
    ];
    const hidden = hiddenParts(pages, []);
    expect(hidden).toEqual({ 'words ash': { a: '1' }, 'liking ash': { a: '1' } });
    expect(namedVersions(pages)).toContain('b ash');
    expect(JSON.stringify(hidden) + namedVersions(pages)).not.toContain('canary');
  });
});
