import type { CueId, PourId, SeatId } from '../ids.ts';
import type { GuessSheet } from '../panel/guess/guess.ts';
import type { ToldGuesses } from '../panel/guess/room.ts';
import type { ToldResult } from '../panel/round-result.ts';
import type { Cue } from '../running-order/cue.ts';
import type { Habits } from '../running-order/forecast.ts';
import type { Lengths } from '../running-order/repace.ts';
import type { Pacing, Plan } from '../tasting.ts';
import type { DurationMs, EpochMs, Seconds } from '../units.ts';
import type { KitItem, Seat } from './seat-schema.ts';

export type { KitItem, Seat };

/** What one evening is at a moment. Notes are not in here and never will be: they live in the store's notebooks. */
export type Session = Unopened | UnderWay | Finished;

export interface Unopened {
  readonly status: 'unopened';
}

export interface UnderWay extends Evening {
  readonly status: 'under-way';
  /** Where everybody is: an index into `cues`, never out of range. */
  readonly at: number;
  /** The server time at which the current cue takes effect on every screen, a little after it was decided [F4]. */
  readonly enteredAt: EpochMs;
  readonly clock: Clock;
  /** What seats say about the current cue; emptied when the cue changes, except for a call for the host. */
  readonly signals: Readonly<Record<SeatId, Signal>>;
  readonly reminder: Reminder | null;
  readonly doors: Doors;
}

export interface Finished extends Evening {
  readonly status: 'finished';
  readonly finishedAt: EpochMs;
  /** Where the evening stood when it ended, for a host who ended it by mistake. */
  readonly stoodAt: number;
}

/**
 * What lasts from the opening of the doors. The two others extend it rather than hold it: almost every event changes one
 * field of it, which one copy says as plainly as two would not, and `evolve` parts them again with a rest.
 */
export interface Evening {
  readonly plan: Plan;
  /** How often the plan has changed since the doors were opened. */
  readonly planChanges: number;
  readonly cues: readonly Cue[];
  readonly seats: Readonly<Record<SeatId, Seat>>;
  readonly pacing: Pacing;
  readonly discussions: Readonly<Record<PourId, Discussion>>;
  /** Pours whose name everybody may know. */
  readonly revealed: readonly PourId[];
  /** What the room was told it made of its glasses, in that order [R1]. */
  readonly results: readonly ToldResult[];
  readonly dropped: readonly PourId[];
  /** Pours whose glass has been in front of the room, in that order. */
  readonly reached: readonly PourId[];
  /** When which cue was entered, for forecast and recap. */
  readonly timeline: readonly Entry[];
  readonly openedAt: EpochMs;
  /** How many breaks the host has called; numbers their cue ids. */
  readonly breaksCalled: number;
  /** What earlier evenings taught about how long a room takes, as it was when the doors opened. */
  readonly habits: Habits;
  /** The lengths before the running order was fitted to an end, for undoing it. */
  readonly fitted: Lengths | null;
  /** The discussions that were cut to a minute, as they were before. */
  readonly shortTalks: readonly TalkBefore[];
  /** The closing passes are left out. */
  readonly closingDropped: boolean;
  /** When the host would like the evening to end. */
  readonly wishedEnd: EpochMs | null;
  /** With pacing by the clock or the room: nobody goes on before the remote guests are ready. */
  readonly waitForRemote: boolean;
  /** The names that were told last: one glass, or all that one tap told. */
  readonly justTold: readonly PourId[];
  readonly screen: ScreenShows;
  /** What guests choose from when they guess a blind glass, as it was drawn when the doors opened; null without guesses. */
  readonly guess: GuessSheet | null;
  /** What the room guessed, pour by pour as their names were told. */
  readonly guessesTold: readonly ToldGuesses[];
}

/** What the screens for the whole room show [F8]. */
export type ScreenShows =
  /** What the room does now; in a talk whoever speaks. */
  | { readonly is: 'room' }
  | { readonly is: 'dark' }
  /** The page that the host has chosen, by its id; where it is not there any more, what the room does. */
  | { readonly is: 'page'; readonly page: string };

/** What a discussion was before it was cut to a minute. */
interface TalkBefore {
  readonly cue: CueId;
  readonly ideal: Seconds;
  readonly floor: Seconds;
}

type Clock =
  | { readonly kind: 'running'; readonly endsAt: EpochMs }
  /** Stopped by the host. `remaining` is negative when the cue was already over its time [P4]. */
  | { readonly kind: 'held'; readonly remaining: DurationMs; readonly since: EpochMs };

/** Who may take a seat: anybody with the code, only who the host lets in, or nobody. */
export type Doors = 'open' | 'ask' | 'closed';

export type Signal = 'ready' | 'more-time' | 'needs-host';

/** `nudge` is meant for those who are not ready, and shown to them only. */
export type ReminderKind = 'water' | 'spit' | 'quiet' | 'nudge';

export interface Reminder {
  readonly kind: ReminderKind;
  readonly at: EpochMs;
}

interface Discussion {
  /** Notes are sealed as they stood at this moment [Q3]; it never changes once set. */
  readonly sealedAt: EpochMs;
  readonly open: boolean;
}

export interface Entry {
  readonly cue: CueId;
  readonly at: EpochMs;
  /** Its length as it was when it was entered: a later fit must not change what the room is said to have taken. */
  readonly planned: Seconds;
  /** Who ended the cue before it: what the clock ended says nothing of the room. */
  readonly by: 'host' | 'clock' | 'room';
}

export const unopened: Unopened = { status: 'unopened' };

export function cueNow(session: UnderWay): Cue {
  const cue = session.cues[session.at];
  if (cue === undefined)
    throw new Error(`The session points at cue ${session.at} of ${session.cues.length}.`);
  return cue;
}
