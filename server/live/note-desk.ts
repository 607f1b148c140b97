import type { PourId, SeatId, TastingId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import type { NoteSave, NoteShare } from '../../shared/wire/notebook.ts';
import type { CommandAnswer, NoteAnswer } from '../../shared/wire/protocol.ts';
import type { Clock } from '../clock.ts';
import { refusal } from '../refusal.ts';
import type { Store, StoredEntry } from '../store/store.ts';
import { openBoards } from './board.ts';
import { isSealed, mayWrite, written } from './notes.ts';

export interface NoteDeskParts {
  readonly tasting: TastingId;
  readonly store: Store;
  readonly clock: Clock;
  /** The session and the number of its events as they are now. */
  readonly standing: () => { readonly session: Session; readonly version: number };
  /** Whether the write is on disk; a store that refuses is an answer, not an error. */
  readonly keep: (write: () => Promise<void>) => Promise<boolean>;
}

export type NoteOutcome<Answer> = {
  readonly answer: Answer;
  /** Absent when nothing changed. */
  readonly changed?: NotesChange;
};

export interface NotesChange {
  /** What was saved; absent when only the sharing changed. */
  readonly entry?: StoredEntry;
  /** Of a pour whose board is open. */
  readonly onBoard: boolean;
  /** A page is not shared with its name any more. */
  readonly withdrawn: boolean;
}

/**
 * Takes in notes and the choice to share them. They go from the guest to the store and nowhere else: not into the
 * session, not into its log [Q1]. To be called from the session's queue only, one at a time for each seat.
 */
export class NoteDesk {
  readonly #parts: NoteDeskParts;

  constructor(parts: NoteDeskParts) {
    this.#parts = parts;
  }

  /** @param notebook where it goes; the seat's own unless it is named */
  async save(seat: SeatId, save: NoteSave, notebook = seat): Promise<NoteOutcome<NoteAnswer>> {
    const { store, tasting, clock, standing, keep } = this.#parts;
    const known = store.notebooks.answerTo(tasting, notebook, save.id);
    if (known !== undefined) return { answer: this.#answeredBefore(notebook, save, known) };
    const { session } = standing();
    const refused = mayWrite(session, seat, save.pour);
    if (refused !== undefined) return { answer: refusal(refused) };
    const stored = store.notebooks.find(tasting, notebook, save.pour, save.field);
    const entry = written(stored, save, isSealed(session, save.pour), clock.now());
    if (entry === 'too-long') return { answer: refusal('too-long') };
    const { revision, value, savedAt } = entry;
    const answer: NoteAnswer = { ok: true, revision, value, savedAt };
    const answered = { command: save.id, answer };
    const kept = await keep(() => store.notebooks.save({ tasting, seat: notebook, entry, answered }));
    if (!kept) return { answer: refusal('not-stored') };
    return entry === stored
      ? { answer }
      : {
          answer,
          changed: { entry, onBoard: notebook === seat && isOpen(session, save.pour), withdrawn: false },
        };
  }

  async share(seat: SeatId, share: NoteShare): Promise<NoteOutcome<CommandAnswer>> {
    const { store, tasting, standing, keep } = this.#parts;
    const known = store.notebooks.answerTo(tasting, seat, share.id);
    if (known !== undefined) return { answer: 'revision' in known ? refusal('malformed') : known };
    const { session, version } = standing();
    const { pour, sharing } = share;
    const refused = mayWrite(session, seat, pour);
    if (refused !== undefined) return { answer: refusal(refused) };
    const answer: CommandAnswer = { ok: true, version };
    const answered = { command: share.id, answer };
    const kept = await keep(() => store.notebooks.share({ tasting, seat, pour, sharing, answered }));
    if (!kept) return { answer: refusal('not-stored') };
    return { answer, changed: { onBoard: isOpen(session, pour), withdrawn: sharing !== 'shared' } };
  }

  /**
   * The same save again is in the field already, and is answered with what stands there now: no word of it is kept for
   * this, and where another device has written on since, the newer text is what the asking one needs.
   */
  #answeredBefore(
    seat: SeatId,
    { pour, field }: NoteSave,
    known: CommandAnswer | { readonly revision: number },
  ): NoteAnswer {
    if (!('revision' in known)) return known.ok ? refusal('malformed') : known;
    const { store, tasting } = this.#parts;
    const entry = store.notebooks.find(tasting, seat, pour, field);
    if (entry === undefined) return refusal('malformed');
    return { ok: true, revision: entry.revision, value: entry.value, savedAt: entry.savedAt };
  }
}

const isOpen = (session: Session, pour: PourId): boolean => openBoards(session).includes(pour);
