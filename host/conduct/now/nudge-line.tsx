import type { Cue } from '../../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { type EpochMs, epochMs } from '../../../core/units.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { useTick } from '../../../shared/ui/use-tick.ts';
import type { Table } from '../../evening/table.ts';
import { words } from '../../language.ts';
import type { Conducting } from '../actions/host-actions.ts';
import { waitsForLastOnes } from '../table/readiness.ts';

interface LastOnesProps {
  readonly now: () => EpochMs;
  readonly view: HostUnderWay;
  readonly cue: Cue;
  readonly counts: Table['counts'];
  readonly conducting: Conducting;
}

/** Where the host looks when waiting: how many are ready, and a nudge that only the others get and nobody sees of them. */
export function LastOnes({ now, view, cue, counts, conducting }: LastOnesProps) {
  const endsAt = view.clock.kind === 'running' ? view.clock.endsAt : 0;
  const time = epochMs(useTick(now, { running: true, anchor: endsAt, period: 5000 }));
  if (!waitsForLastOnes(view, cue, counts, time)) return null;
  return (
    <p class="now-waiting">
      {words.readiness.waiting(counts.ready, counts.here)}
      <Button onPress={() => conducting.remind('nudge')}>{words.readiness.nudge}</Button>
    </p>
  );
}
