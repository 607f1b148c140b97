import './plan.css';
import './figures.css';
import './folds.css';
import './place.css';
import './lineup.css';
import './crowd/crowd.css';
import { PlanDesk } from './plan-layout.tsx';
import { PlanAtHand, type PlanAtHandProps } from './plan-loader.tsx';

interface PlanPageProps extends Omit<PlanAtHandProps, 'children'> {
  /** The page begins with a field to paste a list of pours into. */
  readonly paste?: boolean | undefined;
}

/** All parts of one evening's plan. */
export function PlanPage({ paste = false, ...plan }: PlanPageProps) {
  return (
    <main class="page plan">
      <PlanAtHand {...plan}>
        {({ desk, stored }) => <PlanDesk desk={desk} stored={stored} api={plan.api} paste={paste} />}
      </PlanAtHand>
    </main>
  );
}
