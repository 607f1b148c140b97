import { useSignal } from '@preact/signals';
import type { PourId } from '../../../core/ids.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import { placesOf } from '../../evening/cue-words.ts';
import { shownName } from '../../evening/names-cover.ts';
import { words } from '../../language.ts';
import { type DrawerProps, putAway } from '../drawer.ts';
import { unopenedDiscussions } from './unopened-discussions.ts';

/** The end is asked about, and with it what the table talked about without anybody opening the talk. */
export function FinishDrawer({ view, order, actions, onClose }: DrawerProps) {
  const turned = useSignal<ReadonlyMap<PourId, boolean>>(new Map());
  const untasted = view.pours.filter((pour) => !pour.reached && !pour.dropped).length;
  const places = placesOf(view.pours);
  const silent = unopenedDiscussions(view, order).map(({ id, likelyTalked }) => ({
    id,
    on: turned.value.get(id) ?? likelyTalked,
  }));
  const nameOf = (id: PourId): string => {
    const pour = view.pours.find((each) => each.id === id);
    if (pour === undefined) return words.cue.kinds['odd-one-out'];
    return `${words.cue.glass(places.get(id) ?? pour.position)} · ${shownName(pour, view.blind)}`;
  };
  return (
    <Dialog
      title={words.finish.title}
      onClose={onClose}
      close={words.finish.stay}
      actions={
        <Button
          onPress={putAway(onClose, () => actions.finish(silent.filter(({ on }) => on).map(({ id }) => id)))}
        >
          {words.finish.go}
        </Button>
      }
    >
      {untasted > 0 && <p>{words.finish.untasted(untasted)}</p>}
      <p>{words.finish.body}</p>
      <p>{words.finished.home}</p>
      {silent.length > 0 && (
        <fieldset class="stack-tight finish-talks">
          <legend>{words.finish.talked}</legend>
          <p class="soft small">{words.finish.talkedHint}</p>
          {silent.map(({ id, on }) => (
            <Switch
              key={id}
              label={nameOf(id)}
              on={on}
              onTurn={(is) => {
                turned.value = new Map([...turned.value, [id, is]]);
              }}
            />
          ))}
        </fieldset>
      )}
    </Dialog>
  );
}
