import { type Cue, pourOf } from '../../../core/running-order/cue.ts';
import type { HostView } from '../../../core/session/views/host.ts';
import type { Drink } from '../../../core/tasting.ts';
import { placesOf } from '../../evening/cue-words.ts';
import type { EveningContext } from '../../evening/evening-context.ts';

/** Who listens: the crowd of the plan, and the drink in hand, or the evening's own. */
export function hearers(
  { stored: { plan } }: Pick<EveningContext, 'stored'>,
  view: Pick<HostView, 'pours' | 'blind'>,
  cue: Cue,
  silent: boolean,
) {
  const pour = pourOf(cue);
  const drink: Drink = plan.pours.find(({ id }) => id === pour)?.drink ?? plan.drink;
  const glass = pour === undefined ? 1 : (placesOf(view.pours).get(pour) ?? 1);
  const round =
    'pours' in cue ? view.pours.filter(({ id, dropped }) => cue.pours.includes(id) && !dropped) : [];
  const named = view.blind && round.length > 0 && round.every(({ revealed }) => revealed);
  return { drink, level: plan.level, glass, silent, named };
}
