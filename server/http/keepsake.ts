import { Router } from 'express';
import { reachedBy, servedTo } from '../../core/session/serving.ts';
import type { Finished, Seat, UnderWay } from '../../core/session/state.ts';
import { namedPour } from '../../core/session/views/pour-card.ts';
import type { Pour } from '../../core/tasting.ts';
import type { Keepsake, KeepsakePour } from '../../shared/wire/http.ts';
import { ownEntry } from '../live/notes.ts';
import type { StoredEntry } from '../store/store.ts';
import { Refused } from './answers.ts';
import { identityOf, tastingIn } from './asking.ts';
import type { HttpParts } from './parts.ts';

/** A guest's own notes with what may be known of the pours, at any time of the evening and after it. */
export function keepsakeRoutes({ store, keyring, conductors }: HttpParts): Router {
  const router = Router();
  router.get('/keepsake/:tasting', (request, response) => {
    const tasting = tastingIn(request);
    const identity = identityOf(request, keyring);
    if (identity.role !== 'seat') throw new Refused('wrong-role');
    if (identity.tasting !== tasting) throw new Refused('wrong-key');
    const session = conductors.of(tasting)?.standing.session;
    if (session === undefined) throw new Refused('no-such-tasting');
    const seat = session.status === 'unopened' ? undefined : session.seats[identity.seat];
    if (session.status === 'unopened' || seat === undefined) throw new Refused('no-such-seat');
    if (seat.presence !== 'seated' && seat.presence !== 'left') throw new Refused('not-seated');
    const { plan } = session;
    const { entries } = store.notebooks.read(tasting, seat.id);
    response.json({
      title: plan.title,
      place: plan.place,
      hostName: plan.hostName,
      startsAt: plan.startsAt ?? null,
      timeZone: plan.timeZone,
      guest: seat.name,
      pours: poursOf(session, seat, entries),
    } satisfies Keepsake);
  });
  return router;
}

/**
 * What stood in front of this seat, in the order in which it did, and whatever else it has notes of; a blind pour keeps
 * its code until it is revealed [Q4].
 */
function poursOf(session: UnderWay | Finished, seat: Seat, entries: readonly StoredEntry[]): KeepsakePour[] {
  const { plan } = session;
  const reached = reachedBy(session, seat.id);
  const served = servedTo(session, seat);
  const place = (pour: Pour) =>
    served.includes(pour.id) ? served.indexOf(pour.id) : plan.pours.indexOf(pour);
  return plan.pours
    .filter(({ id }) => reached.includes(id) || entries.some((entry) => entry.pour === id))
    .sort((a, b) => place(a) - place(b))
    .map((pour) => {
      const code = plan.codes[pour.id] ?? null;
      const known = !plan.blind || session.revealed.includes(pour.id);
      return {
        position: place(pour) + 1,
        pour: pour.id,
        facts: known ? namedPour(pour, code) : null,
        code,
        entries: entries.filter((entry) => entry.pour === pour.id).map(ownEntry),
      };
    });
}
