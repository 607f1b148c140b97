import type { TastingId } from '../core/ids.ts';
import type { House } from './app-context.ts';
import { PlanPage } from './plan/plan-page.tsx';

interface PlanRoomProps {
  readonly tasting: TastingId;
  /** The page begins with a field to paste a list of pours into. */
  readonly paste: boolean;
  readonly house: House;
}

/** Where the plan page stands in the host's app. */
export function PlanRoom({ tasting, paste, house }: PlanRoomProps) {
  return (
    <PlanPage
      tasting={tasting}
      api={house.api}
      paste={paste}
      status={house.status}
      onWrongKey={house.askForLink}
    />
  );
}
