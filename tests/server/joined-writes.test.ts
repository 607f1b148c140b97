import { createServer } from 'node:http';
import type { AddressInfo, Socket as TcpSocket } from 'node:net';
import { Server } from 'socket.io';
import { io as connectTo } from 'socket.io-client';
import { expect, it } from 'vitest';
import { joinGreeting, joinOpening, joinWrites } from '../../server/live/joined-writes.ts';
import type { LiveServer } from '../../server/live/rooms.ts';

it('what waits for a device goes to the network in one write: if this fails, an update has changed what it leans on', async () => {
  const http = createServer();
  const io = new Server(http, {
    perMessageDeflate: false,
    allowRequest: (request, answer) => {
      joinOpening(request);
      answer(null, true);
    },
  });
  joinWrites(io as unknown as LiveServer);
  const greeting = Array.from({ length: 7 }, (_, turn) => `message ${turn}`);
  let writes = 0;
  // Below Socket.IO, Engine.IO and ws: what this process hands to the system.
  http.on('connection', (tcp: TcpSocket & { _writev: (...given: never[]) => void }) => {
    for (const name of ['_write', '_writev'] as const) {
      const usual = tcp[name].bind(tcp) as (...given: never[]) => void;
      Object.assign(tcp, {
        [name]: (...given: never[]) => {
          writes += 1;
          usual(...given);
        },
      });
    }
  });
  io.use((socket, next) => {
    joinGreeting(socket.conn as unknown as Parameters<typeof joinGreeting>[0]);
    next();
  });
  io.on('connection', (socket) => {
    for (const message of greeting) socket.emit('said', message);
  });
  await new Promise<void>((listening) => http.listen(0, '127.0.0.1', listening));
  const heard: string[] = [];
  const client = connectTo(`http://127.0.0.1:${(http.address() as AddressInfo).port}`, {
    transports: ['websocket'],
    forceNew: true,
  });
  client.on('said', (message: string) => heard.push(message));
  try {
    await expect.poll(() => heard.length, { timeout: 10_000 }).toBe(greeting.length);
    expect(heard).toEqual(greeting);
    // The answer to the request with Engine.IO's packet, and that it is let in with the greeting. Alone they were ten.
    expect(writes).toBe(2);
  } finally {
    client.disconnect();
    await io.close();
  }
});
