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
  readonly #opens: (socket: LiveSocket) => boolean;
  readonly #heard: (this: object) => void;
  /** By connection. */
  readonly #heardAt = new WeakMap<object, EpochMs>();

  /** @param opens whether this device has the notes of its seat by now */
  constructor(clock: Clock, opens: (socket: LiveSocket) => boolean) {
    const heardAt = this.#heardAt;
    this.#opens = opens;
    this.#heard = function (this: object) {
      heardAt.set(this, clock.now());
    };
  }

  /**
   * @param others the devices that the seat has
   * @returns the one of them that has to go, if there are too many now
   */
  arrived(socket: LiveSocket, others: readonly LiveSocket[]): LiveSocket | undefined {
    this.#heard.call(socket.conn);
    socket.conn.on('packet', this.#heard);
    const alike = others.filter((other) => this.#opens(other) === this.#opens(socket));
    const heardAt = ({ conn }: LiveSocket): number => this.#heardAt.get(conn) ?? 0;
    return alike.length < mostDevices ? undefined : alike.sort((a, b) => heardAt(a) - heardAt(b))[0];
  }
}
