import { createServer, type Server as HttpServer, IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { queryObjects } from 'node:v8';
import { Server } from 'socket.io';
import { io as connectTo } from 'socket.io-client';
import { expect, it } from 'vitest';
import { forgetRequest } from '../../server/live/forgotten-request.ts';
import type { LiveServer } from '../../server/live/rooms.ts';

/** So that those of the clients in this process are not counted. */
class Request extends IncomingMessage {}
const kept = (): number => queryObjects(Request, { format: 'count' });

const listening = (http: HttpServer) =>
  new Promise<void>((done) => http.listen(0, '127.0.0.1', () => done()));

async function comeIn(http: HttpServer) {
  const client = connectTo(`http://127.0.0.1:${(http.address() as AddressInfo).port}`, {
    transports: ['websocket'],
    forceNew: true,
    reconnection: false,
  });
  await new Promise((said) => client.on('said', said));
  return client;
}

it('keeps nothing of the request that a line came with, and the line still speaks and closes', async () => {
  const http = createServer({ IncomingMessage: Request });
  const io: LiveServer = new Server(http);
  let forgets = false;
  io.on('connection', (socket) => {
    if (forgets) forgetRequest(socket);
    Reflect.apply(socket.emit, socket, ['said', 'welcome']);
  });
  await listening(http);
  const first = await comeIn(http);
  // Else this would count in vain.
  expect(kept()).toBe(1);
  first.disconnect();
  await expect.poll(() => io.of('/').sockets.size).toBe(0);

  forgets = true;
  const client = await comeIn(http);
  await expect.poll(kept).toBe(0);
  const [there] = io.of('/').sockets.values();
  const gone = new Promise((closed) => there?.on('disconnect', closed));
  client.disconnect();
  expect(await gone).toBe('client namespace disconnect');
  await io.close();
});

it('leaves a line that breaks to the one listener that is left', async () => {
  const http = createServer();
  const io: LiveServer = new Server(http);
  const lost = new Promise<string>((gone) => {
    io.on('connection', (socket) => {
      forgetRequest(socket);
      socket.on('disconnect', gone);
      const { transport } = socket.conn as unknown as { transport: { socket: NodeJS.EventEmitter } };
      expect(transport.socket.listenerCount('error')).toBe(1);
      transport.socket.emit('error', new Error('cut'));
    });
  });
  await listening(http);
  const client = connectTo(`http://127.0.0.1:${(http.address() as AddressInfo).port}`, {
    transports: ['websocket'],
    reconnection: false,
  });
  expect(await lost).toBe('transport error');
  client.disconnect();
  await io.close();
});
