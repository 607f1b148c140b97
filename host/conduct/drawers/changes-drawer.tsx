import { useLazyPart } from '../../../shared/page/lazy-part.ts';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { words } from '../../language.ts';
import { changesPart } from '../changes/changes-part.ts';
import type { Drawer, DrawerProps } from '../drawer.ts';

interface ChangesDrawerProps extends DrawerProps {
  readonly change: Extract<Drawer, { shows: 'swap' | 'mend' | 'add-pour' | 'reorder' | 'title' }>;
}

/** Another bottle, mended facts, a spare pour, another order: fetched when it is first asked for. */
export function ChangesDrawer({ change, ...props }: ChangesDrawerProps) {
  const part = useLazyPart(changesPart);
  if (part === undefined) {
    return (
      <Dialog title={words.glasses.title} onClose={props.onClose} close={words.close}>
        <p>{changesPart.failing.value ? words.noAnswer : words.loading}</p>
      </Dialog>
    );
  }
  switch (change.shows) {
    case 'swap':
      return <part.changes.SwapSheet key={change.pour} pour={change.pour} {...props} />;
    case 'mend':
      return <part.changes.MendSheet key={change.pour} pour={change.pour} {...props} />;
    case 'add-pour':
      return <part.changes.AddSheet {...props} />;
    case 'reorder':
      return <part.changes.OrderSheet {...props} />;
    case 'title':
      return <part.changes.TitleSheet {...props} />;
    default:
      return change satisfies never;
  }
}
