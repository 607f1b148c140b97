import type { CommandId, SeatId } from '../../../core/ids.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import { hashOf, Keyring } from '../../../server/access/keys.ts';
import type { Clock } from '../../../server/clock.ts';
import { Conductors } from '../../../server/live/conductors.ts';
import { openGateway } from '../../../server/live/gateway.ts';
import type { Log } from '../../../server/log.ts';
import type { Store } from '../../../server/store/store.ts';
import { deviceId } from '../../../shared/wire/devices.ts';
import { clockAhead } from '../../support/clock-ahead.ts';
import type { VirtualTime } from '../virtual-time.ts';
import type { Disk, Power } from './disk.ts';
import { diskStore } from './disk-store.ts';
import { type ServerEnd, Switchboard } from './switchboard.ts';

export const hostKey = 'the-key-of-the-house-0123456789';
/** Where the server's clock stands when the simulation begins, in epoch ms. */
const beginning = 1_900_000_000_000;
const graces = { host: durationMs(30_000), seat: durationMs(15_000) };

export interface Life {
  readonly boot: number;
  /** By the server's own clock. */
  readonly bootedAt: number;
  readonly power: Power;
  readonly board: Switchboard;
  readonly conductors: Conductors;
}

/** What planted faults make of the parts of the server. */
export interface Bent {
  readonly store: (store: Store) => Store;
  readonly board: (board: Switchboard) => void;
}

/** A machine that runs the server, and on which it can be killed and started again over the same disk. */
export class House {
  readonly lives: Life[] = [];
  readonly disk: Disk;
  /** What went wrong and was logged, without the expected refusals of the disk. */
  readonly logged: string[] = [];
  readonly #time: VirtualTime;
  readonly #bent: Bent;
  #life: Life | undefined;

  constructor(time: VirtualTime, disk: Disk, bent: Bent) {
    this.#time = time;
    this.disk = disk;
    this.#bent = bent;
  }

  get life(): Life | undefined {
    return this.#life;
  }
  now = (): number => beginning + Math.floor(this.#time.now);

  start(): void {
    if (this.#life !== undefined) return;
    const power: Power = { on: true };
    const board = new Switchboard(power);
    const boot = this.lives.length + 1;
    const clock = this.#clock(power);
    const store = this.#bent.store(
      diskStore(this.disk, power, boot, this.now, () => [...board.connected].some(isHost)),
    );
    this.#bent.board(board);
    const { io } = board;
    const log = this.#log();
    const conductors = new Conductors({
      store,
      clock,
      io,
      log,
      graces,
      chance: { key: () => 'the-same-draw' },
      seatLimit: 200,
      sweepEvery: durationMs(300_000),
    });
    openGateway({
      io,
      lines: { heldBy: () => undefined },
      conductors,
      keyring: new Keyring(store, clock, hostKey),
      clock,
      log,
      metrics: { asked: () => undefined },
    });
    this.#life = { boot, bootedAt: this.now(), power, board, conductors };
    this.lives.push(this.#life);
  }

  /** As SIGKILL would: nothing more is done, said or written by this life. */
  kill(): void {
    const life = this.#life;
    if (life === undefined) return;
    this.#life = undefined;
    life.power.on = false;
    for (const end of [...life.board.connected]) end.dies();
  }

  /** What the page for a seat asks over HTTP. Undefined when nobody answers. */
  async takeSeat(id: CommandId, seat: SeatId, name: string, key: string, remote: boolean): Promise<boolean> {
    const conductor = this.#life?.conductors.of(this.disk.tasting);
    if (conductor === undefined) return false;
    const { tasting } = this.disk;
    const device = { id: deviceId(seat), came: 'door', at: epochMs(0), opens: true, own: true } as const;
    const row = { role: 'seat', seat, hash: hashOf(key), tasting, expiresAt: null, device } as const;
    const ask = { type: 'TakeSeat', seat, name, leftHanded: false, remote } as const;
    return (await conductor.takeSeat(id, ask, row)).ok;
  }

  #clock(power: Power): Clock {
    const clock: Clock = {
      now: () => epochMs(this.now()),
      notBefore: (moment) => clockAhead(clock, moment),
      at: (when, run) =>
        // A timer never rings before its time, nor within the last thousandth of it.
        this.#time.after(when - beginning - this.#time.now + 0.001, () => {
          if (power.on) run();
        }),
    };
    return clock;
  }

  #log(): Log {
    const keep = (_: unknown, what?: string): void => {
      if (what !== undefined && what !== 'not stored') this.logged.push(what);
    };
    return { error: keep, warn: keep, info: () => undefined, debug: () => undefined };
  }
}

export const isHost = (end: ServerEnd): boolean => end.data?.bearer.role === 'host';
