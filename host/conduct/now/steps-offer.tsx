import { useState } from 'preact/hooks';
import { type Cue, pourOf } from '../../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { words } from '../../language.ts';
import type { HostActions } from '../actions/host-actions.ts';
import { giveHint, hintsGiven } from './first-hints.ts';

interface StepsOfferProps {
  readonly view: HostUnderWay;
  readonly order: readonly Cue[];
  readonly actions: HostActions;
}

/** Offered once, when the first glass is behind the room: from then on its steps may run by themselves. */
export function StepsOffer({ view, order, actions }: StepsOfferProps) {
  const [answered, setAnswered] = useState(() => hintsGiven().has('steps-run'));
  if (answered || view.pacing.by !== 'host' || !endsFirstGlass(view, order)) return null;
  const answer = (run: boolean): void => {
    giveHint('steps-run');
    setAnswered(true);
    if (run) actions.letStepsRun(true);
  };
  const said = words.room.steps;
  return (
    <p class="now-waiting">
      {said.offer}
      <Button onPress={() => answer(true)}>{said.yes}</Button>
      <Button kind="quiet" onPress={() => answer(false)}>
        {said.no}
      </Button>
    </p>
  );
}

/** The last cue of the only glass that the room has been at. */
export function endsFirstGlass(
  { cue: here, next, timeline }: Pick<HostUnderWay, 'cue' | 'next' | 'timeline'>,
  order: readonly Cue[],
): boolean {
  const pours = new Map(order.map((cue) => [cue.id, pourOf(cue)]));
  const glass = pours.get(here);
  const entered = new Set(timeline.flatMap(({ cue }) => pours.get(cue) ?? []));
  return glass !== undefined && entered.size === 1 && (next === null || pours.get(next) !== glass);
}
