import type { TastingId } from '../core/ids.ts';
import { EmptyState } from '../shared/ui/empty-state.tsx';
import type { House } from './house.ts';
import { words } from './language.ts';
import { hrefOf } from './route.ts';

interface PlanRoomProps {
  readonly tasting: TastingId;
  readonly paste: boolean;
  readonly house: House;
}

/** Where the plan page stands: it is registered by being rendered here, with the tasting and the api. */
export function PlanRoom({ tasting }: PlanRoomProps) {
  return (
    <main class="page">
      <EmptyState
        title={words.home.plan}
        action={
          <a class="button button-primary" href={hrefOf({ page: 'doors', tasting })}>
            {words.home.doors}
          </a>
        }
      >
        <p>{words.unplanned}</p>
      </EmptyState>
    </main>
  );
}
