import { guessWords } from '../../shared/language/en/guess.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import type { KeepsakeLanguage } from './keepsake-language.ts';
import {
  keepsakeInWords,
  type PassageInWords,
  type PourInWords,
  type VocabularyOf,
} from './keepsake-text.ts';
import { doctype, pagePolicy, pageStyle, viewport } from './saved-page-frame.ts';

/** Label photos by their ids, as `data:` addresses of JPEGs. */
export type PhotosInline = ReadonlyMap<string, string>;

/**
 * A guest's evening as one page that needs nothing else: no script, no network, styles and photos inside it. What people
 * typed stands in it as text only; it has no address of anything, and its own policy would fetch none.
 */
export function keepsakeHtml(
  keepsake: Keepsake,
  vocabularyOf: VocabularyOf,
  language: KeepsakeLanguage,
  photos: PhotosInline,
): string {
  const { title, head, pours, trials, results } = keepsakeInWords(keepsake, vocabularyOf, language);
  const whole = element('html', { lang: language.guest.language }, [
    element('head', {}, [
      opened('meta', { charset: 'utf-8' }),
      opened('meta', { name: 'viewport', content: viewport }),
      opened('meta', { 'http-equiv': 'Content-Security-Policy', content: pagePolicy }),
      element('title', {}, [text(title)]),
      element('style', {}, [pageStyle]),
    ]),
    element('body', {}, [
      element('main', {}, [
        element('header', {}, [typed('h1', title), typed('p', head)]),
        ...pours.map((pour) => pourHtml(pour, language, photos)),
        ...[...trials, ...results].map(passageHtml),
      ]),
    ]),
  ]);
  return `${doctype}\n${whole}\n`;
}

function pourHtml(
  { pour, glass, name, facts, reading, fields: own, room }: PourInWords,
  { home, guest, fields }: KeepsakeLanguage,
  photos: PhotosInline,
): string {
  const coded = pour.code === null ? [] : [guest.glass.coded(pour.code)];
  const story = pour.facts?.story ?? '';
  const notes = own.map((each) =>
    element('div', {}, [typed('dt', fields[each.field]), typed('dd', each.text)]),
  );
  const toRead = reading.map((each) => `${each.title}: ${bare(each.link)}`);
  return element('article', {}, [
    ...labelsOf(pour.facts, photos, guest.pour.labels),
    typed('p', [glass, ...coded].join(' · '), 'soft'),
    typed('h2', name),
    ...(facts.length === 0 ? [] : [typed('p', facts.join(' · '), 'soft')]),
    ...(story === '' ? [] : [typed('p', story, 'story')]),
    notes.length === 0 ? typed('p', home.noNotes, 'soft') : element('dl', {}, notes),
    ...(room.length === 0 ? [] : [typed('h3', guessWords.room.title), ...listed(room)]),
    ...(toRead.length === 0 ? [] : [typed('h3', home.reading), ...listed(toRead)]),
  ]);
}

const passageHtml = ({ title, said, rows }: PassageInWords): string =>
  element('article', {}, [typed('h2', title), typed('p', said), ...listed(rows)]);

const listed = (lines: readonly string[]): string[] => {
  const items = lines.map((line) => typed('li', line));
  return items.length === 0 ? [] : [element('ul', {}, items)];
};

function labelsOf(
  facts: Keepsake['pours'][number]['facts'],
  photos: PhotosInline,
  said: Readonly<Record<'front' | 'back', (name: string) => string>>,
): string[] {
  if (facts === null) return [];
  const labels = (['front', 'back'] as const).flatMap((side) => {
    const photo = facts.photos[side];
    const src = photo === null ? undefined : photos.get(photo);
    return src === undefined || !inlineJpeg.test(src)
      ? []
      : [opened('img', { src, alt: said[side](facts.name) })];
  });
  return labels.length === 0 ? [] : [element('figure', {}, labels)];
}

const inlineJpeg = /^data:image\/jpeg;base64,[A-Za-z0-9+/]+=*$/;

/** To be typed by whoever reads it on paper: a page that needs no network points nowhere. */
const bare = (link: string): string => link.replace(/^https?:\/\//i, '').replace(/\/$/, '');

type Attributes = Readonly<Record<string, string>>;

/** A tag that nothing closes. */
const opened = (name: string, attributes: Attributes): string =>
  `<${[name, ...Object.entries(attributes).map(([key, value]) => `${key}="${text(value)}"`)].join(' ')}>`;

/** @param inner elements and escaped text */
const element = (name: string, attributes: Attributes, inner: readonly string[]): string =>
  `${opened(name, attributes)}${inner.join('\n')}</${name}>`;

/** An element whose whole inside somebody typed, in whichever direction their words run. */
const typed = (name: string, words: string, kind?: string): string =>
  element(name, { ...(kind === undefined ? {} : { class: kind }), dir: 'auto' }, [text(words)]);

const marks: Attributes = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** The very characters that somebody typed, between tags and in quoted attributes alike. */
export const text = (words: string): string => words.replace(/[&<>"']/g, (mark) => marks[mark] ?? '');
