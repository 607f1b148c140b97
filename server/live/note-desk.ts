import type { PourId, SeatId, TastingId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import type { ConsentGiving, NoteSave, NoteShare } from '../../shared/wire/notebook.ts';
import {
  consentsBefore,
  type KeptConsents,
  type Permits,
  permitsOf,
  withConsents,
} from '../../shared/wire/permits.ts';
import type { CommandAnswer, NoteAnswer } from '../../shared/wire/protocol.ts';
import type { Clock } from '../clock.ts';
import { refusal } from '../refusal.ts';
import type { Store, StoredEntry } from '../store/store.ts';
import { openBoards } from './board.ts';
import { isNamed, isSealed, mayCount, mayGuess, mayWrite, written } from './notes.ts';

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
  /** What was saved; absent when only consents changed. */
  readonly entry?: StoredEntry;
  /** Of a pour whose board is open. */
  readonly onBoard: boolean;
  /** Something that could be on the board may not be there any more, or not as it was. */
  readonly withdrawn: boolean;
  /** A guess whose pour is named does not count any more, or its guest may not be named. */
  readonly guessWithdrawn?: boolean;
}

/**
 * Takes in notes, and what their guest permits of them. They go from the guest to the store and nowhere else: not into the
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
    const refused = mayWrite(session, seat, save.pour) ?? mayGuess(session, save);
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

  /** For all of its pages or for none. A page of before shares one at a time. */
  async consent(seat: SeatId, giving: ConsentGiving | NoteShare): Promise<NoteOutcome<CommandAnswer>> {
    const { id } = giving;
    const { pours, consents }: { pours: readonly PourId[]; consents: KeptConsents } =
      'sharing' in giving ? { pours: [giving.pour], consents: consentsBefore(giving.sharing) } : giving;
    const { store, tasting, standing, keep } = this.#parts;
    const known = store.notebooks.answerTo(tasting, seat, id);
    if (known !== undefined) return { answer: 'revision' in known ? refusal('malformed') : known };
    const { session, version } = standing();
    const refused = pours.flatMap(
      (pour) => mayWrite(session, seat, pour) ?? mayCount(session, pour, consents) ?? [],
    )[0];
    if (refused !== undefined) return { answer: refusal(refused) };
    const answer: CommandAnswer = { ok: true, version };
    const answered = { command: id, answer };
    const before = store.notebooks.consents(tasting, seat);
    const kept = await keep(() => store.notebooks.consent({ tasting, seat, pours, consents, answered }));
    if (!kept) return { answer: refusal('not-stored') };
    const withdrawn = pours.some((pour) => {
      const was = before.find((each) => each.pour === pour)?.consents ?? {};
      return takesBack(permitsOf(was), permitsOf(withConsents(was, consents)));
    });
    const guessWithdrawn =
      (consents.guess !== undefined || consents.nearest !== undefined) &&
      pours.some((pour) => isNamed(session, pour));
    return {
      answer,
      changed: { onBoard: pours.some((pour) => isOpen(session, pour)), withdrawn, guessWithdrawn },
    };
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

/** Whether anything that stood on the board does not stand there in the same way now. */
const takesBack = (was: Permits, is: Permits): boolean =>
  Object.entries(was).some(
    ([field, permit]) => permit !== 'counted' && is[field as keyof Permits] !== permit,
  );

const isOpen = (session: Session, pour: PourId): boolean => openBoards(session).includes(pour);
