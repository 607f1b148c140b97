import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meaningsOfLine } from '../../../../core/planning/pour-list/bare-lines.ts';
import { saysNothing } from '../../../../core/planning/pour-list/cell-reading.ts';
import { headingOf } from '../../../../core/planning/pour-list/headings.ts';
import { fold } from '../../../../core/planning/pour-list/list-words.ts';
import { meanings } from '../../../../core/planning/pour-list/meanings.ts';
import { readCell } from '../../../../core/planning/pour-list/read-cell.ts';
import { listVocabulary } from '../../../../shared/list-words/vocabulary.ts';

const setting = { drink: 'wine', currency: 'EUR', digits: 2, ounce: 'us', words: listVocabulary } as const;
const heading = { text: 'Anything', unit: undefined, currency: undefined };

/** Everything that is done with a cell of a pasted list. */
function readInEveryWay(cell: string): void {
  meaningsOfLine([cell], listVocabulary);
  saysNothing(cell);
  headingOf(cell, listVocabulary);
  for (const meaning of meanings) readCell(meaning, cell, heading, setting, 'wine');
}

/** The quickest of three, in ms: the others were kept waiting by something else. */
function quickest(run: () => void): number {
  const times = Array.from({ length: 3 }, () => {
    const begun = performance.now();
    run();
    return performance.now() - begun;
  });
  return Math.min(...times);
}

/** Characters that a pattern may take for one thing or another, begun and ended by what decides it late. */
const runs = fc.constantFrom(
  ' ',
  '1',
  '1 ',
  ' l',
  '. ',
  ', ',
  '-',
  ' -',
  '% ',
  'vol',
  'y',
  'a ',
  'A',
  '~ ',
  '"',
  "1'",
  '€',
  '1.',
  '\u00a0',
);
const ends = fc.constantFrom('', 'x', '1', ' l', 'EUR', '!', '1 x', '-');

describe('a very long cell of a pasted list', () => {
  it('is read in a time that grows with its length and no faster', () => {
    fc.assert(
      fc.property(ends, runs, ends, (begin, run, end) => {
        const cell = begin + run.repeat(Math.ceil(60_000 / run.length)) + end;
        // What one pass over the same text takes on this machine, now; all the readings are some forty passes. Of a
        // pattern that tries every division of a run this long they would be tens of thousands.
        const onePass = quickest(() => fold(`${cell}é`));
        expect(quickest(() => readInEveryWay(cell))).toBeLessThan(2000 * onePass);
      }),
      { numRuns: 60 },
    );
  }, 120_000);
});
