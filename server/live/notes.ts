import { isGuess } from '../../core/guess/guess-sheet.ts';
import type { PourId, SeatId } from '../../core/ids.ts';
import type { Guess } from '../../core/panel/guess/guess.ts';
import { reachedBy } from '../../core/session/serving.ts';
import type { Session } from '../../core/session/state.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';
import { longestText, mostMarks, type NoteEntry, type NoteValue } from '../../shared/notes/entry.ts';
import { mergeValues } from '../../shared/notes/merge.ts';
import { blankOf, sameValue } from '../../shared/notes/value.ts';
import type { NotebookView, NoteSave } from '../../shared/wire/notebook.ts';
import { sharingBefore } from '../../shared/wire/permits.ts';
import type { RefusalCode } from '../../shared/wire/protocol.ts';
import type { Consents } from '../../shared/wire/sharing.ts';
import type { Store, StoredEntry } from '../store/store.ts';

/** Whether this seat may write about this pour now; when not, why not. */
export function mayWrite(session: Session, seat: SeatId, pour: PourId): RefusalCode | undefined {
  if (session.status === 'unopened') return 'not-open';
  const presence = session.seats[seat]?.presence;
  // Who has left still finishes their notes on the way home.
  if (presence !== 'seated' && presence !== 'left') return 'not-seated';
  return reachedBy(session, seat).includes(pour) ? undefined : 'not-reached';
}

/**
 * [Q12] A guess is closed by the name of its pour, and only what the evening's list offers is one: what anybody may have
 * written into it never comes onto another screen.
 */
export function mayGuess(session: Session, { pour, field, value }: NoteSave): RefusalCode | undefined {
  if (field !== 'guess') return undefined;
  if (session.status === 'unopened') return 'not-open';
  if (session.guess === null || isNamed(session, pour)) return 'guess-closed';
  return isGuess(session.guess, value as Guess) ? undefined : 'malformed';
}

/**
 * [Q12] Whoever knows the name would let only a good guess count: that is asked before it. It can be taken back at any time.
 */
export const mayCount = (
  session: Session,
  pour: PourId,
  { guess, nearest }: Consents,
): RefusalCode | undefined =>
  (guess === 'counts' || nearest === 'may-be-named') && isNamed(session, pour) ? 'guess-closed' : undefined;

export const isNamed = (session: Session, pour: PourId): boolean =>
  session.status !== 'unopened' && session.revealed.includes(pour);

/**
 * The entry after a save. A save that began from an older revision is merged with what another device wrote.
 *
 * [Q3] Sealed by copying on the first write after the seal: every write since then carries `sealedValue`, so an entry
 * without one still is as it stood when the discussion was opened. What was begun after the seal was empty then.
 */
export function written(
  stored: StoredEntry | undefined,
  save: NoteSave,
  sealed: boolean,
  now: EpochMs,
): StoredEntry | 'too-long' {
  const { pour, field } = save;
  const value =
    stored === undefined || save.base >= stored.revision
      ? save.value
      : mergeValues(field, stored.value, save.value);
  if (isTooLong(value)) return 'too-long';
  if (stored !== undefined && sameValue(stored.value, value)) return stored;
  const sealedValue = sealed ? sealedNow(stored, field) : undefined;
  return {
    pour,
    field,
    value,
    revision: (stored?.revision ?? 0) + 1,
    savedAt: epochMs(Math.max(now, stored?.savedAt ?? 0)),
    ...(sealedValue === undefined ? {} : { sealedValue }),
  };
}

/**
 * A page that a device kept aside comes into the notebook: a revision newer than both, so that every device of the seat
 * takes it in. It was on no board, so that after the seal all of it counts as added later [Q3].
 */
export function joined(
  stored: StoredEntry | undefined,
  aside: StoredEntry,
  sealed: boolean,
  now: EpochMs,
): StoredEntry {
  const { pour, field } = aside;
  const sealedValue = sealed ? sealedNow(stored, field) : undefined;
  return {
    pour,
    field,
    value: stored === undefined ? aside.value : mergeValues(field, stored.value, aside.value),
    revision: Math.max(stored?.revision ?? 0, aside.revision) + 1,
    savedAt: now,
    ...(sealedValue === undefined ? {} : { sealedValue }),
  };
}

/** [Q3] Once opened, always sealed. */
export const isSealed = (session: Session, pour: PourId): boolean =>
  session.status !== 'unopened' && session.discussions[pour] !== undefined;

const sealedNow = (stored: StoredEntry | undefined, field: NoteSave['field']): NoteValue => {
  if (stored === undefined) return blankOf(field);
  return stored.sealedValue === undefined ? stored.value : stored.sealedValue;
};

/** Two devices may each keep to the limit and not together. */
function isTooLong(value: NoteValue): boolean {
  if (typeof value === 'string') return value.length > longestText;
  return value !== null && typeof value === 'object' && Object.keys(value).length > mostMarks;
}

/** A guest's own notebook, without what the server keeps for the board. */
export function notebookView({
  seat,
  entries,
  consents,
}: { readonly seat: SeatId } & ReturnType<Store['notebooks']['read']>): NotebookView {
  return {
    seat,
    entries: entries.map(ownEntry),
    consents: consents.map(({ pour, consents: { marks: _, ...own } }) => ({ pour, consents: own })),
    sharings: consents.flatMap(({ pour, consents: given }) => {
      const sharing = sharingBefore(given);
      return sharing === 'private' ? [] : [{ pour, sharing }];
    }),
  };
}

export const ownEntry = ({ pour, field, value, revision, savedAt }: StoredEntry): NoteEntry => ({
  pour,
  field,
  value,
  revision,
  savedAt,
});
