import type { CommandId, SeatId, TastingId } from '../../core/ids.ts';
import type { HelperCommand, SessionRefusalCode } from '../../core/session/command.ts';
import type { HostView, RoomView, RunningOrderView } from '../../core/session/views/host.ts';
import type { HostSeat } from '../../core/session/views/host-seats.ts';
import type { ScreenView } from '../../core/session/views/screen.ts';
import type { SeatView } from '../../core/session/views/seat.ts';
import type { StageView } from '../../core/session/views/stage.ts';
import type { EpochMs } from '../../core/units.ts';
import type { BoardChange, BoardView } from './board.ts';
import type { CallCommand, CallDone, CallSignalFrom, CallView } from './call.ts';
import type { SentGuestCommand, SentHostCommand } from './commands.ts';
import type { DeviceAsk, DevicesView } from './devices.ts';
import type { GuessesTold } from './guesses.ts';
import type { HelperView } from './helper.ts';
import type { ConsentGiving, NotebookView, NoteSave, NoteShare } from './notebook.ts';
import type { PartsChange } from './parts.ts';
import type { PouringCommand, PouringView } from './pouring.ts';
import type { StageChange } from './stage-change.ts';

/**
 * Raised when an old page could misread a new server. What a page of before would misread is not sent to it
 * (`Badge.protocol`); a page that is older still is told to reload.
 *
 * 2: boards by what changed; the page says which version it knows, and follows a log that has lost its end (`rewound`).
 * 3: a host is told of the room and of its seats apart, of seats by what changed.
 * 4: the stage by what changed. Such pages are told of it as a whole.
 * 5: of each field of the stage only what is another in it, its clock from the moment of the cue.
 */
export const protocolVersion = 5;

/** Whole boards go only to pages of before, and so do whole views for hosts and what newer kinds of cues are shown as. */
export const wholeBoardsUntil = 1;
export const wholeHostViewsUntil = 2;
export const wholeStagesUntil = 4;
/** From here on a page knows that an evening may be set aside. */
export const setAsideFrom = 2;

/** The oldest pages that are served: those of before, so that an evening goes on when the server is brought up to date. */
export const oldestProtocol = 1;

/** The largest frame a device may send, in bytes. */
export const largestFrame = 16 * 1024;

/** Why something was refused. Codes are for programs; the sentence for people is made from them. */
export type RefusalCode =
  | SessionRefusalCode
  | 'malformed'
  | 'too-large'
  | 'unknown-event'
  | 'wrong-role'
  | 'wrong-key'
  | 'wrong-code'
  | 'too-many-tries'
  | 'too-fast'
  | 'wrong-protocol'
  | 'foreign-origin'
  | 'no-such-tasting'
  | 'plan-changed'
  | 'plan-invalid'
  | 'doubled-id'
  | 'no-farewell'
  | 'table-full'
  | 'too-many-devices'
  | 'notes-closed'
  | 'guess-closed'
  | 'no-words'
  | 'wrong-words'
  | 'not-a-photo'
  | 'too-many-photos'
  | 'too-many-evenings'
  | 'house-full'
  | 'too-many-houses'
  | 'not-in-call'
  | 'no-such-peer'
  | 'call-full'
  | 'call-from-home'
  | 'not-stored'
  /** This one evening cannot go on; from protocol 2 on. */
  | 'set-aside';

export type CommandAnswer = { readonly ok: true; readonly version: number } | Refusal;
export interface Refusal {
  readonly ok: false;
  readonly code: RefusalCode;
  /** A sentence in English that says what to do. */
  readonly message: string;
}

export type NoteAnswer =
  | {
      readonly ok: true;
      readonly revision: number;
      readonly value: NoteSave['value'];
      readonly savedAt: EpochMs;
    }
  | Refusal;

/** `words`: only in answer to `MakeWords`. They are not kept anywhere but on the device. */
export type DeviceAck = { readonly ok: true; readonly words?: readonly string[] } | Refusal;

export type CallAnswer = CallDone | Refusal;

export interface Envelope<Ask> {
  readonly id: CommandId;
  readonly ask: Ask;
}

export interface ProbeRequest {
  /** The best this device has measured of late, in ms; shown to the host. */
  readonly roundTrip: number | null;
  /** How long a message may take to this device, in ms; sizes the lead of a change of cue [F4]. */
  readonly reach?: number | null | undefined;
}

/**
 * Server time of receiving and of answering a probe, T2 and T3 of RFC 5905: both in one where the probe told nothing, for
 * it is answered within the same millisecond.
 */
export type ProbeReply = EpochMs | { readonly received: EpochMs; readonly sent: EpochMs };

/** Who is connected. Not in the log, so it has a message of its own; to the host's devices only. */
export interface PresenceView {
  readonly hosts: number;
  /** Seats with a device connected; the round trip as last measured by that device, in ms. */
  readonly seats: readonly { readonly seat: SeatId; readonly roundTrip: number | null }[];
  /** Seats without one, since when by the evening's clock; absent from servers of before. */
  readonly away?: readonly { readonly seat: SeatId; readonly since: EpochMs }[];
  /** Room screens that show the evening. */
  readonly screens: number;
  /** Room screens at the door: the host lets in the one whose number they read on it. */
  readonly screensAsking: readonly WaitingScreen[];
}

export interface WaitingScreen {
  readonly id: string;
  /** Two digits. */
  readonly number: number;
}

/** To the host's devices only: how many at the table have said what goes to it while a talk is open, not what. */
export interface TalkView {
  readonly chosen: number;
  readonly of: number;
}

/** To the host's devices only: the log has lost its end, for this many versions were acknowledged and are not there. */
interface LostEndView {
  readonly missing: number;
}

/** Who sits where, to the host's devices only. */
export interface SeatsChange extends PartsChange<HostSeat> {
  readonly version: number;
  /** What was known before is forgotten. */
  readonly anew: boolean;
  /** A view of the room that belongs to it comes right after: both show together. */
  readonly withRoom: boolean;
}

/** Said before the server lets go of a device. */
export type Dismissal =
  | 'removed'
  | 'key-withdrawn'
  | 'server-stopping'
  | 'tasting-deleted'
  /** A seat has room for so many devices: the newest came in, and this one was silent for longest. */
  | 'too-many-devices';

export interface ServerToClient {
  /** Said before the server hangs up: another one has the evening already, and is found by the same address. */
  moved: () => void;
  stage: (view: StageView) => void;
  /** What is new since the stage was told last on this line. */
  news: (change: StageChange) => void;
  /** To screens that were let in, and to the host's small picture of them. */
  screen: (view: ScreenView) => void;
  seat: (view: SeatView) => void;
  notebook: (view: NotebookView) => void;
  /** To the devices of one seat only. */
  devices: (view: DevicesView) => void;
  /** To pages of before. */
  board: (view: BoardView) => void;
  'board-change': (change: BoardChange) => void;
  /** To all that follow the room, and the host's devices. */
  guesses: (told: GuessesTold) => void;
  /** To pages of before. */
  host: (view: HostView) => void;
  room: (view: RoomView) => void;
  'room-seats': (change: SeatsChange) => void;
  'running-order': (view: RunningOrderView) => void;
  presence: (view: PresenceView) => void;
  /** Null while no talk is open. */
  talk: (view: TalkView | null) => void;
  /** To the devices of helpers only. */
  helper: (view: HelperView) => void;
  /** To the devices of hosts and helpers. */
  pouring: (view: PouringView) => void;
  /** To devices that may be in the call and have asked. */
  call: (view: CallView) => void;
  /** To one device in the call, from another one in it. */
  'call-signal': (told: CallSignalFrom) => void;
  dismissal: (why: Dismissal) => void;
  'lost-end': (view: LostEndView) => void;
  /** Before the views of a server that knows less than this device: they are to be followed all the same [F7]. */
  rewound: () => void;
}

export interface ClientToServer {
  'host:ask': (envelope: Envelope<SentHostCommand>, reply: (answer: CommandAnswer) => void) => void;
  'helper:ask': (envelope: Envelope<HelperCommand>, reply: (answer: CommandAnswer) => void) => void;
  'pouring:ask': (envelope: Envelope<PouringCommand>, reply: (answer: CommandAnswer) => void) => void;
  'guest:ask': (envelope: Envelope<SentGuestCommand>, reply: (answer: CommandAnswer) => void) => void;
  'note:save': (save: NoteSave, reply: (answer: NoteAnswer) => void) => void;
  'note:consent': (giving: ConsentGiving, reply: (answer: CommandAnswer) => void) => void;
  /** From pages of before. */
  'note:share': (share: NoteShare, reply: (answer: CommandAnswer) => void) => void;
  'device:ask': (ask: DeviceAsk, reply: (answer: DeviceAck) => void) => void;
  'call:ask': (command: CallCommand, reply: (answer: CallAnswer) => void) => void;
  /** Null: nothing new was measured. */
  probe: (probe: ProbeRequest | null, reply: (measured: ProbeReply) => void) => void;
}

/** What a device shows at the door of the socket. */
export interface Credentials {
  readonly protocol: number;
  readonly role: 'host' | 'guest' | 'helper' | 'screen';
  readonly tasting: TastingId;
  readonly key: string;
  /** The newest version that this device has seen; absent before the first, and from pages of protocol 1. */
  readonly known?: number | undefined;
}
