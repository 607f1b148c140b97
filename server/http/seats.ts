import { type Request, type Response, Router } from 'express';
import { type SeatId, seatId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import { takeSeatSchema } from '../../shared/wire/commands.ts';
import type { Invitation, TakenSeat } from '../../shared/wire/http.ts';
import { normaliseCode } from '../access/join-code.ts';
import { hashOf } from '../access/keys.ts';
import type { Conductor } from '../live/conductor.ts';
import type { TastingRow } from '../store/store.ts';
import { Refused } from './answers.ts';
import { parsed } from './asking.ts';
import type { HttpParts } from './parts.ts';

/** What somebody without a seat does: look at the invitation, and sit down. */
export function seatRoutes({ store, conductors, guesses, chance }: HttpParts): Router {
  const router = Router();

  const rowFor = (typed: string, request: Request, response: Response): TastingRow => {
    const code = normaliseCode(typed);
    const row = code === undefined ? undefined : store.tastings.findByCode(code);
    if (row !== undefined) return row;
    const wait = guesses.failed(request.ip ?? 'unknown');
    if (wait === undefined) throw new Refused('wrong-code');
    response.set('Retry-After', String(wait));
    throw new Refused('too-many-tries');
  };

  const conductorOf = ({ tasting }: TastingRow): Conductor => {
    const conductor = conductors.of(tasting);
    if (conductor === undefined) throw new Refused('no-such-tasting');
    return conductor;
  };

  router.get('/invitations/:code', (request, response) => {
    const row = rowFor(String(request.params.code), request, response);
    response.json(invitation(row, conductorOf(row).standing.session));
  });

  router.post('/seats', async (request, response) => {
    const { id, code, key, name, leftHanded, remote } = parsed(takeSeatSchema, request.body);
    const row = rowFor(code, request, response);
    const { tasting } = row;
    const hash = hashOf(key);
    /** The device made its key itself: asking again with it finds the seat that it already has. */
    const seatOfKey = (): SeatId | undefined => {
      const known = store.keys.find(hash);
      if (known === undefined) return undefined;
      if (known.role !== 'seat' || known.tasting !== tasting) throw new Refused('wrong-key');
      return known.seat;
    };
    const known = seatOfKey();
    if (known !== undefined) {
      response.json({ tasting, seat: known } satisfies TakenSeat);
      return;
    }
    const seat = seatId(chance.id());
    const ask = { type: 'TakeSeat', seat, name, leftHanded, remote } as const;
    const keyRow = { role: 'seat', seat, hash, tasting, expiresAt: null } as const;
    const ack = await conductorOf(row).takeSeat(id, ask, keyRow);
    // The same request twice at once: the store keeps the first one's key and refuses the second.
    const taken = ack.ok ? seat : seatOfKey();
    if (taken === undefined) throw new Refused(ack.ok ? 'not-stored' : ack.code);
    response.status(201).json({ tasting, seat: taken } satisfies TakenSeat);
  });

  return router;
}

function invitation({ tasting, plan }: TastingRow, session: Session): Invitation {
  const shown = session.status === 'unopened' ? plan : session.plan;
  return {
    tasting,
    title: shown.title,
    hostName: shown.hostName,
    place: shown.place,
    startsAt: shown.startsAt ?? null,
    timeZone: shown.timeZone,
    welcome: shown.welcome,
    drink: shown.drink,
    ...stageAndDoors(session),
  };
}

function stageAndDoors(session: Session): Pick<Invitation, 'stage' | 'doors'> {
  switch (session.status) {
    case 'unopened':
      return { stage: 'planned', doors: 'not-yet' };
    case 'under-way':
      return { stage: 'under-way', doors: session.doors };
    case 'finished':
      return { stage: 'finished', doors: 'closed' };
    default:
      return session satisfies never;
  }
}
