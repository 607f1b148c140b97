import { type Request, type Response, Router } from 'express';
import { seatId } from '../../core/ids.ts';
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

  const rowFor = async (typed: string, request: Request, response: Response): Promise<TastingRow> => {
    const address = request.ip ?? 'unknown';
    if (!(await guesses.turn(address))) throw new Refused('too-many-tries');
    const code = normaliseCode(typed);
    const row = code === undefined ? undefined : store.tastings.findByCode(code);
    if (row !== undefined) return row;
    const wait = guesses.failed(address);
    if (wait === undefined) throw new Refused('wrong-code');
    response.set('Retry-After', String(wait));
    throw new Refused('too-many-tries');
  };

  const conductorOf = ({ tasting }: TastingRow): Conductor => {
    const conductor = conductors.of(tasting);
    if (conductor === undefined) throw new Refused('no-such-tasting');
    return conductor;
  };

  router.get('/invitations/:code', async (request, response) => {
    const row = await rowFor(String(request.params.code), request, response);
    response.json(invitation(row, conductorOf(row).standing.session));
  });

  router.post('/seats', async (request, response) => {
    const { id, code, key, name, leftHanded, remote } = parsed(takeSeatSchema, request.body);
    const row = await rowFor(code, request, response);
    const { tasting } = row;
    const seat = seatId(chance.id());
    const ask = { type: 'TakeSeat', seat, name, leftHanded, remote } as const;
    const keyRow = { role: 'seat', seat, hash: hashOf(key), tasting, expiresAt: null } as const;
    const taken = await conductorOf(row).takeSeat(id, ask, keyRow);
    if (!taken.ok) throw new Refused(taken.code);
    response.status(taken.seat === seat ? 201 : 200).json({ tasting, seat: taken.seat } satisfies TakenSeat);
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
