import { Dialog } from '../../../shared/ui/dialog.tsx';
import { words } from '../../language.ts';
import type { DrawerProps } from '../drawer.ts';

export function KeysDrawer({ onClose }: Pick<DrawerProps, 'onClose'>) {
  return (
    <Dialog title={words.keys.title} onClose={onClose} close={words.close}>
      <dl class="keys">
        {words.keys.list.map(({ keys, does }) => (
          <div key={does}>
            <dt>
              {keys.map((key) => (
                <kbd key={key}>{key}</kbd>
              ))}
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <p class="soft">{words.keys.remote}</p>
    </Dialog>
  );
}
