import {
  type CommandId,
  type HouseId,
  type PourId,
  type SeatId,
  seatId,
  type TastingId,
} from '../../core/ids.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import type { Plan } from '../../core/tasting.ts';
import type { EpochMs } from '../../core/units.ts';
import type { NoteEntry, NoteField, NoteValue } from '../../shared/notes/entry.ts';
import type { CameBy, DeviceId } from '../../shared/wire/devices.ts';
import type { ListedTasting, StoredPart, TastingTrouble } from '../../shared/wire/http.ts';
import type { KeptConsents, Permits } from '../../shared/wire/permits.ts';
import type { CommandAnswer, NoteAnswer } from '../../shared/wire/protocol.ts';
import type { AsItLies } from './as-it-lies.ts';
import type { DocumentShelf } from './document-shelf.ts';
import type { HouseShelf } from './house.ts';
import type { PhotoShelf } from './photo-shelf.ts';
import type { SurveyShelf } from './stored-survey.ts';

/**
 * What must outlive the process. What is asked of one evening answers at once: an evening lies whole where it is
 * conducted. What looks across evenings (a join code, lists, a photo by its id) is answered later, for they may lie anywhere.
 * A write is done when its promise settles, and only then is it on disk: nothing may be acknowledged or published before.
 * Writes that arrive together are committed together.
 *
 * A write that fails rejects with `StoreFailure` and has changed nothing.
 */
export interface Store {
  readonly tastings: TastingShelf;
  readonly sessions: SessionLog;
  readonly notebooks: Notebooks;
  readonly keys: KeyRing;
  readonly devices: DeviceShelf;
  readonly releases: ReleaseShelf;
  readonly documents: DocumentShelf;
  readonly photos: PhotoShelf;
  readonly surveys: SurveyShelf;
  readonly houses: HouseShelf;
  /** What is stored of a tasting and is the host's to see, as text, for an evening that cannot be read. */
  asItLies(tasting: TastingId): AsItLies;
  /** Whether the whole file can be read; takes as long as reading it. Says what is wrong, in the database's words. */
  check(): readonly string[];
  /** Holds all that is kept of one evening against its digests; what is not as it was written is among `tastings.altered()` then. */
  lookThrough(tasting: TastingId): void;
  /** Whether the file is broken somewhere, by the last check and by all that was read since. */
  damaged(): boolean;
  /** Waits for what is under way and closes the file. */
  close(): Promise<void>;
}

export class StoreFailure extends Error {
  override readonly name = 'StoreFailure';
}

/** What is in memory is not what is on disk any more: whoever holds it must read again. */
export class Diverged extends StoreFailure {}

export interface TastingRow {
  readonly tasting: TastingId;
  /** Six characters, upper case. */
  readonly code: string;
  readonly plan: Plan;
  /** Counts the saves of the plan, from 1. */
  readonly revision: number;
  readonly createdAt: EpochMs;
  /** Absent: of the first house. */
  readonly house?: HouseId;
}

/** What a list says of a tasting, from the last thing that was stored of it. */
export type TastingSummary = Omit<ListedTasting, 'trouble'>;

export interface TastingSearch {
  /** Only among its evenings; absent: among those of the first house. */
  readonly house?: HouseId | undefined;
  /** Words, each of which is in the title, the place, the host's name, the day, the code or the stage; accents and case are nothing. */
  readonly find: string;
  /** The last one of the page before this one. */
  readonly after?: Pick<TastingSummary, 'createdAt' | 'tasting'> | undefined;
  readonly most: number;
}

/** A tasting whose plan cannot be read, as far as it can be named. */
export interface UnreadableTasting {
  readonly tasting: TastingId;
  readonly code: string;
  readonly title: string;
  readonly createdAt: EpochMs;
  readonly trouble: TastingTrouble;
}

/** The plans that hosts write, each with its join code. What cannot be read throws `SetAside`, that one only. */
export interface TastingShelf {
  create(row: TastingRow): Promise<void>;
  has(tasting: TastingId): boolean;
  find(tasting: TastingId): TastingRow | undefined;
  /** Whether there is such a tasting and it is this house's, whether or not it can be read; undefined: the first house. */
  isOf(tasting: TastingId, house: HouseId | undefined): boolean;
  /** Whose it is; undefined: the first house's. Its plan is not read, for every device that comes in is asked about. */
  houseOf(tasting: TastingId): HouseId | undefined;
  /** Whatever house it is of: no two have the same code. */
  findByCode(code: string): Promise<TastingRow | undefined>;
  /** Those that can be read, newest first. */
  list(): Promise<TastingRow[]>;
  /** Of this house's, those that can be read, newest first; at most so many are looked at. */
  latest(house: HouseId | undefined, most: number): Promise<TastingRow[]>;
  /** Of all, whether or not they can be read. */
  ids(): Promise<TastingId[]>;
  summary(tasting: TastingId): TastingSummary | undefined;
  /** Those that a search finds, newest first, also those that cannot be read. No plan and no log is read for it. */
  page(search: TastingSearch): Promise<TastingSummary[]>;
  /** Those of which reading has failed since the store was opened, with why. */
  troubles(): ReadonlyMap<TastingId, TastingTrouble>;
  /** What of which evening still reads and is not as it was written, by the last check of the store. */
  altered(): ReadonlyMap<TastingId, ReadonlySet<StoredPart>>;
  /** Those that cannot. */
  unreadable(): Promise<UnreadableTasting[]>;
  /** Undefined when `base` is not the stored revision any more: somebody else has saved in between. */
  savePlan(tasting: TastingId, plan: Plan, base: number): Promise<number | undefined>;
  /**
   * With its log, its notebooks and its keys; the bytes are overwritten in the file. Rejects with `StoreFailure` when
   * anything of it is still there afterwards.
   */
  remove(tasting: TastingId): Promise<void>;
}

/** Everything that happened in each session, in order. */
export interface SessionLog {
  /** Number of events stored. */
  version(tasting: TastingId): number;
  /** Throws `SetAside` when an event is missing, changed or unreadable. */
  read(tasting: TastingId): SessionEvent[];
  /** The same of an evening that need not be the one that is conducted here. */
  readAnywhere(tasting: TastingId): Promise<SessionEvent[]>;
  /** When the last thing happened, as far as the log can be read; 0 when nothing has. */
  lastAt(tasting: TastingId): number;
  /** The newest version that a command was answered with: more than there are events when the end of the log is lost. */
  acknowledged(tasting: TastingId): number;
  /**
   * Appends the events of one command with the answer it was given. With no events it only remembers a refusal.
   * `expected` is the number of events that must be stored already: two writers never interleave.
   */
  append(entry: {
    readonly tasting: TastingId;
    readonly expected: number;
    readonly events: readonly SessionEvent[];
    /** Absent for what the conductor's own clock did. */
    readonly answered?: { readonly command: CommandId; readonly answer: CommandAnswer };
    /** Stored in the same commit, for a seat that was just taken. */
    readonly key?: KeyRow;
  }): Promise<void>;
  /** What a command was answered, after a restart too. */
  answerTo(tasting: TastingId, command: CommandId): CommandAnswer | undefined;
}

export interface StoredEntry extends NoteEntry {
  /** As it stood when the discussion was opened, where it was changed afterwards [Q3]. */
  readonly sealedValue?: NoteValue;
}

/** The guests' own notes. Nothing in here reaches another device but through the board [Q1]. */
export interface Notebooks {
  read(
    tasting: TastingId,
    seat: SeatId,
  ): { readonly entries: StoredEntry[]; readonly consents: StoredConsents[] };
  /** What `read` says of consents, without the entries. */
  consents(tasting: TastingId, seat: SeatId): StoredConsents[];
  find(tasting: TastingId, seat: SeatId, pour: PourId, field: NoteField): StoredEntry | undefined;
  /** Every page of these pours of which its guest has answered something, seat by seat. Of one seat where it is named. */
  readPermitted(tasting: TastingId, pours: readonly PourId[], only?: SeatId): PermittedPage[];
  save(write: {
    readonly tasting: TastingId;
    readonly seat: SeatId;
    readonly entry: StoredEntry;
    readonly answered: { readonly command: CommandId; readonly answer: NoteAnswer };
  }): Promise<void>;
  /** What is not in `consents` stays as it was answered before. */
  consent(write: {
    readonly tasting: TastingId;
    readonly seat: SeatId;
    readonly pours: readonly PourId[];
    readonly consents: KeptConsents;
    readonly answered: { readonly command: CommandId; readonly answer: CommandAnswer };
  }): Promise<void>;
  /** Of a note only the revision it was given: its words stand in one place. */
  answerTo(
    tasting: TastingId,
    seat: SeatId,
    command: CommandId,
  ): CommandAnswer | { readonly revision: number } | undefined;
  /**
   * Removes all that this seat has written, permitted and been answered, its words and its keys; the key that its notes
   * were sealed with is destroyed.
   */
  forget(tasting: TastingId, seat: SeatId): Promise<void>;
  /** Removes a notebook that was kept aside; see `asideOf`. */
  drop(tasting: TastingId, aside: SeatId): Promise<void>;
}

/** A notebook is named by its seat. A device that was not let in writes in one of its own, which no seat can be called. */
export const asideOf = (seat: SeatId, device: DeviceId): SeatId => seatId(`${seat}+${device}`);

export interface StoredConsents {
  readonly pour: PourId;
  readonly consents: KeptConsents;
}

export interface PermittedPage {
  readonly seat: SeatId;
  readonly pour: PourId;
  readonly consents: KeptConsents;
  readonly permits: Permits;
  /** Those that are permitted, and no others [Q2]. */
  readonly entries: StoredEntry[];
}

export type KeyRole =
  | { readonly role: 'host' }
  | { readonly role: 'seat'; readonly seat: SeatId }
  | { readonly role: 'helper' }
  | { readonly role: 'screen' };

export type KeyRow = KeyRole & {
  /** SHA-256 of the key, hex: the key itself is never stored. */
  readonly hash: string;
  readonly tasting: TastingId;
  readonly expiresAt: EpochMs | null;
  /** With a seat's key: whose it is. Without it the key opens no notes. */
  readonly device?: SeatDevice;
};

/** One of a seat's devices, or a link that may become one. */
export interface SeatDevice {
  readonly id: DeviceId;
  readonly came: CameBy;
  readonly at: EpochMs;
  /** Whether it has the seat's notebook. */
  readonly opens: boolean;
  /** Whether its key was made on the device itself. A key that anybody else has seen is a link: it can become a device. */
  readonly own: boolean;
}

export interface KeyRing {
  add(key: KeyRow): Promise<void>;
  find(hash: string): KeyRow | undefined;
  /** All keys of a role, or of one seat, but for the one with the hash `spared`. */
  revoke(tasting: TastingId, which: KeyRole, spared?: string): Promise<void>;
}

/** The devices of a seat, and the four words by which a guest is known without one. */
export interface DeviceShelf {
  /** Keys of a seat that have not expired at `now`, oldest first. */
  of(tasting: TastingId, seat: SeatId, now: EpochMs): (KeyRow & { readonly role: 'seat' })[];
  /** Puts a device in the place of the link with this hash. False when that link is gone. */
  exchange(link: string, key: KeyRow): Promise<boolean>;
  end(tasting: TastingId, hash: string): Promise<void>;
  /** Gives a device the seat's notebook: what it wrote aside comes in as these entries, in the same commit. */
  letIn(write: {
    readonly tasting: TastingId;
    readonly seat: SeatId;
    readonly hash: string;
    readonly aside: SeatId;
    readonly entries: readonly StoredEntry[];
  }): Promise<void>;
  words(tasting: TastingId, seat: SeatId): SeatWords | undefined;
  /** Of the server's own key; mixed into the words, so that the store alone is nothing to guess them by. */
  readonly pepper: Buffer;
  keepWords(tasting: TastingId, seat: SeatId, words: SeatWords): Promise<void>;
}

/** The words themselves are nowhere. */
export interface SeatWords {
  readonly salt: Buffer;
  readonly hash: Buffer;
  /** When each of the latest wrong tries was made. */
  readonly wrong: readonly EpochMs[];
}

/**
 * What has been told in recaps, sealed as notes are. Figures hold what guests answered, added up: forgetting a seat removes
 * them. What was shown names seats and versions, and no answer.
 */
export interface ReleaseShelf {
  /** The body as it was given to `saveShown`; undefined before the first. */
  shown(tasting: TastingId): unknown;
  figures(tasting: TastingId): unknown;
  saveShown(tasting: TastingId, body: unknown): Promise<void>;
  /** Does nothing when one of the seats in it has been forgotten meanwhile. */
  saveFigures(tasting: TastingId, body: unknown, seats: readonly SeatId[]): Promise<void>;
}
