import { request as ask, type IncomingMessage, type ServerResponse } from 'node:http';
import { connect, type Socket } from 'node:net';
import type { Duplex } from 'node:stream';
import { addressOf } from '../access/address.ts';
import type { Peers } from '../access/peers.ts';

/** Where another process of the cluster listens. */
export interface Destination {
  /** host:port */
  readonly address: string;
}

const placeOf = ({ address }: Destination): { readonly host: string; readonly port: number } => {
  const colon = address.lastIndexOf(':');
  return { host: address.slice(0, colon), port: Number(address.slice(colon + 1)) };
};

/** Ms after which a process that does not even take a connection is as good as gone. */
const longestKnock = 2000;

export type Passed = 'passed' | 'refused' | 'unanswered';

/** Hands a connection on as it is, from its first byte. What follows is read by nobody here. */
export function passConnection(
  request: IncomingMessage,
  near: Duplex,
  head: Buffer,
  to: Destination,
  peers: Peers,
): Promise<{ readonly how: Passed; readonly far?: Socket }> {
  return new Promise((tell) => {
    const far = connect(placeOf(to));
    far.setNoDelay(true);
    const waiting = setTimeout(() => far.destroy(new Error('It does not answer.')), longestKnock);
    let connected = false;
    far.once('connect', () => {
      connected = true;
      clearTimeout(waiting);
      const headers = peers
        .headersFor(request, addressOf(request))
        .map(([name, value]) => `${name}: ${value}\r\n`);
      far.write(`${request.method} ${request.url} HTTP/1.1\r\n${headers.join('')}\r\n`);
      if (head.length > 0) far.write(head);
      far.pipe(near);
      near.pipe(far);
      tell({ how: 'passed', far });
    });
    far.on('error', (error) => {
      clearTimeout(waiting);
      tell({ how: isRefusal(error) ? 'refused' : 'unanswered' });
    });
    // Either end of it ends the other.
    far.once('close', () => connected && near.destroy());
    near.once('close', () => far.destroy());
    near.on('error', () => far.destroy());
  });
}

/** Asks the other process the same, and hands its answer back. @param body what has been read of it already */
export function passRequest(
  request: IncomingMessage,
  response: ServerResponse,
  body: string | undefined,
  to: Destination,
  peers: Peers,
): Promise<Passed> {
  return new Promise((tell) => {
    const headers = peers
      .headersFor(request, addressOf(request))
      .filter(([name]) => !/^(connection|content-length|transfer-encoding)$/i.test(name));
    const length = body === undefined ? request.headers['content-length'] : String(Buffer.byteLength(body));
    const sent = [...headers, ...(length === undefined ? [] : [['Content-Length', length] as const])];
    const passed = ask({
      ...placeOf(to),
      method: request.method,
      // Where routes are mounted, Express has taken the front of it off.
      path: 'originalUrl' in request ? String(request.originalUrl) : request.url,
      headers: sent.flat() as never,
      setHost: false,
      agent: false,
    });
    passed.once('response', (answer) => {
      response.writeHead(answer.statusCode ?? 502, answer.rawHeaders);
      answer.pipe(response);
      tell('passed');
    });
    passed.on('error', (error) => {
      if (response.headersSent) response.destroy();
      tell(isRefusal(error) ? 'refused' : 'unanswered');
    });
    response.once('close', () => passed.destroy());
    if (body === undefined) request.pipe(passed);
    else passed.end(body);
  });
}

const isRefusal = (error: Error): boolean => 'code' in error && error.code === 'ECONNREFUSED';
