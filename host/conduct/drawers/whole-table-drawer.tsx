import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { SeatTile } from '../../evening/seat-tile.tsx';
import { words } from '../../language.ts';
import type { DrawerProps } from '../drawer.ts';

/** Every seat as a target for a thumb, and those who are gone with the way back. */
export function WholeTableDrawer({ table, actions, onOpen, onClose }: DrawerProps) {
  return (
    <Dialog title={words.table.title} onClose={onClose} close={words.close}>
      <ul class="tiles">
        {[...table.asking, ...table.others].map((seat) => (
          <li key={seat.seat.id}>
            <button
              type="button"
              class="bare tile"
              onClick={() => onOpen({ shows: 'seat', seat: seat.seat.id })}
            >
              <SeatTile seat={seat} />
            </button>
          </li>
        ))}
      </ul>
      {table.gone.length > 0 && (
        <>
          <h3>{words.table.gone}</h3>
          <ul class="plain-list">
            {table.gone.map((seat) => (
              <li key={seat.id} class="gone">
                <span>
                  <bdi>{seat.name}</bdi>
                  <span class="soft">
                    {' · '}
                    {seat.presence === 'left' ? words.table.left : words.table.takenOff}
                  </span>
                </span>
                <Button onPress={() => actions.just({ type: 'RestoreSeat', seat: seat.id })}>
                  {words.table.restore}
                </Button>
              </li>
            ))}
          </ul>
        </>
      )}
    </Dialog>
  );
}
