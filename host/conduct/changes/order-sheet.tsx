import { useState } from 'preact/hooks';
import type { PourId } from '../../../core/ids.ts';
import { movePour } from '../../../core/planning/order/manual-order.ts';
import type { HostPour } from '../../../core/session/views/host.ts';
import { changesWords } from '../../../shared/language/en/changes.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { down, up } from '../../../shared/ui/strokes.ts';
import { CoveredName } from '../../evening/covered-name.tsx';
import { codeOf, isCovered } from '../../evening/names-cover.ts';
import { words } from '../../language.ts';
import { type DrawerProps, putAway } from '../drawer.ts';

const said = changesWords.order;

/** The glasses still to come, in the order in which they will; each keeps its number. */
export function OrderSheet({ view, actions, onClose }: DrawerProps) {
  const coming = view.pours.filter(({ movable }) => movable);
  const [asked, setAsked] = useState<readonly PourId[]>(coming.map(({ id }) => id));
  // The room may have come to one of them meanwhile, on another device or by the clock.
  const stands = asked.length === coming.length && coming.every(({ id }) => asked.includes(id));
  const order = stands ? asked : coming.map(({ id }) => id);
  const move = (pour: PourId, by: number): void => {
    setAsked(movePour(order, pour, order.indexOf(pour) + by));
  };
  return (
    <Dialog
      title={said.title}
      onClose={onClose}
      actions={
        <>
          <Button kind="quiet" onPress={onClose}>
            {words.cancel}
          </Button>
          <Button kind="primary" onPress={putAway(onClose, () => actions.reorder(order, coming, said.done))}>
            {said.go}
          </Button>
        </>
      }
    >
      <p>{said.numbers}</p>
      {!stands && <p role="status">{said.moved}</p>}
      <ol class="plain-list">
        {order.map((id, index) => {
          const pour = coming.find((each) => each.id === id);
          return (
            pour && (
              <Row
                key={id}
                pour={pour}
                blind={view.blind}
                first={index === 0}
                last={index === order.length - 1}
                onMove={(by) => move(id, by)}
              />
            )
          );
        })}
      </ol>
    </Dialog>
  );
}

interface RowProps {
  readonly pour: HostPour;
  readonly blind: boolean;
  readonly first: boolean;
  readonly last: boolean;
  readonly onMove: (by: 1 | -1) => void;
}

function Row({ pour, blind, first, last, onMove }: RowProps) {
  const glass = words.cue.glass(pour.position);
  return (
    <li class="glass-row">
      <p class="glass-words">
        <span class="glass-name">
          {glass} · <CoveredName name={pour.name} instead={codeOf(pour)} covered={isCovered(pour, blind)} />
        </span>
      </p>
      <div class="row">
        <Button label={said.up(glass)} disabled={first} onPress={() => onMove(-1)}>
          <Icon of={up} />
        </Button>
        <Button label={said.down(glass)} disabled={last} onPress={() => onMove(1)}>
          <Icon of={down} />
        </Button>
      </div>
    </li>
  );
}
