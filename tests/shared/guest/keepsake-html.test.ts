import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { photoId, pourId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { keepsakeHtml, text } from '../../../guest/keepsake/keepsake-html.ts';
import type { Keepsake } from '../../../shared/wire/http.ts';
import { language, vocabularyOf } from './keepsake-words.ts';

const front = photoId('label-in-front');
const keepsakeOf = (typed: string): Keepsake => ({
  title: `Six ${typed}`,
  place: typed,
  hostName: typed,
  startsAt: null,
  timeZone: 'UTC',
  guest: typed,
  drink: 'spirit',
  guess: null,
  trials: [],
  pours: [
    {
      position: 1,
      pour: pourId('p1'),
      drink: 'spirit',
      code: '417',
      truth: null,
      facts: {
        kind: 'named',
        id: pourId('p1'),
        drink: 'spirit',
        code: '417',
        name: `Gorse Point ${typed}`,
        producer: typed,
        region: null,
        country: null,
        style: null,
        ageYears: 12,
        vintage: null,
        abv: 46.3,
        cask: typed,
        sparkling: false,
        serve: null,
        link: null,
        story: `Told by the fire: ${typed}`,
        reading: [{ title: typed, link: 'https://reading.invalid/the-coast' }],
        photos: { front, back: photoId('gone') },
      },
      entries: [{ pour: pourId('p1'), field: 'nose', value: `x${typed}`, revision: 1, savedAt: epochMs(1) }],
    },
  ],
});
const jpeg = 'data:image/jpeg;base64,/9j/4AAQSkZJRg==';
const page = (typed: string, photos: ReadonlyMap<string, string> = new Map([[front, jpeg]])): string =>
  keepsakeHtml(keepsakeOf(typed), vocabularyOf, language, photos);

/** Tags as HTML's tokenizer finds them outside the style (WHATWG HTML, 13.2.5): `<` and a letter or a slash. */
const tagsOf = (html: string): string[] =>
  html.replace(/<style>[\s\S]*?<\/style>/, '').match(/<\/?[a-z][^>]*>/gi) ?? [];
const hostile = `</dd><script>alert("1")</script><img src=x onerror='go()'> & "quoted" \u2028 <!-- http://evil.invalid -->`;

describe('the keepsake as a page', () => {
  it('has the story, the label, the notes and what to read, and nothing that is fetched', () => {
    const html = page('salt & sea');
    for (const part of [
      'Gorse Point salt &amp; sea',
      'Told by the fire: salt &amp; sea',
      '46.3\u00a0%\u00a0vol',
    ])
      expect(html).toContain(part);
    expect(html).toContain(`<img src="${jpeg}" alt="Front label of Gorse Point salt &amp; sea">`);
    expect(html).toContain('reading.invalid/the-coast');
    expect(html).not.toMatch(/https?:/i);
    expect(html).not.toMatch(/<(script|link|iframe|object|base|form|a)\b|@import|url\(/i);
    const addresses = tagsOf(html).flatMap((tag) => [
      ...tag.matchAll(/\b(?:src|href|srcset|action)="([^"]*)"/g),
    ]);
    expect(addresses.map(([, address]) => address)).toEqual([jpeg]);
    expect(html).toContain(
      'content="default-src &#39;none&#39;; img-src data:; style-src &#39;unsafe-inline&#39;"',
    );
  });

  it('keeps what people typed as text, whatever they typed', () => {
    const harmless = tagsOf(page('salt'));
    fc.assert(
      fc.property(
        fc.oneof(
          fc.constant(hostile),
          fc.string({ unit: 'grapheme' }),
          fc.string({ unit: fc.constantFrom(...`<>&"'/= ab`) }),
        ),
        (typed) => {
          const html = page(typed);
          // The alternative text of the label is the one attribute that holds typed words.
          const bare = (tags: readonly string[]) => tags.map((tag) => tag.replace(/ alt="[^"]*"/, ''));
          expect(bare(tagsOf(html))).toEqual(bare(harmless));
          expect(html).toContain(`Told by the fire: ${text(typed)}`);
        },
      ),
    );
  });

  it('holds nothing as a photo that is none', () => {
    for (const data of [
      'javascript:alert(1)',
      'data:text/html,<b>',
      `${jpeg}" onload="x`,
      'https://x.invalid/a.jpg',
    ])
      expect(page('salt', new Map([[front, data]]))).not.toContain('<img');
  });
});
