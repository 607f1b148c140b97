import type { Cue } from '../../core/running-order/cue.ts';
import type { Pacing } from '../../core/tasting.ts';
import { Button } from '../../shared/ui/button.tsx';
import { words } from '../language.ts';
import type { Conducting } from './conducting.ts';
import type { OpenDrawer } from './drawer.ts';
import { Readiness } from './readiness.tsx';
import { SeatTile } from './seat-tile.tsx';
import type { Table, TableSeat } from './table.ts';

/** Up to here every seat is a target for a thumb; a longer table is for reading, and opens as a whole. */
const mostTiles = 14;

interface TablePanelProps {
  readonly table: Table;
  readonly cue: Cue | undefined;
  readonly pacing: Pacing;
  readonly onOpen: OpenDrawer;
  readonly conducting: Conducting;
}

/** The table of seats: who wants something first, then everybody in their places. */
export function TablePanel({ table, cue, pacing, onOpen, conducting }: TablePanelProps) {
  const { counts } = table;
  const slim = table.others.length + table.asking.length > mostTiles;
  return (
    <section class="room-table" aria-labelledby="table">
      <header class="table-head">
        <div class="table-words">
          <h2 id="table">{words.table.title}</h2>
          <p class="table-counts">
            <span>{words.table.counts.here(counts.here, counts.seated)}</span>
            {cue?.kind === 'ground-rules' && (
              <span>{words.table.counts.rules(counts.groundRules, counts.seated)}</span>
            )}
          </p>
        </div>
        {(slim || table.gone.length > 0) && (
          <Button onPress={() => onOpen({ shows: 'whole-table' })}>{words.table.everybody}</Button>
        )}
      </header>
      <Readiness counts={counts} cue={cue} pacing={pacing} slim={slim} />
      <div class="table-body">
        {table.asking.length > 0 && (
          <ul class={slim ? 'asking asking-slim' : 'asking'}>
            {table.asking.map((seat) => (
              <Asks key={seat.seat.id} seat={seat} onOpen={onOpen} conducting={conducting} />
            ))}
          </ul>
        )}
        {table.others.length + table.asking.length === 0 && <p class="soft">{words.table.nobody}</p>}
        {slim ? (
          <ul class="tiles tiles-slim">
            {table.others.map((seat) => (
              <li key={seat.seat.id}>
                <SeatTile seat={seat} slim />
              </li>
            ))}
          </ul>
        ) : (
          <ul class="tiles">
            {table.others.map((seat) => (
              <li key={seat.seat.id}>
                <button
                  type="button"
                  class="tile"
                  onClick={() => onOpen({ shows: 'seat', seat: seat.seat.id })}
                >
                  <SeatTile seat={seat} />
                </button>
              </li>
            ))}
          </ul>
        )}
      </div>
    </section>
  );
}

interface AsksProps {
  readonly seat: TableSeat;
  readonly onOpen: OpenDrawer;
  readonly conducting: Conducting;
}

/** A seat that wants something of the host, with the answer beside it. */
function Asks({ seat, onOpen, conducting }: AsksProps) {
  const { id } = seat.seat;
  const atDoor = seat.state === 'at-door';
  return (
    <li class="asks">
      <button type="button" class="tile" onClick={() => onOpen({ shows: 'seat', seat: id })}>
        <SeatTile seat={seat} />
      </button>
      <Button
        onPress={() =>
          conducting.just(atDoor ? { type: 'AdmitSeat', seat: id } : { type: 'AnswerSeat', seat: id })
        }
      >
        {atDoor ? words.table.letIn : words.table.answered}
      </Button>
    </li>
  );
}
