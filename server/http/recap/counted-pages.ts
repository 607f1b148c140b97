import type { PourId } from '../../../core/ids.ts';
import { rankedTogether } from '../../../core/recap/evening-recap.ts';
import {
  type HiddenParts,
  hiddenParts,
  namedVersions,
  type VersionedPage,
} from '../../../core/recap/release.ts';
import { guestsOf } from '../../../core/recap/table-of-pages.ts';
import type { Finished } from '../../../core/session/state.ts';
import { type NoteField, wordFields } from '../../../shared/notes/entry.ts';
import type { PermittedPage } from '../../store/store.ts';
import { marksOfPage } from './marks-of-page.ts';

/** Who counts in a recap of these pages, without what they answered. */
export interface CountedPages {
  readonly hidden: HiddenParts;
  readonly named: string;
}

/** @param opened the pours whose talk was opened, in the order of the plan */
export function countedPages(
  session: Finished,
  opened: readonly PourId[],
  pages: readonly PermittedPage[],
): CountedPages {
  // A guest who is taken off the table afterwards no longer counts: that is a change too.
  const guests = new Set(guestsOf(session).map(({ id }) => id));
  const versioned = pages.filter(({ seat }) => guests.has(seat)).map(versionedPage);
  const pours = session.plan.pours.map(({ id }) => id).filter((id) => opened.includes(id));
  return {
    hidden: hiddenParts(versioned, [pours, ...rankedTogether(session, pours)]),
    named: namedVersions(versioned),
  };
}

function versionedPage(page: PermittedPage): VersionedPage {
  const at = (...fields: readonly NoteField[]): string =>
    page.entries
      .filter(({ field }) => fields.includes(field))
      .map(({ field, revision }) => `${field}:${revision}`)
      .sort()
      .join();
  return {
    ...marksOfPage(page),
    versions: {
      colour: at('colour'),
      words: at(...wordFields),
      structure: at('structure'),
      liking: at('liking'),
      place: at('place'),
      oddGlass: at('odd-one-out'),
    },
  };
}
