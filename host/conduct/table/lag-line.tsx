import type { HostUnderWay } from '../../../core/session/views/host.ts';
import type { EpochMs } from '../../../core/units.ts';
import { useTick } from '../../../shared/ui/use-tick.ts';
import type { PresenceView } from '../../../shared/wire/protocol.ts';
import { words } from '../../language.ts';

/** Ms after which somebody who is not heard of is named. */
const silence = 120_000;
/** A phone in a bad spot comes back within seconds: nobody is named for that. */
const patience = 15_000;

/** Who lags, by name: not heard of for long, or with a screen that still stands on an earlier step. */
export interface Lagging {
  readonly silent: readonly string[];
  readonly behind: readonly string[];
}

/**
 * A device that is connected has the step that the room is at, so that only those that are not can lag. Whether a guest is
 * still writing on an earlier step is nobody's to see [Q1].
 */
export function laggingOf(
  { seats, takesEffectAt }: Pick<HostUnderWay, 'seats' | 'takesEffectAt'>,
  away: NonNullable<PresenceView['away']>,
  now: number,
): Lagging {
  const since = new Map(away.map((each) => [each.seat, each.since]));
  const gone = seats.flatMap(({ id, name, presence }) => {
    const from = presence === 'seated' ? since.get(id) : undefined;
    return from === undefined ? [] : [{ name, from }];
  });
  return {
    silent: gone.filter(({ from }) => now - from >= silence).map(({ name }) => name),
    behind: gone
      .filter(({ from }) => now - from < silence && now - from >= patience && from < takesEffectAt)
      .map(({ name }) => name),
  };
}

interface LagLineProps {
  readonly view: Pick<HostUnderWay, 'seats' | 'takesEffectAt'>;
  readonly away: PresenceView['away'];
  readonly now: () => EpochMs;
}

export function LagLine({ view, away = [], now }: LagLineProps) {
  const time = useTick(now, { running: away.length > 0, anchor: 0, period: 5000 });
  const { silent, behind } = laggingOf(view, away, time);
  return (
    <>
      {silent.length > 0 && <p class="table-rules">{words.table.silent(silent)}</p>}
      {behind.length > 0 && <p class="table-rules">{words.table.behind(behind)}</p>}
    </>
  );
}
