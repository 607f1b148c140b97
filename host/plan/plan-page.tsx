import './plan.css';
import './figures.css';
import './folds.css';
import './place.css';
import './lineup.css';
import './crowd/crowd.css';
import type { TastingId } from '../../core/ids.ts';
import type { AppContext } from '../app-context.ts';
import { PlanLayout } from './plan-layout.tsx';
import { PlanLoader } from './plan-loader.tsx';

interface PlanPageProps {
  readonly tasting: TastingId;
  /** Of the address: the part that is open. */
  readonly part: string | undefined;
  readonly app: AppContext;
}

/** All parts of one evening's plan. */
export function PlanPage({ tasting, part, app }: PlanPageProps) {
  return (
    <PlanLoader tasting={tasting} app={app}>
      {({ editor, stored }) => (
        <main class="page plan">
          <PlanLayout editor={editor} stored={stored} api={app.api} part={part} />
        </main>
      )}
    </PlanLoader>
  );
}
