import type { Cue } from '../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../core/session/views/host.ts';
import { epochMs } from '../../core/units.ts';
import { useTick } from '../../shared/ui/use-tick.ts';
import { timeOfDay, words } from '../language.ts';
import type { Evening } from '../tasting-pages.tsx';
import { clockTimes } from './clock-times.ts';
import { LinkWord } from './link-word.tsx';

interface RoomHeadProps {
  readonly evening: Evening;
  readonly view: HostUnderWay;
  readonly order: readonly Cue[];
}

/** The title, the time on the wall, when it will be over, and whether the link stands. */
export function RoomHead({ evening: { follower }, view, order }: RoomHeadProps) {
  const now = epochMs(useTick(follower.clock.now, { running: true, anchor: 0, period: 10_000 }));
  const link = follower.link.value;
  return (
    <header class="room-head">
      <h1 class="room-title">{view.title === '' ? words.untitled : view.title}</h1>
      <p class="room-times">
        <span class="figures">{timeOfDay(now)}</span>
        <span class="soft"> · {words.room.ends(timeOfDay(clockTimes(order, view, now).ends))}</span>
        {view.pacing.by !== 'host' && <span class="soft"> · {words.room.pacedBy[view.pacing.by]}</span>}
      </p>
      <LinkWord link={link} hosts={follower.presence.value.hosts} />
      {link.status === 'lost' && <p class="room-lost">{words.link.lostLong}</p>}
    </header>
  );
}
