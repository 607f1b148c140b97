import type { ComponentType } from 'preact';
import { type LazyPart, lazyComponent, lazyPart } from '../shared/page/lazy-part.ts';
import { carePart } from './conduct/care/care-part.ts';
import { changesPart } from './conduct/changes/changes-part.ts';
import { resultPart } from './conduct/now/result-part.ts';
import { storyPart } from './conduct/story/story-part.ts';
import { words } from './language.ts';
import { LoadingPage } from './loading-page.tsx';
import { tablesPart } from './plan/csv/tables-part.ts';
import { furtherPart } from './plan/further-part.ts';
import type { TastingRoute } from './route.ts';

/**
 * The pages of the host's app, each fetched when it is first asked for: what stands on the first screen comes quickly,
 * and what belongs to an evening under way does not wait for the workshop of the plan.
 */
const plan = lazyPart(() => import('./plan/plan-page.tsx'));
const preTasting = lazyPart(() => import('./pre-tasting/pre-tasting-page.tsx'));
const recap = lazyPart(() => import('./recap/recap-loader.tsx'));
const evening = lazyPart(() => import('./evening-pages.tsx'));
const doors = lazyPart(() => import('./set-up/doors-page.tsx'));
const room = lazyPart(() => import('./conduct/room-page.tsx'));
const invite = lazyPart(() => import('./invite/invite-page.tsx'));
const pouring = lazyPart(() => import('./pouring/pouring-page.tsx'));
const helper = lazyPart(() => import('./pouring/helper-page.tsx'));
const print = lazyPart(() => import('./print/paper-page.tsx'));
const startingPlan = lazyPart(() => import('./home/starting-plan.ts'));

const Waiting = ({ part }: { readonly part: LazyPart<unknown> }) => (
  <LoadingPage failed={part.failing.value ? words.noAnswer : undefined} onRetry={part.again} />
);
const page = <Part, Props extends object>(part: LazyPart<Part>, pick: (part: Part) => ComponentType<Props>) =>
  lazyComponent(part, pick, Waiting);

export const PlanPage = page(plan, (part) => part.PlanPage);
export const PreTastingPage = page(preTasting, (part) => part.PreTastingPage);
export const RecapLoader = page(recap, (part) => part.RecapLoader);
export const EveningPages = page(evening, (part) => part.EveningPages);
export const DoorsPage = page(doors, (part) => part.DoorsPage);
export const RoomPage = page(room, (part) => part.RoomPage);
export const InvitePage = page(invite, (part) => part.InvitePage);
export const PouringPage = page(pouring, (part) => part.PouringPage);
export const HelperPage = page(helper, (part) => part.HelperPage);
export const PaperPage = page(print, (part) => part.PaperPage);

const ofEvening = { doors, room, invite, pouring, print } satisfies Record<
  TastingRoute['page'],
  LazyPart<unknown>
>;
/** Fetches a page of an evening at once, and not only when what it stands in has come. */
export const fetchEveningPage = (name: TastingRoute['page']): void => ofEvening[name].fetch();

/** In the order in which an evening needs them. */
const all: readonly LazyPart<unknown>[] = [
  startingPlan,
  evening,
  doors,
  room,
  carePart,
  changesPart,
  resultPart,
  storyPart,
  recap,
  plan,
  furtherPart,
  invite,
  pouring,
  print,
  preTasting,
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
