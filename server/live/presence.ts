import type { SeatId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import { type DurationMs, type EpochMs, epochMs, later } from '../../core/units.ts';
import type { PresenceView, ProbeRequest } from '../../shared/wire/protocol.ts';
import type { Cancel, Clock } from '../clock.ts';

export type Bearer =
  | { readonly role: 'host' }
  | { readonly role: 'guest'; readonly seat: SeatId }
  | { readonly role: 'helper' }
  /** `preview`: the small picture of it on a host's device, which is no screen of the room. */
  | { readonly role: 'screen'; readonly preview: boolean };

export interface Graces {
  /** A host's device that has been gone for this long is gone [P8]. */
  readonly host: DurationMs;
  /** A seat counts as present for this long after its last device was seen: a phone that changes cells, and a whole
   * room that comes back after a restart, must not make the rest look like everybody [P3, P7]. */
  readonly seat: DurationMs;
}

export interface PresenceWatch {
  /** What the host's page shows has changed. */
  shown(): void;
  /** Who counts for the pace of the room has changed. */
  counted(): void;
  hostGone(): void;
}

interface Device {
  readonly bearer: Bearer;
  roundTrip: number | null;
  /** Ms that a message may take to it. */
  reach: number | null;
}

/** Who is connected to one session. Not in the log: after a restart everybody counts as just lost. */
export class Presence {
  readonly #clock: Clock;
  readonly #graces: Graces;
  readonly #watch: PresenceWatch;
  readonly #devices = new Map<string, Device>();
  readonly #devicesOfSeat = new Map<SeatId, Set<Device>>();
  readonly #counted: Set<SeatId>;
  readonly #leftAt = new Map<SeatId, EpochMs>();
  /** Of every seat that was ever there, with those that were before this watch began. */
  readonly #lastHere: Map<SeatId, EpochMs>;
  /** Of whom was here before nothing is known. */
  readonly #watchedSince: EpochMs;
  readonly #leaving = new Map<SeatId | 'host', Cancel>();
  #hosts = 0;
  #hostPresent = true;
  #stopped = false;

  constructor(clock: Clock, graces: Graces, seats: readonly SeatId[], watch: PresenceWatch) {
    this.#clock = clock;
    this.#graces = graces;
    this.#watch = watch;
    this.#watchedSince = clock.now();
    this.#counted = new Set(seats);
    this.#lastHere = new Map(seats.map((seat) => [seat, this.#watchedSince]));
    for (const seat of seats) this.#letGo(seat);
    this.#letHostGo();
  }

  get present(): ReadonlySet<SeatId> {
    return this.#counted;
  }

  get hostPresent(): boolean {
    return this.#hostPresent;
  }

  get empty(): boolean {
    return this.#devices.size === 0;
  }

  seatIsConnected(seat: SeatId): boolean {
    return this.#devicesOfSeat.has(seat);
  }

  /** Since when nobody is there, as far as this watch knows; `cameEver` too for whoever may have been here before it. */
  whereabouts(seat: SeatId, takenAt: EpochMs) {
    const here = this.#devicesOfSeat.has(seat);
    const leftAt = this.#leftAt.get(seat);
    const since = leftAt ?? epochMs(Math.max(takenAt, this.#watchedSince));
    return { here, since, cameEver: leftAt !== undefined || takenAt < this.#watchedSince };
  }

  connectedSeats(): IterableIterator<SeatId> {
    return this.#devicesOfSeat.keys();
  }

  /** One for each device that has measured its own, in ms. */
  reaches(): number[] {
    const measured: number[] = [];
    for (const { reach } of this.#devices.values()) if (reach !== null) measured.push(reach);
    return measured;
  }

  arrived(id: string, bearer: Bearer): void {
    const device: Device = { bearer, roundTrip: null, reach: null };
    this.#devices.set(id, device);
    if (bearer.role === 'host') {
      this.#hosts += 1;
      this.#hostPresent = true;
      this.#keep('host');
    }
    if (bearer.role === 'guest') {
      const { seat } = bearer;
      this.#devicesOfSeat.set(seat, (this.#devicesOfSeat.get(seat) ?? new Set()).add(device));
      this.#keep(seat);
      if (!this.#counted.has(seat)) {
        this.#counted.add(seat);
        this.#watch.counted();
      }
    }
    this.#watch.shown();
  }

  left(id: string): void {
    const device = this.#devices.get(id);
    if (device === undefined) return;
    this.#devices.delete(id);
    const { bearer } = device;
    if (bearer.role === 'host') {
      this.#hosts -= 1;
      if (this.#hosts === 0) this.#letHostGo();
    }
    if (bearer.role === 'guest') {
      const others = this.#devicesOfSeat.get(bearer.seat);
      others?.delete(device);
      if (others?.size === 0) {
        this.#devicesOfSeat.delete(bearer.seat);
        this.#leftAt.set(bearer.seat, this.#clock.now());
        this.#lastHere.set(bearer.seat, this.#clock.now());
        this.#letGo(bearer.seat);
      }
    }
    this.#watch.shown();
  }

  measured(id: string, { roundTrip, reach }: ProbeRequest): void {
    const device = this.#devices.get(id);
    if (device === undefined) return;
    // A page of before says nothing of its reach: half a round trip is the least that it can be.
    device.reach = reach ?? (roundTrip === null ? null : roundTrip / 2);
    if (roundTrip === null || device.roundTrip === roundTrip) return;
    device.roundTrip = roundTrip;
    if (device.bearer.role === 'guest') this.#watch.shown();
  }

  view(): Omit<PresenceView, 'screensAsking'> {
    const seats = [...this.#devicesOfSeat].map(([seat, devices]) => ({ seat, roundTrip: best(devices) }));
    const forRoom = ({ bearer }: Device) => bearer.role === 'screen' && !bearer.preview;
    const screens = [...this.#devices.values()].filter(forRoom).length;
    const away = [...this.#lastHere]
      .filter(([seat]) => !this.#devicesOfSeat.has(seat))
      .map(([seat, since]) => ({ seat, since }));
    return { hosts: this.#hosts, seats, away, screens };
  }

  /** From now on nobody is missed any more. */
  stop(): void {
    this.#stopped = true;
    for (const cancel of this.#leaving.values()) cancel();
    this.#leaving.clear();
  }

  #keep(who: SeatId | 'host'): void {
    this.#leaving.get(who)?.();
    this.#leaving.delete(who);
  }

  #letGo(seat: SeatId): void {
    this.#after(seat, this.#graces.seat, () => {
      this.#counted.delete(seat);
      this.#watch.counted();
    });
  }

  #letHostGo(): void {
    this.#after('host', this.#graces.host, () => {
      this.#hostPresent = false;
      this.#watch.hostGone();
    });
  }

  #after(who: SeatId | 'host', grace: DurationMs, gone: () => void): void {
    if (this.#stopped) return;
    const cancel = this.#clock.at(later(this.#clock.now(), grace), () => {
      this.#leaving.delete(who);
      gone();
    });
    this.#leaving.set(who, cancel);
  }
}

function best(devices: ReadonlySet<Device>): number | null {
  const measured = [...devices].flatMap(({ roundTrip }) => (roundTrip === null ? [] : [roundTrip]));
  return measured.length === 0 ? null : Math.min(...measured);
}

export const seatedIn = (session: Session): SeatId[] =>
  session.status === 'unopened' ? [] : Object.values(session.seats).map((seat) => seat.id);
