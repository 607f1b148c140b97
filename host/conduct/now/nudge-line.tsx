import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { type EpochMs, epochMs } from '../../../core/units.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { useTick } from '../../../shared/ui/use-tick.ts';
import type { Table } from '../../evening/table.ts';
import { words } from '../../language.ts';
import type { HostActions } from '../actions/host-actions.ts';
import { waitsForLastOnes } from '../table/readiness.ts';

interface NudgeLineProps {
  readonly now: () => EpochMs;
  readonly view: HostUnderWay;
  readonly counts: Table['counts'];
  readonly actions: HostActions;
}

/** Where the host looks when waiting: how many are ready, and a nudge that only the others get and nobody sees of them. */
export function NudgeLine({ now, view, counts, actions }: NudgeLineProps) {
  const endsAt = view.clock.kind === 'running' ? view.clock.endsAt : 0;
  const time = epochMs(useTick(now, { running: true, anchor: endsAt, period: 5000 }));
  if (!waitsForLastOnes(view, counts, time)) return null;
  return (
    <p class="now-waiting">
      {words.readiness.waiting(counts.ready, counts.here)}
      <Button onPress={() => actions.remind('nudge')}>{words.readiness.nudge}</Button>
    </p>
  );
}
