import type { RunningOrderView } from '../../core/session/views/host.ts';
import type { StageView } from '../../core/session/views/stage.ts';
import { wholeHostViewsUntil, wholeStagesUntil } from '../../shared/wire/protocol.ts';
import type { LiveSocket } from './rooms.ts';

/** Whether it is a page of before, which knows fewer kinds of cues than there are. */
export const isOfBefore = ({ data }: LiveSocket): boolean => data.protocol <= wholeHostViewsUntil;
/** Whether it is told of the stage as a whole each time. */
export const hearsWholeStages = ({ data }: LiveSocket): boolean => data.protocol <= wholeStagesUntil;

/**
 * What came later is shown as what it is nearest to: a result is told while everybody talks about these glasses, and only
 * the host goes on.
 */
const asBefore = <Kind extends string>(kind: Kind): Kind | 'discussion' =>
  kind === 'result' ? 'discussion' : kind;

export function stageOfBefore(view: StageView): StageView {
  if (view.status === 'finished') return view;
  const { cue, next } = view;
  return {
    ...view,
    cue: { ...cue, kind: asBefore(cue.kind) },
    next: next && { ...next, kind: asBefore(next.kind) },
  };
}

export const runningOrderOfBefore = (view: RunningOrderView): RunningOrderView => ({
  ...view,
  cues: view.cues.map((cue) => {
    if (cue.kind !== 'result') return cue;
    const { tells: _tells, ...rest } = cue;
    return { ...rest, kind: asBefore(cue.kind) as 'discussion' };
  }),
});
