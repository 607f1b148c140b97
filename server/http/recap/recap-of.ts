import type { PourId, TastingId } from '../../../core/ids.ts';
import { type EveningRecap, eveningRecap } from '../../../core/recap/evening-recap.ts';
import { asPlanned } from '../../../core/recap/planned-course.ts';
import type { Finished } from '../../../core/session/state.ts';
import type { RecapExport, SharedNotes } from '../../../shared/wire/http.ts';
import { sharedNotes } from '../../live/board.ts';
import type { PermittedPage, Store } from '../../store/store.ts';
import { Refused } from '../answers.ts';
import type { HttpParts } from '../parts.ts';
import { marksOfPage } from './marks-of-page.ts';

const notHeld = 'This evening has not been held yet; its recap comes when it is finished.';
const notOver = 'The recap comes when the evening is finished; finish it in the room, then look back.';

/**
 * Only once the evening is over: while guests still write and choose, two recaps a moment apart would tell what one of
 * them did. Throws `Refused`.
 */
export function recapOf(parts: HttpParts, tasting: TastingId): EveningRecap {
  const session = finishedSession(parts, tasting);
  return eveningRecap({
    session,
    planned: asPlanned(parts.store.sessions.read(tasting)),
    pages: openedPages(parts.store, tasting, session).map(marksOfPage),
  });
}

/** The recap and the notes that guests share with their name. Throws `Refused`. */
export function exportOf(parts: HttpParts, tasting: TastingId): RecapExport {
  const session = finishedSession(parts, tasting);
  const pages = openedPages(parts.store, tasting, session);
  const notes = openedPours(session).map(
    (pour): SharedNotes => ({
      pour,
      notes: sharedNotes(
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
  return { format: 1, recap: recapOf(parts, tasting), notes };
}

function finishedSession({ conductors }: HttpParts, tasting: TastingId): Finished {
  const session = conductors.of(tasting)?.standing.session;
  if (session === undefined) throw new Refused('no-such-tasting');
  switch (session.status) {
    case 'unopened':
      throw new Refused('not-open', notHeld);
    case 'under-way':
      throw new Refused('not-finished', notOver);
    case 'finished':
      return session;
    default:
      return session satisfies never;
  }
}

/** [Q1] What nobody has opened the talk for is not even read. */
const openedPages = (store: Store, tasting: TastingId, session: Finished): PermittedPage[] =>
  store.notebooks.readPermitted(tasting, openedPours(session));

const openedPours = ({ plan, discussions }: Finished): PourId[] =>
  [...plan.pours, ...plan.trials].map(({ id }) => id).filter((id) => discussions[id] !== undefined);
