import { type CommandId, commandId, cueId, type SeatId, seatId, tastingId } from '../../../core/ids.ts';
import type { GuestCommand } from '../../../core/session/sent-command.ts';
import { durationMs } from '../../../core/units.ts';
import { Conductor } from '../../../server/live/conductor.ts';
import type { KeyRow, Store } from '../../../server/store/store.ts';
import type { SentHostCommand } from '../../../shared/wire/commands.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { listeningLog } from './house.ts';
import { ManualClock } from './manual-clock.ts';
import { type Overheard, overheardServer } from './overheard.ts';
import { aPlan } from './plans.ts';

export const tasting = tastingId('harvest');
export const noor = seatId('noor');
export const tomas = seatId('tomas');

export const keyOf = (seat: string, of = tasting): KeyRow => ({
  hash: `hash of ${seat}`,
  tasting: of,
  role: 'seat',
  seat: seatId(seat),
  expiresAt: null,
});

/** One conductor with a store in memory and a clock of its own, and no socket: what it says is overheard. */
export class OneConductor {
  readonly clock = new ManualClock();
  readonly store: Store = memoryStore();
  readonly log = listeningLog();
  readonly faults: unknown[] = [];
  readonly #live = overheardServer();
  #conductor: Conductor | undefined;
  #ids = 0;

  static async open(): Promise<OneConductor> {
    const one = new OneConductor();
    await one.create(tasting, 'ABC234');
    one.again();
    return one;
  }

  async close(): Promise<void> {
    this.#conductor?.stop();
    await this.store.close();
  }

  get conductor(): Conductor {
    if (this.#conductor === undefined) throw new Error('Open it first.');
    return this.#conductor;
  }
  get said(): Overheard[] {
    return this.#live.said;
  }
  get underWay() {
    const { session } = this.conductor.standing;
    if (session.status !== 'under-way') throw new Error(`The session is ${session.status}.`);
    return session;
  }

  create(id: typeof tasting, code: string): Promise<void> {
    const createdAt = this.clock.now();
    return this.store.tastings.create({ tasting: id, code, plan: aPlan(), revision: 1, createdAt });
  }

  working({ store = this.store, seatLimit = 10, of = tasting } = {}): Conductor {
    const graces = { host: durationMs(30_000), seat: durationMs(15_000) };
    const { clock, log } = this;
    return new Conductor({
      tasting: of,
      store,
      clock,
      io: this.#live.io,
      log,
      graces,
      chance: { key: () => 'the-same-draw' },
      seatLimit,
      onFault: (error) => this.faults.push(error),
    });
  }

  /** The server is started again. */
  again(changed: { store?: Store; seatLimit?: number } = {}): void {
    this.#conductor?.stop();
    this.#conductor = this.working(changed);
  }

  anId(): CommandId {
    this.#ids += 1;
    return commandId(`command-${this.#ids}`);
  }
  host(ask: SentHostCommand, id = this.anId()) {
    return this.conductor.askAsHost(id, ask);
  }
  openDoors() {
    return this.host({ type: 'OpenDoors' });
  }
  goTo(cue: string) {
    return this.host({ type: 'JumpTo', cue: cueId(cue) });
  }
  guest(seat: SeatId, ask: GuestCommand, id = this.anId()) {
    return this.conductor.askAsGuest(seat, id, ask);
  }
  sit(seat: string, id = this.anId(), key = keyOf(seat)) {
    const ask = {
      type: 'TakeSeat',
      seat: seatId(seat),
      name: seat,
      leftHanded: false,
      remote: false,
    } as const;
    return this.conductor.takeSeat(id, ask, key);
  }
}
