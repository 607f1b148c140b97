import type { CommandId, PourId, SeatId, TastingId } from '../../../core/ids.ts';
import type { SessionEvent } from '../../../core/session/event.ts';
import type { Plan } from '../../../core/tasting.ts';
import { type KeyRow, type StoredEntry, StoreFailure } from '../../../server/store/store.ts';
import type { KeptConsents } from '../../../shared/wire/permits.ts';
import type { CommandAnswer, NoteAnswer } from '../../../shared/wire/protocol.ts';
import type { Chances } from '../chances.ts';
import type { VirtualTime } from '../virtual-time.ts';

/**
 * What was committed, in order. `boot` counts the lives of the server; `now` is its clock, and `hostHere` whether a
 * device of the host was connected, when it was decided.
 */
export type Commit = { readonly boot: number; readonly now: number; readonly hostHere: boolean } & (
  | {
      readonly kind: 'append';
      readonly before: number;
      readonly events: readonly SessionEvent[];
      readonly command: CommandId | undefined;
      readonly answer: CommandAnswer | undefined;
    }
  | { readonly kind: 'save'; readonly seat: SeatId; readonly entry: StoredEntry; readonly command: CommandId }
  | {
      readonly kind: 'consent';
      readonly seat: SeatId;
      readonly pours: readonly PourId[];
      readonly consents: KeptConsents;
      readonly command: CommandId;
    }
);

export type Health = 'well' | 'slow' | 'refusing' | 'flickering';

/** Whether the process that holds the disk still runs. What it had not committed dies with it. */
export interface Power {
  on: boolean;
}

interface Waiting {
  /** Checks, then changes: throws before it has changed anything. Answers with what settles the promise. */
  readonly run: () => () => void;
  readonly fail: (reason: StoreFailure) => void;
}

/** A disk that outlives the server's process: holds one tasting and all that was ever committed to it. */
export class Disk {
  readonly tasting: TastingId;
  readonly plan: Plan;
  readonly events: SessionEvent[] = [];
  readonly journal: Commit[] = [];
  readonly answers = new Map<string, CommandAnswer | NoteAnswer>();
  readonly notes = new Map<string, StoredEntry & { readonly seat: SeatId }>();
  /** By `seat pour`; without those that are private. */
  readonly consents = new Map<string, KeptConsents>();
  readonly keys = new Map<string, KeyRow>();
  readonly documents = new Map<string, { readonly body: unknown; readonly revision: number }>();
  health: Health = 'well';
  /** A planted fault: takes a second answer to the same command. */
  forgetful = false;
  readonly #time: VirtualTime;
  readonly #chances: Chances;

  constructor(time: VirtualTime, chances: Chances, tasting: TastingId, plan: Plan) {
    this.#time = time;
    this.#chances = chances;
    this.tasting = tasting;
    this.plan = plan;
  }

  /** A writer for one life of the server. What arrives together is committed together. */
  writer(power: Power): <Result>(run: () => Result) => Promise<Result> {
    let waiting: Waiting[] = [];
    const flush = (): void => {
      const batch = waiting;
      waiting = [];
      if (!power.on) return;
      const settle = this.#refuses()
        ? batch.map((each) => () => each.fail(new StoreFailure('The disk is full: free some space.')))
        : batch.map(committed);
      // Between the commit and the word that it is done there is time to die.
      this.#time.after(this.#chances.between(0.01, 0.3), () => {
        if (power.on) for (const each of settle) each();
      });
    };
    return (run) =>
      new Promise((resolve, reject) => {
        if (waiting.length === 0) this.#time.after(this.#latency(), flush);
        waiting.push({
          run: () => {
            const result = run();
            return () => resolve(result);
          },
          fail: reject,
        });
      });
  }

  #refuses(): boolean {
    return this.health === 'refusing' || (this.health === 'flickering' && this.#chances.happens(0.4));
  }

  #latency(): number {
    return this.health === 'slow' ? this.#chances.exponential(300) : this.#chances.between(0.05, 0.5);
  }
}

function committed(each: Waiting): () => void {
  try {
    return each.run();
  } catch (error) {
    if (!(error instanceof StoreFailure)) throw error;
    return () => each.fail(error);
  }
}
