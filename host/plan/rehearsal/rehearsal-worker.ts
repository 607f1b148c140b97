import '../../../shared/page/missing-methods.ts';
import { rehearse } from '../../../core/running-order/rehearsal-report.ts';
import { seededRandom } from './seeded-random.ts';
import type { FromWorker, ToWorker } from './worker-messages.ts';

/** Plays the evenings beside the page, which stays under the finger meanwhile. One rehearsal, then it is ended. */
const say = (message: FromWorker): void => postMessage(message);

/** Messages of progress; more would only keep the page busy with painting them. */
const tellings = 40;

addEventListener('message', ({ data: { seed, ...ask } }: MessageEvent<ToWorker>) => {
  const playing = rehearse(ask, seededRandom(seed));
  const every = Math.max(1, Math.floor(ask.evenings / tellings));
  for (let step = playing.next(); ; step = playing.next()) {
    if (step.done === true) return say({ is: 'report', report: step.value });
    if (step.value % every === 0) say({ is: 'playing', done: step.value });
  }
});
