import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { keepsakeMarkdown, plainMarkdown } from '../../../guest/keepsake/keepsake-markdown.ts';
import type { Keepsake } from '../../../shared/wire/http.ts';
import { language, vocabularyOf } from './keepsake-words.ts';

const keepsake: Keepsake = {
  title: 'Six from the sea',
  place: 'The Net Loft',
  hostName: 'Maren',
  startsAt: '2026-11-25T19:30:00+00:00',
  timeZone: 'Pacific/Auckland',
  guest: 'Ingrid',
  drink: 'spirit',
  trials: [],
  guess: null,
  pours: [
    {
      position: 1,
      pour: pourId('p1'),
      drink: 'spirit',
      code: '417',
      facts: {
        kind: 'named',
        id: pourId('p1'),
        drink: 'spirit',
        code: '417',
        name: 'Gorse Point',
        producer: 'House of Marram',
        region: null,
        country: null,
        style: null,
        ageYears: 12,
        vintage: null,
        abv: 46.3,
        cask: null,
        sparkling: false,
        link: null,
        story: null,
        reading: [],
        photos: { front: null, back: null },
      },
      entries: [
        { pour: pourId('p1'), field: 'nose', value: 'tar\nrope', revision: 2, savedAt: epochMs(1) },
        { pour: pourId('p1'), field: 'look', value: 'pale straw', revision: 1, savedAt: epochMs(1) },
      ],
      truth: null,
    },
    { position: 2, pour: pourId('p2'), drink: 'spirit', code: '283', facts: null, entries: [], truth: null },
  ],
} as Keepsake;

describe('the keepsake as Markdown', () => {
  it('has the evening, each pour with its name, and the notes in the order of the steps', () => {
    expect(keepsakeMarkdown(keepsake, vocabularyOf, language)).toBe(`# Six from the sea

Notes of Ingrid · with Maren · The Net Loft · November 26, 2026

## Glass 1: No. 417, Gorse Point

House of Marram · 12 years old · 46.3\u00a0%\u00a0vol

### Look

pale straw

### Nose

tar\\
rope

## Glass 2: No. 283, not named yet

*no notes*
`);
  });
});

/**
 * CommonMark 0.31, section 2.4: a backslash before ASCII punctuation makes it literal. What could still open
 * something is looked for after the escaped pairs have been taken out.
 */
const bare = (markdown: string): string => markdown.replace(/\\[!-/:-@[-`{-~]/g, '');

describe('typed text in Markdown', () => {
  it.each([
    ['# heading', '\\# heading'],
    ['- item', '\\- item'],
    ['+ item', '\\+ item'],
    ['1. first', '1\\. first'],
    ['12) twelfth', '12\\) twelfth'],
    ['> quote', '\\> quote'],
    ['* star *', '\\* star \\*'],
    ['a_b_c', 'a\\_b\\_c'],
    ['`code`', '\\`code\\`'],
    ['[x](javascript:alert(1))', '\\[x\\](javascript:alert(1))'],
    ['![p](http://x/y.png)', '!\\[p\\](http://x/y.png)'],
    ['<img src=x onerror=alert(1)>', '\\<img src=x onerror=alert(1)\\>'],
    ['&lt;b&gt;', '\\&lt;b\\&gt;'],
    ['a | b', 'a \\| b'],
    ['title\n===', 'title\\\n\\==='],
    ['title\n---', 'title\\\n\\---'],
    ['    code block', 'code block'],
    ['ends with \\', 'ends with \\\\'],
    ['one\n\ntwo', 'one\n\ntwo'],
    ['46 % vol, 10.5 years', '46 % vol, 10.5 years'],
    ['2019 was warm - dry', '2019 was warm - dry'],
  ])('%j stays what it was typed as', (typed, markdown) => expect(plainMarkdown(typed)).toBe(markdown));

  it('opens nothing: no heading, list, quote, rule, emphasis, link, code or HTML', () => {
    const ascii = fc.string({
      unit: fc.constantFrom(...'\\`*_{}[]()<>#+-.!|~=&^$:1 2\tab\n'),
      maxLength: 40,
    });
    fc.assert(
      fc.property(ascii, (typed) => {
        const markdown = plainMarkdown(typed);
        expect(bare(markdown)).not.toMatch(/[`*_[\]<>&~|$^]/);
        for (const line of markdown.split('\n')) expect(line).not.toMatch(/^(\s|#|[-+=:]|\d{1,9}[.)])/);
      }),
      { numRuns: 500 },
    );
  });

  it('can be read back to the words that were typed', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[ -~]{1,40}$/), (typed) => {
        expect(plainMarkdown(typed).replace(/\\([!-/:-@[-`{-~])/g, '$1')).toBe(typed.trim());
      }),
    );
  });
});
