import type { PourId } from '../../../core/ids.ts';
import { type EveningRecap, eveningRecap } from '../../../core/recap/evening-recap.ts';
import type { AsPlanned } from '../../../core/recap/planned-course.ts';
import type { Finished } from '../../../core/session/state.ts';
import type { RecapExport, SharedNotes } from '../../../shared/wire/http.ts';
import { namedNotes } from '../../live/board.ts';
import type { PermittedPage } from '../../store/store.ts';
import { marksOfPage } from './marks-of-page.ts';
import { recapCsv } from './recap-csv.ts';

/** All that a recap is made from, as plain values: it crosses into another thread. */
export interface RecapMaterial {
  readonly form: 'recap' | 'json' | 'csv';
  readonly session: Finished;
  readonly planned: AsPlanned;
  /** Of the pours whose talk was opened, and of no others [Q1]. */
  readonly pages: readonly PermittedPage[];
  /** What is shown in place of the figures of these pages [Q8]. */
  readonly figures?: RecapFigures;
}

/** What a recap reckons from pages; all else comes from the log. */
export type RecapFigures = Pick<
  EveningRecap,
  'rankings' | 'liking' | 'trials' | 'words' | 'structure' | 'colours'
>;

/** The recap for a page, or with the notes that guests share with their name for a file: JSON, or CSV. */
export function recapText(material: RecapMaterial): string {
  switch (material.form) {
    case 'recap':
      return JSON.stringify(recapOf(material));
    case 'json':
      return JSON.stringify(exportOf(material));
    case 'csv':
      return recapCsv(exportOf(material));
    default:
      return material.form satisfies never;
  }
}

/** The pours and odd-one-outs whose talk was opened. */
export const openedPours = ({ plan, discussions }: Finished): PourId[] =>
  [...plan.pours, ...plan.trials].map(({ id }) => id).filter((id) => discussions[id] !== undefined);

const recapOf = ({ session, planned, pages, figures }: RecapMaterial): EveningRecap => ({
  ...eveningRecap({ session, planned, pages: figures === undefined ? pages.map(marksOfPage) : [] }),
  ...figures,
});

function exportOf(material: RecapMaterial): RecapExport {
  const { session, pages } = material;
  const notes = openedPours(session).map(
    (pour): SharedNotes => ({
      pour,
      notes: namedNotes(
        session,
        pour,
        pages.filter((page) => page.pour === pour),
      ).map(({ name, remote, oddGlass, sealed, addedLater }) => ({
        guest: name,
        remote,
        oddGlass,
        sealed,
        addedLater,
      })),
    }),
  );
  return { format: 1, recap: recapOf(material), notes };
}
