import { useState } from 'preact/hooks';
import { limits } from '../../../core/tasting.ts';
import { changesWords as said } from '../../../shared/language/en/changes.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { words } from '../../language.ts';
import { type DrawerProps, putAway } from '../drawer.ts';

/** A title that was mistyped, while everybody looks at it. */
export function TitleSheet({ view, actions, onClose }: DrawerProps) {
  const [title, setTitle] = useState(view.title);
  const wanted = title.trim();
  return (
    <Dialog
      title={words.more.mendTitle}
      onClose={onClose}
      close={words.close}
      actions={
        <Button
          kind="primary"
          disabled={wanted === '' || wanted === view.title}
          onPress={putAway(onClose, () => actions.mendTitle(wanted, view.title, said.heading.done))}
        >
          {said.mend.go}
        </Button>
      }
    >
      <p>{said.heading.paper}</p>
      <TextField label={said.heading.label} value={title} maxLength={limits.line} onInput={setTitle} />
    </Dialog>
  );
}
