import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Server } from 'socket.io';
import { io as connectTo } from 'socket.io-client';
import { expect, it } from 'vitest';
import { emptyRequest } from '../../server/live/forgotten-request.ts';

it('takes out of a request what it came with, and its line still opens, speaks and closes', async () => {
  const http = createServer();
  const io = new Server(http);
  const entered = new Promise<IncomingMessage>((done) => {
    io.on('connection', (socket) => {
      emptyRequest(socket.request);
      socket.emit('said', 'welcome');
      done(socket.request);
    });
  });
  await new Promise<void>((listening) => http.listen(0, '127.0.0.1', listening));
  const client = connectTo(`http://127.0.0.1:${(http.address() as AddressInfo).port}`, {
    transports: ['websocket'],
    forceNew: true,
    reconnection: false,
    extraHeaders: { 'x-worn': 'only at the door' },
    query: { tasting: 'an-evening' },
  });
  const heard = new Promise((said) => client.on('said', said));
  const request = await entered;
  const left = JSON.stringify(
    Reflect.ownKeys(request).map((key) => [String(key), typeof Reflect.get(request, key)]),
  );
  expect([request.rawHeaders, request.url]).toEqual([undefined, undefined]);
  expect(left).not.toContain('"_query","object"');
  expect(await heard).toBe('welcome');
  const gone = new Promise((closed) => [...io.of('/').sockets.values()][0]?.on('disconnect', closed));
  client.disconnect();
  expect(await gone).toBe('client namespace disconnect');
  await io.close();
});
