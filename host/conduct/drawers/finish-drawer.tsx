import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { words } from '../../language.ts';
import type { DrawerProps } from '../drawer.ts';

export function FinishDrawer({ view, conducting, onClose }: DrawerProps) {
  const untasted = view.pours.filter((pour) => !pour.reached && !pour.dropped).length;
  return (
    <Dialog
      title={words.finish.title}
      onClose={onClose}
      actions={
        <>
          <Button
            onPress={() => {
              onClose();
              conducting.just({ type: 'Finish' });
            }}
          >
            {words.finish.go}
          </Button>
          <Button kind="primary" onPress={onClose}>
            {words.finish.stay}
          </Button>
        </>
      }
    >
      {untasted > 0 && <p>{words.finish.untasted(untasted)}</p>}
      <p>{words.finish.body}</p>
      <p>{words.finished.home}</p>
    </Dialog>
  );
}
