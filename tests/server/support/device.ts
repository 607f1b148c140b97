import { io, type Socket } from 'socket.io-client';
import type { TastingId } from '../../../core/ids.ts';
import { joinRoomAndSeats } from '../../../shared/follower/host-room.ts';
import { type BoardChange, type BoardPart, boardOfParts } from '../../../shared/wire/board.ts';
import { type Parts, withChange } from '../../../shared/wire/parts.ts';
import {
  type ClientToServer,
  type CommandAnswer,
  type Credentials,
  type Dismissal,
  type NoteAnswer,
  protocolVersion,
  type Refusal,
  type ServerToClient,
} from '../../../shared/wire/protocol.ts';
import type { Consents } from '../../../shared/wire/sharing.ts';
import { type StageChange, withStageChange } from '../../../shared/wire/stage-change.ts';

type Views = { [Event in keyof ServerToClient]: Parameters<ServerToClient[Event]>[0] };

let ids = 0;
export function newId(): string {
  ids += 1;
  return `command-${String(ids).padStart(6, '0')}`;
}

/** A bare device of a test: keeps everything that it is told, and asks whatever it is told to. */
export class Device {
  readonly socket: Socket<ServerToClient, ClientToServer>;
  readonly heard: { readonly event: string; readonly view: unknown }[] = [];
  /**
   * Every message of the transport, as it came; but not those without a word, which are counted in real time on any clock:
   * whether a line lives. That they tell nothing has a test of its own.
   */
  readonly frames: string[] = [];
  #closed = false;
  #waiting: (() => void)[] = [];

  constructor(url: string, shown: object, headers: Record<string, string> = {}) {
    this.socket = io(url, {
      auth: { ...shown },
      // As pages do, for a proxy in front.
      query: 'tasting' in shown ? { tasting: String(shown.tasting) } : {},
      transports: ['websocket'],
      forceNew: true,
      reconnection: false,
      extraHeaders: headers,
    });
    let board: Parts<BoardPart> = new Map();
    // Put together as on a device of ours, so that tests read what people see.
    const host = joinRoomAndSeats((view) => this.heard.push({ event: 'host', view }));
    this.socket.onAny((event: string, view: unknown) => {
      this.heard.push({ event, view });
      if (event === 'board-change') {
        const { anew, version, ...change } = view as BoardChange;
        board = withChange(anew ? new Map() : board, change);
        this.heard.push({ event: 'board', view: boardOfParts(board, version) });
      }
      if (event === 'news') {
        const last = this.last('stage');
        if (last === undefined) throw new Error('A change of a stage that was never told.');
        this.heard.push({ event: 'stage', view: withStageChange(last, view as StageChange) });
      }
      if (event === 'room') host.room(view as Views['room']);
      if (event === 'room-seats') host.seats(view as Views['room-seats']);
      this.#wake();
    });
    this.socket.on('disconnect', () => {
      this.#closed = true;
      this.#wake();
    });
    this.socket.io.engine.on('packet', ({ type, data }) => {
      if (type !== 'noop' && type !== 'ping') this.frames.push(String(data));
    });
  }

  get closed(): boolean {
    return this.#closed;
  }

  /** Resolves when the server has let it in; rejects with the refusal when it has not. */
  entered(): Promise<this> {
    return new Promise((resolve, reject) => {
      this.socket.once('connect', () => resolve(this));
      this.socket.once('connect_error', (error: Error & { data?: Refusal }) => {
        reject(error.data ?? error);
        this.close();
      });
      // Hung up on before a word was said: nothing else would tell. A refusal, when there is one, comes right after.
      this.socket.io.once('close', (reason) => setImmediate(() => reject(new Error(reason))));
    });
  }

  last<Event extends keyof Views>(event: Event): Views[Event] | undefined {
    return this.heard.findLast((each) => each.event === event)?.view as Views[Event] | undefined;
  }

  count(event: keyof Views): number {
    return this.heard.filter((each) => each.event === event).length;
  }

  /** Waits for a view that says what the test expects. */
  async until<Event extends keyof Views>(
    event: Event,
    holds: (view: Views[Event]) => boolean = () => true,
  ): Promise<Views[Event]> {
    for (;;) {
      const view = this.last(event);
      if (view !== undefined && holds(view)) return view;
      await this.#something();
    }
  }

  /** Waits until the server has let go, and says what it gave as the reason. */
  async dismissed(): Promise<Dismissal | undefined> {
    while (!this.#closed) await this.#something();
    return this.last('dismissal');
  }

  /** An answered probe: whatever the server sent before is here. */
  async level(): Promise<void> {
    await this.raw('probe', { roundTrip: null });
  }

  host(ask: object, id = newId()): Promise<CommandAnswer> {
    return this.raw('host:ask', { id, ask }) as Promise<CommandAnswer>;
  }

  guest(ask: object, id = newId()): Promise<CommandAnswer> {
    return this.raw('guest:ask', { id, ask }) as Promise<CommandAnswer>;
  }

  save(save: object): Promise<NoteAnswer> {
    const whole = { id: newId(), pour: 'one', field: 'nose', value: '', base: 0, ...save };
    return this.raw('note:save', whole) as Promise<NoteAnswer>;
  }

  consent(consents: Consents, pours: readonly string[] = ['one']): Promise<CommandAnswer> {
    return this.raw('note:consent', { id: newId(), pours, consents }) as Promise<CommandAnswer>;
  }

  /** As a page of before does. */
  share(share: object = {}): Promise<CommandAnswer> {
    return this.raw('note:share', {
      id: newId(),
      pour: 'one',
      sharing: 'shared',
      ...share,
    }) as Promise<CommandAnswer>;
  }

  /** Anything at all, as a device of ours would never send it. */
  raw(event: string, ...payload: unknown[]): Promise<unknown> {
    const emit = this.socket.emitWithAck.bind(this.socket) as (
      event: string,
      ...payload: unknown[]
    ) => Promise<unknown>;
    return emit(event, ...payload);
  }

  close(): void {
    this.socket.disconnect();
  }

  #something(): Promise<void> {
    return new Promise((resolve) => {
      this.#waiting.push(resolve);
    });
  }

  #wake(): void {
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const each of waiting) each();
  }
}

export const credentials = (role: Credentials['role'], tasting: TastingId, key: string): Credentials => ({
  protocol: protocolVersion,
  role,
  tasting,
  key,
});
