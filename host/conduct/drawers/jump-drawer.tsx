import type { CueId } from '../../../core/ids.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import { say } from '../../../shared/language/en/host-script.ts';
import { sayOf } from '../../../shared/language/host-script.ts';
import { useLazyPart } from '../../../shared/page/lazy-part.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { nameOf, whereOf } from '../../evening/cue-words.ts';
import { words } from '../../language.ts';
import { changesPart } from '../changes/changes-part.ts';
import { type DrawerProps, putAway } from '../drawer.ts';
import { hearers } from '../now/hearers.ts';

interface JumpDrawerProps extends DrawerProps {
  readonly cue: CueId;
}

/** Going to a cue, or changing one that is still to come: how long it lasts, and what is said in it. */
export function JumpDrawer({ cue, ...props }: JumpDrawerProps) {
  const { view, order, actions, onClose } = props;
  const target = order.find(({ id }) => id === cue);
  if (target === undefined) return null;
  const name = nameOf(target, view.pours);
  const coming = order.indexOf(target) > order.findIndex(({ id }) => id === view.cue);
  return (
    <Dialog
      title={words.room.jump.title(name)}
      onClose={onClose}
      close={words.room.jump.stay}
      actions={
        <Button onPress={putAway(onClose, () => actions.jump(target, name, view.cue))}>
          {words.room.jump.go}
        </Button>
      }
    >
      <p class="soft">{whereOf(target, view.pours)}</p>
      <p>{words.room.jump.body}</p>
      {coming && (
        <details class="fold">
          <summary>
            <span class="fold-title">{words.room.jump.change}</span>
          </summary>
          <div class="fold-body">
            <Change {...props} cue={target} name={name} />
          </div>
        </details>
      )}
    </Dialog>
  );
}

function Change({ evening, view, actions, onClose, cue, name }: DrawerProps & { cue: Cue; name: string }) {
  const part = useLazyPart(changesPart);
  if (part === undefined) return <p>{changesPart.failing.value ? words.noAnswer : words.loading}</p>;
  return (
    <part.changes.CueFields
      cue={cue}
      script={sayOf(say, cue, hearers(evening, view, cue, false))}
      onKeep={(changes) => {
        onClose();
        actions.editCue(cue, changes, words.room.jump.changed(name));
      }}
    />
  );
}
