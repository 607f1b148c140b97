import type { TastingId } from '../core/ids.ts';
import type { AppContext } from './app-context.ts';
import { PlanPage } from './plan/plan-page.tsx';

interface PlanRoomProps {
  readonly tasting: TastingId;
  /** The page begins with a field to paste a list of pours into. */
  readonly paste: boolean;
  readonly app: AppContext;
}

/** Where the plan page stands in the host's app. */
export function PlanRoom({ tasting, paste, app }: PlanRoomProps) {
  return (
    <PlanPage tasting={tasting} api={app.api} paste={paste} status={app.status} onWrongKey={app.askForLink} />
  );
}
