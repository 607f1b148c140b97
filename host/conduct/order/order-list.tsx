import { useEffect, useRef, useState } from 'preact/hooks';
import type { Cue } from '../../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { type EpochMs, epochMs } from '../../../core/units.ts';
import { useTick } from '../../../shared/ui/use-tick.ts';
import { placesOf, verbOf } from '../../evening/cue-words.ts';
import { shownName } from '../../evening/names-cover.ts';
import { clockFigures, words } from '../../language.ts';
import type { OpenDrawer } from '../drawer.ts';
import { timetableOf } from '../pace/timetable.ts';
import { type Stretch, stretchesOf } from './stretches.ts';

interface OrderListProps {
  readonly view: HostUnderWay;
  readonly order: readonly Cue[];
  readonly now: () => EpochMs;
  readonly onOpen: OpenDrawer;
}

/** The whole evening as a slim list: a line for each glass, its steps when it is unfolded, each with its time. */
export function OrderList({ view, order, now, onOpen }: OrderListProps) {
  const time = epochMs(useTick(now, { running: true, anchor: 0, period: 10_000 }));
  const { starts } = timetableOf(order, view, time);
  const here = useRef<HTMLLIElement>(null);
  const [unfolded, setUnfolded] = useState<string | null>(null);
  const passed = new Set(
    order
      .slice(
        0,
        order.findIndex(({ id }) => id === view.cue),
      )
      .map(({ id }) => id),
  );
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    setUnfolded(null);
    const row = here.current;
    const box = list.current;
    // Only the list scrolls to where the room is; the page under the thumb stands still.
    if (row && box) box.scrollTop = row.offsetTop - box.clientHeight / 3;
  }, [view.cue]);

  return (
    <nav class="room-order" aria-label={words.room.order}>
      <ol class="order" ref={list}>
        {stretchesOf(order).map((stretch) => {
          const current = stretch.cues.some(({ id }) => id === view.cue);
          const folds = stretch.of !== 'cue';
          const open = folds && (current || unfolded === stretch.id);
          const first = stretch.cues[0];
          const last = stretch.cues.at(-1);
          return (
            <li key={stretch.id} class="order-stretch" ref={current && !folds ? here : null}>
              {folds ? (
                <button
                  type="button"
                  class={rowClass(current, last !== undefined && passed.has(last.id))}
                  aria-expanded={open}
                  onClick={() => setUnfolded(open ? null : stretch.id)}
                >
                  <Row time={first && starts.get(first.id)} name={nameFor(stretch, view)} />
                </button>
              ) : (
                <CueRow
                  cue={stretch.cue}
                  name={nameFor(stretch, view)}
                  time={starts.get(stretch.cue.id)}
                  current={current}
                  passed={passed.has(stretch.cue.id)}
                  onOpen={onOpen}
                />
              )}
              {open && (
                <ol class="order-steps">
                  {stretch.cues.map((cue) => (
                    <li key={cue.id} ref={cue.id === view.cue ? here : null}>
                      <CueRow
                        cue={cue}
                        name={verbOf(cue)}
                        time={starts.get(cue.id)}
                        current={cue.id === view.cue}
                        passed={passed.has(cue.id)}
                        onOpen={onOpen}
                      />
                    </li>
                  ))}
                </ol>
              )}
            </li>
          );
        })}
      </ol>
    </nav>
  );
}

const rowClass = (current: boolean, passed: boolean): string =>
  ['bare', 'order-row', current && 'order-current', passed && 'order-passed'].filter(Boolean).join(' ');

function nameFor(stretch: Stretch, { pours, blind }: Pick<HostUnderWay, 'pours' | 'blind'>): string {
  switch (stretch.of) {
    case 'glass': {
      const place = placesOf(pours).get(stretch.pour);
      const pour = pours.find(({ id }) => id === stretch.pour);
      return [
        ...(place === undefined ? [] : [String(place)]),
        ...(pour ? [shownName(pour, blind)] : []),
      ].join(' · ');
    }
    case 'practice':
      return words.cue.practiceAll;
    case 'cue':
      return verbOf(stretch.cue);
    default:
      return stretch satisfies never;
  }
}

interface CueRowProps {
  readonly cue: Cue;
  readonly name: string;
  readonly time: EpochMs | undefined;
  readonly current: boolean;
  readonly passed: boolean;
  readonly onOpen: OpenDrawer;
}

function CueRow({ cue, name, time, current, passed, onOpen }: CueRowProps) {
  return (
    <button
      type="button"
      class={rowClass(current, passed)}
      aria-current={current ? 'step' : undefined}
      onClick={() => {
        if (!current) onOpen({ shows: 'jump', cue: cue.id });
      }}
    >
      <Row time={time} name={name} now={current} />
    </button>
  );
}

interface RowProps {
  readonly time: EpochMs | undefined;
  readonly name: string;
  readonly now?: boolean;
}

function Row({ time, name, now }: RowProps) {
  return (
    <>
      <span class="order-time figures">{time === undefined ? '' : clockFigures(time)}</span>
      <bdi class="order-name">{name}</bdi>
      {now && <span class="order-now">{words.room.now}</span>}
    </>
  );
}
