import { later } from '../shared/ui/later.ts';
import { doorsPart, invitePart, paperPart, pouringPart, roomPart } from './evening-parts.ts';
import { tablesPart } from './plan/csv/tables-part.ts';
import { furtherPart } from './plan/further-part.ts';

/**
 * The pages of the host's app, each fetched when it is first asked for: what stands on the first screen comes quickly,
 * and what belongs to an evening under way does not wait for the workshop of the plan.
 */
export const planPart = later(() => import('./plan-room.tsx'));
export const aheadPart = later(() => import('./pre-tasting/pre-tasting-page.tsx'));
export const tastingPart = later(() => import('./evening-pages.tsx'));
export const recapPart = later(() => import('./recap/recap-loader.tsx'));
const beginnings = later(() => import('./home/starting-plan.ts'));

/** In the order in which an evening needs them. */
const all = [
  beginnings,
  tastingPart,
  doorsPart,
  roomPart,
  recapPart,
  planPart,
  furtherPart,
  invitePart,
  pouringPart,
  paperPart,
  aheadPart,
  tablesPart,
];

/**
 * Once the first page stands and the browser has nothing to do: one after another, so that none is waited for, or missing,
 * when the network is poor later. Answers with what stops it.
 */
export function fetchTheRest(): () => void {
  const waiting = [...all];
  let planned: ReturnType<typeof setTimeout> | undefined;
  const next = (): void => {
    const [part] = waiting;
    if (part === undefined) return;
    if (part.now.peek() === undefined) part.fetch();
    else waiting.shift();
    planned = setTimeout(() => whenIdle(next), 200);
  };
  planned = setTimeout(next, 2500);
  return () => clearTimeout(planned);
}

/** Not every browser tells when it is idle. */
const whenIdle = (run: () => void): void => {
  if ('requestIdleCallback' in window) window.requestIdleCallback(run, { timeout: 2000 });
  else run();
};
