import { Router } from 'express';
import { seatId } from '../../core/ids.ts';
import { minimumAge } from '../../core/planning/strength/legal-ages.ts';
import type { Session } from '../../core/session/state.ts';
import { namedPour } from '../../core/session/views/pour-card.ts';
import type { Plan } from '../../core/tasting.ts';
import { takeSeatSchema } from '../../shared/wire/commands.ts';
import { deviceId } from '../../shared/wire/devices.ts';
import type { Invitation, TakenSeat } from '../../shared/wire/http.ts';
import { addressOf } from '../access/address.ts';
import { Allowances } from '../access/allowances.ts';
import { callReach } from '../access/call-servers.ts';
import { hashOf } from '../access/keys.ts';
import type { Conductor } from '../live/conductor.ts';
import type { TastingRow } from '../store/store.ts';
import { Refused } from './answers.ts';
import { parsed } from './asking.ts';
import { HouseLimits } from './house-limits.ts';
import type { HttpParts } from './parts.ts';
import type { RowFor } from './row-for-code.ts';

/** What somebody without a seat does: look at the invitation, and sit down. */
export function seatRoutes(
  { store, conductors, chance, clock, callServers }: HttpParts,
  rowFor: RowFor,
): Router {
  const router = Router();
  // A whole table behind one router sits down at once; after that they come one by one.
  const newcomers = new Allowances(clock, { perSecond: 1 / 30, burst: conductors.seatLimit + 50 });

  const limits = new HouseLimits(store);

  const conductorOf = ({ tasting }: TastingRow): Conductor => {
    const conductor = conductors.of(tasting);
    if (conductor === undefined) throw new Refused('no-such-tasting');
    return conductor;
  };

  router.get('/invitations/:code', async (request, response) => {
    const row = await rowFor(String(request.params.code), request);
    const shown = invitation(row, conductorOf(row).standing.session);
    response.json({ ...shown, callReach: callReach(callServers) } satisfies Invitation);
  });

  router.post('/seats', async (request, response) => {
    const { id, code, key, name, leftHanded, remote } = parsed(takeSeatSchema, request.body);
    const row = await rowFor(code, request);
    const { tasting } = row;
    const seat = seatId(chance.id());
    const ask = { type: 'TakeSeat', seat, name, leftHanded, remote } as const;
    const device = {
      id: deviceId(chance.id()),
      came: 'door',
      at: clock.now(),
      opens: true,
      own: true,
    } as const;
    const keyRow = { role: 'seat', seat, hash: hashOf(key), tasting, expiresAt: null, device } as const;
    const from = `${tasting} ${addressOf(request)}`;
    if (!newcomers.take(from)) throw new Refused('too-fast');
    const taken = await conductorOf(row).takeSeat(id, ask, keyRow, await limits.seats(row.house));
    // Only a new seat counts, not who asks again for their own, nor before the doors open.
    if (!taken.ok || taken.seat !== seat) newcomers.giveBack(from);
    if (!taken.ok) throw new Refused(taken.code);
    response.status(taken.seat === seat ? 201 : 200).json({ tasting, seat: taken.seat } satisfies TakenSeat);
  });

  return router;
}

function invitation({ tasting, plan }: TastingRow, session: Session): Omit<Invitation, 'callReach'> {
  const shown = session.status === 'unopened' ? plan : session.plan;
  return {
    tasting,
    title: shown.title,
    hostName: shown.hostName,
    place: shown.place,
    startsAt: shown.startsAt ?? null,
    timeZone: shown.timeZone,
    welcome: shown.welcome,
    minimumAge: minimumAge(shown),
    callLink: shown.callLink ?? null,
    atHome: shown.remoteGuests > 0,
    pours: pourList(session, shown),
    drink: shown.drink,
    ...stageAndDoors(session),
  };
}

/**
 * The list that goes round before the evening. Blind pours are on no list [Q4], and once the doors are open each pour
 * comes with its glass [F1].
 */
const pourList = (session: Session, plan: Plan): Invitation['pours'] =>
  session.status === 'unopened' && !plan.blind ? plan.pours.map((pour) => namedPour(pour, null)) : null;

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
