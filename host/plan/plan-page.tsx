import './plan.css';
import './figures.css';
import './folds.css';
import './place.css';
import './lineup.css';
import './crowd/crowd.css';
import { PlanLayout } from './plan-layout.tsx';
import { PlanLoader, type PlanLoaderProps } from './plan-loader.tsx';

interface PlanPageProps extends Omit<PlanLoaderProps, 'children'> {
  /** The page begins with a field to paste a list of pours into. */
  readonly paste?: boolean | undefined;
}

/** All parts of one evening's plan. */
export function PlanPage({ paste = false, ...plan }: PlanPageProps) {
  return (
    <main class="page plan">
      <PlanLoader {...plan}>
        {({ editor, stored }) => <PlanLayout editor={editor} stored={stored} api={plan.api} paste={paste} />}
      </PlanLoader>
    </main>
  );
}
