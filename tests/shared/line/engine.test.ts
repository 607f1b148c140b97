import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Socket } from '../../../shared/line/engine.ts';

/** A browser's WebSocket in the hands of a test. */
class Wire {
  static last: Wire;
  onmessage: ((event: { readonly data: string }) => void) | null = null;
  onerror: (() => void) | null = null;
  onclose: (() => void) | null = null;
  readonly sent: string[] = [];
  closed = false;
  readonly url: string;
  constructor(url: URL) {
    this.url = String(url);
    Wire.last = this;
  }
  send(packet: string): void {
    this.sent.push(packet);
  }
  close(): void {
    this.closed = true;
  }
  hears(packet: string): void {
    this.onmessage?.({ data: packet });
  }
}

const handshake = '0{"sid":"abc","upgrades":[],"pingInterval":10000,"pingTimeout":5000}';
const page = new EventTarget();

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('WebSocket', Wire);
  vi.stubGlobal('addEventListener', page.addEventListener.bind(page));
  vi.stubGlobal('removeEventListener', page.removeEventListener.bind(page));
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

async function connected(origin = 'https://room.test') {
  const engine = new Socket(origin, { path: '/socket.io' });
  const told: string[] = [];
  for (const name of ['open', 'data', 'ping', 'error', 'close']) {
    engine.on(name, (what) => told.push(typeof what === 'string' ? `${name} ${what}` : name));
  }
  await vi.advanceTimersByTimeAsync(0);
  Wire.last.hears(handshake);
  return { engine, told, wire: Wire.last };
}

describe('the pages’ own connection', () => {
  it('asks by the protocol, and speaks once the server has said its word', async () => {
    const { engine, told, wire } = await connected();
    expect(wire.url).toBe('wss://room.test/socket.io/?EIO=4&transport=websocket');
    engine.write('2["x"]');
    wire.hears('42["stage",{}]');
    expect([told, wire.sent]).toEqual([['open', 'data 2["stage",{}]'], ['42["x"]']]);
  });

  it('answers every ping, and is over when none comes for as long as the server promised', async () => {
    const { told, wire } = await connected();
    await vi.advanceTimersByTimeAsync(10_000);
    wire.hears('2');
    expect(wire.sent).toEqual(['3']);
    await vi.advanceTimersByTimeAsync(14_999);
    expect(told).toEqual(['open', 'ping']);
    await vi.advanceTimersByTimeAsync(1);
    expect([told.at(-1), wire.closed]).toEqual(['close ping timeout', true]);
  });

  it('is over when a page wakes after the time for a ping, although no timer has run', async () => {
    const { engine, told } = await connected();
    expect(engine._hasPingExpired()).toBe(false);
    vi.setSystemTime(Date.now() + 15_001);
    expect(engine._hasPingExpired()).toBe(true);
    await Promise.resolve();
    expect(told.at(-1)).toBe('close ping timeout');
  });

  it('is over when the network goes, but not on this machine itself', async () => {
    const away = await connected();
    const here = await connected('http://localhost:4680');
    page.dispatchEvent(new Event('offline'));
    expect(away.told.at(-1)).toBe('close transport close');
    expect(here.told).toEqual(['open']);
  });

  it('ends once, whatever comes after', async () => {
    const { engine, told, wire } = await connected();
    engine.close();
    wire.onclose?.();
    wire.hears('42["stage",{}]');
    engine.write('2["x"]').close();
    page.dispatchEvent(new Event('offline'));
    await vi.advanceTimersByTimeAsync(60_000);
    expect([told, wire.sent]).toEqual([['open', 'close forced close'], []]);
  });

  it('says goodbye by a request where it was connected by requests', async () => {
    vi.stubGlobal('WebSocket', undefined);
    const asked: string[] = [];
    vi.stubGlobal('fetch', async (url: URL, init: RequestInit) => {
      const sid = url.searchParams.get('sid');
      asked.push(`${init.method ?? 'GET'} ${sid} ${init.body ?? ''}`.trim());
      if (init.method === 'POST') return new Response('ok');
      return sid === null ? new Response(handshake) : new Promise<Response>(() => undefined);
    });
    const engine = new Socket('https://room.test', { path: '/socket.io' });
    const open = new Promise<void>((resolve) => engine.on('open', () => resolve()));
    await vi.advanceTimersByTimeAsync(0);
    await open;
    engine.write('2["x"]');
    engine.write('2["y"]');
    engine.close();
    await vi.advanceTimersByTimeAsync(0);
    expect(asked).toEqual(['GET null', 'GET abc', 'POST abc 42["x"]', 'POST abc 42["y"]', 'POST abc 1']);
  });
});
