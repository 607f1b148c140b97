import type { EpochMs } from '../../core/units.ts';
import type { Clock } from '../clock.ts';
import type { LiveSocket } from './rooms.ts';

/** A phone, a tablet, a laptop, and two to spare. */
const mostDevices = 5;

/**
 * The devices of each seat. The newest always comes in, for it is in somebody's hand, and the one that was silent for
 * longest goes: every live one answers a ping each ten seconds, so that what a phone left behind in a lift goes first.
 * Those that have the seat's notes and those that have not been let in are counted apart: whoever was given a link by
 * somebody else never takes the line of the guest's own phone [S4].
 */
export class SeatDevices {
  readonly #clock: Clock;
  readonly #opens: (socket: LiveSocket) => boolean;
  readonly #heardAt = new Map<string, Map<LiveSocket, EpochMs>>();

  /** @param opens whether this device has the notes of its seat by now */
  constructor(clock: Clock, opens: (socket: LiveSocket) => boolean) {
    this.#clock = clock;
    this.#opens = opens;
  }

  /** @returns the device that has to go, if there are too many now */
  arrived(seat: string, socket: LiveSocket): LiveSocket | undefined {
    const devices = this.#heardAt.get(seat) ?? new Map<LiveSocket, EpochMs>();
    this.#heardAt.set(seat, devices);
    const alike = [...devices].filter(([other]) => this.#opens(other) === this.#opens(socket));
    const silent = alike.length < mostDevices ? undefined : alike.sort(([, a], [, b]) => a - b)[0]?.[0];
    if (silent !== undefined) devices.delete(silent);
    devices.set(socket, this.#clock.now());
    socket.conn.on('packet', () => {
      if (devices.has(socket)) devices.set(socket, this.#clock.now());
    });
    return silent;
  }

  left(seat: string, socket: LiveSocket): void {
    const devices = this.#heardAt.get(seat);
    devices?.delete(socket);
    if (devices?.size === 0) this.#heardAt.delete(seat);
  }
}
