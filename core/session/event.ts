import type { CueId, PourId, SeatId } from '../ids.ts';
import type { GuessSheet } from '../panel/guess/guess.ts';
import type { ToldGuesses } from '../panel/guess/room.ts';
import type { ToldResult } from '../panel/round-result.ts';
import type { BreakCue, Cue } from '../running-order/cue.ts';
import type { Habits } from '../running-order/forecast.ts';
import type { Lengths } from '../running-order/repace.ts';
import type { Bottle, Pacing, Plan, Pour } from '../tasting.ts';
import type { DurationMs, EpochMs, Seconds } from '../units.ts';
import type { Doors, KitItem, ReminderKind, ScreenShows, Seat, Signal } from './state.ts';

/** The glasses in a new order, as whole parts of the plan and the running order that came of it. */
export interface Arrangement {
  readonly order: readonly PourId[];
  readonly numbers: readonly PourId[];
  readonly flightSizes: readonly number[];
  readonly servingOrders: Plan['servingOrders'];
  /** The flight of each odd-one-out that now comes after another one. */
  readonly trials: readonly { readonly trial: PourId; readonly flight: number }[];
  readonly cues: readonly Cue[];
}

/**
 * What happened, in the past tense. Everything that a replay needs stands in the event, the compiled running order
 * included, so that an old log means the same under a newer version of the rules.
 */
export type SessionEvent =
  | {
      readonly type: 'DoorsOpened';
      readonly plan: Plan;
      readonly cues: readonly Cue[];
      readonly habits: Habits;
      /** What there is to choose from for guesses, drawn for this evening; null where none are asked for. */
      readonly guess: GuessSheet | null;
      readonly at: EpochMs;
    }
  | {
      readonly type: 'CueEntered';
      readonly cue: CueId;
      /** Server time at which it takes effect on every screen. */
      readonly at: EpochMs;
      readonly by: 'host' | 'clock' | 'room';
      /** Takes back the jump or the Next that led to the cue it leaves [P20]. */
      readonly takesBack?: true | undefined;
    }
  | { readonly type: 'ClockHeld'; readonly remaining: DurationMs; readonly at: EpochMs }
  | { readonly type: 'ClockResumed'; readonly endsAt: EpochMs }
  | { readonly type: 'TimeGiven'; readonly by: DurationMs }
  /** Stands before the cue it interrupts, which is begun again afterwards. */
  | { readonly type: 'BreakCalled'; readonly cue: BreakCue; readonly before: CueId }
  | { readonly type: 'ReminderGiven'; readonly kind: ReminderKind; readonly at: EpochMs }
  | { readonly type: 'ReminderCleared' }
  | { readonly type: 'DiscussionOpened'; readonly pours: readonly PourId[]; readonly at: EpochMs }
  | { readonly type: 'DiscussionClosed'; readonly pours: readonly PourId[] }
  | { readonly type: 'PoursRevealed'; readonly pours: readonly PourId[] }
  | { readonly type: 'ScreenSteered'; readonly shows: ScreenShows }
  | { readonly type: 'ResultTold'; readonly result: ToldResult }
  /** With the names of the same moment [Q12]. */
  | { readonly type: 'GuessesTold'; readonly told: readonly ToldGuesses[] }
  | { readonly type: 'PourDropped'; readonly pour: PourId }
  | { readonly type: 'PourRestored'; readonly pour: PourId }
  /** `swapped`: it is another bottle; else the facts of the same one were mended. */
  | {
      readonly type: 'BottleChanged';
      readonly pour: PourId;
      readonly bottle: Bottle;
      readonly swapped: boolean;
    }
  | { readonly type: 'TitleMended'; readonly title: string }
  | {
      readonly type: 'PourAdded';
      readonly pour: Pour;
      readonly code: string | null;
      readonly arranged: Arrangement;
    }
  | { readonly type: 'GlassesReordered'; readonly arranged: Arrangement }
  | { readonly type: 'PacingChosen'; readonly pacing: Pacing }
  | {
      readonly type: 'CueEdited';
      readonly cue: CueId;
      readonly ideal: Seconds;
      readonly floor: Seconds;
      readonly say?: string;
    }
  | {
      readonly type: 'RunningOrderFitted';
      readonly lengths: Lengths;
      readonly was: Lengths;
      /** The end it was fitted to; absent in logs of earlier versions. */
      readonly endsAt?: EpochMs;
    }
  | { readonly type: 'FitUndone' }
  | { readonly type: 'EndWished'; readonly endsAt: EpochMs | null }
  | { readonly type: 'ClosingPassDropped' }
  | { readonly type: 'ClosingPassRestored' }
  | { readonly type: 'DiscussionsShortened'; readonly cues: readonly CueId[]; readonly to: Seconds }
  | { readonly type: 'DiscussionsRestored' }
  | { readonly type: 'RemoteAwaited'; readonly wait: boolean }
  | { readonly type: 'DoorsSet'; readonly doors: Doors }
  | { readonly type: 'SeatTaken'; readonly seat: Seat }
  | {
      readonly type: 'SeatChanged';
      readonly seat: SeatId;
      readonly name?: string;
      readonly leftHanded?: boolean;
      readonly remote?: boolean;
    }
  | { readonly type: 'SeatAdmitted'; readonly seat: SeatId }
  | { readonly type: 'SeatLeft'; readonly seat: SeatId }
  | { readonly type: 'SeatRemoved'; readonly seat: SeatId }
  | { readonly type: 'SeatRestored'; readonly seat: SeatId }
  /** To somebody who came to a full table [S3]; nothing is left of it. */
  | { readonly type: 'SeatGaveWay'; readonly seat: SeatId }
  | { readonly type: 'CautionsRead'; readonly seat: SeatId }
  | { readonly type: 'GroundRulesAccepted'; readonly seat: SeatId }
  | { readonly type: 'PouringStopped'; readonly seat: SeatId }
  | { readonly type: 'PouringResumed'; readonly seat: SeatId }
  | { readonly type: 'SignalGiven'; readonly seat: SeatId; readonly signal: Signal | null }
  | { readonly type: 'PourCaughtUp'; readonly seat: SeatId; readonly pour: PourId }
  | { readonly type: 'KitChecked'; readonly seat: SeatId; readonly item: KitItem; readonly ready: boolean }
  | { readonly type: 'TastingFinished'; readonly at: EpochMs }
  | { readonly type: 'TastingReopened'; readonly at: EpochMs };
