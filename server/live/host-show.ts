import type { TastingId } from '../../core/ids.ts';
import type { Finished, UnderWay } from '../../core/session/state.ts';
import { hostView, type RoomView, roomView, runningOrderView } from '../../core/session/views/host.ts';
import { type HostSeat, type HostSeats, hostSeats } from '../../core/session/views/host-seats.ts';
import { changeBetween } from '../../shared/wire/parts.ts';
import { hostsOf, hostsOfBefore, hostsOfNow, type LiveServer, type LiveSocket } from './rooms.ts';
import type { Standing } from './standing.ts';
import { isOfBefore, runningOrderOfBefore } from './views-of-before.ts';
import { runningOrderTouched } from './views-touched.ts';

/** Shows hosts the room: of who sits where what changed, and each of the rest when it says something new. */
export class HostShow {
  readonly #io: LiveServer;
  readonly #tasting: TastingId;
  /** What the hosts' devices were last told of. */
  #sent: UnderWay | Finished | undefined;
  #seats: HostSeats = new Map();
  #said = '';

  constructor(io: LiveServer, tasting: TastingId, { session }: Standing) {
    this.#io = io;
    this.#tasting = tasting;
    if (session.status === 'unopened') return;
    this.#sent = session;
    this.#seats = hostSeats(session);
    this.#said = said(roomView(session, 0));
  }

  send({ session, version }: Standing): void {
    if (session.status === 'unopened' || session === this.#sent) return;
    this.#sendNow(session, version);
    const ofBefore = hostsOfBefore(this.#tasting);
    const someOfBefore = (this.#io.sockets.adapter.rooms.get(ofBefore)?.size ?? 0) > 0;
    if (someOfBefore) this.#io.to(ofBefore).emit('host', hostView(session, version));
    // After the view: an order that belongs to a cue which does not show yet waits for it on the device [F4].
    if (runningOrderTouched(this.#sent, session)) {
      const order = runningOrderView(session, version);
      this.#io.to(hostsOfNow(this.#tasting)).emit('running-order', order);
      if (someOfBefore) this.#io.to(ofBefore).emit('running-order', runningOrderOfBefore(order));
    }
    this.#sent = session;
  }

  /** All of it, and from now on what changes. */
  welcome(socket: LiveSocket, { session, version }: Standing): void {
    const ofBefore = isOfBefore(socket);
    void socket.join(hostsOf(this.#tasting));
    void socket.join((ofBefore ? hostsOfBefore : hostsOfNow)(this.#tasting));
    if (session.status === 'unopened') return;
    const order = runningOrderView(session, version);
    if (ofBefore) {
      socket.emit('host', hostView(session, version));
      socket.emit('running-order', runningOrderOfBefore(order));
    } else {
      const change = changeBetween(new Map(), hostSeats(session));
      socket.emit('room-seats', { version, anew: true, withRoom: true, ...change });
      socket.emit('room', roomView(session, version));
      socket.emit('running-order', order);
    }
  }

  #sendNow(session: UnderWay | Finished, version: number): void {
    const known = this.#sent && { session: this.#sent, seats: this.#seats };
    const seats = hostSeats(session, known);
    const change = changeBetween<HostSeat>(this.#seats, seats);
    const room = roomView(session, version);
    const text = said(room);
    const seatsChanged = change.gone.length + change.put.length > 0;
    // Something has happened: when nothing of it shows, that it is level shows at least by its version.
    const withRoom = text !== this.#said || !seatsChanged;
    const to = this.#io.to(hostsOfNow(this.#tasting));
    if (seatsChanged) to.emit('room-seats', { version, anew: false, withRoom, ...change });
    if (withRoom) to.emit('room', room);
    this.#seats = seats;
    this.#said = text;
  }
}

/** Whether a view says something new does not depend on the number of events behind it. */
const said = (view: RoomView): string => JSON.stringify({ ...view, version: 0 });
