import type { SeatId } from '../../core/ids.ts';
import type { KitItem } from '../../core/session/state.ts';
import type { HostView } from '../../core/session/views/host.ts';
import type { HostSeat } from '../../core/session/views/host-seats.ts';
import type { PresenceView } from '../../shared/wire/protocol.ts';

/** What a host has to see of a seat, most urgent first. */
export type SeatState = 'at-door' | 'needs-host' | 'more-time' | 'away' | 'ready' | 'tasting';

export interface TableSeat {
  readonly seat: HostSeat;
  readonly state: SeatState;
  /** A device of theirs is connected. */
  readonly here: boolean;
  /** Ms to their device and back, as last measured. */
  readonly roundTrip: number | null;
}

export interface Table {
  /** Those who want something of the host, in the order in which it presses. */
  readonly asking: readonly TableSeat[];
  readonly others: readonly TableSeat[];
  /** Those in the room, of those who sit or are still to come. */
  readonly room: { readonly here: number; readonly expected: number };
  /** Those at home, apart: one sees neither their hands nor their glasses. */
  readonly home: {
    readonly seated: number;
    /** Who sits there, and who is still to come. */
    readonly expected: number;
    readonly here: number;
    readonly ready: number;
    /** With everything laid ready. */
    readonly kits: number;
  };
  /** Left or removed; they keep their notes and may come back. */
  readonly gone: readonly HostSeat[];
  readonly counts: {
    readonly seated: number;
    readonly here: number;
    /** Of those who are here. */
    readonly ready: number;
    readonly moreTime: number;
    readonly needHost: number;
    readonly asking: number;
    readonly groundRules: number;
  };
}

const urgency: Readonly<Record<SeatState, number>> = {
  'needs-host': 0,
  'at-door': 1,
  'more-time': 2,
  away: 3,
  ready: 4,
  tasting: 4,
};

const wantsHost = (state: SeatState): boolean => urgency[state] <= urgency['more-time'];

/** Seats keep the order in which they were taken, so that nobody wanders about the table under the host's eye. */
export function tableOf(
  { seats, expected }: Pick<HostView, 'seats' | 'expected'>,
  presence: Pick<PresenceView, 'seats'>,
): Table {
  const connected = new Map<SeatId, number | null>(
    presence.seats.map(({ seat, roundTrip }) => [seat, roundTrip]),
  );
  const all = seats
    .filter((seat) => seat.presence === 'seated' || seat.presence === 'waiting')
    .map((seat): TableSeat => {
      const here = connected.has(seat.id);
      return { seat, state: stateOf(seat, here), here, roundTrip: connected.get(seat.id) ?? null };
    });
  const asking = all
    .filter(({ state }) => wantsHost(state))
    .sort((one, other) => urgency[one.state] - urgency[other.state]);
  const seated = all.filter(({ seat }) => seat.presence === 'seated');
  const home = seated.filter(({ seat }) => seat.remote);
  const room = seated.filter(({ seat }) => !seat.remote);
  return {
    room: { here: room.filter(({ here }) => here).length, expected: Math.max(room.length, expected.room) },
    asking,
    others: all.filter(({ state }) => !wantsHost(state)),
    home: {
      seated: home.length,
      expected: Math.max(home.length, expected.home),
      here: home.filter(({ here }) => here).length,
      ready: home.filter(({ seat, here }) => here && seat.signal === 'ready').length,
      kits: home.filter(({ seat }) => missingKit(seat).length === 0).length,
    },
    gone: seats.filter((seat) => seat.presence === 'left' || seat.presence === 'removed'),
    counts: {
      seated: seated.length,
      here: seated.filter(({ here }) => here).length,
      ready: seated.filter(({ seat, here }) => here && seat.signal === 'ready').length,
      moreTime: seated.filter(({ state }) => state === 'more-time').length,
      needHost: seated.filter(({ state }) => state === 'needs-host').length,
      asking: asking.length,
      groundRules: seated.filter(({ seat }) => seat.groundRulesAccepted).length,
    },
  };
}

/** What a kit at home is made of, in the order in which it is laid out. */
const kit = {
  vials: true,
  lids: true,
  water: true,
  'spit-cup': true,
  'white-paper': true,
} satisfies Record<KitItem, true>;

export const missingKit = ({ kit: laid }: Pick<HostSeat, 'kit'>): KitItem[] =>
  (Object.keys(kit) as KitItem[]).filter((item) => !laid.includes(item));

function stateOf(seat: HostSeat, here: boolean): SeatState {
  if (seat.presence === 'waiting') return 'at-door';
  if (seat.signal === 'needs-host') return 'needs-host';
  if (!here) return 'away';
  if (seat.signal === 'more-time') return 'more-time';
  return seat.signal === 'ready' ? 'ready' : 'tasting';
}
