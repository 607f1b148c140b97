import type { CueId, TastingId } from '../../core/ids.ts';
import type { BoardView } from '../../shared/wire/board.ts';
import type { Ledger } from './ledger.ts';

/** What the host of a rehearsal sees on looking up from the tablet. */
export interface Company {
  /** Pens down: every note that was written has been answered. */
  readonly settled: boolean;
  /** The boards on the phones of everybody who is connected. */
  readonly boards: readonly (BoardView | null)[];
}

/** What all stand-ins of one evening share. */
export interface Room {
  readonly origin: string;
  readonly tasting: TastingId;
  readonly code: string;
  readonly speed: number;
  /** How long the host looks up from the tablet before going on without somebody, in ms. */
  readonly patience: number;
  readonly ledger: Ledger;
  readonly roll: RollCall;
}

/**
 * Which guest saw which cue. Only a guest who was connected from before the host's tap until after the next one is
 * expected to have seen the cue in between.
 */
export class RollCall {
  readonly #here = new Set<string>();
  readonly #seen = new Set<string>();
  /** Ms from the host's tap to the arrival of the new stage at a device. */
  readonly arrivals: number[] = [];
  /** Ms from the moment set for everybody to the change on a screen; server and guests share this machine's clock. */
  readonly delays: number[] = [];
  #expected = new Set<string>();
  #cue: CueId | undefined;
  #tappedAt = 0;
  #arrived = new Set<string>();
  /** How many cues every expected guest has seen. */
  seenByAll = 0;

  /**
   * The share of changes that showed clearly before the moment set for everybody [F4]. A device whose clock is only
   * known through a slow line may err now and then; a room in which many do is not led together.
   */
  get tooEarly(): number {
    const early = this.delays.filter((delay) => delay < -30).length;
    return early === 0 ? 0 : early / this.delays.length;
  }

  /** The host's tap leads to this cue: everybody who is here now should come to see it. */
  tap(cue: CueId): void {
    this.#cue = cue;
    this.#tappedAt = performance.now();
    this.#expected = new Set(this.#here);
    this.#arrived.clear();
    this.#seen.clear();
  }
  /** Everybody who came in time has sat down, and should see where the room stands. */
  gather(): void {
    this.#expected = new Set(this.#here);
  }
  here(guest: string): void {
    this.#here.add(guest);
  }
  away(guest: string): void {
    this.#here.delete(guest);
    this.#expected.delete(guest);
  }
  isHere(guest: string): boolean {
    return this.#here.has(guest);
  }
  /** A stage with this cue has come over the wire. */
  arrives(guest: string, cue: string): void {
    if (cue !== this.#cue || this.#arrived.has(guest)) return;
    this.#arrived.add(guest);
    this.arrivals.push(performance.now() - this.#tappedAt);
  }
  /** The guest's screen shows it. */
  shows(guest: string, cue: CueId, delay: number | null): void {
    if (cue !== this.#cue || this.#seen.has(guest)) return;
    this.#seen.add(guest);
    if (delay !== null && this.#expected.has(guest)) this.delays.push(delay);
  }
  get everybodySees(): boolean {
    return this.missing.length === 0;
  }
  get missing(): string[] {
    return [...this.#expected].filter((guest) => !this.#seen.has(guest));
  }
  /** The host is about to leave the cue. */
  close(): void {
    if (this.everybodySees) this.seenByAll += 1;
  }
}
