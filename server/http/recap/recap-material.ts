import type { TastingId } from '../../../core/ids.ts';
import { asPlanned } from '../../../core/recap/planned-course.ts';
import type { Finished } from '../../../core/session/state.ts';
import type { PermittedPage } from '../../store/store.ts';
import { Refused } from '../answers.ts';
import type { HttpParts } from '../parts.ts';
import { openedPours, type RecapMaterial } from './recap-text.ts';

const notHeld = 'This evening has not been held yet; its recap comes when it is finished.';
const notOver = 'The recap comes when the evening is finished; finish it in the room, then look back.';

/** Pages that are read before other evenings have their turn. */
const atOnce = 10;

/**
 * What the recap of an evening is made from. Only once it is over: while guests still write and choose, two recaps a
 * moment apart would tell what one of them did. Throws `Refused`.
 */
export async function recapMaterial(
  parts: HttpParts,
  tasting: TastingId,
  form: RecapMaterial['form'],
): Promise<RecapMaterial> {
  const session = finishedSession(parts, tasting);
  const { notebooks, sessions } = parts.store;
  // [Q1] What nobody has opened the talk for is not even read.
  const pours = openedPours(session);
  const pages: PermittedPage[] = [];
  for (const [index, seat] of Object.values(session.seats).entries()) {
    if (index % atOnce === atOnce - 1) await new Promise((resolve) => setImmediate(resolve));
    const answered = notebooks.readPermitted(tasting, pours, seat.id);
    pages.push(...answered.filter(({ permits }) => Object.keys(permits).length > 0));
  }
  return { form, session, planned: asPlanned(sessions.read(tasting)), pages };
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
