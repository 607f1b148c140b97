import type { SeatId } from '../../../core/ids.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { seatLink } from '../../access/key-link.ts';
import { IssuedLink } from '../../evening/issued-link.tsx';
import { kitWords, stateWords } from '../../evening/seat-tile.tsx';
import { words } from '../../language.ts';
import { type DrawerProps, putAway } from '../drawer.ts';
import { reachableOrigin } from './doorway-drawer.tsx';

interface SeatDrawerProps extends DrawerProps {
  readonly seat: SeatId;
}

/** One guest: their state, a link for another phone, and taking them off the table. */
export function SeatDrawer({ seat: id, evening, table, actions, onOpen, onClose }: SeatDrawerProps) {
  const found = [...table.asking, ...table.others].find(({ seat }) => seat.id === id);
  if (found === undefined) return null;
  const { seat, state } = found;
  return (
    <Dialog
      title={seat.name}
      onClose={onClose}
      close={words.close}
      actions={
        <>
          <Button kind="danger" onPress={putAway(onClose, () => actions.removeSeat(id, seat.name))}>
            {words.table.remove}
          </Button>
          {state === 'at-door' && (
            <Button onPress={putAway(onClose, () => actions.just({ type: 'AdmitSeat', seat: id }))}>
              {words.table.letIn}
            </Button>
          )}
          {seat.signal !== null && (
            <Button onPress={putAway(onClose, () => actions.just({ type: 'AnswerSeat', seat: id }))}>
              {words.table.answer}
            </Button>
          )}
        </>
      }
    >
      <p>{stateWords(found)}</p>
      {seat.presence === 'seated' && (
        <Button onPress={() => onOpen({ shows: 'care', seat: id })}>{words.table.care}</Button>
      )}
      {seat.remote && <p>{kitWords(seat)}</p>}
      {seat.remote && found.roundTrip !== null && <p>{words.table.home.line(Math.round(found.roundTrip))}</p>}
      {state !== 'at-door' && (
        <IssuedLink
          name={words.table.newPhone}
          hint={words.table.newPhoneHint}
          label={words.table.newPhoneLabel(seat.name)}
          issue={() => evening.app.api.issueKey(evening.stored.tasting, { for: 'seat', seat: id })}
          linkOf={(key) => seatLink(reachableOrigin(evening), evening.stored.tasting, key)}
        />
      )}
    </Dialog>
  );
}
