import type { Drawer, DrawerProps } from '../drawer.ts';
import { CareDrawer } from './care-drawer.tsx';
import { ChangesDrawer } from './changes-drawer.tsx';
import { DoorwayDrawer } from './doorway-drawer.tsx';
import { FinishByDrawer } from './finish-by-drawer.tsx';
import { FinishDrawer } from './finish-drawer.tsx';
import { GlassesDrawer } from './glasses-drawer.tsx';
import { JumpDrawer } from './jump-drawer.tsx';
import { KeysDrawer } from './keys-drawer.tsx';
import { MoreDrawer } from './more-drawer.tsx';
import { PauseDrawer } from './pause-drawer.tsx';
import { RemindDrawer } from './remind-drawer.tsx';
import { SeatDrawer } from './seat-drawer.tsx';
import { WholeTableDrawer } from './whole-table-drawer.tsx';

interface DrawersProps extends DrawerProps {
  readonly drawer: Drawer | null;
}

export function Drawers({ drawer, ...props }: DrawersProps) {
  if (drawer === null) return null;
  switch (drawer.shows) {
    case 'remind':
      return <RemindDrawer {...props} />;
    case 'pause':
      return <PauseDrawer {...props} />;
    case 'glasses':
      return <GlassesDrawer {...props} />;
    case 'doorway':
      return <DoorwayDrawer {...props} />;
    case 'more':
      return <MoreDrawer {...props} />;
    case 'finish':
      return <FinishDrawer {...props} />;
    case 'finish-by':
      return <FinishByDrawer {...props} />;
    case 'keys':
      return <KeysDrawer {...props} />;
    case 'whole-table':
      return <WholeTableDrawer {...props} />;
    case 'swap':
    case 'mend':
    case 'add-pour':
    case 'reorder':
    case 'title':
      return <ChangesDrawer change={drawer} {...props} />;
    case 'care':
      return <CareDrawer seat={drawer.seat} {...props} />;
    case 'seat':
      return <SeatDrawer key={drawer.seat} seat={drawer.seat} {...props} />;
    case 'jump':
      return <JumpDrawer cue={drawer.cue} {...props} />;
    default:
      return drawer satisfies never;
  }
}
