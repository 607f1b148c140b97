import { type Request, Router } from 'express';
import { z } from 'zod';
import { type SeatId, seatId, type TastingId } from '../../core/ids.ts';
import { durationMs, later } from '../../core/units.ts';
import type { IssuedKey } from '../../shared/wire/http.ts';
import { hashOf } from '../access/keys.ts';
import { asideOf, type KeyRole } from '../store/store.ts';
import { Refused } from './answers.ts';
import { hostedTasting, parsed } from './asking.ts';
import { addLink } from './devices.ts';
import type { HttpParts } from './parts.ts';

const replaces = z.boolean().optional();
const newKeyBody = z.discriminatedUnion('for', [
  z.strictObject({ for: z.enum(['host', 'helper']), replaces }),
  z.strictObject({ for: z.literal('seat'), seat: z.string().max(40).transform(seatId), replaces }),
]);

/** A second device's key outlives the evening, so that the keepsake can still be fetched with it. */
const issuedFor = durationMs(30 * 24 * 3600 * 1000);

/** Keys of a tasting: given to a second device, changed for a new one, and withdrawn. */
export function keyRoutes({ store, keyring, conductors, chance, clock }: HttpParts): Router {
  const router = Router();

  const hosted = (request: Request): TastingId => {
    const tasting = hostedTasting(request, keyring);
    if (store.tastings.find(tasting) === undefined) throw new Refused('no-such-tasting');
    return tasting;
  };

  const mustSit = (tasting: TastingId, seat: SeatId): void => {
    const session = conductors.of(tasting)?.standing.session;
    const seats = session === undefined || session.status === 'unopened' ? {} : session.seats;
    if (!Object.hasOwn(seats, seat)) throw new Refused('no-such-seat');
  };

  /** Devices that came in with a key hear of its end at once. */
  const withdraw = async (tasting: TastingId, which: KeyRole, spared?: string): Promise<void> => {
    if (which.role === 'seat') {
      const aside = store.devices
        .of(tasting, which.seat, clock.now())
        .filter(({ device }) => device?.opens === false);
      for (const { device } of aside)
        if (device) await store.notebooks.drop(tasting, asideOf(which.seat, device.id));
    }
    await store.keys.revoke(tasting, which, spared);
    conductors.of(tasting)?.publisher.dismissWithdrawn((hash) => keyring.stands(hash));
  };

  router.post('/tastings/:tasting/keys', async (request, response) => {
    const tasting = hosted(request);
    const wanted = parsed(newKeyBody, request.body);
    if (wanted.for === 'seat') mustSit(tasting, wanted.seat);
    const role: KeyRole = wanted.for === 'seat' ? { role: 'seat', seat: wanted.seat } : { role: wanted.for };
    const key = chance.key();
    const hash = hashOf(key);
    // What takes the place of the first key is as good as that one was.
    const expiresAt = wanted.replaces === true ? null : later(clock.now(), issuedFor);
    // The new one first: should the server fall in between, two keys are better than none.
    if (role.role === 'seat') {
      // Whoever makes a key knows it, so that it opens no notes, and never will [S4].
      const link = { tasting, seat: role.seat, hash, expiresAt, came: 'host', opens: false } as const;
      await addLink(store, { ...link, chance, clock });
      conductors.of(tasting)?.devicesChanged(role.seat);
    } else await store.keys.add({ ...role, hash, tasting, expiresAt });
    if (wanted.replaces === true) await withdraw(tasting, role, hash);
    response.status(201).json({ key, expiresAt } satisfies IssuedKey);
  });

  router.delete('/tastings/:tasting/keys/:role{/:seat}', async (request, response) => {
    const tasting = hosted(request);
    const { role, seat } = request.params;
    if (role === 'seat' && typeof seat === 'string') {
      mustSit(tasting, seatId(seat));
      await withdraw(tasting, { role, seat: seatId(seat) });
    } else if ((role === 'host' || role === 'helper') && seat === undefined) {
      await withdraw(tasting, { role });
    } else throw new Refused('unknown-event');
    response.status(204).end();
  });

  return router;
}
