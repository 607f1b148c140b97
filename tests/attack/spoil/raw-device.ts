import { WebSocket } from 'ws';

/**
 * A device that speaks Engine.IO 4 and Socket.IO 5 without a line of our code, for what no page would do: flood, come
 * back at once, answer pings and read nothing.
 */
export class RawDevice {
  readonly #socket: WebSocket;
  readonly #answers = new Map<number, (answer: unknown) => void>();
  #ids = 0;
  #pongs: NodeJS.Timeout | undefined;
  gone = false;
  refused: string | undefined;

  private constructor(socket: WebSocket) {
    this.#socket = socket;
  }

  /** Resolves once it is in, refused or hung up on. */
  static enter(origin: string, shown: object, headers: Record<string, string> = {}): Promise<RawDevice> {
    const url = `${origin.replace('http', 'ws')}/socket.io/?EIO=4&transport=websocket`;
    const socket = new WebSocket(url, { perMessageDeflate: false, headers });
    const device = new RawDevice(socket);
    return new Promise((resolve) => {
      const over = (): void => {
        device.gone = true;
        clearInterval(device.#pongs);
        for (const answer of device.#answers.values()) answer(undefined);
        resolve(device);
      };
      socket.on('error', over);
      socket.on('close', over);
      socket.on('message', (data: Buffer) => {
        const text = data.toString();
        if (text.startsWith('0')) socket.send(`40${JSON.stringify(shown)}`);
        else if (text === '2') socket.send('3');
        else if (text.startsWith('44')) device.#refusedWith(text);
        else if (text.startsWith('40') || text.startsWith('44')) resolve(device);
        else if (text.startsWith('43')) device.#answered(text);
      });
    });
  }

  ask(event: string, body: object): Promise<unknown> {
    this.#ids += 1;
    const id = this.#ids;
    if (this.gone) return Promise.resolve(undefined);
    this.#socket.send(`42${id}${JSON.stringify([event, body])}`);
    return new Promise((resolve) => this.#answers.set(id, resolve));
  }

  /** So many at once, and nobody waits for an answer. */
  flood(event: string, body: object, times: number): void {
    for (let time = 0; time < times && !this.gone; time += 1) {
      this.#socket.send(`42${this.#ids + time}${JSON.stringify([event, body])}`);
    }
  }

  /** From now on it reads nothing, and still says every few seconds that it is well. */
  goDeaf(): void {
    this.#socket.pause();
    this.#pongs = setInterval(() => this.#socket.send('3'), 4000);
  }

  close(): void {
    this.#socket.terminate();
  }

  #refusedWith(text: string): void {
    this.refused = /"code":"([a-z-]+)"/.exec(text)?.[1] ?? 'refused';
    this.close();
  }

  #answered(text: string): void {
    const [, id = '', body = '[]'] = /^43(\d+)(.*)$/s.exec(text) ?? [];
    this.#answers.get(Number(id))?.((JSON.parse(body) as unknown[])[0]);
    this.#answers.delete(Number(id));
  }
}
