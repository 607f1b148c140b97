import { join } from 'node:path';
import type { io as openSocket } from 'socket.io-client';
import { build } from 'vite';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { WebSocket as NodeSocket } from 'ws';
import { lightLine } from '../../shared/build/light-line.ts';
import { credentials } from './support/device.ts';
import { House } from './support/house.ts';
import { temporaryFolder } from './support/process.ts';

/**
 * The client as the pages have it: the package's own upper half on the line of ours. Bundled as the pages are, and run
 * here against the real server, with the browser's WebSocket played by a package's or missing.
 */
let io: typeof openSocket;
const folder = temporaryFolder();
beforeAll(async () => {
  await build({
    configFile: false,
    logLevel: 'silent',
    resolve: { alias: lightLine },
    build: {
      outDir: folder.path,
      minify: false,
      lib: {
        entry: join(import.meta.dirname, '../../node_modules/socket.io-client/build/esm/index.js'),
        formats: ['es'],
        fileName: 'client',
      },
    },
  });
  ({ io } = await import(join(folder.path, 'client.js')));
}, 30_000);
afterAll(() => folder.remove());

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(async () => {
  vi.unstubAllGlobals();
  await house.close();
});

async function follow(open = io) {
  const { made, noor, host } = await house.evening();
  const socket = open(house.url, {
    auth: { ...credentials('guest', made.tasting, noor.key) },
    forceNew: true,
    reconnectionDelay: 20,
    reconnectionDelayMax: 40,
  });
  const stages: string[] = [];
  socket.on('stage', (stage: { cue: { id: string } }) => stages.push(stage.cue.id));
  await vi.waitFor(() => expect(stages).toEqual(['gathering']), { timeout: 10_000 });
  return { socket, stages, host };
}
const probe = (socket: ReturnType<typeof io>) =>
  socket.timeout(5000).emitWithAck('probe', { offset: null, roundTrip: null });

describe.each([
  { way: 'a WebSocket', global: NodeSocket },
  { way: 'requests, where there is no WebSocket', global: undefined },
  {
    way: 'requests, where a WebSocket is let through by nobody',
    global: class {
      onerror: (() => void) | null = null;
      constructor() {
        setTimeout(() => this.onerror?.());
      }
      close() {}
    },
  },
])('a page that is connected by $way', ({ global }) => {
  beforeEach(() => {
    vi.stubGlobal('WebSocket', global);
  });

  it('follows the room, asks and is answered, and leaves', async () => {
    const { socket, stages, host } = await follow();
    await host.host({ type: 'Advance', from: 'gathering' });
    await vi.waitFor(() => expect(stages.at(-1)).not.toBe('gathering'), { timeout: 10_000 });
    expect(await probe(socket)).toBeTypeOf('object');
    const gone = new Promise((resolve) => socket.once('disconnect', resolve));
    socket.disconnect();
    expect(await gone).toBe('io client disconnect');
    expect(house.log.lines).toEqual([]);
  });

  it('is back by itself when the line was cut', async () => {
    const { socket, stages } = await follow();
    const why = new Promise((resolve) => socket.once('disconnect', resolve));
    socket.io.engine.close();
    expect(await why).toBe('forced close');
    await vi.waitFor(() => expect(stages).toHaveLength(2), { timeout: 10_000 });
    expect(await probe(socket)).toBeTypeOf('object');
    socket.disconnect();
  });

  it('is told why it is not let in', async () => {
    const { made } = await house.evening();
    const auth = { ...credentials('guest', made.tasting, 'not-a-key-of-this-evening-0123456789') };
    const socket = io(house.url, { auth, forceNew: true, reconnection: false });
    const refused = await new Promise<Error & { data?: unknown }>((resolve) => {
      socket.once('connect_error', resolve);
    });
    expect(refused.data).toMatchObject({ code: 'wrong-key' });
    socket.disconnect();
  });
});
