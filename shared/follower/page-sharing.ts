import { computed, type ReadonlySignal, signal } from '@preact/signals-core';
import type { CommandId, PourId } from '../../core/ids.ts';
import { type NoAnswer, passesByItself } from '../wire/answer.ts';
import type { NotebookView, NoteShare } from '../wire/notebook.ts';
import type { CommandAnswer } from '../wire/protocol.ts';
import type { Sharing } from '../wire/sharing.ts';
import type { After } from './timer.ts';

/** What becomes of each page of this guest [Q2]: the switch moves at once, and is asked for until it is answered. */
export interface PageSharing {
  /** What the guest wants, and where nothing is under way, what the server has. */
  readonly sharings: ReadonlySignal<ReadonlyMap<PourId, Sharing>>;
  /** Settles with the first answer, or with none; in that case it goes on asking. */
  share(pour: PourId, sharing: Sharing): Promise<CommandAnswer | NoAnswer>;
  /** Takes in what the server has. It tells this before it answers a request, so that an answer by itself says nothing. */
  level(view: NotebookView): void;
  /** Asks no more. */
  close(): void;
}

export interface PageSharingOptions {
  readonly send: (share: NoteShare) => Promise<CommandAnswer | NoAnswer>;
  readonly newId: () => CommandId;
  readonly after: After;
}

/** After a send that nobody answered, in ms. */
const retry = 3000;

export function createSharing({ send, newId, after }: PageSharingOptions): PageSharing {
  const known = signal<ReadonlyMap<PourId, Sharing>>(new Map());
  const wanted = signal<ReadonlyMap<PourId, NoteShare>>(new Map());
  /** One request for a page at a time: two on their way at once could arrive in the other order. */
  const underWay = new Map<PourId, Promise<unknown>>();

  const settled = (share: NoteShare): void => {
    if (wanted.peek().get(share.pour) !== share) return;
    const left = new Map(wanted.peek());
    left.delete(share.pour);
    wanted.value = left;
  };

  /** Asked again just as it was: with the same id it cannot undo what another device did in between. */
  async function once(share: NoteShare): Promise<CommandAnswer | NoAnswer> {
    const answer = await send(share);
    if (answer.ok || !passesByItself(answer.code)) settled(share);
    else after(retry, () => void again(share));
    return answer;
  }

  async function again(share: NoteShare): Promise<void> {
    if (wanted.peek().get(share.pour) === share) await inTurn(share);
  }

  function inTurn(share: NoteShare): Promise<CommandAnswer | NoAnswer> {
    const turn = (underWay.get(share.pour) ?? Promise.resolve()).then(() => once(share));
    underWay.set(share.pour, turn);
    return turn;
  }

  return {
    sharings: computed(() => {
      const all = new Map(known.value);
      for (const { pour, sharing } of wanted.value.values()) all.set(pour, sharing);
      return all;
    }),
    share(pour, sharing) {
      const share: NoteShare = { id: newId(), pour, sharing };
      wanted.value = new Map(wanted.peek()).set(pour, share);
      return inTurn(share);
    },
    level(view) {
      known.value = new Map(view.sharings.map((each) => [each.pour, each.sharing]));
    },
    close() {
      wanted.value = new Map();
    },
  };
}
