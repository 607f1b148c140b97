import type { SeatId } from '../../core/ids.ts';
import type { Bearer } from './presence.ts';

/**
 * Whether the end of a log is missing [F7]. Nothing in what is left tells of it; what was acknowledged does: by the answers
 * that were stored beside it, and by devices that have seen a later version. A host's device is believed at once, guests'
 * when two seats say so, for one phone can say anything.
 */
export class LostEnd {
  readonly #stored: number;
  readonly #seats = new Map<SeatId, number>();
  #missing: number;

  /** @param acknowledged the newest version that a command was answered with */
  constructor(stored: number, acknowledged: number) {
    this.#stored = stored;
    this.#missing = Math.max(0, acknowledged - stored);
  }

  /** How many of the last versions were acknowledged and are not there. */
  get missing(): number {
    return this.#missing;
  }

  /**
   * A device comes and says what it knows.
   * @param version what the session has come to
   * @returns whether it knows more than there is
   */
  heard(bearer: Bearer, known: number, version: number): boolean {
    if (known <= version) return false;
    if (bearer.role === 'guest') this.#seats.set(bearer.seat, known);
    const second = [...this.#seats.values()].sort((a, b) => b - a)[1];
    const believed = bearer.role === 'host' ? known : (second ?? 0);
    this.#missing = Math.max(this.#missing, believed - this.#stored);
    return true;
  }
}
