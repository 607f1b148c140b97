import type { PourId, SeatId } from '../ids.ts';
import { LEAST_ANONYMOUS } from '../panel/recap/permitted-answers.ts';
import type { PageMarks, PermittedPage } from './permitted-page.ts';

/**
 * Who counts without a name in each part of a recap, and in which version: `parts[part][seat]`. It tells nothing of what
 * was answered. Parts that nobody counts in are not there.
 */
export type HiddenParts = Readonly<Record<string, Readonly<Record<SeatId, string>>>>;

export type VersionedPage = PermittedPage & {
  /** Of each counted answer, what it is at now; any text that changes when the answer does. */
  readonly versions: Readonly<Record<keyof PageMarks, string>>;
};

const reads: { readonly [Name in keyof PageMarks]: (marks: PageMarks) => boolean } = {
  colour: ({ colour }) => colour !== null,
  words: ({ words }) => words.length > 0,
  structure: ({ structure }) => Object.keys(structure).length > 0,
  liking: ({ liking }) => liking !== null,
  place: ({ place }) => place !== null,
  oddGlass: ({ oddGlass }) => oddGlass !== null,
};
const names = Object.keys(reads) as (keyof PageMarks)[];

/**
 * The parts are each answer of each pour, and the rows of those who answered for all of `together`: what is reckoned from
 * whole rows changes by a single guest where three have changed one glass each.
 */
export function hiddenParts(
  pages: readonly VersionedPage[],
  together: readonly (readonly PourId[])[],
): HiddenParts {
  const parts: Record<string, Record<SeatId, string>> = {};
  const put = (part: string, seat: SeatId, version: string): void => {
    parts[part] = { ...parts[part], [seat]: version };
  };
  const bySeat = new Map<SeatId, Map<PourId, VersionedPage>>();
  for (const page of pages) {
    const own = bySeat.get(page.seat) ?? new Map<PourId, VersionedPage>();
    bySeat.set(page.seat, own.set(page.pour, page));
  }
  for (const [seat, own] of bySeat) {
    for (const name of names) {
      for (const [pour, page] of own) {
        const version = versionOf(page, name);
        if (page.consents[name] === 'anonymous' && version !== null) put(`${name} ${pour}`, seat, version);
      }
      for (const pours of together) {
        const row = pours.flatMap((pour) => own.get(pour) ?? []);
        const versions = row.flatMap((page) => versionOf(page, name) ?? []);
        const whole = pours.length > 1 && versions.length === pours.length;
        if (whole && row.some(({ consents }) => consents[name] === 'anonymous'))
          put(`${name} ${pours.join('+')}`, seat, versions.join(' '));
      }
    }
  }
  return parts;
}

/** What was found before the talk counts before what stands there now, and changes no more. */
function versionOf({ sealed, current, versions }: VersionedPage, name: keyof PageMarks): string | null {
  if (reads[name](sealed)) return 'sealed';
  return reads[name](current) ? versions[name] : null;
}

/** What the pages with a name say, as one text: equal texts, equal pages. */
export const namedVersions = (pages: readonly VersionedPage[]): string =>
  pages
    .filter(({ consents }) => names.some((name) => consents[name] === 'shared'))
    .map((page) => {
      const versions = names.map((name) => (page.consents[name] === 'shared' ? versionOf(page, name) : null));
      return [page.seat, page.pour, ...versions.map((version) => version ?? '')].join(' ');
    })
    .sort()
    .join('\n');

/**
 * [Q8] Whether counts may be shown to somebody who has seen those of `shown`: in no part may they differ from any of them
 * by one guest or two, for whoever takes one from the other reads what these have answered.
 */
export const mayFollow = (shown: readonly HiddenParts[], now: HiddenParts): boolean =>
  shown.every((before) =>
    [...new Set([...Object.keys(before), ...Object.keys(now)])].every((part) => {
      const changed = changedIn(before[part] ?? {}, now[part] ?? {});
      return changed === 0 || changed >= LEAST_ANONYMOUS;
    }),
  );

export const sameParts = (one: HiddenParts, other: HiddenParts): boolean =>
  [...new Set([...Object.keys(one), ...Object.keys(other)])].every(
    (part) => changedIn(one[part] ?? {}, other[part] ?? {}) === 0,
  );

type Versions = Readonly<Record<SeatId, string>>;

function changedIn(before: Versions, now: Versions): number {
  const seats = new Set([...Object.keys(before), ...Object.keys(now)] as SeatId[]);
  return [...seats].filter((seat) => before[seat] !== now[seat]).length;
}
