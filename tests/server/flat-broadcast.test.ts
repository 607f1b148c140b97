import { createServer, type Server as HttpServer } from 'node:http';
import { type AddressInfo, connect, type Socket as TcpSocket } from 'node:net';
import { Server } from 'socket.io';
import { io as connectTo, type Socket } from 'socket.io-client';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { broadcastFlat, type Deliveries, showLife, textFrame } from '../../server/live/flat-broadcast.ts';
import type { LiveServer } from '../../server/live/rooms.ts';

let http: HttpServer;
let io: Server;
let deliveries: Deliveries;
const clients: Socket[] = [];
const raw: TcpSocket[] = [];

beforeEach(async () => {
  http = createServer();
  io = new Server(http, { perMessageDeflate: false });
  deliveries = broadcastFlat(io as unknown as LiveServer);
  io.on('connection', (socket) => void socket.join('table'));
  await new Promise<void>((listening) => http.listen(0, '127.0.0.1', listening));
});
afterEach(async () => {
  for (const each of clients.splice(0)) each.disconnect();
  for (const each of raw.splice(0)) each.destroy();
  await io.close();
});

const port = () => (http.address() as AddressInfo).port;

/** A guest who writes down what comes, in the order in which it comes. */
async function guest(transports = ['websocket'], upgrade = true) {
  const socket = connectTo(`http://127.0.0.1:${port()}`, { transports, upgrade, forceNew: true });
  clients.push(socket);
  const heard: unknown[] = [];
  socket.on('turn', (turn: unknown) => heard.push(turn));
  await new Promise<void>((connected) => socket.on('connect', () => connected()));
  return { socket, heard };
}
const sockets = () => [...io.of('/').sockets.values()];
const numbers = (count: number) => Array.from({ length: count }, (_, turn) => turn);

describe('a broadcast to a room', () => {
  it('is written past Socket.IO to each idle WebSocket: if this fails, an update has changed what it leans on', async () => {
    const guests = [await guest(), await guest(), await guest()];
    io.to('table').emit('turn', 'look');
    for (const { heard } of guests) await expect.poll(() => heard).toEqual(['look']);
    expect(deliveries).toEqual({ flat: 3, usual: 0 });
  });

  it('keeps its place among ordinary messages', async () => {
    const { heard } = await guest();
    const [socket] = sockets();
    for (const turn of numbers(200)) {
      if (turn % 3 === 0) socket?.emit('turn', turn);
      else io.to('table').emit('turn', turn);
      if (turn % 7 === 0) await new Promise((done) => setImmediate(done));
    }
    await expect.poll(() => heard.length).toBe(200);
    expect(heard).toEqual(numbers(200));
  });

  it('reaches a guest who polls, and one whose line is upgraded in the middle, once each and in order', async () => {
    const polling = await guest(['polling'], false);
    const upgrading = await guest(['polling', 'websocket']);
    for (const turn of numbers(120)) {
      io.to('table').emit('turn', turn);
      await new Promise((done) => setTimeout(done, 2));
    }
    for (const { heard } of [polling, upgrading]) {
      await expect.poll(() => heard.length).toBe(120);
      expect(heard).toEqual(numbers(120));
    }
    expect(upgrading.socket.io.engine.transport.name).toBe('websocket');
    expect(deliveries.flat).toBeGreaterThan(0);
    expect(deliveries.usual).toBeGreaterThanOrEqual(120);
  });

  it('waits in the usual queue for who does not read, and goes on for all others', async () => {
    const reader = await guest();
    const slow = connect(port(), '127.0.0.1');
    raw.push(slow);
    slow.write(
      `GET /socket.io/?EIO=4&transport=websocket HTTP/1.1\r\nHost: x\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\r\n\r\n`,
    );
    await new Promise((answered) => slow.once('data', answered));
    // "40" connects to the namespace; masked with zeros, as a client must mask (RFC 6455, 5.3).
    slow.write(Buffer.from([0x81, 0x82, 0, 0, 0, 0, 0x34, 0x30]));
    await expect.poll(() => sockets().length).toBe(2);
    slow.pause();
    const page = 'x'.repeat(1_000_000);
    for (const turn of numbers(20)) {
      io.to('table').emit('turn', `${turn}${page}`);
      await expect.poll(() => reader.heard.length).toBe(turn + 1);
    }
    expect(deliveries.usual).toBeGreaterThan(0);
    // What waits is counted where it waits, so that whoever watches the line sees it.
    const conn = sockets().at(-1)?.conn as unknown as { readonly writeBuffer: readonly unknown[] };
    expect(conn.writeBuffer.length).toBeGreaterThan(0);
  });

  it('leaves out who has gone or is going, and takes in who comes', async () => {
    const stays = await guest();
    const goes = await guest();
    io.to('table').emit('turn', 1);
    await expect.poll(() => goes.heard).toEqual([1]);
    sockets().at(-1)?.leave('table');
    io.to('table').emit('turn', 2);
    goes.socket.disconnect();
    io.to('table').emit('turn', 3);
    const comes = await guest();
    io.to('table').emit('turn', 4);
    await expect.poll(() => comes.heard).toEqual([4]);
    await expect.poll(() => stays.heard).toEqual([1, 2, 3, 4]);
    expect(goes.heard).toEqual([1]);
  });

  it('says that a line lives where nothing was said for so long, and not to who polls', async () => {
    const quiet = await guest();
    const polling = await guest(['polling'], false);
    const signs = [quiet, polling].map(({ socket }) => {
      const heard: string[] = [];
      socket.io.engine.on('packet', ({ type }: { type: string }) => heard.push(type));
      return heard;
    });
    const table = io as unknown as LiveServer;
    showLife(table, 'table', 60_000);
    await expect.poll(() => signs[0]).toEqual(['noop']);
    showLife(table, 'table', 60_000);
    showLife(table, 'nobody', 0);
    io.to('table').emit('turn', 1);
    showLife(table, 'table', 60_000);
    await expect.poll(() => [quiet.heard, polling.heard]).toEqual([[1], [1]]);
    expect(signs).toEqual([['noop', 'message'], ['message']]);
  });

  it('with somebody left out takes the usual way', async () => {
    const one = await guest();
    const other = await guest();
    sockets()[0]?.to('table').emit('turn', 'for the other');
    await expect.poll(() => other.heard).toEqual(['for the other']);
    expect(one.heard).toEqual([]);
    expect(deliveries.flat).toBe(0);
  });
});

it('makes frames as RFC 6455 has them, at each length of their head', () => {
  // The first is the example of section 5.7; the others are its rules for 256 bytes and 64 KiB in the same section.
  expect(textFrame('Hello').toString('hex')).toBe('810548656c6c6f');
  expect(textFrame('a'.repeat(256)).subarray(0, 4).toString('hex')).toBe('817e0100');
  expect(textFrame('a'.repeat(65_536)).subarray(0, 10).toString('hex')).toBe('817f0000000000010000');
  expect(textFrame('ä')).toHaveLength(4);
});
