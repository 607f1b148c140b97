import { WebSocket } from 'ws';

/**
 * Speaks Engine.IO 4 and Socket.IO 5 by hand, from the two protocols' published texts and without a line of ours: what
 * comes is kept as it came, so that nothing a library would pass over is passed over.
 */
export class OutsiderWire {
  /**
   * Every frame in order, but for the transport's own pings, and signs of life without a word: those are counted in real
   * time, and that they tell nothing has a test of its own.
   */
  readonly frames: string[] = [];
  readonly #line: WebSocket;
  readonly #answers = new Map<number, (answer: unknown) => void>();
  #asked = 0;
  #ended = false;

  private constructor(line: WebSocket) {
    this.#line = line;
  }

  /** Resolves as soon as it is let in, refused or hung up on. */
  static open(url: string, shown: object): Promise<OutsiderWire> {
    const line = new WebSocket(`${url.replace(/^http/, 'ws')}/socket.io/?EIO=4&transport=websocket`);
    const wire = new OutsiderWire(line);
    return new Promise((resolve) => {
      line.on('error', () => undefined);
      line.on('close', () => {
        wire.#end();
        resolve(wire);
      });
      line.on('message', (data) => {
        const frame = String(data);
        if (frame === '2') return line.send('3');
        if (frame === '6') return;
        wire.frames.push(frame);
        if (frame.startsWith('0')) line.send(`40${JSON.stringify(shown)}`);
        if (frame.startsWith('43')) wire.#answered(frame);
        if (frame.startsWith('44')) wire.#end();
        if (frame.startsWith('40') || frame.startsWith('44')) resolve(wire);
      });
    });
  }

  get ended(): boolean {
    return this.#ended;
  }

  /** Undefined when the line ends before there is an answer. */
  ask(event: string, body: unknown): Promise<unknown> {
    if (this.#ended) return Promise.resolve(undefined);
    const id = this.#asked;
    this.#asked += 1;
    return new Promise((resolve) => {
      this.#answers.set(id, resolve);
      this.#line.send(`42${id}${JSON.stringify([event, body])}`);
    });
  }

  close(): void {
    this.#line.close();
  }

  #answered(frame: string): void {
    const [, id = '', body = 'null'] = /^43(\d+)(.*)$/s.exec(frame) ?? [];
    this.#answers.get(Number(id))?.(JSON.parse(body));
    this.#answers.delete(Number(id));
  }

  #end(): void {
    this.#ended = true;
    for (const resolve of this.#answers.values()) resolve(undefined);
    this.#answers.clear();
  }
}
