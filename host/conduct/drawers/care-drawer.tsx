import type { SeatId } from '../../../core/ids.ts';
import { useLazyPart } from '../../../shared/page/lazy-part.ts';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { words } from '../../language.ts';
import { carePart } from '../care/care-part.ts';
import type { DrawerProps } from '../drawer.ts';

interface CareDrawerProps extends DrawerProps {
  /** Null while the host has not said who it is. */
  readonly seat: SeatId | null;
}

export function CareDrawer(props: CareDrawerProps) {
  const part = useLazyPart(carePart);
  if (part !== undefined) return <part.CareSheet {...props} />;
  return (
    <Dialog title={words.tools.care} onClose={props.onClose} close={words.close}>
      <p>{carePart.failing.value ? words.noAnswer : words.loading}</p>
    </Dialog>
  );
}
