import { type DurationMs, durationMs, type EpochMs, later } from '../../core/units.ts';
import type { WaitingScreen } from '../../shared/wire/protocol.ts';
import type { Chance } from '../chance.ts';
import type { Cancel, Clock } from '../clock.ts';

interface Asking extends WaitingScreen {
  readonly keyHash: string;
  readonly forget: Cancel;
  askedAt: EpochMs;
}

/** How long a screen may wait for the host to walk over and look. */
const patience: DurationMs = durationMs(10 * 60_000);
/** A screen asks again every three seconds, or ten when it was refused: one that does not has gone. */
const silentFor = 15_000;
/** A number is read across a room, so there are never many. */
const mostAsking = 5;
/** The longest refused ones are forgotten beyond this, so that nobody can fill the memory. */
const mostRefused = 100;

/**
 * Screens that ask to show the room. Each shows a number of its own, and the host lets in the one whose number they
 * read. Not stored: after a restart a screen asks again by itself. A screen that was let in holds a key.
 */
export class ScreensAtDoor {
  readonly #clock: Clock;
  readonly #changed: () => void;
  readonly #asking = new Map<string, Asking>();
  /** Keys of screens that the host did not want: such a screen goes on asking by itself and is not heard again. */
  readonly #refused = new Set<string>();

  constructor(clock: Clock, changed: () => void) {
    this.#clock = clock;
    this.#changed = changed;
  }

  get asking(): WaitingScreen[] {
    return [...this.#asking.values()].map(({ id, number }) => ({ id, number }));
  }

  /**
   * The same screen asking again keeps its number; a new one may take the place of one that does not ask any more.
   * Undefined when too many ask already, or when `mayAsk` says that this is one too many from there.
   */
  ask(
    keyHash: string,
    { id: newId, number: draw }: Pick<Chance, 'id' | 'number'>,
    mayAsk: () => boolean = () => true,
  ): WaitingScreen | 'refused' | undefined {
    if (this.#refused.has(keyHash)) return 'refused';
    const known = [...this.#asking.values()].find((screen) => screen.keyHash === keyHash);
    const now = this.#clock.now();
    if (known !== undefined) {
      known.askedAt = now;
      return { id: known.id, number: known.number };
    }
    const silent = [...this.#asking.values()].find(({ askedAt }) => now - askedAt >= silentFor);
    if ((this.#asking.size >= mostAsking && silent === undefined) || !mayAsk()) return undefined;
    if (this.#asking.size >= mostAsking && silent !== undefined) {
      silent.forget();
      this.#asking.delete(silent.id);
    }
    const id = newId();
    const number = this.#freeNumber(draw);
    const forget = this.#clock.at(later(now, patience), () => this.#forget(id));
    this.#asking.set(id, { id, number, keyHash, forget, askedAt: now });
    this.#changed();
    return { id, number };
  }

  /** Takes it off the list. @returns the hash of its key, undefined when it no longer asks */
  answer(id: string, admit: boolean): string | undefined {
    const screen = this.#asking.get(id);
    if (screen === undefined) return undefined;
    screen.forget();
    if (!admit) this.#refuse(screen.keyHash);
    this.#forget(id);
    return screen.keyHash;
  }

  stop(): void {
    for (const screen of this.#asking.values()) screen.forget();
    this.#asking.clear();
  }

  #refuse(keyHash: string): void {
    const [oldest] = this.#refused;
    if (this.#refused.size >= mostRefused && oldest !== undefined) this.#refused.delete(oldest);
    this.#refused.add(keyHash);
  }

  #forget(id: string): void {
    this.#asking.delete(id);
    this.#changed();
  }

  #freeNumber(draw: () => number): number {
    const taken = new Set([...this.#asking.values()].map((screen) => screen.number));
    for (;;) {
      const number = draw();
      if (!taken.has(number)) return number;
    }
  }
}
