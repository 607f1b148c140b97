import type { TastingId } from '../../core/ids.ts';
import { type StageView, stageView } from '../../core/session/views/stage.ts';
import { stageChangeBetween } from '../../shared/wire/stage-change.ts';
import {
  followersOf,
  followersOfBefore,
  followersOfWholes,
  type LiveServer,
  type LiveSocket,
} from './rooms.ts';
import type { Standing } from './standing.ts';
import { hearsWholeStages, isOfBefore, stageOfBefore } from './views-of-before.ts';

/**
 * Shows the stage to all who follow it: made once for each version, encoded once, and told when it says something new, and
 * then only what is.
 */
export class StageShow {
  readonly #io: LiveServer;
  readonly #tasting: TastingId;
  #made: { readonly of: Standing; readonly view: StageView | undefined } | undefined;
  #said: string;
  /** What was sent last, so that a crowd that comes in compares no words. */
  #sent: Standing | undefined;
  /** What all who follow have been told; undefined before the first. */
  #told: StageView | undefined;

  constructor(io: LiveServer, tasting: TastingId, standing: Standing) {
    this.#io = io;
    this.#tasting = tasting;
    this.#told = this.#view(standing);
    this.#said = said(this.#told);
  }

  send(now: Standing): void {
    if (now === this.#sent) return;
    this.#sent = now;
    const view = this.#view(now);
    const text = said(view);
    if (text === this.#said || view === undefined) return;
    const change = stageChangeBetween(this.#told, view);
    this.#said = text;
    this.#told = view;
    const followers = this.#io.to(followersOf(this.#tasting));
    if (change === undefined) followers.emit('stage', view);
    else followers.emit('news', change);
    this.#io.to(followersOfWholes(this.#tasting)).emit('stage', view);
    this.#io.to(followersOfBefore(this.#tasting)).emit('stage', stageOfBefore(view));
  }

  sendTo(socket: LiveSocket, now: Standing): void {
    // What comes next on this line is told as a change of what all others have.
    this.send(now);
    const view = this.#view(now);
    if (view !== undefined) socket.emit('stage', isOfBefore(socket) ? stageOfBefore(view) : view);
  }

  /** From now on it is told what changes. */
  follow(socket: LiveSocket): void {
    const room = isOfBefore(socket)
      ? followersOfBefore
      : hearsWholeStages(socket)
        ? followersOfWholes
        : followersOf;
    void socket.join(room(this.#tasting));
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
