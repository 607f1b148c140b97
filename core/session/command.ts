import type { CueId, SeatId } from '../ids.ts';
import type { RoundResult } from '../panel/round-result.ts';
import type { Habits } from '../running-order/forecast.ts';
import type { Plan } from '../tasting.ts';
import type { DurationMs, EpochMs } from '../units.ts';
import type { GuestCommand, SentHostCommand } from './sent-command.ts';

/** What a host asks for, with what the server adds: the plan, and what was reckoned, for notes are not in the session. */
export type HostCommand =
  | Exclude<SentHostCommand, { type: 'OpenDoors' | 'TellResult' }>
  | {
      readonly type: 'OpenDoors';
      readonly plan: Plan;
      readonly habits?: Habits | undefined;
      readonly draw?: string | undefined;
    }
  | { readonly type: 'TellResult'; readonly cue: CueId; readonly parts: readonly RoundResult[] };

/** What a helper may ask of the session: to answer a call, and nothing else [S6]. */
export type HelperCommand = Extract<HostCommand, { type: 'AnswerSeat' }>;

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
