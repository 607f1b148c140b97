import { WebSocket } from 'ws';

/**
 * A socket.io client reduced to its frames (Engine.IO protocol 4, Socket.IO protocol 5), so that a guest of ours costs
 * this process what a guest of the floor does.
 */
export class RawSocket {
  readonly #socket: WebSocket;
  #ids = 0;
  readonly #answers = new Map<number, (answer: unknown) => void>();
  private constructor(socket: WebSocket) {
    this.#socket = socket;
  }

  /** `onEvent` is there from the start: the first views may come in the same packet as the welcome. */
  static open(
    port: number,
    auth: object,
    onEvent: (text: string) => void = () => undefined,
  ): Promise<RawSocket> {
    // Pages name their evening, so that any process knows where the line belongs.
    const evening = 'tasting' in auth ? `&tasting=${String(auth.tasting)}` : '';
    const at = `ws://127.0.0.1:${port}/socket.io/?EIO=4&transport=websocket${evening}`;
    const socket = new WebSocket(at, {
      perMessageDeflate: false,
    });
    const raw = new RawSocket(socket);
    return new Promise((done, fail) => {
      socket.on('error', fail);
      socket.on('message', (data: Buffer) => {
        const text = data.toString();
        if (text[0] === '0') socket.send(`40${JSON.stringify(auth)}`);
        else if (text === '2') socket.send('3');
        else if (text.startsWith('40')) done(raw);
        else if (text.startsWith('44')) fail(new Error(text));
        else if (text.startsWith('43')) raw.#answered(text);
        else if (text.startsWith('42')) onEvent(text);
      });
    });
  }

  ask(event: string, body: object): Promise<unknown> {
    this.#ids += 1;
    const id = this.#ids;
    this.#socket.send(`42${id}${JSON.stringify([event, body])}`);
    return new Promise((done) => this.#answers.set(id, done));
  }

  /** Without an answer. */
  send(event: string): void {
    this.#socket.send(`42${JSON.stringify([event])}`);
  }

  close(): void {
    this.#socket.terminate();
  }

  #answered(text: string): void {
    const [, id = '', body = '[]'] = /^43(\d+)(.*)$/s.exec(text) ?? [];
    this.#answers.get(Number(id))?.((JSON.parse(body) as unknown[])[0]);
    this.#answers.delete(Number(id));
  }
}

/** A guest of the floor, and its host. */
export function openPlain(port: number, path: string, onText: (text: string) => void): Promise<WebSocket> {
  const socket = new WebSocket(`ws://127.0.0.1:${port}${path}`, { perMessageDeflate: false });
  socket.on('message', (data: Buffer) => onText(data.toString()));
  return new Promise((done, fail) => {
    socket.on('open', () => done(socket));
    socket.on('error', fail);
  });
}

/** At most so many at once: a listener's backlog is part of what is measured only where that is said. */
export async function inTurns<Item>(
  items: readonly Item[],
  atOnce: number,
  work: (item: Item) => Promise<void>,
): Promise<void> {
  const rest = items.values();
  const worker = async () => {
    for (const item of rest) await work(item);
  };
  await Promise.all(Array.from({ length: Math.min(atOnce, items.length) }, worker));
}
