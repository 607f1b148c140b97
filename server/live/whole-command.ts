import type { TastingId } from '../../core/ids.ts';
import type { HostCommand } from '../../core/session/command.ts';
import type { Session } from '../../core/session/state.ts';
import type { Plan } from '../../core/tasting.ts';
import type { SentHostCommand } from '../../shared/wire/commands.ts';
import type { Chance } from '../chance.ts';
import type { Store } from '../store/store.ts';
import { openingDoors } from './habits.ts';
import { resultsOf } from './room-results.ts';

interface WholeCommandParts {
  readonly store: Store;
  readonly chance: Pick<Chance, 'key'>;
  readonly tasting: TastingId;
  /** As it is stored now. */
  readonly plan: Plan | undefined;
}

/**
 * A host's command with what no device can send: the plan as it is stored, and what the notebooks say of a result, which is
 * reckoned here and at no other time [R1]. Undefined where there is no plan.
 */
export async function wholeCommand(
  ask: SentHostCommand,
  { store, chance, tasting, plan }: WholeCommandParts,
  session: Session,
): Promise<HostCommand | undefined> {
  switch (ask.type) {
    case 'OpenDoors':
      return openingDoors(plan, store, chance.key(), store.tastings.find(tasting)?.house);
    case 'TellResult':
      return { ...ask, parts: resultsOf(store, tasting, session, ask.cue) };
    default:
      return ask;
  }
}
