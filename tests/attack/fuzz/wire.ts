import { Agent, request as ask } from 'node:http';
import { connect } from 'node:net';
import { WebSocket } from 'ws';
import { mark, type Nasty } from './nasty.ts';
import type { Request } from './templates.ts';

export interface HttpAnswer {
  readonly status: number;
  readonly type: string;
  readonly text: string;
}

const agent = new Agent({ keepAlive: true, maxSockets: 16 });

/** As written: nothing is normalised on the way. Status 0 when the server hung up instead of answering. */
export function send(origin: string, { method, path, headers, body }: Request): Promise<HttpAnswer> {
  const { hostname, port } = new URL(origin);
  return new Promise((resolve, reject) => {
    const length = body === undefined ? {} : { 'content-length': String(Buffer.byteLength(body)) };
    const options = { agent, hostname, port, method, path, headers: { ...headers, ...length } };
    const asked = ask(options, (response) => {
      const pieces: Buffer[] = [];
      response.on('data', (piece: Buffer) => pieces.push(piece));
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          type: response.headers['content-type'] ?? '',
          text: Buffer.concat(pieces).toString(),
        }),
      );
      response.on('error', reject);
    });
    asked.setTimeout(10_000, () => asked.destroy(new Error('The server did not answer within 10 s.')));
    asked.on('error', (error: NodeJS.ErrnoException) =>
      // A body of a megabyte is refused while it is still on its way.
      error.code === 'EPIPE' || error.code === 'ECONNRESET'
        ? resolve({ status: 0, type: '', text: '' })
        : reject(error),
    );
    asked.end(body);
  });
}

const garbled = [
  'GET / HTTP/9.9\r\n\r\n',
  `GET /\0${mark} HTTP/1.1\r\nHost: x\r\n\r\n`,
  `POST /api/seats HTTP/1.1\r\nHost: x\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n${mark}`,
  `POST /api/seats HTTP/1.1\r\nHost: x\r\nContent-Length: -1\r\n\r\n${mark}`,
  `GET / HTTP/1.1\r\n${mark}: ${'x'.repeat(20_000)}\r\n\r\n`,
  `${mark}\r\n\r\n`,
  '\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03',
  'GET /socket.io/?EIO=4&transport=websocket HTTP/1.1\r\nHost: x\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n\r\n',
  'GET /socket.io/?EIO=3&transport=%00 HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n',
] as const;

/** Bytes that are no HTTP; resolves with the first line that came back, or nothing, once the server has hung up. */
export function sendGarbled(origin: string, nasty: Nasty): Promise<string> {
  const { hostname, port } = new URL(origin);
  return new Promise((resolve) => {
    let heard = '';
    const socket = connect(Number(port), hostname, () => socket.end(nasty.pick([...garbled]), 'latin1'));
    socket.on('data', (bytes) => {
      heard += bytes.toString('latin1');
    });
    socket.on('error', () => undefined);
    socket.on('close', () => resolve(heard));
  });
}

/** Frames below the level of messages, by somebody who has not been let in. Resolves when the server has hung up. */
export function sendFrames(origin: string, nasty: Nasty): Promise<void> {
  const frames: readonly [string, ...string[]] = [
    `40{"protocol":1,"role":"host","tasting":"${mark}","key":"${mark}"}`,
    `40${nasty.json(nasty.value())}`,
    `42["host:ask",{"id":"${mark}"}]`,
    '451-["note:save",{"_placeholder":true,"num":0}]',
    '44{}',
    '43999[]',
    '4',
    '9',
    '2probe',
    '5',
    `40/${mark},`,
    `42${'['.repeat(5000)}`,
  ];
  return new Promise((resolve) => {
    const socket = new WebSocket(`${origin.replace('http', 'ws')}/socket.io/?EIO=4&transport=websocket`);
    socket.on('open', () => {
      for (let count = 1 + nasty.below(4); count > 0; count -= 1) {
        if (nasty.chance(0.2)) socket.send(Buffer.from(nasty.text()));
        else socket.send(nasty.pick(frames));
      }
      socket.close();
    });
    socket.on('error', () => undefined);
    socket.on('close', () => resolve());
  });
}
