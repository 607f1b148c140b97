import fc from 'fast-check';
import { cueId, pourId, type SeatId, seatId } from '../../core/ids.ts';
import { glassesToCome } from '../../core/session/arrangement.ts';
import type { Command } from '../../core/session/command.ts';
import { cueNow, type Session } from '../../core/session/state.ts';
import type { Plan } from '../../core/tasting.ts';
import { epochMs, seconds } from '../../core/units.ts';
import { planOf, pourNames } from './plans.ts';

/** Who may sit down in a random evening. */
export const seats = ['ada', 'ben', 'cleo'].map(seatId);
const aSeat = fc.constantFrom(...seats);
const aPour = fc.constantFrom(...pourNames.map(pourId), pourId('nothing'));
const pours = fc.uniqueArray(aPour, { minLength: 1, maxLength: 4 });

/** A command that may or may not fit: the cue it names is the current one most of the time. */
export type Draft = (session: Session) => Command;
const currentCue = (session: Session) =>
  session.status === 'under-way' ? cueNow(session).id : cueId('gathering');
const host =
  (ask: Extract<Command, { by: 'host' }>['ask']): Draft =>
  () => ({ by: 'host', ask });

const drafts = (plan: Plan): fc.Arbitrary<Draft> =>
  fc.oneof(
    {
      weight: 8,
      arbitrary: fc.constant<Draft>((now) => ({
        by: 'host',
        ask: { type: 'Advance', from: currentCue(now) },
      })),
    },
    { weight: 2, arbitrary: fc.constant(host({ type: 'Advance', from: cueId('birch/first/nose') })) },
    {
      weight: 2,
      arbitrary: fc.constant<Draft>((now) => ({
        by: 'host',
        ask: { type: 'GoBack', from: currentCue(now) },
      })),
    },
    {
      weight: 3,
      arbitrary: fc.nat({ max: 200 }).map<Draft>((at) => (now) => {
        const cues = now.status === 'under-way' ? now.cues : [];
        return {
          by: 'host',
          ask: { type: 'JumpTo', cue: cues[at % (cues.length || 1)]?.id ?? cueId('nowhere') },
        };
      }),
    },
    {
      weight: 6,
      arbitrary: fc.constant<Draft>((now) => ({
        by: 'clock',
        ask: { type: 'ExpireCue', cue: currentCue(now) },
      })),
    },
    {
      weight: 3,
      arbitrary: fc.constant<Draft>((now) => ({
        by: 'clock',
        ask: { type: 'WeighRoom', cue: currentCue(now) },
      })),
    },
    fc.constantFrom(
      host({ type: 'OpenDoors', plan }),
      host({ type: 'Hold' }),
      host({ type: 'Resume' }),
      host({ type: 'ClearReminder' }),
      host({ type: 'Finish' }),
      host({ type: 'Reopen' }),
      host({ type: 'UndoFit' }),
      host({ type: 'DropClosingPass' }),
      host({ type: 'RestoreClosingPass' }),
      host({ type: 'ShortenDiscussions' }),
      host({ type: 'RestoreDiscussions' }),
      host({ type: 'WishEnd', endsAt: null }),
    ),
    fc
      .tuple(fc.constantFrom('FitTo', 'WishEnd'), fc.integer({ min: -3600, max: 14_400 }))
      .map(([type, after]) => host({ type, endsAt: epochMs(1_800_000_000_000 + after * 1000) })),
    fc.integer({ min: 5, max: 900 }).map((s) => host({ type: 'GiveTime', seconds: seconds(s) })),
    fc.integer({ min: 30, max: 900 }).map((s) => host({ type: 'CallBreak', seconds: seconds(s) })),
    fc.constantFrom('water', 'spit', 'quiet').map((kind) => host({ type: 'Remind', kind })),
    pours.map((list) => host({ type: 'OpenDiscussion', pours: list })),
    pours.map((list) => host({ type: 'CloseDiscussion', pours: list })),
    pours.map((list) => host({ type: 'Reveal', pours: list })),
    aPour.map<Draft>((pour) => (now) => ({
      by: 'host',
      ask: { type: 'Reveal', pours: [pour], from: currentCue(now) },
    })),
    fc
      .constantFrom({ is: 'room' }, { is: 'dark' }, { is: 'page', page: 'card/ash' })
      .map((shows) => host({ type: 'SteerScreen', shows })),
    aPour.map((pour) => host({ type: 'DropPour', pour })),
    fc
      .tuple(fc.constantFrom('SwapBottle', 'MendPour'), aPour)
      .map(([type, pour]) => host({ type, pour, bottle: { name: `Another ${pour} one` } })),
    fc.integer({ min: 500, max: 503 }).map((code) =>
      host({
        type: 'AddPour',
        pour: pourId(`spare-${code}`),
        drink: 'wine',
        bottle: { name: `Spare ${code} cask` },
        code: String(code),
      }),
    ),
    fc.nat({ max: 8 }).map<Draft>((by) => (now) => {
      const coming = now.status === 'under-way' ? glassesToCome(now) : [];
      return {
        by: 'host',
        ask: { type: 'ReorderGlasses', order: [...coming.slice(by), ...coming.slice(0, by)] },
      };
    }),
    aPour.map((pour) => host({ type: 'RestorePour', pour })),
    fc
      .constantFrom({ by: 'host' } as const, { by: 'clock' } as const, { by: 'room', share: 0.6 } as const)
      .map((pacing) => host({ type: 'ChoosePacing', pacing })),
    fc.constantFrom('open', 'ask', 'closed').map((doors) => host({ type: 'SetDoors', doors })),
    aSeat.map((seat) => host({ type: 'AdmitSeat', seat })),
    aSeat.map((seat) => host({ type: 'RemoveSeat', seat })),
    aSeat.map((seat) => host({ type: 'RestoreSeat', seat })),
    aSeat.map((seat) => host({ type: 'AnswerSeat', seat })),
    aSeat.map((seat) => host({ type: 'StopPouring', seat })),
    aSeat.map((seat) => host({ type: 'ResumePouring', seat })),
    aSeat.map<Draft>((seat) => () => ({
      by: 'newcomer',
      ask: { type: 'TakeSeat', seat, name: seat, leftHanded: false, remote: false },
    })),
    fc
      .tuple(aSeat, fc.constantFrom('ready', 'more-time', 'needs-host', null))
      .map<Draft>(([seat, signal]) => (now) => ({
        by: 'guest',
        seat,
        ask: { type: 'GiveSignal', signal, cue: currentCue(now) },
      })),
    aSeat.map<Draft>((seat) => () => ({ by: 'guest', seat, ask: { type: 'LeaveTable' } })),
    fc.tuple(aSeat, aPour).map<Draft>(([seat, pour]) => () => ({
      by: 'guest',
      seat,
      ask: { type: 'CatchUp', pour },
    })),
  );

export interface StepTaken {
  readonly draft: Draft;
  readonly wait: number;
  readonly hostPresent: boolean;
  readonly present: readonly SeatId[];
}

/** What is asked, by whom, after how long a wait, and who is there then. */
export const steps = (plan: Plan): fc.Arbitrary<StepTaken[]> =>
  fc.array(
    fc.record({
      draft: drafts(plan),
      wait: fc.oneof(fc.nat({ max: 5_000 }), fc.nat({ max: 900_000 })),
      hostPresent: fc.boolean(),
      present: fc.subarray(seats),
    }),
    { minLength: 1, maxLength: 80, size: 'max' },
  );

export const plans = fc
  .record({
    pours: fc.integer({ min: 1, max: 9 }),
    level: fc.constantFrom('newcomers', 'regulars', 'devotees'),
    blind: fc.boolean(),
    discussion: fc.constantFrom('each-pour', 'each-flight', 'at-the-end'),
    ranking: fc.constantFrom('none', 'each-flight', 'at-the-end'),
  })
  .map(({ pours: count, ...more }) => planOf(count, more));

/** What every evening begins with. */
export const opening = (plan: Plan): StepTaken => ({
  draft: host({ type: 'OpenDoors', plan }),
  wait: 0,
  hostPresent: true,
  present: [],
});
