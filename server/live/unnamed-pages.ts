import { randomBytes } from 'node:crypto';
import type { PourId, SeatId } from '../../core/ids.ts';
import { durationMs, later } from '../../core/units.ts';
import type { Cancel, Clock } from '../clock.ts';

/** So many come to the table together. */
const company = 3;
/** Whoever waits for company waits no longer than this. */
const longestWait = durationMs(5000);

export interface UnnamedPage {
  readonly seat: SeatId;
  readonly pour: PourId;
}

/**
 * Where pages without a name lie on the board: by lots that are drawn anew each time their talk opens, so that neither a
 * place nor a key tells whose they are, nor which two are of one guest [Q9]. What is given while a talk is open waits until
 * three have given something, all have answered, or five seconds have passed, so that a tap and a page that appears are not seen to be one; a page that is
 * taken back goes at once.
 *
 * What remains: at a small table who shares nothing by name may be guessed, and so may a page that is taken back while
 * somebody looks over a shoulder.
 */
export class UnnamedPages {
  readonly #clock: Clock;
  readonly #come: () => void;
  readonly #lots = new Map<string, string>();
  #open: ReadonlySet<PourId> = new Set();
  #round: Cancel | undefined;
  #due = false;

  /** @param come called when those who waited may come to the table */
  constructor(clock: Clock, come: () => void) {
    this.#clock = clock;
    this.#come = come;
  }

  /**
   * The lots of those that may lie there now, by `unnamedKey`.
   *
   * @param pages all that are given without a name
   * @param allAnswered whether nobody is left to wait for; whose answer was the last says nothing of whose pages they are
   */
  lots(
    open: readonly PourId[],
    pages: readonly UnnamedPage[],
    allAnswered = false,
  ): ReadonlyMap<string, string> {
    const given = new Set(pages.map(unnamedKey));
    for (const key of this.#lots.keys()) if (!given.has(key)) this.#lots.delete(key);
    const waiting = pages.filter((page) => !this.#lots.has(unnamedKey(page)));
    const late = waiting.filter(({ pour }) => this.#open.has(pour));
    const together = this.#due || allAnswered || new Set(late.map(({ seat }) => seat)).size >= company;
    for (const page of waiting) {
      if (together || !late.includes(page))
        this.#lots.set(unnamedKey(page), randomBytes(9).toString('base64url'));
    }
    if (together || late.length === 0) this.stop();
    else this.#round ??= this.#clock.at(later(this.#clock.now(), longestWait), () => this.#end());
    this.#open = new Set(open);
    return this.#lots;
  }

  stop(): void {
    this.#round?.();
    this.#round = undefined;
  }

  #end(): void {
    this.#round = undefined;
    this.#due = true;
    this.#come();
    this.#due = false;
  }
}

export const unnamedKey = ({ seat, pour }: UnnamedPage): string => `${pour} ${seat}`;
