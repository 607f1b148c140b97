import { createServer, type Server as HttpServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { io as connectTo, type Socket } from 'socket.io-client';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createLiveServer } from '../../server/live/gateway.ts';
import type { Leave } from '../../server/live/mouth.ts';
import type { LiveServer } from '../../server/live/rooms.ts';

let http: HttpServer;
let io: LiveServer;
let holds = true;
let waiting: (() => void)[] = [];
const clients: Socket[] = [];
const leave: Leave = {
  holds: () => holds,
  held: () => new Promise((done) => void waiting.push(done)),
};
const holdsAgain = (): void => {
  holds = true;
  for (const done of waiting.splice(0)) done();
};

beforeEach(async () => {
  [holds, waiting] = [true, []];
  http = createServer();
  io = createLiveServer([], undefined, leave).attach(http);
  io.on('connection', (socket) => {
    void socket.join('table');
    socket.emit('stage', 'whole' as never);
  });
  await new Promise<void>((listening) => http.listen(0, '127.0.0.1', listening));
});
afterEach(async () => {
  for (const each of clients.splice(0)) each.disconnect();
  await io.close();
});

function guest() {
  const { port } = http.address() as AddressInfo;
  const socket = connectTo(`http://127.0.0.1:${port}`, { transports: ['websocket'], forceNew: true });
  clients.push(socket);
  const heard: unknown[] = [];
  socket.on('stage', (told: unknown) => heard.push(told));
  socket.on('news', (told: unknown) => heard.push(told));
  return { socket, heard };
}
const change = (told: unknown) => io.to('table').emit('news', told as never);
const here = () => io.of('/').sockets.size;

describe('while another process may have what is conducted here', () => {
  it('nothing is said, and afterwards all of it, in its order', async () => {
    const noor = guest();
    await expect.poll(() => noor.heard).toEqual(['whole']);
    holds = false;
    change(1);
    for (const each of io.of('/').sockets.values()) each.emit('stage', 'again' as never);
    change(2);
    // Whoever comes now is let in by the engine, so that what had been said would be here as well.
    guest();
    await expect.poll(here).toBe(2);
    expect(noor.heard).toEqual(['whole']);
    holdsAgain();
    await expect.poll(() => noor.heard).toEqual(['whole', 1, 'again', 2]);
  });

  it('whoever comes is let in afterwards, and told nothing that was meant for those before', async () => {
    const noor = guest();
    await expect.poll(() => noor.heard).toEqual(['whole']);
    holds = false;
    change(1);
    const tomas = guest();
    await expect.poll(here).toBe(2);
    change(2);
    expect(tomas.socket.connected).toBe(false);
    holdsAgain();
    await expect.poll(() => tomas.heard).toEqual(['whole', 2]);
    expect(noor.heard).toEqual(['whole', 1, 2]);
  });

  it('lines are let go before more waits than anybody could want', async () => {
    const noor = guest();
    await expect.poll(() => noor.heard).toEqual(['whole']);
    holds = false;
    for (let count = 0; count < 20_001; count += 1) change(count);
    await expect.poll(() => noor.socket.connected).toBe(false);
    expect(noor.heard).toEqual(['whole']);
  });
});
