import type { CommandId, TastingId } from '../../core/ids.ts';
import {
  emptied,
  levelsOf,
  nothingPoured,
  type Pouring,
  ticked,
  undone,
} from '../../core/planning/serving/pouring.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import type { Plan } from '../../core/tasting.ts';
import type { PouringCommand, PouringView } from '../../shared/wire/pouring.ts';
import type { CommandAnswer, RefusalCode } from '../../shared/wire/protocol.ts';
import type { Log } from '../log.ts';
import { refusal } from '../refusal.ts';
import { type Store, StoreFailure } from '../store/store.ts';
import { storedPouringSchema } from '../store/stored-pouring.ts';
import { helpersOf, hostsOf, type LiveServer, type LiveSocket } from './rooms.ts';

interface PourRunParts {
  readonly tasting: TastingId;
  readonly store: Store;
  readonly io: LiveServer;
  readonly log: Log;
  /** As it is now, whether or not the doors are open. */
  readonly plan: () => Plan | undefined;
}

interface Written {
  readonly pouring: Pouring;
  readonly revision: number;
}

/**
 * Who has poured what, on all of the host's devices. A document of its own beside the session: the glasses are filled
 * before the doors open, and ticking them is no event of the evening.
 */
export class PourRun {
  readonly #parts: PourRunParts;
  #known: Written | undefined;

  constructor(parts: PourRunParts) {
    this.#parts = parts;
  }

  /** To be called from the session's queue only: nothing may write between its reading and its writing. */
  async carryOut(id: CommandId, ask: PouringCommand): Promise<CommandAnswer> {
    const now = this.#read();
    const next = this.#after(now.pouring, id, ask);
    if (typeof next === 'string') return refusal(next);
    if (next === now.pouring) return { ok: true, version: now.revision };
    const revision = await this.#write(next, now.revision);
    return revision === undefined ? refusal('not-stored') : { ok: true, version: revision };
  }

  async #write(pouring: Pouring, base: number): Promise<number | undefined> {
    const revision = await this.#save(pouring, base);
    if (revision === undefined) return undefined;
    this.#known = { pouring, revision };
    const { io, tasting } = this.#parts;
    io.to([hostsOf(tasting), helpersOf(tasting)]).emit('pouring', this.#view());
    return revision;
  }

  /** [P22] The glasses of a swapped bottle are to be poured anew. From the session's queue only. */
  async follow(events: readonly SessionEvent[]): Promise<void> {
    const swapped = events.flatMap((event) =>
      event.type === 'BottleChanged' && event.swapped ? [event.pour] : [],
    );
    if (swapped.length === 0) return;
    const now = this.#read();
    const next = swapped.reduce(emptied, now.pouring);
    if (next !== now.pouring) await this.#write(next, now.revision);
  }

  show(socket: LiveSocket): void {
    socket.emit('pouring', this.#view());
  }

  #view(): PouringView {
    const { pouring, revision } = this.#read();
    return { version: revision, levels: levelsOf(pouring) };
  }

  #after(pouring: Pouring, id: CommandId, ask: PouringCommand): Pouring | RefusalCode {
    switch (ask.type) {
      case 'TickGlasses': {
        const { pours = [], trials = [] } = this.#parts.plan() ?? {};
        const known = ask.pours.every((pour) => [...pours, ...trials].some((each) => each.id === pour));
        return known ? ticked(pouring, { id, ...ask }) : 'no-such-pour';
      }
      case 'UndoTick':
        return undone(pouring, ask.tick) ?? 'nothing-to-do';
      default:
        return ask satisfies never;
    }
  }

  #read(): Written {
    if (this.#known !== undefined) return this.#known;
    const stored = this.#parts.store.documents.read(this.#parts.tasting, 'pouring');
    const read = storedPouringSchema.safeParse(stored?.body);
    if (stored !== undefined && !read.success)
      this.#parts.log.error(
        { tasting: this.#parts.tasting },
        'what was poured cannot be read: nothing is ticked',
      );
    this.#known = { pouring: read.data ?? nothingPoured, revision: stored?.revision ?? 0 };
    return this.#known;
  }

  async #save(pouring: Pouring, base: number): Promise<number | undefined> {
    const { store, tasting, log } = this.#parts;
    try {
      return await store.documents.save(tasting, 'pouring', pouring, base);
    } catch (error) {
      if (!(error instanceof StoreFailure)) throw error;
      log.error({ tasting, reason: error.message }, 'not stored');
      return undefined;
    }
  }
}
