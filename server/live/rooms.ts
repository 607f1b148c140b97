import type { Server, Socket } from 'socket.io';
import type { SeatId, TastingId } from '../../core/ids.ts';
import type { ClientToServer, Dismissal, ServerToClient } from '../../shared/wire/protocol.ts';
import type { Bearer } from './presence.ts';

/** What a socket may do, settled at the door and never changed by anything that it sends. */
export interface Badge {
  readonly tasting: TastingId;
  readonly bearer: Bearer;
  /** What the page speaks; see `protocolVersion`. */
  readonly protocol: number;
  /** Hash of the key that was shown. */
  readonly hash: string;
  /** Of a guest: whether that key opened the notes of the seat when it came [S4]; true of everybody else. */
  readonly opens: boolean;
  /** The newest version that it had seen when it came. */
  readonly known: number;
  /** The process that passes its line on; undefined where it came here by itself. */
  readonly through?: string | undefined;
}

export type LiveServer = Server<ClientToServer, ServerToClient, Record<never, never>, Badge>;
export type LiveSocket = Socket<ClientToServer, ServerToClient, Record<never, never>, Badge>;

/** Who sees the stage: seated guests, those who have left with their notes, and room screens. */
export const followersOf = (tasting: TastingId): string => `${tasting}/followers`;
/** Pages of before among them are told the whole of it each time, and are in this room instead. */
export const followersOfWholes = (tasting: TastingId): string => `${tasting}/followers/wholes`;
/** And those of long before, as they know it. */
export const followersOfBefore = (tasting: TastingId): string => `${tasting}/followers/before`;
export const hostsOf = (tasting: TastingId): string => `${tasting}/hosts`;
/** Those among the hosts' devices that are told of the room and its seats apart, and those of before. */
export const hostsOfNow = (tasting: TastingId): string => `${tasting}/hosts/now`;
export const hostsOfBefore = (tasting: TastingId): string => `${tasting}/hosts/before`;
export const helpersOf = (tasting: TastingId): string => `${tasting}/helpers`;
export const screensOf = (tasting: TastingId): string => `${tasting}/screens`;
/** The small pictures of them on hosts' devices. */
export const previewsOf = (tasting: TastingId): string => `${tasting}/previews`;
/** Devices that hear who is in the call. */
export const callOf = (tasting: TastingId): string => `${tasting}/call`;
/** The devices of one seat. */
export const seatRoom = (tasting: TastingId, seat: SeatId): string => `${tasting}/seat/${seat}`;
/** Those devices of a seat that have this notebook: the seat's own, or one that a single device keeps aside. */
export const notesRoom = (tasting: TastingId, notebook: SeatId): string => `${tasting}/notes/${notebook}`;
/** Everybody, waiting guests included. */
export const everybodyAt = (tasting: TastingId): string => `${tasting}/all`;

export function socketsIn(io: LiveServer, room: string): LiveSocket[] {
  return [...(io.sockets.adapter.rooms.get(room) ?? [])].flatMap((id) => io.sockets.sockets.get(id) ?? []);
}

/** Whoever comes through a process that ends is told to come anew at once. */
export function letMove(io: LiveServer, through: string): void {
  for (const socket of io.sockets.sockets.values()) {
    if (socket.data.through !== through) continue;
    socket.emit('moved');
    socket.disconnect(true);
  }
}

/** Says why before it hangs up. */
export function letGo(socket: LiveSocket, why: Dismissal): void {
  socket.emit('dismissal', why);
  socket.disconnect(true);
}

/** How many devices are connected in each role. */
export function devicesIn(io: LiveServer): Record<Bearer['role'], number> {
  const devices = { host: 0, guest: 0, helper: 0, screen: 0 };
  for (const { data } of io.sockets.sockets.values()) devices[data.bearer.role] += 1;
  return devices;
}
