import type { TastingId } from '../../../core/ids.ts';
import { credentials, Device, newId } from '../../server/support/device.ts';
import type { Chances } from '../chances.ts';
import type { AskedTitle, History, SeenView } from '../simulation/checks/seen.ts';

/** Ms without an answer after which a device asks again, on another line, as pages do. */
const patience = 1500;
const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

/** A device that finds its evening at whatever process lets it in, and keeps what it saw. */
export class Roamer {
  readonly name: string;
  readonly seen: { readonly device: string; readonly view: SeenView }[] = [];
  readonly asked: AskedTitle[] = [];
  readonly #origins: () => readonly string[];
  readonly #shown: object;
  readonly #chances: Chances;
  #device: Device | undefined;
  #ended = false;

  constructor(
    name: string,
    origins: () => readonly string[],
    who: { readonly role: 'host' | 'guest'; readonly tasting: TastingId; readonly key: string },
    chances: Chances,
  ) {
    this.name = name;
    this.#origins = origins;
    this.#shown = credentials(who.role, who.tasting, who.key);
    this.#chances = chances;
  }

  get history(): History {
    return { asked: this.asked, seen: this.seen };
  }

  /** Stays connected until it is ended. */
  async follow(): Promise<void> {
    while (!this.#ended) {
      const device = await this.#line();
      while (!this.#ended && device !== undefined && !device.closed && this.#device === device)
        await pause(20);
    }
  }

  /** Gives the evening a title, again and again under one id until it is answered or `until` has come. */
  async mend(title: string, until: number): Promise<boolean> {
    const id = newId();
    const asked = performance.now();
    while (performance.now() < until) {
      const device = await this.#line();
      if (device === undefined) continue;
      const said = await Promise.race([
        device.host({ type: 'MendTitle', title }, id).catch(() => undefined),
        pause(patience).then(() => undefined),
      ]);
      if (said?.ok === true) {
        this.asked.push({ title, asked, answered: { at: performance.now(), version: said.version } });
        return true;
      }
      // Not stored, or no answer: nobody knows yet.
      if (said === undefined) this.#drop(device);
      else await pause(50);
    }
    this.asked.push({ title, asked });
    return false;
  }

  end(): void {
    this.#ended = true;
    this.#device?.close();
  }

  #drop(device: Device): void {
    device.close();
    if (this.#device === device) this.#device = undefined;
  }

  async #line(): Promise<Device | undefined> {
    if (this.#device !== undefined && !this.#device.closed) return this.#device;
    const origin = this.#chances.anyOf(this.#origins());
    if (origin === undefined) return void (await pause(50));
    const device = new Device(origin, this.#shown);
    const see = (): void => {
      const view = device.last('stage');
      // As it came over the wire: a follower would drop what is older [F2], and hide an owner that says it.
      if (view === undefined) return;
      this.seen.push({ device: this.name, view: JSON.parse(JSON.stringify(view)) as SeenView });
    };
    device.socket.on('stage', see);
    device.socket.on('news', see);
    const entered = await Promise.race([
      device.entered().catch(() => undefined),
      pause(patience).then(() => undefined),
    ]);
    if (entered === undefined) {
      device.close();
      await pause(30);
      return undefined;
    }
    this.#device = device;
    return device;
  }
}
