import type { Cue } from '../../../core/running-order/cue.ts';
import type { ForecastTime } from '../../../core/running-order/forecast.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { type EpochMs, epochMs } from '../../../core/units.ts';
import { setAsideWords } from '../../../shared/language/en/set-aside.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { clock } from '../../../shared/ui/strokes.ts';
import { useTick } from '../../../shared/ui/use-tick.ts';
import { ConnectionStatus } from '../../evening/connection-status.tsx';
import type { EveningContext } from '../../evening/evening-context.ts';
import { timeOfDay, words } from '../../language.ts';
import type { OpenDrawer } from '../drawer.ts';
import { endRange } from './end-range.ts';
import { timetableOf } from './timetable.ts';
import { latenessOf } from './wished-end.ts';

interface RoomHeadProps {
  readonly evening: EveningContext;
  readonly view: HostUnderWay;
  readonly order: readonly Cue[];
  readonly onOpen: OpenDrawer;
}

/** The title, the time on the wall, when it will be over, and whether the link stands. */
export function RoomHead({ evening: { follower }, view, order, onOpen }: RoomHeadProps) {
  const now = epochMs(useTick(follower.clock.now, { running: true, anchor: 0, period: 10_000 }));
  const link = follower.link.value;
  return (
    <header class="room-head">
      <h1 class="room-title">{view.title === '' ? words.untitled : view.title}</h1>
      <p class="room-times">
        <span class="figures">{timeOfDay(now)}</span>
        {view.pacing.by !== 'host' && <span class="soft small">{words.room.pacedBy[view.pacing.by]}</span>}
      </p>
      <div class="room-end">
        <Button kind="quiet" onPress={() => onOpen({ shows: 'finish-by' })}>
          <Icon of={clock} />
          <EndWords end={timetableOf(order, view, now).end} wished={view.wishedEnd} />
          <span class="visually-hidden">{words.pace.open}</span>
        </Button>
      </div>
      <ConnectionStatus link={link} hosts={follower.presence.value.hosts} />
      {follower.lostEnd.value > 0 && <p class="room-lost">{setAsideWords.lostEnd(follower.lostEnd.value)}</p>}
      {link.status === 'lost' && <p class="room-lost">{words.link.lostLong}</p>}
    </header>
  );
}

/** The end as a range, and how it stands to the wished one: said as soon as it can be known, and never shouted. */
function EndWords({ end, wished }: { readonly end: ForecastTime; readonly wished: EpochMs | null }) {
  return (
    <span class="end-words">
      <span class="figures">{endRange(end)}. </span>
      {wished !== null && <EndAgainst end={end} wished={wished} />}
    </span>
  );
}

function EndAgainst({ end, wished }: { readonly end: ForecastTime; readonly wished: EpochMs }) {
  const lateness = latenessOf(end, wished);
  const time = timeOfDay(wished);
  switch (lateness.is) {
    case 'in-time':
      return <span class="end-against">{words.pace.inTime(time)}. </span>;
    case 'tight':
      return <span class="end-against">{words.pace.tight(lateness.minutes, time)}. </span>;
    case 'late':
      return <strong class="end-against">{words.pace.late(lateness.minutes, time)}. </strong>;
    default:
      return lateness satisfies never;
  }
}
