import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Store } from '../../../server/store/store.ts';
import type { CreatedTasting } from '../../../shared/wire/http.ts';
import { credentials, type Device } from '../../server/support/device.ts';
import { House, houseKey } from '../../server/support/house.ts';
import { ManualClock } from '../../server/support/manual-clock.ts';
import { temporaryFolder } from '../../server/support/process.ts';
import { memoryStore } from '../../support/memory-store.ts';

/** What must not be reached by any path. */
export const outsideThePages = 'this-file-lies-outside-the-pages';

/**
 * Three tastings at one house. Nothing may happen to the first; in the second only the attacker's own seat may change;
 * the third is the attacker's own, as a host.
 */
export interface Scene {
  readonly house: House;
  readonly clock: ManualClock;
  readonly quiet: CreatedTasting;
  readonly joined: CreatedTasting;
  readonly own: CreatedTasting;
  readonly seats: readonly string[];
  /** Of somebody who was asked to leave. */
  readonly removedKey: string;
  /** Whatever the attacker must not be able to change, as text. */
  untouchable(): Promise<string>;
  /** A new guest of the second tasting. */
  attacker(): Promise<Device>;
  hostOfOwn(): Promise<Device>;
  close(): Promise<void>;
}

export async function openScene(): Promise<Scene> {
  const folder = temporaryFolder();
  const pages = join(folder.path, 'pages');
  for (const app of ['guest', 'host']) {
    mkdirSync(join(pages, app, 'assets'), { recursive: true });
    mkdirSync(join(pages, app, 'en'));
    for (const page of ['index.html', 'device-check.html'])
      writeFileSync(join(pages, app, 'en', page), '<!doctype html><title>page</title>');
  }
  for (const place of [folder.path, pages]) writeFileSync(join(place, 'house.key'), outsideThePages);
  const clock = new ManualClock();
  const store = memoryStore();
  const house = await House.open({ clock, store, pages, seatLimit: 1000 });
  const { made: quiet, host, noor } = await house.evening();
  await host.host({ type: 'JumpTo', cue: 'one/first/look' });
  await noor.save({ value: 'kept' });
  const { made: joined, host: hostOfJoined, noor: bystander, tomas } = await house.evening();
  await hostOfJoined.host({ type: 'JumpTo', cue: 'one/first/look' });
  await bystander.save({ value: 'kept' });
  await hostOfJoined.host({ type: 'RemoveSeat', seat: tomas.seat });
  const { made: own } = await house.evening();
  const innocent = new Set<string>([bystander.seat, tomas.seat]);

  return {
    house,
    clock,
    quiet,
    joined,
    own,
    seats: [bystander.seat, noor.seat],
    removedKey: tomas.key,
    untouchable: async () =>
      JSON.stringify([await everything(store, quiet), withoutAttacker(store, joined, innocent)]),
    attacker: () => house.guest(joined, 'Mallory'),
    hostOfOwn: () => house.enter(credentials('host', own.tasting, own.hostKey)),
    async close() {
      await house.close();
      folder.remove();
    },
  };
}

async function everything(store: Store, { tasting }: CreatedTasting): Promise<unknown> {
  const events = store.sessions.read(tasting);
  const seats = events.flatMap((event) => (event.type === 'SeatTaken' ? [event.seat.id] : []));
  return {
    row: store.tastings.find(tasting),
    events,
    notebooks: seats.map((seat) => store.notebooks.read(tasting, seat)),
    pouring: store.documents.read(tasting, 'pouring'),
    tastings: (await store.tastings.list()).length,
  };
}

function withoutAttacker(store: Store, made: CreatedTasting, innocent: ReadonlySet<string>): unknown {
  const { tasting } = made;
  const seatOf = (event: object): string | undefined => {
    const seat = 'seat' in event ? event.seat : undefined;
    return typeof seat === 'object' && seat !== null && 'id' in seat ? String(seat.id) : seat?.toString();
  };
  const events = store.sessions.read(tasting).filter((event) => {
    const seat = seatOf(event);
    return seat === undefined || innocent.has(seat);
  });
  return {
    row: store.tastings.find(tasting),
    events,
    notebooks: [...innocent].map((seat) => store.notebooks.read(tasting, seat as never)),
    pouring: store.documents.read(tasting, 'pouring'),
    keys: store.keys.find(houseKey) ?? null,
  };
}
