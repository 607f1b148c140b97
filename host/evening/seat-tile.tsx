import type { HostSeat } from '../../core/session/views/host-seats.ts';
import { Icon } from '../../shared/ui/icon.tsx';
import { clock, glass, hand, ready, unlock } from '../../shared/ui/strokes.ts';
import { words } from '../language.ts';
import { missingKit, type SeatState, type TableSeat } from './table.ts';

const marks: Readonly<Record<SeatState, string | undefined>> = {
  'at-door': unlock,
  'needs-host': hand,
  'more-time': clock,
  away: undefined,
  ready,
  tasting: glass,
};

interface SeatTileProps {
  readonly seat: TableSeat;
  /** One line only, for a long table; the whole of it stands in the list of the table. */
  readonly slim?: boolean | undefined;
  /** Said in place of the usual words. */
  readonly said?: string | undefined;
}

/** A seat at a glance: its name, and its state by shape and word. */
export function SeatTile({ seat: { seat, state }, slim, said }: SeatTileProps) {
  const mark = marks[state];
  return (
    <span class={`seat seat-${state}${slim ? ' seat-slim' : ''}`}>
      {slim && state === 'tasting' ? null : mark === undefined ? (
        <span class="seat-hollow" aria-hidden="true" />
      ) : (
        <Icon of={mark} />
      )}
      <span class="seat-words">
        <bdi class="seat-name">{seat.name}</bdi>
        <span class={slim ? 'visually-hidden' : 'seat-state'}>{said ?? stateWords({ seat, state })}</span>
      </span>
    </span>
  );
}

/** All there is to say of a seat, the most important first. */
export function stateWords({ seat, state }: Pick<TableSeat, 'seat' | 'state'>): string {
  const facts = [
    ...(seat.onlyWater ? [words.table.onlyWater] : []),
    ...(seat.remote ? [words.table.remote] : []),
    ...(seat.leftHanded ? [words.table.leftHanded] : []),
    ...(seat.missed > 0 ? [words.table.missed(seat.missed)] : []),
  ];
  // Somebody at home is not `here`, and whoever has something to be said of them is here all the same.
  return (state === 'tasting' && facts.length > 0 ? facts : [words.table.states[state], ...facts]).join(
    ' · ',
  );
}

/** Ms there and back from which on a line is worth the host's knowing: an answer then comes after a pause. */
const slowLine = 300;

/** Of somebody at home: their state, their kit until it is in use, and a line that is slow. What is missing stands in their drawer. */
export function homeWords({ seat, state, roundTrip }: TableSeat, kitMatters: boolean): string {
  return [
    words.table.states[state],
    ...(seat.onlyWater ? [words.table.onlyWater] : []),
    ...(kitMatters ? [shortKitWords(seat)] : []),
    ...(seat.missed > 0 ? [words.table.missed(seat.missed)] : []),
    ...(roundTrip !== null && roundTrip >= slowLine ? [words.table.home.slow] : []),
  ].join(' · ');
}

function shortKitWords(seat: Pick<HostSeat, 'kit'>): string {
  return missingKit(seat).length > 2 ? words.table.home.kitNotReady : kitWords(seat);
}

export function kitWords(seat: Pick<HostSeat, 'kit'>): string {
  const missing = missingKit(seat).map((item) => words.table.home.items[item]);
  return missing.length === 0 ? words.table.home.kitReady : words.table.home.kitMisses(missing);
}
