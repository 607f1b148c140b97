import type { RehearsalReport, RehearsalTask } from '../../../core/running-order/rehearsal-report.ts';

/** What passes between the page and the worker that plays the evenings. */
export interface ToWorker extends RehearsalTask {
  /** The same seed gives the same evenings, so that a plan gets the same report every time. */
  readonly seed: number;
}

export type FromWorker =
  | { readonly is: 'playing'; readonly done: number }
  | { readonly is: 'report'; readonly report: RehearsalReport };
