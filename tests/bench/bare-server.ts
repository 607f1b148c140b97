import { createServer } from 'node:http';
import { Server } from 'socket.io';
import { answerParent, memory, worked } from './child.ts';

/** The transport that ours stands on and nothing else: what it sends to whoever connects, and a broadcast. */
const http = createServer();
const io = new Server(http, { serveClient: false, perMessageDeflate: false });
let snapshot: readonly (readonly [event: string, body: unknown])[] = [];
let view: readonly [event: string, body: unknown] = ['stage', {}];

io.on('connection', (socket) => {
  socket.on('tap', () => socket.broadcast.emit(...view));
  for (const [event, body] of snapshot) socket.emit(event, body);
});

answerParent({
  listen: () =>
    new Promise((done) => {
      http.listen({ port: 0, host: '127.0.0.1', backlog: 4096 }, () => {
        const address = http.address();
        done({ port: typeof address === 'object' ? address?.port : 0 });
      });
    }),
  show(wanted: typeof view) {
    view = wanted;
  },
  greetWith({ frames }: { frames: typeof snapshot }) {
    snapshot = frames;
  },
  memory,
  worked,
});
