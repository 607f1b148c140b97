import type { CallRole } from '../../core/call/call-gates.ts';
import type { PeerId, SeatId, TastingId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import { durationMs, later } from '../../core/units.ts';
import {
  type CallCommand,
  type CallDone,
  type CallPeer,
  type CallServer,
  type CallShown,
  type CallView,
  mostPeers,
} from '../../shared/wire/call.ts';
import type { Refusal, RefusalCode } from '../../shared/wire/protocol.ts';
import { Allowances, type Pace } from '../access/allowances.ts';
import type { Cancel, Clock } from '../clock.ts';
import { refusal } from '../refusal.ts';
import { type Badge, callOf, type LiveServer, type LiveSocket } from './rooms.ts';

/** Which addresses a device is told for its call; see `CallServer`. */
export type CallServers = (badge: Badge) => readonly CallServer[];

export interface CallRoomParts {
  readonly io: LiveServer;
  readonly tasting: TastingId;
  readonly clock: Clock;
  readonly session: () => Session;
  /** Absent: devices find each other by their own addresses alone. */
  readonly callServers?: CallServers | undefined;
}

interface Member {
  readonly peer: PeerId;
  /** Of each there is one device in the call [V7]. */
  readonly place: string;
  readonly role: CallRole;
  readonly seat: SeatId | null;
  readonly hash: string;
  /** Null while its line is broken. */
  socket: LiveSocket | null;
  forget: Cancel;
  shown: CallShown;
}

/** A line that broke may come back; a device that was switched off must be gone from all within five seconds [V6]. */
const grace = durationMs(2500);
/** A device that joins a full call tells seven others where it is found, in a few messages each. */
const signals: Pace = { perSecond: 10, burst: 100 };
const joins: Pace = { perSecond: 1 / 6, burst: 12 };

/**
 * Who is in the call of one evening, and what their devices tell each other to connect. It passes on and forgets: media
 * goes from device to device, nothing of it comes here, and nothing is stored [V8].
 */
export class CallRoom {
  readonly #parts: CallRoomParts;
  readonly #members = new Map<PeerId, Member>();
  readonly #signals: Allowances;
  readonly #joins: Allowances;

  constructor(parts: CallRoomParts) {
    this.#parts = parts;
    this.#signals = new Allowances(parts.clock, signals);
    this.#joins = new Allowances(parts.clock, joins);
  }

  take(socket: LiveSocket, command: CallCommand): CallDone | Refusal {
    const why = this.#refused(socket.data);
    if (why !== undefined) return refusal(why);
    switch (command.type) {
      case 'Watch':
        this.#watch(socket);
        return { ok: true };
      case 'Join':
        return this.#join(socket, command);
      case 'Show':
        return this.#asMember(socket, (member) => {
          // All who may be in the call hear of it.
          if (!this.#signals.take(member.place)) return refusal('too-fast');
          member.shown = command.shown;
          this.#tell();
          return { ok: true };
        });
      case 'Signal':
        return this.#asMember(socket, (member) => this.#pass(member, command));
      case 'Leave':
        return this.#asMember(socket, (member) => {
          this.#forget([member]);
          return { ok: true };
        });
      default:
        return command satisfies never;
    }
  }

  /** @param sentAway the server itself has hung up: such a device does not come back */
  left(socket: LiveSocket, sentAway: boolean): void {
    const member = this.#memberAt(socket);
    if (member === undefined) return;
    const forget = (): void => this.#forget([member]);
    member.socket = null;
    const { clock } = this.#parts;
    if (sentAway) forget();
    else member.forget = clock.at(later(clock.now(), grace), forget);
  }

  /** After every change of the session: who has left the table or come to it is in no picture any more [V6]. */
  follow(): void {
    this.#forget([...this.#members.values()].filter(({ seat }) => seat !== null && !this.#atHome(seat)));
  }

  /** Whoever holds a key that does not stand any more. */
  dropWithdrawn(stands: (hash: string) => boolean): void {
    this.#forget([...this.#members.values()].filter(({ hash }) => !stands(hash)));
  }

  dropSeat(seat: SeatId): void {
    this.#forget([...this.#members.values()].filter((member) => member.seat === seat));
  }

  dropScreens(): void {
    this.#forget([...this.#members.values()].filter(({ role }) => role === 'screen' || role === 'room'));
  }

  stop(): void {
    for (const { forget } of this.#members.values()) forget();
    this.#members.clear();
  }

  #join(socket: LiveSocket, { peer, as, shown }: Extract<CallCommand, { type: 'Join' }>): CallDone | Refusal {
    const badge = socket.data;
    const role = roleOf(badge, as);
    const place = placeOf(badge, role);
    const known = this.#members.get(peer);
    if (known !== undefined && (known.place !== place || known.hash !== badge.hash)) {
      return refusal('wrong-key');
    }
    if (!this.#joins.take(place)) return refusal('too-fast');
    // Also what the same device was in the call as before: a screen may become the camera of the table.
    const before = [...this.#members.values()].filter(
      (member) => member.place === place || member.socket === socket,
    );
    if (before.length === 0 && this.#members.size >= mostPeers) return refusal('call-full');
    for (const member of before) if (member !== known) this.#drop(member);
    known?.forget();
    const seat = badge.bearer.role === 'guest' ? badge.bearer.seat : null;
    const forget = () => undefined;
    this.#members.set(peer, { peer, place, role, seat, hash: badge.hash, socket, forget, shown });
    socket.join(callOf(this.#parts.tasting));
    this.#tell();
    return { ok: true, servers: this.#parts.callServers?.(badge) ?? [] };
  }

  #pass(from: Member, { to, signal }: Extract<CallCommand, { type: 'Signal' }>): CallDone | Refusal {
    if (!this.#signals.take(from.place)) return refusal('too-fast');
    const other = this.#members.get(to);
    if (other === undefined || other === from) return refusal('no-such-peer');
    // A line that is broken comes back and asks anew.
    other.socket?.emit('call-signal', { from: from.peer, signal });
    return { ok: true };
  }

  #asMember(socket: LiveSocket, then: (member: Member) => CallDone | Refusal): CallDone | Refusal {
    const member = this.#memberAt(socket);
    return member === undefined ? refusal('not-in-call') : then(member);
  }

  #memberAt(socket: LiveSocket): Member | undefined {
    return [...this.#members.values()].find((member) => member.socket === socket);
  }

  #watch(socket: LiveSocket): void {
    socket.join(callOf(this.#parts.tasting));
    socket.emit('call', this.#view());
  }

  #forget(members: readonly Member[]): void {
    if (members.length === 0) return;
    for (const member of members) this.#drop(member);
    this.#tell();
  }

  #drop(member: Member): void {
    member.forget();
    if (this.#members.get(member.peer) === member) this.#members.delete(member.peer);
  }

  #tell(): void {
    this.#parts.io.to(callOf(this.#parts.tasting)).emit('call', this.#view());
  }

  #view(): CallView {
    return { peers: [...this.#members.values()].map((member) => this.#shown(member)) };
  }

  #shown({ peer, role, seat, shown }: Member): CallPeer {
    const { microphone, camera, voiceOnly } = shown;
    return {
      peer,
      role,
      seat,
      name: seat === null ? null : this.#nameOf(seat),
      microphone,
      camera,
      voiceOnly,
    };
  }

  #nameOf(seat: SeatId): string | null {
    const session = this.#parts.session();
    return session.status === 'unopened' ? null : (session.seats[seat]?.name ?? null);
  }

  /** [V7] Why this device has no part in the call; undefined where it may. */
  #refused({ bearer }: Badge): RefusalCode | undefined {
    switch (bearer.role) {
      case 'host':
        return undefined;
      case 'helper':
        return 'wrong-role';
      case 'screen':
        return bearer.preview ? 'wrong-role' : undefined;
      case 'guest':
        return this.#atHome(bearer.seat) ? undefined : 'call-from-home';
      default:
        return bearer satisfies never;
    }
  }

  #atHome(id: SeatId): boolean {
    const session = this.#parts.session();
    const seat = session.status === 'unopened' ? undefined : session.seats[id];
    return seat?.presence === 'seated' && seat.remote;
  }
}

function roleOf({ bearer }: Badge, as: 'self' | 'room'): CallRole {
  if (bearer.role === 'guest' || bearer.role === 'host') return bearer.role;
  return as === 'room' ? 'room' : 'screen';
}

/** The host, each seat and the camera at the table have one device in the call; each television is one. */
const placeOf = ({ bearer, hash }: Badge, role: CallRole): string =>
  bearer.role === 'guest' ? `seat/${bearer.seat}` : role === 'screen' ? `screen/${hash}` : role;
