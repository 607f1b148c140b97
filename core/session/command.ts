import type { CueId, PourId, SeatId } from '../ids.ts';
import type { RoundResult } from '../panel/round-result.ts';
import type { Habits } from '../running-order/forecast.ts';
import type { Bottle, Drink, Pacing, Plan } from '../tasting.ts';
import type { DurationMs, EpochMs, Seconds } from '../units.ts';
import type { Doors, KitItem, ReminderKind, ScreenShows, Signal } from './state.ts';

/** What a host asks for. */
export type HostCommand =
  | {
      readonly type: 'OpenDoors';
      readonly plan: Plan;
      readonly habits?: Habits | undefined;
      readonly draw?: string | undefined;
    }
  /** Names the cue it leaves, so that two taps never skip one [P1]. */
  | { readonly type: 'Advance'; readonly from: CueId }
  | { readonly type: 'GoBack'; readonly from: CueId }
  /** `takesBack` names the cue that the room was sent to by mistake: its glass has then not been tasted [P20]. */
  | { readonly type: 'JumpTo'; readonly cue: CueId; readonly takesBack?: CueId | undefined }
  | { readonly type: 'Hold' }
  | { readonly type: 'Resume' }
  | { readonly type: 'GiveTime'; readonly seconds: Seconds }
  | { readonly type: 'CallBreak'; readonly seconds: Seconds }
  | { readonly type: 'Remind'; readonly kind: ReminderKind }
  | { readonly type: 'ClearReminder' }
  | { readonly type: 'OpenDiscussion'; readonly pours: readonly PourId[] }
  | { readonly type: 'CloseDiscussion'; readonly pours: readonly PourId[] }
  /** `from`, where a tap on through the running order tells them: the cue that it was made in [P21]. */
  | { readonly type: 'Reveal'; readonly pours: readonly PourId[]; readonly from?: CueId | undefined }
  | { readonly type: 'SteerScreen'; readonly shows: ScreenShows }
  /** [R1] Names the cue that it tells. What was reckoned arrives with it, for notes are not in the session. */
  | { readonly type: 'TellResult'; readonly cue: CueId; readonly parts: readonly RoundResult[] }
  | { readonly type: 'DropPour'; readonly pour: PourId }
  | { readonly type: 'RestorePour'; readonly pour: PourId }
  /** Another bottle in the place of one that is corked or was forgotten, or the same one with its facts mended [P22]. */
  | { readonly type: 'SwapBottle'; readonly pour: PourId; readonly bottle: Bottle }
  | { readonly type: 'MendPour'; readonly pour: PourId; readonly bottle: Bottle }
  | { readonly type: 'MendTitle'; readonly title: string }
  /** A pour that the plan did not have, behind all others. `code`: drawn by the device that asks; null where none is blind. */
  | {
      readonly type: 'AddPour';
      readonly pour: PourId;
      readonly drink: Drink;
      readonly bottle: Bottle;
      readonly code: string | null;
    }
  /** All glasses still to come, in their new order [P24]. */
  | { readonly type: 'ReorderGlasses'; readonly order: readonly PourId[] }
  | { readonly type: 'ChoosePacing'; readonly pacing: Pacing }
  | {
      readonly type: 'EditCue';
      readonly cue: CueId;
      readonly seconds?: Seconds | undefined;
      readonly say?: string | undefined;
    }
  /** Fits what remains so that the evening ends then [C2]. */
  | { readonly type: 'FitTo'; readonly endsAt: EpochMs }
  | { readonly type: 'UndoFit' }
  /** The end against which the evening is seen to run late; null for none. */
  | { readonly type: 'WishEnd'; readonly endsAt: EpochMs | null }
  | { readonly type: 'DropClosingPass' }
  | { readonly type: 'RestoreClosingPass' }
  /** Cuts the discussions still to come to a minute. */
  | { readonly type: 'ShortenDiscussions' }
  | { readonly type: 'RestoreDiscussions' }
  | { readonly type: 'WaitForRemote'; readonly wait: boolean }
  | { readonly type: 'SetDoors'; readonly doors: Doors }
  | { readonly type: 'AdmitSeat'; readonly seat: SeatId }
  | { readonly type: 'RemoveSeat'; readonly seat: SeatId }
  | { readonly type: 'RestoreSeat'; readonly seat: SeatId }
  | { readonly type: 'AnswerSeat'; readonly seat: SeatId }
  /** [C4] No more alcohol for this guest: their evening goes on with water; and again, where it was a mistake. */
  | { readonly type: 'StopPouring'; readonly seat: SeatId }
  | { readonly type: 'ResumePouring'; readonly seat: SeatId }
  | { readonly type: 'Finish' }
  | { readonly type: 'Reopen' };

/** What a helper may ask of the session: to answer a call, and nothing else [S6]. */
export type HelperCommand = Extract<HostCommand, { type: 'AnswerSeat' }>;

/** What a guest asks for, for the seat they hold. */
export type GuestCommand =
  /** [C5] */
  | { readonly type: 'ReadCautions' }
  | { readonly type: 'AcceptGroundRules' }
  | { readonly type: 'GiveSignal'; readonly signal: Signal | null; readonly cue: CueId }
  | {
      readonly type: 'ChangeSeat';
      readonly name?: string | undefined;
      readonly leftHanded?: boolean | undefined;
      readonly remote?: boolean | undefined;
    }
  | { readonly type: 'CatchUp'; readonly pour: PourId }
  | { readonly type: 'CheckKit'; readonly item: KitItem; readonly ready: boolean }
  | { readonly type: 'LeaveTable' };

/** Somebody who has no seat yet. The id is made by the server and arrives on the command. */
export interface TakeSeat {
  readonly type: 'TakeSeat';
  readonly seat: SeatId;
  readonly name: string;
  readonly leftHanded: boolean;
  readonly remote: boolean;
  /** A seat without notes that nobody has sat on for a while: it gives way, for the table is full [S3]. */
  readonly inPlaceOf?: SeatId;
}

/** What the conductor's own clock asks for. */
export type ClockCommand =
  /** The deadline of `cue` has passed. */
  | { readonly type: 'ExpireCue'; readonly cue: CueId }
  /** Something that the pace of the room hangs on has changed: the floor has passed, or somebody came or went. */
  | { readonly type: 'WeighRoom'; readonly cue: CueId };

export type Command =
  | { readonly by: 'host'; readonly ask: HostCommand }
  | { readonly by: 'helper'; readonly ask: HelperCommand }
  | { readonly by: 'guest'; readonly seat: SeatId; readonly ask: GuestCommand }
  | { readonly by: 'newcomer'; readonly ask: TakeSeat }
  | { readonly by: 'clock'; readonly ask: ClockCommand };

/** What a decision needs to know of the world; it arrives with the command, so that deciding stays pure. */
export interface Moment {
  readonly now: EpochMs;
  /** How far ahead a change of cue is set, so that it appears on all devices together [F4]. */
  readonly lead: DurationMs;
  readonly hostPresent: boolean;
  /** Seats with a device connected. */
  readonly present: ReadonlySet<SeatId>;
  /** The time of the current cue ran out while nobody watched: only the host leaves it [P7]. Absent: it did not. */
  readonly overtimeWaits?: boolean;
}

export type SessionRefusalCode =
  | 'moved-on'
  | 'not-open'
  | 'already-open'
  | 'finished'
  | 'not-finished'
  | 'no-pours'
  | 'at-start'
  | 'at-end'
  | 'no-such-cue'
  | 'no-such-pour'
  | 'no-such-seat'
  | 'already-held'
  | 'not-held'
  | 'not-reached'
  | 'already-dropped'
  | 'not-dropped'
  | 'only-pour'
  | 'own-orders'
  | 'too-many-pours'
  | 'code-taken'
  | 'not-in-discussion'
  | 'doors-closed'
  | 'table-full'
  | 'not-seated'
  | 'nothing-to-do'
  | 'not-fitted'
  | 'too-long';
