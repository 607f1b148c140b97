import { type DurationMs, durationMs, later } from '../../core/units.ts';
import {
  changeBetween,
  type Parts,
  type PartsChange,
  type PutPart,
  withChange,
} from '../../shared/wire/parts.ts';
import type { Cancel, Clock } from '../clock.ts';
import type { LiveServer, LiveSocket } from './rooms.ts';

/** What one slice holds at most, in characters of JSON: less than a busy Wi-Fi carries to a phone in one beat. */
const sliceSize = 64_000;
/** Between two slices. In the meantime every other evening has its turn. */
const beat: DurationMs = durationMs(100);

const fewest = 16;

/** Devices that have been sent the same. */
interface Group {
  readonly room: string;
  readonly sockets: Set<LiveSocket>;
  sent: Parts<unknown>;
  begun: boolean;
  /** With more than this, those that have gone are looked for: nothing else lets them go while nothing is told. */
  most: number;
}

export interface PartsDeliveryOptions<Part> {
  readonly io: LiveServer;
  readonly clock: Clock;
  /** Rooms of devices get names that begin like this. */
  readonly name: string;
  /** The parts as they ought to be shown now. */
  readonly parts: () => Parts<Part>;
  readonly send: (
    to: LiveSocket | ReturnType<LiveServer['to']>,
    change: PartsChange<Part>,
    anew: boolean,
  ) => void;
}

/**
 * Keeps devices level with a view in parts. Whoever joins is sent all of it, in slices when it is large; from then on
 * what changed, encoded once for all. What is taken away goes before everything else. A device whose line does not keep
 * up is left out until it has, and is then sent what is so, not all that has been.
 */
export class PartsDelivery<Part> {
  readonly #options: PartsDeliveryOptions<Part>;
  readonly #level: Group;
  /** Those that are on their way to being level. */
  #catchingUp: Group[] = [];
  #rooms = 0;
  #next: Cancel | undefined;

  constructor(options: PartsDeliveryOptions<Part>) {
    this.#options = options;
    this.#level = this.#group([], options.parts(), true);
  }

  /** Small views are there at once; who asks for a large one at the same time as others shares their slices. */
  welcome(sockets: readonly LiveSocket[]): void {
    const waiting = this.#catchingUp.find(({ begun }) => !begun);
    if (waiting !== undefined) {
      this.#add(sockets, waiting);
      return;
    }
    const { parts, send } = this.#options;
    const { put } = changeBetween<Part>(new Map(), parts());
    const [socket, ...more] = sockets;
    // One that comes by itself, as each of a crowd does, needs no room of its own to be sent what all others have.
    if (socket !== undefined && more.length === 0 && firstOf(put).length === put.length && this.#isLevel()) {
      send(socket, { gone: [], put }, true);
      this.#add(sockets, this.#level);
      return;
    }
    const group = this.#group(sockets, new Map(), false);
    this.#catchingUp = [...this.#catchingUp, group];
    if (sizeOf([...parts()]) > sliceSize) this.#again();
    else this.#bring(group);
  }

  /** The parts have changed: to all that were level goes what fits into a slice, to the others what is taken away. */
  deliver(): void {
    this.stop();
    this.#bring(this.#level, true);
    for (const group of this.#catchingUp) this.#bring(group);
  }

  stop(): void {
    this.#next?.();
    this.#next = undefined;
  }

  #beat(): void {
    this.#next = undefined;
    this.#bring(this.#level);
    for (const group of this.#catchingUp) this.#bring(group);
  }

  #bring(group: Group, atOnce = !group.begun): void {
    for (const socket of group.sockets) if (!socket.connected) group.sockets.delete(socket);
    if (group.sockets.size === 0 && group !== this.#level) {
      this.#dissolve(group);
      return;
    }
    const parts = this.#options.parts();
    const change = changeBetween(group.sent as Parts<Part>, parts);
    if (!atOnce && change.put.length > 0) this.#partFromSlow(group);
    const slice = { gone: change.gone, put: atOnce || keepsUp(group) ? firstOf(change.put) : [] };
    if (slice.gone.length > 0 || slice.put.length > 0 || !group.begun) {
      const anew = !group.begun || parts.size === 0;
      const to = this.#options.io.to(group.room);
      // Of what begins anew nothing has to be named that is gone.
      if (group.sockets.size > 0) this.#options.send(to, anew ? { gone: [], put: slice.put } : slice, anew);
      group.sent = withChange(group.sent as Parts<Part>, slice);
      group.begun = true;
    }
    if (slice.put.length < change.put.length) this.#again();
    else if (group !== this.#level) {
      if (this.#isLevel()) this.#dissolve(group);
      else this.#again();
    }
  }

  /** Those whose line still holds what was sent before go on by themselves, each at its own pace. */
  #partFromSlow(group: Group): void {
    if (group.sockets.size < 2) return;
    for (const socket of group.sockets) {
      if (isFree(socket)) continue;
      group.sockets.delete(socket);
      void socket.leave(group.room);
      this.#catchingUp = [...this.#catchingUp, this.#group([socket], group.sent, group.begun)];
      this.#again();
    }
  }

  #isLevel(): boolean {
    const { gone, put } = changeBetween(this.#level.sent as Parts<Part>, this.#options.parts());
    return gone.length === 0 && put.length === 0;
  }

  /** Level now, or gone. */
  #dissolve(group: Group): void {
    this.#catchingUp = this.#catchingUp.filter((each) => each !== group);
    for (const socket of group.sockets) void socket.leave(group.room);
    this.#add([...group.sockets], this.#level);
  }

  #group(sockets: readonly LiveSocket[], sent: Parts<unknown>, begun: boolean): Group {
    this.#rooms += 1;
    const group = {
      room: `${this.#options.name}/${this.#rooms}`,
      sockets: new Set<LiveSocket>(),
      sent,
      begun,
      most: fewest,
    };
    this.#add(sockets, group);
    return group;
  }

  #add(sockets: readonly LiveSocket[], group: Group): void {
    for (const socket of sockets) {
      group.sockets.add(socket);
      void socket.join(group.room);
    }
    if (group.sockets.size <= group.most) return;
    for (const socket of group.sockets) if (!socket.connected) group.sockets.delete(socket);
    group.most = fewest + Math.ceil(1.25 * group.sockets.size);
  }

  #again(): void {
    const { clock } = this.#options;
    this.#next ??= clock.at(later(clock.now(), beat), () => this.#beat());
  }
}

/** Nothing that was sent before still waits for the line. */
const isFree = (socket: LiveSocket): boolean => socket.conn.transport.writable;

const keepsUp = ({ sockets }: Group): boolean => sockets.size !== 1 || [...sockets].every(isFree);

const sizeOf = (value: unknown): number => JSON.stringify(value).length;

/** As many as fit into a slice, and one at least. */
function firstOf<Part>(put: readonly PutPart<Part>[]): readonly PutPart<Part>[] {
  let size = 0;
  const end = put.findIndex((each, index) => {
    size += sizeOf(each);
    return index > 0 && size > sliceSize;
  });
  return end < 0 ? put : put.slice(0, end);
}
