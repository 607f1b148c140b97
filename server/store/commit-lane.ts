import type { Changes, KeptTable, RowChange } from './row-changes.ts';
import type { StoreFailure } from './store.ts';
import { failure } from './writer.ts';

interface Waiting {
  readonly run: () => void;
  readonly settle: () => void;
  readonly fail: (reason: StoreFailure) => void;
  /** Changes no row, and runs while nothing else does. */
  readonly alone?: () => Promise<void>;
}

export interface LaneParts<Table extends KeptTable> {
  readonly changes: Changes<Table>;
  /** Resolves when they are on disk. Rejects when nothing of them is. */
  readonly commit: (changes: readonly RowChange<Table>[]) => Promise<void>;
  /** Whether one of several may be to blame: then each is committed by itself. */
  readonly mayBeOne?: (error: unknown) => boolean;
  readonly failure?: (error: unknown) => StoreFailure;
  readonly onIdle?: () => void;
}

/** As many as are committed together. */
const together = 64;

/**
 * A lane of writes that are committed in another place: what waits is tried where it is read, and taken back; sent as one
 * batch; and answered once that is committed. So whoever reads meanwhile reads only what is committed.
 */
export class CommitLane<Table extends KeptTable> {
  readonly #parts: LaneParts<Table>;
  readonly #waiting: Waiting[] = [];
  #running: Promise<void> | undefined;

  constructor(parts: LaneParts<Table>) {
    this.#parts = parts;
  }

  write<Result>(run: () => Result): Promise<Result> {
    return new Promise((resolve, reject) => {
      let result: { readonly is: Result } | undefined;
      this.#lineUp({
        run: () => {
          result = { is: run() };
        },
        settle: () => result && resolve(result.is),
        fail: reject,
      });
    });
  }

  alone(task: () => Promise<void>): Promise<void> {
    return new Promise((resolve, reject) => {
      this.#lineUp({ run: () => undefined, settle: resolve, fail: reject, alone: task });
    });
  }

  async idle(): Promise<void> {
    while (this.#running !== undefined) await this.#running;
  }

  #lineUp(each: Waiting): void {
    this.#waiting.push(each);
    this.#running ??= this.#serve();
  }

  async #serve(): Promise<void> {
    // What arrives in this turn of the loop is committed together.
    await new Promise<void>((turn) => setImmediate(turn));
    while (this.#waiting.length > 0) await this.#commitAll(this.#next());
    this.#running = undefined;
    this.#parts.onIdle?.();
  }

  #next(): readonly Waiting[] {
    const single = this.#waiting.findIndex(({ alone }) => alone !== undefined);
    const end = single < 0 ? together : Math.min(together, single);
    return this.#waiting.splice(0, Math.max(1, end));
  }

  async #commitAll(batch: readonly Waiting[]): Promise<void> {
    const { changes, commit, mayBeOne, failure: tell = failure } = this.#parts;
    let good: readonly Waiting[] = batch;
    try {
      for (const { alone } of batch) await alone?.();
      const tried = changes.tried(batch.map(({ run }) => run));
      good = batch.filter((each, index) => {
        const said = tried[index];
        if (said === undefined || 'failed' in said) each.fail(failure(said?.failed));
        return said !== undefined && 'changes' in said;
      });
      const all = tried.flatMap((said) => ('changes' in said ? said.changes : []));
      if (all.length > 0) await commit(all);
      for (const each of good) each.settle();
    } catch (error) {
      if (good.length > 1 && mayBeOne?.(error) === true)
        for (const each of good) await this.#commitAll([each]);
      else for (const each of good) each.fail(tell(error));
    }
  }
}
