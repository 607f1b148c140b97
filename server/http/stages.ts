import type { TastingId } from '../../core/ids.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import type { TastingStage } from '../../shared/wire/http.ts';
import type { Store } from '../store/store.ts';

/** How far each tasting is, read from its log without replaying it, and only again when the log has grown. */
export class Stages {
  readonly #store: Store;
  readonly #known = new Map<TastingId, { readonly version: number; readonly stage: TastingStage }>();

  constructor(store: Store) {
    this.#store = store;
  }

  of(tasting: TastingId): TastingStage {
    const version = this.#store.sessions.version(tasting);
    const known = this.#known.get(tasting);
    if (known?.version === version) return known.stage;
    const stage = version === 0 ? 'planned' : stageAfter(this.#store.sessions.read(tasting));
    this.#known.set(tasting, { version, stage });
    return stage;
  }
}

function stageAfter(events: readonly SessionEvent[]): TastingStage {
  const last = events.findLast(({ type }) => type === 'TastingFinished' || type === 'TastingReopened');
  return last?.type === 'TastingFinished' ? 'finished' : 'under-way';
}
