import { type TastingId, tastingId } from '../../core/ids.ts';

/** What a host's link carries behind its `#`: the key of the whole house, or of one tasting. */
export type KeyLink =
  | { readonly to: 'house'; readonly key: string }
  | { readonly to: 'tasting'; readonly tasting: TastingId; readonly key: string }
  /** For somebody who helps: lands on the glasses to pour. */
  | { readonly to: 'helper'; readonly tasting: TastingId; readonly key: string };

const keyShape = /^[A-Za-z0-9_-]{16,128}$/;
const idShape = /^[A-Za-z0-9_-]{1,40}$/;

/** Reads `#key=KEY`, `#tasting=ID&key=KEY` or `#helper=ID&key=KEY`; undefined for anything else, such as a page's own address. */
export function keyLinkOf(fragment: string): KeyLink | undefined {
  const fields = new URLSearchParams(fragment.replace(/^#/, ''));
  const key = fields.get('key')?.trim() ?? '';
  if (!keyShape.test(key)) return undefined;
  const helps = fields.get('helper');
  const tasting = helps ?? fields.get('tasting');
  if (tasting === null) return { to: 'house', key };
  if (!idShape.test(tasting)) return undefined;
  return { to: helps === null ? 'tasting' : 'helper', tasting: tastingId(tasting), key };
}

/** What a person pastes: the whole link, what stands behind its `#`, or the bare key of the house. */
export function keyLinkIn(pasted: string): KeyLink | undefined {
  const text = pasted.replace(/\s+/g, '');
  const mark = text.indexOf('#');
  const fragment = mark >= 0 ? text.slice(mark) : text;
  return keyLinkOf(fragment) ?? (mark < 0 && keyShape.test(text) ? { to: 'house', key: text } : undefined);
}

export const hostLink = (origin: string, tasting: TastingId, key: string): string =>
  `${origin}/host#tasting=${tasting}&key=${key}`;

export const helperLink = (origin: string, tasting: TastingId, key: string): string =>
  `${origin}/host#helper=${tasting}&key=${key}`;

/** Opens one guest's seat on another phone. */
export const seatLink = (origin: string, tasting: TastingId, key: string): string =>
  `${origin}/seat#${tasting}.${key}`;

/** Opens a house, in this language. */
export const houseLink = (origin: string, key: string, language: string): string =>
  `${origin}/host?language=${language}#key=${key}`;
