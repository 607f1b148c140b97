import { type EpochMs, epochMs } from '../../core/units.ts';
import { type News, newsBetween, withNews } from './news.ts';
import type { StageUnderWay, StageView } from './views.ts';

/** The version, when the cue takes effect, and what is new beside: its clock counts from that moment. */
export type StageChange = readonly [version: number, at: EpochMs, news?: News];

/** Undefined where only the whole view says it: before the first, and when the evening ends. */
export function stageChangeBetween(from: StageView | undefined, to: StageView): StageChange | undefined {
  if (from?.status !== 'under-way' || to.status !== 'under-way') return undefined;
  const news = newsBetween(counted(from), counted(to));
  // Fields that have gone are told with the whole view.
  if (news !== undefined && !Array.isArray(news)) return undefined;
  return news === undefined ? [to.version, to.takesEffectAt] : [to.version, to.takesEffectAt, news];
}

/** Of an evening under way: of no other there are changes. */
export function withStageChange(was: StageView, [version, takesEffectAt, news]: StageChange): StageView {
  const before = counted(was as StageUnderWay);
  const now = (news === undefined ? before : withNews(before, news)) as typeof before;
  // Its fields stand in the order in which the whole view has them: what is compared by its text is the same text.
  return { ...was, ...now, version, takesEffectAt, clock: shifted(now.clock, takesEffectAt) };
}

/** With its times from the moment at which the cue takes effect, so that most of them are as they were. */
const counted = ({ version: _, takesEffectAt, clock, ...stage }: StageUnderWay) => ({
  ...stage,
  clock: shifted(clock, -takesEffectAt),
});

type Clock = StageUnderWay['clock'];
const shifted = (clock: Clock, by: number): Clock => {
  const startsAt = epochMs(clock.startsAt + by);
  return clock.kind === 'running'
    ? { ...clock, startsAt, endsAt: epochMs(clock.endsAt + by) }
    : { ...clock, startsAt };
};
