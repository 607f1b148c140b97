import { type CommandId, commandId, type SeatId } from '../../../core/ids.ts';
import type { FollowerSocket } from '../../../shared/follower/line.ts';
import type { NoteKeep } from '../../../shared/follower/notebook.ts';
import type { LocalClock } from '../../../shared/follower/server-clock.ts';
import type { Credentials } from '../../../shared/wire/protocol.ts';
import type { Chances } from '../chances.ts';
import type { VirtualTime } from '../virtual-time.ts';
import { ClientEnd } from './client-end.ts';
import type { History } from './history.ts';
import type { House } from './house.ts';
import type { Weather } from './wire.ts';

/** Everything that the devices of one evening share. */
export interface Room {
  readonly time: VirtualTime;
  readonly chances: Chances;
  readonly house: House;
  readonly history: History;
  readonly planted: Planted;
  readonly newId: () => CommandId;
  readonly wild: boolean;
}

/** Faults that a test plants on purpose, to see that they are found. */
export interface Planted {
  /** What is acknowledged and published is not on disk yet. */
  readonly hastyStore?: boolean;
  readonly forgetsAnswers?: boolean;
  /** A follower that shows whatever comes. */
  readonly goesBack?: boolean;
  /** Devices claim to have seen what they have not, so that nothing is merged. */
  readonly neverMerges?: boolean;
  /** The server sends a guest's notebook to the host too. */
  readonly leaks?: boolean;
}

/** One life of a page: what it planned dies with it. */
export interface Page {
  readonly name: string;
  readonly after: (ms: number, run: () => void) => () => void;
  readonly local: LocalClock;
  readonly keep: NoteKeep;
  readonly open: (credentials: Credentials) => FollowerSocket;
  end(): void;
}

/** A phone or a tablet: its clocks, its network and its memory outlive its pages. */
export class Device {
  readonly name: string;
  readonly seat: SeatId | undefined;
  readonly weather: Weather;
  readonly #room: Room;
  readonly #begun: number;
  readonly #rate: number;
  readonly #wrong: number;
  #kept: string | null = null;
  #pages = 0;

  constructor(room: Room, name: string, seat?: SeatId) {
    const { chances } = room;
    this.#room = room;
    this.name = name;
    this.seat = seat;
    this.weather = { delay: chances.oneOf([1, 5, 15, 70]), cut: false, wild: room.wild };
    this.#begun = chances.between(0, 1e6);
    this.#rate = 1 + chances.between(-50e-6, 50e-6);
    this.#wrong = chances.happens(0.3) ? chances.between(-600_000, 600_000) : 0;
  }

  open(): Page {
    const { time, chances, house, history, planted } = this.#room;
    this.#pages += 1;
    const name = `${this.name}#${this.#pages}`;
    let alive = true;
    const steady = (): number => this.#begun + time.now * this.#rate;
    return {
      name,
      after: (ms, run) =>
        time.after(ms / this.#rate, () => {
          if (alive) run();
        }),
      local: { steady, wall: () => 1_900_000_000_000 + this.#wrong + time.now },
      keep: {
        read: () => this.#kept,
        write: (text) => {
          if (alive) this.#kept = text;
          return true;
        },
      },
      open: (credentials) =>
        new ClientEnd(
          {
            time,
            chances,
            weather: this.weather,
            server: () => house.life?.board,
            onView: (event, payload) => history.hears(name, this.seat, event, payload),
            onAnswer: (event, payload, answer) => history.answered(name, this.seat, event, payload, answer),
            onRequest: planted.neverMerges ? claimsToHaveSeenAll : undefined,
          },
          { ...credentials },
        ).socket,
      end: () => {
        alive = false;
      },
    };
  }
}

const claimsToHaveSeenAll = (event: string, payload: unknown): unknown =>
  event === 'note:save' ? { ...(payload as object), base: 1_000_000 } : payload;

export const idsFrom = (seed: number): (() => CommandId) => {
  let count = 0;
  return () => {
    count += 1;
    return commandId(`asked-${seed}-${count}`);
  };
};
