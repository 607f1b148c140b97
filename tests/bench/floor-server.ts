import { createServer } from 'node:http';
import { type WebSocket, WebSocketServer } from 'ws';
import { answerParent, memory, worked } from './child.ts';

/** The least that a broadcast can cost: one view serialised once, one loop over the sockets. */
const http = createServer();
const server = new WebSocketServer({ server: http, perMessageDeflate: false });
const guests = new Set<WebSocket>();
let view: readonly unknown[] = [];

server.on('connection', (socket, request) => {
  if (request.url !== '/host') {
    guests.add(socket);
    socket.on('close', () => guests.delete(socket));
    return;
  }
  socket.on('message', () => {
    const frame = `42${JSON.stringify(view)}`;
    for (const guest of guests) guest.send(frame);
  });
});

answerParent({
  listen: () =>
    new Promise((done) => {
      http.listen({ port: 0, host: '127.0.0.1', backlog: 4096 }, () => {
        const address = http.address();
        done({ port: typeof address === 'object' ? address?.port : 0 });
      });
    }),
  show: (wanted: readonly unknown[]) => {
    view = wanted;
  },
  memory,
  worked,
});
