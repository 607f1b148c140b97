import type { TastingId } from '../../core/ids.ts';
import { columnsOf, rowsOf } from '../../core/planning/serving/pouring-grid.ts';
import type { Session } from '../../core/session/state.ts';
import type { Plan } from '../../core/tasting.ts';
import type { Call, HelperView } from '../../shared/wire/helper.ts';

import { helpersOf, type LiveServer, type LiveSocket } from './rooms.ts';

const stages = { unopened: 'planned', 'under-way': 'under-way', finished: 'finished' } as const;

/** What helpers are shown, before the doors open too; built field by field [S6]. */
function helperView(plan: Plan, session: Session, version: number): HelperView {
  const seats = session.status === 'unopened' ? [] : Object.values(session.seats);
  return {
    version,
    title: plan.title,
    stage: stages[session.status],
    drink: plan.drink,
    blind: plan.blind,
    named: session.status === 'unopened' ? [] : session.revealed,
    columns: columnsOf(plan),
    rows: rowsOf(plan, seats).map(({ place, name, leftHanded, onlyWater, glasses }) => ({
      place,
      name,
      leftHanded,
      onlyWater,
      glasses: [...glasses],
    })),
    calls: session.status === 'under-way' ? callsIn(session) : [],
  };
}

/** Who asks for somebody, those who need them before those who want time; guests who have gone ask for nothing. */
function callsIn({ seats, signals }: Extract<Session, { status: 'under-way' }>): Call[] {
  const calls = Object.values(seats).flatMap(({ id, name, remote, presence }, index): Call[] => {
    const signal = signals[id];
    if (presence !== 'seated' || signal === undefined || signal === 'ready') return [];
    return [{ seat: id, place: index + 1, name, remote, signal }];
  });
  const urgent = ({ signal }: Call) => (signal === 'needs-host' ? 0 : 1);
  return calls.toSorted((one, other) => urgent(one) - urgent(other));
}

/** Where the session stands, and how many events are behind it. */
interface Stands {
  readonly session: Session;
  readonly version: number;
}

interface HelpersParts {
  readonly io: LiveServer;
  readonly tasting: TastingId;
  readonly plan: () => Plan | undefined;
}

/** The devices of helpers: told of a change only where it concerns them. */
export class Helpers {
  readonly #parts: HelpersParts;
  #sent = '';

  constructor(parts: HelpersParts) {
    this.#parts = parts;
  }

  welcome(socket: LiveSocket, standing: Stands): void {
    socket.join(helpersOf(this.#parts.tasting));
    const view = this.#view(standing);
    if (view !== undefined) socket.emit('helper', view);
  }

  show(standing: Stands): void {
    const { io, tasting } = this.#parts;
    const room = helpersOf(tasting);
    const view = io.sockets.adapter.rooms.has(room) ? this.#view(standing) : undefined;
    if (view === undefined) return;
    const text = JSON.stringify({ ...view, version: 0 });
    if (text === this.#sent) return;
    this.#sent = text;
    io.to(room).emit('helper', view);
  }

  #view({ session, version }: Stands): HelperView | undefined {
    const plan = this.#parts.plan();
    return plan && helperView(plan, session, version);
  }
}
