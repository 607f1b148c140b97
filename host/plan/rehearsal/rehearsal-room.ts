import { type ReadonlySignal, signal } from '@preact/signals';
import { type Habits, noHabits } from '../../../core/running-order/forecast.ts';
import type { RehearsalReport } from '../../../core/running-order/rehearsal-report.ts';
import type { Plan } from '../../../core/tasting.ts';
import type { FromWorker, ToWorker } from './worker-messages.ts';

type Rehearsing =
  | { readonly is: 'idle' }
  | { readonly is: 'playing'; readonly done: number; readonly of: number }
  | { readonly is: 'reported'; readonly report: RehearsalReport; readonly plan: Plan }
  | { readonly is: 'failed' };

/** The part of a Worker that is used, so that a test can stand in for one. */
export interface Player {
  onmessage: ((event: { readonly data: FromWorker }) => void) | null;
  onerror: (() => void) | null;
  postMessage(ask: ToWorker): void;
  terminate(): void;
}

export interface RehearsalRoom {
  readonly state: ReadonlySignal<Rehearsing>;
  /** @param wished seconds from the opening of the doors */
  start(plan: Plan, wished: number, habits?: Habits): void;
  cancel(): void;
}

/** Enough that a share is known to within five in a hundred (two standard errors of a half: 1/√400). */
export const eveningsPlayed = 400;
const seed = 1;

const ownWorker = (): Player =>
  new Worker(new URL('./rehearsal-worker.ts', import.meta.url), { type: 'module' }) as unknown as Player;

export function createRehearsalRoom(hire: () => Player = ownWorker): RehearsalRoom {
  const state = signal<Rehearsing>({ is: 'idle' });
  let player: Player | undefined;
  const end = (last: Rehearsing): void => {
    player?.terminate();
    player = undefined;
    state.value = last;
  };
  return {
    state,
    start(plan, wished, habits = noHabits) {
      end({ is: 'playing', done: 0, of: eveningsPlayed });
      try {
        player = hire();
      } catch {
        return end({ is: 'failed' });
      }
      player.onmessage = ({ data }) => {
        if (data.is === 'report') end({ is: 'reported', report: data.report, plan });
        else state.value = { is: 'playing', done: data.done, of: eveningsPlayed };
      };
      player.onerror = () => end({ is: 'failed' });
      player.postMessage({ plan, evenings: eveningsPlayed, wished, habits, seed });
    },
    cancel: () => end({ is: 'idle' }),
  };
}
