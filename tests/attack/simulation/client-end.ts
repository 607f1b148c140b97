import type { FollowerSocket } from '../../../shared/follower/line.ts';
import type { Chances } from '../chances.ts';
import type { VirtualTime } from '../virtual-time.ts';
import { ServerEnd, type Switchboard } from './switchboard.ts';
import { type Packet, type Weather, Wire } from './wire.ts';

export interface Surroundings {
  readonly time: VirtualTime;
  readonly chances: Chances;
  readonly weather: Weather;
  /** Undefined while no server runs. A promise where several do: who is asked may have to ask itself. */
  readonly server: () => Switchboard | undefined | Promise<Switchboard | undefined>;
  /** Everything that this device is sent, and all that it is answered. */
  readonly onView: (event: string, payload: unknown) => void;
  readonly onAnswer: (event: string, payload: unknown, answer: unknown) => void;
  /** What a planted fault makes of a request on its way out. */
  readonly onRequest?: ((event: string, payload: unknown) => unknown) | undefined;
}

type Handler = (...values: readonly unknown[]) => void;

/** Ms after which whoever waits at the door of a process that has died comes again. */
const longestAtDoor = 5000;

/** Stands where socket.io's client stands: connects again by itself, unless one of the two sides meant to part. */
export class ClientEnd {
  connected = false;
  readonly io = { engine: { close: () => this.#wire?.close('device', 'transport close') } };
  readonly #around: Surroundings;
  readonly #auth: unknown;
  readonly #handlers = new Map<string, Handler[]>();
  readonly #unanswered = new Set<(reason: Error) => void>();
  #wire: Wire | undefined;
  #wanted = true;
  #trying = false;

  constructor(around: Surroundings, auth: unknown) {
    this.#around = around;
    this.#auth = auth;
    this.#try(0);
  }

  /** The same, by the name under which followers know it. */
  get socket(): FollowerSocket {
    return this as unknown as FollowerSocket;
  }

  on(event: string, handler: Handler): void {
    this.#handlers.set(event, [...(this.#handlers.get(event) ?? []), handler]);
  }
  connect(): void {
    this.#wanted = true;
    this.#try(0);
  }
  disconnect(): void {
    this.#wanted = false;
    this.#wire?.close('device', 'client namespace disconnect');
  }

  timeout(ms: number) {
    return {
      emitWithAck: (event: string, payload: unknown): Promise<unknown> =>
        new Promise((resolve, reject) => {
          const fail = (reason: Error): void => {
            cancel();
            this.#unanswered.delete(fail);
            reject(reason);
          };
          const cancel = this.#around.time.after(ms, () => fail(new Error('operation has timed out')));
          this.#unanswered.add(fail);
          const sent = this.#around.onRequest?.(event, payload) ?? payload;
          this.#wire?.up({
            event,
            payload: sent,
            answer: (value) => {
              this.#around.onAnswer(event, payload, value);
              cancel();
              this.#unanswered.delete(fail);
              resolve(value);
            },
          });
        }),
    };
  }

  #try(wait: number): void {
    if (this.#trying || this.connected || this.#wire !== undefined) return;
    this.#trying = true;
    this.#around.time.after(wait, () => this.#knock());
  }

  #knock(): void {
    const { time, chances, weather, server } = this.#around;
    if (!this.#wanted) {
      this.#trying = false;
      return;
    }
    const board = server();
    const patience = weather.cut ? 5000 : 2 * chances.exponential(weather.delay) + 0.5;
    time.after(patience, () => {
      if (board instanceof Promise) void board.then((found) => this.#come(found));
      else this.#come(board);
    });
  }

  #come(board: Switchboard | undefined): void {
    if (!this.#wanted) this.#trying = false;
    else if (this.#around.weather.cut || board === undefined || !board.power.on)
      this.#again('nobody answers');
    else void this.#enter(board);
  }

  #again(reason: string): void {
    this.#trying = false;
    this.#tell('connect_error', new Error(reason));
    this.#try(this.#around.chances.between(400, 4000));
  }

  async #enter(board: Switchboard): Promise<void> {
    const { time, chances, weather } = this.#around;
    let end: ServerEnd | undefined;
    const wire: Wire = new Wire(
      time,
      chances,
      weather,
      { hears: (packet) => this.#hears(packet), closed: (reason) => this.#closed(wire, reason) },
      {
        hears: ({ event, payload, answer }) => end?.hears(event, payload, answer ?? (() => undefined)),
        closed: (reason) => end?.gone(reason),
      },
    );
    const asked = board.admit(this.#auth, wire);
    const late = new Promise<undefined>((tell) => time.after(longestAtDoor, () => tell(undefined)));
    const admitted = await Promise.race([asked, late]);
    if (!this.#wanted || admitted === undefined || !board.power.on) {
      void asked.then((it) => it instanceof ServerEnd && it.gone('transport close'));
      if (this.#wanted) this.#again('nobody answers');
      else this.#trying = false;
      return;
    }
    if (!(admitted instanceof ServerEnd)) {
      const { refused } = admitted;
      if (refused === undefined) this.#again('elsewhere');
      else {
        this.#trying = false;
        this.#wanted = false;
        this.#tell('connect_error', Object.assign(new Error('refused'), { data: refused }));
      }
      return;
    }
    this.#trying = false;
    end = admitted;
    this.#wire = wire;
    wire.down({ event: 'connect', payload: undefined });
    board.welcome(end);
  }

  #hears({ event, payload }: Packet): void {
    if (event === 'connect') this.connected = true;
    else if (!this.connected) return;
    if (event !== 'connect') this.#around.onView(event, payload);
    this.#tell(event, payload);
  }

  #closed(wire: Wire, reason: string): void {
    if (wire !== this.#wire) return;
    this.#wire = undefined;
    const was = this.connected;
    this.connected = false;
    if (was) this.#tell('disconnect', reason);
    for (const fail of [...this.#unanswered]) fail(new Error('socket has been disconnected'));
    const meant = reason === 'io server disconnect' || !this.#wanted;
    if (!meant) this.#try(this.#around.chances.between(400, 1000));
  }

  #tell(event: string, value: unknown): void {
    for (const handler of this.#handlers.get(event) ?? []) handler(value);
  }
}
