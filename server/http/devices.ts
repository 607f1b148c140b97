import { Router } from 'express';
import { tastingId } from '../../core/ids.ts';
import { deviceId, joinSeatSchema } from '../../shared/wire/devices.ts';
import type { IssuedKey, TakenSeat } from '../../shared/wire/http.ts';
import { hashOf } from '../access/keys.ts';
import type { Chance } from '../chance.ts';
import { asks, numberOf } from '../live/device-desk.ts';
import type { KeyRow, Store } from '../store/store.ts';
import { Refused } from './answers.ts';
import { identityOf, parsed } from './asking.ts';
import type { HttpParts } from './parts.ts';

/** A phone, a tablet, a laptop, and two to spare. */
const mostDevices = 5;
/** The oldest gives way. */
const mostLinks = 3;

/** How a further device comes to a seat; whether it gets the notes is decided on the seat's devices [S4]. */
export function deviceRoutes({ store, keyring, conductors, chance, clock }: HttpParts): Router {
  const router = Router();

  /** A link becomes a device, with a key that it made itself: whoever gave the link does not know it. */
  router.post('/devices', async (request, response) => {
    const { tasting: named, link, key } = parsed(joinSeatSchema, request.body);
    const tasting = tastingId(named);
    const hash = hashOf(key);
    const known = keyring.identify(key);
    if (known !== undefined) {
      // Its answer was lost on the way.
      if (known.role !== 'seat' || known.tasting !== tasting) throw new Refused('wrong-key');
      response.json({ tasting, seat: known.seat } satisfies TakenSeat);
      return;
    }
    const from = keyring.identify(link);
    if (from?.role !== 'seat' || from.tasting !== tasting || from.device === undefined)
      throw new Refused('wrong-key');
    const { seat, device: linked } = from;
    const conductor = conductors.of(tasting);
    if (conductor === undefined) throw new Refused('no-such-tasting');
    const { session } = conductor.standing;
    const presence = session.status === 'unopened' ? undefined : session.seats[seat]?.presence;
    if (presence === undefined) throw new Refused('no-such-seat');
    if (presence === 'removed') throw new Refused('not-seated');
    const others = store.devices.of(tasting, seat, clock.now());
    // Those without the notes do not keep out whom the guest brings.
    const alike = others.filter(({ device }) => device?.own === true && device.opens === linked.opens);
    if (alike.length >= mostDevices) throw new Refused('too-many-devices');
    if (!linked.opens && linked.own) throw new Refused('wrong-key');
    const device = {
      id: linked.opens ? freeId(chance, others) : linked.id,
      came: linked.opens ? 'link' : linked.came,
      at: clock.now(),
      opens: linked.opens,
      own: true,
    } as const;
    const row: KeyRow = { role: 'seat', seat, hash, tasting, expiresAt: null, device };
    // A guest's own link can be used again, and each who comes by it is told of; the host's is good for one.
    if (linked.opens) await store.keys.add(row);
    else if (!(await store.devices.exchange(from.hash, row))) throw new Refused('wrong-key');
    conductor.devicesChanged(seat);
    response.status(201).json({ tasting, seat } satisfies TakenSeat);
  });

  /** A device that has the notes makes a link for another: it carries the guest's consent. */
  router.post('/devices/links', async (request, response) => {
    const by = identityOf(request, keyring);
    if (by.role !== 'seat') throw new Refused('wrong-role');
    if (by.device?.opens !== true) throw new Refused('notes-closed');
    const { tasting, seat } = by;
    const key = chance.key();
    await addLink(store, {
      seat,
      tasting,
      hash: hashOf(key),
      came: 'link',
      expiresAt: null,
      opens: true,
      chance,
      clock,
    });
    conductors.of(tasting)?.devicesChanged(seat);
    response.status(201).json({ key, expiresAt: null } satisfies IssuedKey);
  });

  return router;
}

interface NewLink extends Pick<HttpParts, 'chance' | 'clock'> {
  readonly seat: Extract<KeyRow, { role: 'seat' }>['seat'];
  readonly tasting: KeyRow['tasting'];
  readonly hash: string;
  readonly came: 'link' | 'host';
  readonly expiresAt: KeyRow['expiresAt'];
  /** Whether who comes by it has the notes at once. */
  readonly opens: boolean;
}

/** Of a host there is one link for a seat at a time; of the guest's own there are a few. */
export async function addLink(store: Store, link: NewLink): Promise<void> {
  const { tasting, seat, hash, came, expiresAt, opens, chance, clock } = link;
  const others = store.devices.of(tasting, seat, clock.now());
  const links = others.filter((each) => each.device?.own === false && each.device.came === came);
  const most = came === 'host' ? 1 : mostLinks;
  for (const surplus of links.slice(0, Math.max(0, links.length - most + 1)))
    await store.devices.end(tasting, surplus.hash);
  const device = { id: freeId(chance, others), came, at: clock.now(), opens, own: false };
  await store.keys.add({ role: 'seat', seat, hash, tasting, expiresAt, device });
}

/** No two that ask at the same time show the same number. */
function freeId(chance: Pick<Chance, 'id'>, others: readonly KeyRow[]) {
  const taken = others.flatMap(({ device }) =>
    device === undefined || !(asks(device) || !device.own) ? [] : [numberOf(device.id)],
  );
  for (let tries = 0; tries < 200; tries += 1) {
    const id = deviceId(chance.id());
    if (!taken.includes(numberOf(id))) return id;
  }
  return deviceId(chance.id());
}
