import type { TastingId } from '../../core/ids.ts';
import { type StageView, stageView } from '../../core/session/views/stage.ts';
import { followersOf, followersOfBefore, type LiveServer, type LiveSocket } from './rooms.ts';
import type { Standing } from './standing.ts';
import { isOfBefore, stageOfBefore } from './views-of-before.ts';

/** Shows the stage to all who follow it: made once for each version, encoded once, and told when it says something new. */
export class StageShow {
  readonly #io: LiveServer;
  readonly #tasting: TastingId;
  #made: { readonly of: Standing; readonly view: StageView | undefined } | undefined;
  #said: string;

  constructor(io: LiveServer, tasting: TastingId, standing: Standing) {
    this.#io = io;
    this.#tasting = tasting;
    this.#said = said(this.#view(standing));
  }

  send(now: Standing): void {
    const view = this.#view(now);
    const text = said(view);
    if (text === this.#said || view === undefined) return;
    this.#said = text;
    this.#io.to(followersOf(this.#tasting)).emit('stage', view);
    this.#io.to(followersOfBefore(this.#tasting)).emit('stage', stageOfBefore(view));
  }

  sendTo(socket: LiveSocket, now: Standing): void {
    const view = this.#view(now);
    if (view !== undefined) socket.emit('stage', isOfBefore(socket) ? stageOfBefore(view) : view);
  }

  /** From now on it is told what changes. */
  follow(socket: LiveSocket): void {
    void socket.join((isOfBefore(socket) ? followersOfBefore : followersOf)(this.#tasting));
  }

  #view(now: Standing): StageView | undefined {
    if (this.#made?.of !== now) {
      const { session, version } = now;
      this.#made = {
        of: now,
        view: session.status === 'unopened' ? undefined : stageView(session, version),
      };
    }
    return this.#made.view;
  }
}

/** Whether a view says something new does not depend on the number of events behind it. */
const said = (view: StageView | undefined): string =>
  view === undefined ? '' : JSON.stringify({ ...view, version: 0 });
