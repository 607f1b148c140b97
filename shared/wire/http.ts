import type { PhotoId, PourId, SeatId, TastingId } from '../../core/ids.ts';
import type { GuessTruth } from '../../core/panel/guess/guess.ts';
import type { ToldResult } from '../../core/panel/round-result.ts';
import type { avoidedBy, CrowdAdvice, SurveyAnswers } from '../../core/planning/theme/crowd.ts';
import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import type { Habits } from '../../core/running-order/forecast.ts';
import type { NamedPour } from '../../core/session/views/pour-card.ts';
import type { SeatView } from '../../core/session/views/seat.ts';
import type { Drink, Pacing, Plan } from '../../core/tasting.ts';
import type { EpochMs } from '../../core/units.ts';
import type { NoteEntry, OddPick } from '../notes/entry.ts';
import type { BoardNote } from './board.ts';
import type { CallReach } from './call-servers.ts';
import type { RoomGuesses } from './guesses.ts';

/**
 * What goes over HTTP. Everything that is not public is asked with `Authorization: Bearer <key>`; there are no
 * cookies, so nothing can be done in somebody's name from another site. An error answers with a `Refusal`.
 *
 *   GET    /healthz                          -> 200
 *   GET    /api/houses                       -> HouseOffer; null where nobody makes a house by themselves
 *   POST   /api/houses                       { language } -> OpenedHouse
 *   POST   /api/tastings                     house key; CreateTasting -> CreatedTasting
 *   GET    /api/tastings                     house key -> ListedTasting[], the newest: for pages of earlier versions
 *   GET    /api/tastings/list?find=&after=   house key -> TastingPage
 *   GET    /api/tastings/:tasting/plan       host key -> StoredPlan
 *   GET    /api/tastings/:tasting/opening    host key -> Opening
 *   PUT    /api/tastings/:tasting/plan       host key; SavePlan -> { revision }; 409 `plan-changed`
 *   GET    /api/tastings/:tasting/as-it-lies host key -> what is stored and the host's to see, as text, in a file
 *   POST   /api/tastings/:tasting/wake       host key -> 204; an evening that rests after a fault tries again
 *   DELETE /api/tastings/:tasting            host key -> 204, with everything in it and once nothing of it is left
 *   GET    /api/tastings/:tasting/recap      host key -> EveningRecap; 409 `not-open`, `not-finished`
 *   GET    /api/tastings/:tasting/recap.json host key -> RecapExport, as a file
 *   GET    /api/tastings/:tasting/recap.csv  host key -> the same, one measure to a line
 *   POST   /api/tastings/:tasting/keys       host key; NewKey -> IssuedKey
 *   DELETE /api/tastings/:tasting/keys/host | helper | seat/:seat      host key -> 204; their devices are let go
 *   POST   /api/seats                        TakeSeatRequest -> TakenSeat
 *   GET    /api/invitations/:code            -> Invitation
 *   PUT    /api/invitations/:code/survey     SurveyReply -> 204; the same respondent again replaces
 *   GET    /api/tastings/:tasting/crowd      host key -> CrowdView
 *   POST   /api/tastings/:tasting/photos     host key; the bytes of a photo, 8 MiB at most -> KeptPhoto
 *   DELETE /api/tastings/:tasting/photos/:photo   host key -> 204
 *   GET    /photos/:photo                    image/jpeg, for whoever was given the id
 *   POST   /api/screens                      { code, key } -> ScreenAnswer; 202 while the host has not let it in, 401 once
 *                                            the host has said no
 *   POST   /api/tastings/:tasting/screens/:id     host key; { admit } -> 204
 *   DELETE /api/tastings/:tasting/screens    host key -> 204; all room screens go dark
 *   GET    /api/keepsake/:tasting            seat key -> Keepsake
 *   DELETE /api/keepsake/:tasting            seat key -> 204; the seat's notes and its keys are gone
 *
 * Pages: `/` and `/j/CODE` the guests' app, `/survey/CODE` the questions before the evening, `/screen/CODE` the room
 * screen, `/host` the host's app.
 */
export interface CreateTasting {
  readonly plan: Plan;
}
export interface CreatedTasting {
  readonly tasting: TastingId;
  readonly code: string;
  /** Opens this tasting to a host's device; shown once, kept by the server as a hash only. */
  readonly hostKey: string;
}

/** What the house of a stranger may keep. */
export interface HouseOffer {
  readonly evenings: number;
  /** At one table. */
  readonly seats: number;
}
export interface OpenedHouse {
  /** Opens this house; shown once, kept by the server as a hash only. */
  readonly key: string;
}

export const tastingStages = ['planned', 'under-way', 'finished'] as const;
export type TastingStage = (typeof tastingStages)[number];

/** Why an evening cannot go on, while all others do. */
export interface TastingTrouble {
  readonly kind:
    | 'plan-unreadable'
    | 'event-unreadable'
    | 'event-altered'
    | 'event-missing'
    | 'log-damaged'
    /** Its conductor failed twice; it may be woken. */
    | 'faulty';
  /** Which of the things that happened, from 1; null where it is none. */
  readonly event: number | null;
}

/** What is stored of an evening besides its log. */
export type StoredPart =
  | 'plan'
  | 'pour-run'
  | 'kits'
  | 'survey'
  | 'links'
  | 'list'
  | 'answers'
  | 'notes'
  | 'words'
  | 'photos';

export interface ListedTasting {
  readonly tasting: TastingId;
  readonly code: string;
  readonly title: string;
  readonly startsAt: string | null;
  readonly stage: TastingStage;
  readonly createdAt: EpochMs;
  readonly finishedAt: EpochMs | null;
  readonly pours: number;
  /** As planned. */
  readonly guests: number;
  /** Null, or absent from older servers: all is well. */
  readonly trouble?: TastingTrouble | null;
  /** Reads, and is not as it was written: a disk has changed it. Absent where nothing is. */
  readonly altered?: readonly StoredPart[];
}

/** The tastings of a house that a search finds, newest first. */
export interface TastingPage {
  /** Without a search, those that cannot be read stand before the first page, and once more in their place. */
  readonly tastings: readonly ListedTasting[];
  /** To be sent as `after` for those that follow; null when there are none. */
  readonly next: string | null;
  /** The file of the store is broken somewhere; absent when it is not, as far as is known. */
  readonly damaged?: true;
  /** Absent: the first house. */
  readonly house?: ListedHouse;
}

/** The house whose evenings these are. */
export interface ListedHouse {
  /** Null where a stranger made it. */
  readonly name: string | null;
  /** With which its new evenings begin; null: as the device has it. */
  readonly volumeUnit: Plan['volumeUnit'] | null;
}

/** What earlier evenings of the house leave for this one, as when its doors were opened now. */
export interface Opening {
  readonly habits: Habits;
  /** How it begins where the plan says by hand [P19]. */
  readonly byHand: Pacing;
}

export interface StoredPlan {
  readonly tasting: TastingId;
  readonly code: string;
  /** As links and QR codes carry it: the join code, and a key that nobody guesses. */
  readonly linkCode: string;
  readonly plan: Plan;
  readonly revision: number;
  readonly stage: TastingStage;
  /** Addresses at which guests on the same network reach this server, best first, without the path. */
  readonly guestOrigins: readonly string[];
}
export interface SavePlan {
  readonly plan: Plan;
  /** The revision that this page began from. */
  readonly base: number;
}

/** `replaces`: every earlier key of the same kind is withdrawn, and the devices that hold one are let go. */
export type NewKey = (
  | { readonly for: 'host' | 'helper' }
  | { readonly for: 'seat'; readonly seat: SeatId }
) & {
  readonly replaces?: boolean;
};
/** A key for a second device. A seat's key is good for one guest's new phone; the old one goes on working unless it is replaced. */
export interface IssuedKey {
  readonly key: string;
  readonly expiresAt: EpochMs | null;
}

export interface TakenSeat {
  readonly tasting: TastingId;
  readonly seat: SeatId;
}

/** What somebody with the code may know before they sit down. */
export interface Invitation {
  readonly tasting: TastingId;
  readonly title: string;
  readonly hostName: string;
  readonly place: string;
  readonly startsAt: string | null;
  readonly timeZone: string;
  readonly welcome: string;
  /** Years that the law of the plan's country asks for; null where it is not known, or nothing holds alcohol. */
  readonly minimumAge: number | null;
  readonly drink: Drink;
  readonly stage: TastingStage;
  readonly doors: 'not-yet' | 'open' | 'ask' | 'closed';
  readonly callLink: string | null;
  /** Some taste along at home, so that the page says what to have ready there. */
  readonly atHome: boolean;
  /** How far the evening's own call reaches. */
  readonly callReach: CallReach;
  /** What will be poured, in order. Null when it is blind, and once the doors are open. */
  readonly pours: readonly NamedPour[] | null;
}

/** What somebody who is coming says of themselves; the respondent's id is made on their device and is no name. */
export interface SurveyReply {
  readonly respondent: string;
  readonly answers: SurveyAnswers;
}

/** How used to tasting the guests are who answered, and the size of evening that fits. */
export interface CrowdView {
  readonly answered: number;
  readonly advice: CrowdAdvice;
  /** What guests who answered must not have, without names. */
  readonly avoids: ReturnType<typeof avoidedBy>;
}

export interface KeptPhoto {
  readonly photo: PhotoId;
}

/** What a guest takes home: their own notes with the pours that stood in front of the room. */
export interface Keepsake {
  readonly title: string;
  readonly place: string;
  readonly hostName: string;
  readonly startsAt: string | null;
  readonly timeZone: string;
  readonly guest: string;
  readonly drink: Drink;
  readonly pours: readonly KeepsakePour[];
  readonly trials: readonly KeepsakeTrial[];
  /** What there was to guess from; null where nothing was guessed. */
  readonly guess: SeatView['guess'];
  /** What was told of the room, as it was told and of nobody by name; absent from servers of before. */
  readonly room?: { readonly results: readonly ToldResult[]; readonly guesses: readonly RoomGuesses[] };
}
export interface KeepsakePour {
  readonly position: number;
  readonly pour: PourId;
  readonly drink: Drink;
  /** Absent while the pour is blind and the evening is not over. */
  readonly facts: NamedPour | null;
  readonly code: string | null;
  readonly entries: readonly NoteEntry[];
  /** What it is in the terms of a guess, once its name is told. */
  readonly truth: GuessTruth | null;
}

/**
 * What a host takes away. Nothing of a private page is in it: of those that only count, figures without a name; of
 * those that are shared, the notes with it.
 */
export interface RecapExport {
  readonly format: 1;
  readonly recap: EveningRecap;
  readonly notes: readonly SharedNotes[];
}
export interface SharedNotes {
  /** A pour, or an odd-one-out by its id. */
  readonly pour: PourId;
  readonly notes: readonly (Pick<BoardNote, 'remote' | 'oddGlass' | 'sealed' | 'addedLater'> & {
    readonly guest: string;
  })[];
}

/** An odd-one-out as this guest met it. */
export interface KeepsakeTrial {
  readonly trial: PourId;
  /** Codes from the left. */
  readonly glasses: readonly string[];
  readonly picked: OddPick | null;
  /** Which of the glasses it was, from 1; null until its talk has been opened. */
  readonly odd: number | null;
}

/** What a screen for the whole room is told when it asks to show the evening, with a key of its own making, again and again. */
export type ScreenAnswer =
  | {
      readonly tasting: TastingId;
      readonly admitted: true;
      readonly code: string;
      /** As the QR code on the screen carries it. */
      readonly linkCode: string;
      /** Where guests reach this server, best first: a screen is often the server's own, which calls itself localhost. */
      readonly guestOrigins: readonly string[];
    }
  | { readonly tasting: TastingId; readonly admitted: false; readonly number: number };
