import type { ComponentChildren } from 'preact';
import type { Cue } from '../../../core/running-order/cue.ts';
import { traitsOf } from '../../../core/running-order/cue-traits.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import type { EpochMs } from '../../../core/units.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { caution } from '../../../shared/ui/notice-strokes.ts';
import type { PresenceView } from '../../../shared/wire/protocol.ts';
import { homeWords, SeatTile } from '../../evening/seat-tile.tsx';
import type { SeatState, Table, TableSeat } from '../../evening/table.ts';
import { words } from '../../language.ts';
import type { HostActions } from '../actions/host-actions.ts';
import type { OpenDrawer } from '../drawer.ts';
import { LagLine } from './lag-line.tsx';
import { ReadinessBar } from './readiness-bar.tsx';

/** Up to here every seat is a target for a thumb; a longer table is for reading, and opens as a whole. */
const mostTiles = 14;

interface TablePanelProps {
  readonly table: Table;
  readonly cue: Cue | undefined;
  readonly view: Pick<HostUnderWay, 'pacing' | 'asksReady' | 'waitForRemote' | 'seats' | 'takesEffectAt'>;
  readonly away: PresenceView['away'];
  /** The server's time. */
  readonly now: () => EpochMs;
  readonly onOpen: OpenDrawer;
  readonly actions: HostActions;
  /** The call with those at home. */
  readonly children: ComponentChildren;
}

/** The table of seats: who wants something first, then everybody in their places. */
export function TablePanel({ table, cue, view, away, now, onOpen, actions, children }: TablePanelProps) {
  const { counts } = table;
  const slim = table.others.length + table.asking.length > mostTiles;
  return (
    <section class="room-table" aria-labelledby="table">
      <header class="table-head">
        <div class="table-words">
          <h2 id="table">{words.table.title}</h2>
          <p class="table-counts">
            <span>{words.table.counts.here(table.room.here, table.room.expected)}</span>
            {cue?.kind === 'ground-rules' && (
              <span>{words.table.counts.rules(counts.groundRules, counts.seated)}</span>
            )}
          </p>
        </div>
        <div class="table-tools">
          <Button onPress={() => onOpen({ shows: 'care', seat: null })}>
            <Icon of={caution} />
            {words.tools.care}
          </Button>
          {(slim || table.gone.length > 0) && (
            <Button onPress={() => onOpen({ shows: 'whole-table' })}>{words.table.everybody}</Button>
          )}
        </div>
      </header>
      <RulesLine table={table} asked={cue?.kind === 'ground-rules'} reading={beforeFirstGlass(cue)} />
      <LagLine view={view} away={away} now={now} />
      <ReadinessBar counts={counts} view={view} gate={cue?.gate === true} slim={slim} />
      <div class="table-body">
        <AskingSeats table={table} slim={slim} onOpen={onOpen} actions={actions} />
        {children}
        {table.others.length + table.asking.length === 0 && <p class="soft">{words.table.nobody}</p>}
        <Tiles seats={table.others.filter(({ seat }) => !seat.remote)} slim={slim} onOpen={onOpen} />
        {table.home.seated > 0 && (
          <AtHome
            table={table}
            kitMatters={beforeFirstGlass(cue)}
            waits={view.waitForRemote && view.asksReady && view.pacing.by !== 'host'}
            slim={slim}
            onOpen={onOpen}
          />
        )}
      </div>
    </section>
  );
}

interface AskingSeatsProps {
  readonly table: Table;
  readonly slim?: boolean | undefined;
  readonly onOpen: OpenDrawer;
  readonly actions: HostActions;
}

/** Who wants something of the host; on a phone, where the table lies below the fold, they stand at the top of the page. */
export function AskingSeats({ table: { asking }, slim = false, onOpen, actions }: AskingSeatsProps) {
  if (asking.length === 0) return null;
  return (
    <ul class={slim ? 'asking asking-slim' : 'asking'}>
      {asking.map((seat) => (
        <Asks key={seat.seat.id} seat={seat} onOpen={onOpen} actions={actions} />
      ))}
    </ul>
  );
}

interface RulesLineProps {
  readonly table: Table;
  /** The room is at the ground rules. */
  readonly asked: boolean;
  /** Before the first glass, while there is time to read. */
  readonly reading: boolean;
}

/** By name, who has not read the cautions [C5], who came late and is reading, and at the rules who has not agreed yet when all but a few have. */
function RulesLine({ table: { asking, others, counts }, asked, reading }: RulesLineProps) {
  const seated = [...asking, ...others].filter(({ seat }) => seat.presence === 'seated');
  const late = seated.filter(({ seat }) => seat.readsRulesFirst);
  const unread = seated.filter(({ seat }) => !seat.cautionsRead && !seat.readsRulesFirst);
  const open = asked && counts.groundRules > 0 ? seated.filter(({ seat }) => !seat.groundRulesAccepted) : [];
  const names = (those: readonly TableSeat[]) => those.map(({ seat }) => seat.name);
  return (
    <>
      {late.length > 0 && <p class="table-rules">{words.table.readsFirst(names(late))}</p>}
      {reading && unread.length > 0 && (
        <p class="table-rules">
          {unread.length <= mostNamed
            ? words.table.notRead(names(unread))
            : words.table.counts.cautions(seated.length - unread.length, seated.length)}
        </p>
      )}
      {open.length > 0 && open.length <= mostNamed && (
        <p class="table-rules">{words.table.notAgreed(names(open))}</p>
      )}
    </>
  );
}

/** More names than this nobody reads at a glance. */
const mostNamed = 5;

interface AtHomeProps {
  readonly table: Table;
  readonly kitMatters: boolean;
  /** The pace of the room waits for those at home [P12]. */
  readonly waits: boolean;
  readonly slim: boolean;
  readonly onOpen: OpenDrawer;
}

/** Those who cannot be seen from here. */
function AtHome({ table: { others, home }, kitMatters, waits, slim, onOpen }: AtHomeProps) {
  const { title, here, ready, kits, waits: roomWaits } = words.table.home;
  return (
    <section class="table-home" aria-labelledby="at-home">
      <header>
        <h3 id="at-home">{title}</h3>
        <p class="table-counts">
          <span>{here(home.here, home.expected)}</span>
          <span>{kitMatters ? kits(home.kits, home.seated) : ready(home.ready)}</span>
          {waits && <strong>{roomWaits}</strong>}
        </p>
      </header>
      <Tiles
        seats={others.filter(({ seat }) => seat.remote)}
        slim={slim}
        saying={(seat) => homeWords(seat, kitMatters)}
        onOpen={onOpen}
      />
    </section>
  );
}

/** A kit is laid out until the first glass is taken up. */
const beforeFirstGlass = (cue: Cue | undefined): boolean =>
  cue !== undefined && (traitsOf(cue).part === 'gathering' || traitsOf(cue).part === 'opening');

interface TilesProps {
  readonly seats: readonly TableSeat[];
  readonly slim: boolean;
  readonly saying?: (seat: TableSeat) => string;
  readonly onOpen: OpenDrawer;
}

/** At a long table, where not all fit: first those whom one looks for. */
const soughtFirst: readonly SeatState[] = ['away', 'tasting', 'ready'];

function Tiles({ seats: all, slim, saying, onOpen }: TilesProps) {
  if (all.length === 0) return null;
  const seats = slim ? soughtFirst.flatMap((sought) => all.filter(({ state }) => state === sought)) : all;
  return (
    <ul class={slim ? 'tiles tiles-slim' : 'tiles'}>
      {seats.map((seat) => (
        <li key={seat.seat.id}>
          {slim ? (
            <SeatTile seat={seat} slim said={saying?.(seat)} />
          ) : (
            <button
              type="button"
              class="bare tile"
              onClick={() => onOpen({ shows: 'seat', seat: seat.seat.id })}
            >
              <SeatTile seat={seat} said={saying?.(seat)} />
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}

interface AsksProps {
  readonly seat: TableSeat;
  readonly onOpen: OpenDrawer;
  readonly actions: HostActions;
}

/** A seat that wants something of the host, with the answer beside it. */
function Asks({ seat, onOpen, actions }: AsksProps) {
  const { id } = seat.seat;
  const atDoor = seat.state === 'at-door';
  return (
    <li class="asks">
      <button type="button" class="bare tile" onClick={() => onOpen({ shows: 'seat', seat: id })}>
        <SeatTile seat={seat} />
      </button>
      <Button
        onPress={() =>
          actions.just(atDoor ? { type: 'AdmitSeat', seat: id } : { type: 'AnswerSeat', seat: id })
        }
      >
        {atDoor ? words.table.letIn : words.table.answered}
      </Button>
    </li>
  );
}
