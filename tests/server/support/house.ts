import sharp from 'sharp';
import type { SeatId, TastingId } from '../../../core/ids.ts';
import type { Plan } from '../../../core/tasting.ts';
import { type RunningServer, type ServerOptions, startServer } from '../../../server/app.ts';
import type { Log } from '../../../server/log.ts';
import type { CreatedTasting, KeptPhoto, TakenSeat } from '../../../shared/wire/http.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { credentials, Device, newId } from './device.ts';
import { aPlan } from './plans.ts';

export const houseKey = 'house-key-of-the-tests-0123456789';

export type Guest = Device & { readonly seat: SeatId; readonly key: string };

/** Keeps what would be logged, so that tests can look for what must not be in it. */
export function listeningLog(): Log & { readonly lines: string[] } {
  const lines: string[] = [];
  const keep = (...said: unknown[]) => void lines.push(JSON.stringify(said));
  return { lines, error: keep, warn: keep, info: keep, debug: keep };
}

export interface Answer<Body> {
  readonly status: number;
  readonly headers: Headers;
  readonly body: Body;
}

interface Asking {
  readonly key?: string;
  /** A string goes out as it is. */
  readonly body?: unknown;
  readonly headers?: Record<string, string>;
}

/** Asks over HTTP and reads the answer as JSON. */
async function ask<Body>(
  url: string,
  method: string,
  { key, body, headers = {} }: Asking = {},
): Promise<Answer<Body>> {
  const response = await fetch(url, {
    method,
    headers: {
      ...(body === undefined ? {} : { 'content-type': 'application/json' }),
      ...(key === undefined ? {} : { authorization: `Bearer ${key}` }),
      ...headers,
    },
    ...(body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) }),
  });
  const text = await response.text();
  const read = text === '' ? null : (JSON.parse(text) as Body);
  return { status: response.status, headers: response.headers, body: read as Body };
}

/** A server of a test's own with what tests do over and over. */
export class House {
  readonly url: string;
  readonly log: ReturnType<typeof listeningLog>;
  readonly #stop: () => Promise<void>;
  readonly #devices: Device[] = [];

  constructor(server: Pick<RunningServer, 'url' | 'stop'>, log = listeningLog()) {
    this.url = server.url;
    this.#stop = server.stop;
    this.log = log;
  }

  static async open(options: Partial<ServerOptions> = {}): Promise<House> {
    const log = listeningLog();
    const server = await startServer({ store: memoryStore(), host: '127.0.0.1', houseKey, log, ...options });
    return new House(server, log);
  }

  async close(): Promise<void> {
    for (const device of this.#devices) device.close();
    await this.#stop();
  }

  ask<Body>(method: string, path: string, asking: Asking = {}): Promise<Answer<Body>> {
    return ask<Body>(this.url + path, method, asking);
  }

  async plan(plan: Plan = aPlan(), key = houseKey): Promise<CreatedTasting> {
    const made = await this.ask<CreatedTasting>('POST', '/api/tastings', { key, body: { plan } });
    return made.body;
  }

  /** Gives the first pour of a plan a label photo, as the host's phone does. */
  async labelFirst({ tasting, hostKey }: CreatedTasting, plan: Plan): Promise<void> {
    const label = { width: 300, height: 400, channels: 3, background: '#a8431f' } as const;
    const sent = await fetch(`${this.url}/api/tastings/${tasting}/photos`, {
      method: 'POST',
      headers: { authorization: `Bearer ${hostKey}`, 'content-type': 'image/png' },
      body: new Uint8Array(await sharp({ create: label }).png().toBuffer()),
    });
    const { photo: front } = (await sent.json()) as KeptPhoto;
    const pours = plan.pours.map((pour, index) => (index === 0 ? { ...pour, photos: { front } } : pour));
    const body = { plan: { ...plan, pours }, base: 1 };
    await this.ask('PUT', `/api/tastings/${tasting}/plan`, { key: hostKey, body });
  }

  /** A device that is let in, or a promise that rejects with the refusal. */
  enter(shown: object, headers: Record<string, string> = {}): Promise<Device> {
    const device = new Device(this.url, shown, headers);
    this.#devices.push(device);
    return device.entered();
  }

  host({ tasting, hostKey }: CreatedTasting): Promise<Device> {
    return this.enter(credentials('host', tasting, hostKey));
  }

  takeSeat(code: string, wanted: Record<string, unknown> = {}): Promise<Answer<TakenSeat>> {
    return this.ask<TakenSeat>('POST', '/api/seats', { body: newSeat(code, wanted) });
  }

  async guest(made: { tasting: TastingId; code: string }, name = 'Noor', key = aKey()): Promise<Guest> {
    const { body } = await this.takeSeat(made.code, { key, name });
    const device = await this.enter(credentials('guest', made.tasting, key));
    await device.until('seat');
    return Object.assign(device, { seat: body.seat, key });
  }

  /** A tasting with open doors, its host's device, and two guests. */
  async evening(plan: Plan = aPlan()) {
    const made = await this.plan(plan);
    const host = await this.host(made);
    await host.host({ type: 'OpenDoors' });
    await host.until('host');
    const noor = await this.guest(made, 'Noor');
    const tomas = await this.guest(made, 'Tomas');
    return { made, host, noor, tomas };
  }
}

/** What a page asks for a new guest. */
export const newSeat = (code: string, wanted: Record<string, unknown> = {}) => ({
  id: newId(),
  code,
  key: aKey(),
  name: 'Noor',
  leftHanded: false,
  remote: false,
  ...wanted,
});

let keys = 0;
export function aKey(): string {
  keys += 1;
  return `key-made-on-the-device-${String(keys).padStart(8, '0')}`;
}
