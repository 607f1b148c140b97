import { request as ask, createServer } from 'node:http';
import { io } from 'socket.io-client';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commandId } from '../../core/ids.ts';
import { followAsGuest } from '../../shared/follower/guest-follower.ts';
import type { ServerToClient } from '../../shared/wire/protocol.ts';
import { credentials, newId } from './support/device.ts';
import { House } from './support/house.ts';

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

describe('a device that cannot open a WebSocket', () => {
  it('follows by polling', async () => {
    const { made, noor } = await house.evening();
    const auth = credentials('guest', made.tasting, noor.key);
    const socket = io(house.url, { auth, transports: ['polling'], forceNew: true, reconnection: false });
    const stage = await new Promise<Parameters<ServerToClient['stage']>[0]>((resolve, reject) => {
      socket.once('stage', resolve);
      socket.once('connect_error', reject);
      socket.once('disconnect', (reason) => reject(new Error(reason)));
    });
    expect(stage).toEqual({ ...noor.last('stage'), version: stage.version });
    socket.disconnect();
    expect(house.log.lines).toEqual([]);
  });

  it('turns to polling by itself when WebSockets have failed twice', async () => {
    const { made, noor } = await house.evening();
    const asked: string[] = [];
    const wall = createServer((request, answer) => {
      asked.push(/transport=(\w+)/.exec(request.url ?? '')?.[1] ?? 'page');
      const { method, headers } = request;
      const onward = ask(new URL(request.url ?? '', house.url), { method, headers }, (said) => {
        answer.writeHead(said.statusCode ?? 500, said.headers);
        said.pipe(answer);
      });
      request.pipe(onward.on('error', () => answer.destroy()));
    });
    wall.on('upgrade', (_request, tcp) => {
      asked.push('websocket');
      tcp.destroy();
    });
    await new Promise<void>((resolve) => wall.listen(0, '127.0.0.1', resolve));
    const address = wall.address();
    const guest = followAsGuest({
      origin: `http://127.0.0.1:${typeof address === 'object' ? address?.port : ''}`,
      tasting: made.tasting,
      key: noor.key,
      keep: { read: () => null, write: () => true },
      newId: () => commandId(newId()),
    });
    await expect.poll(() => guest.stage.peek()?.title).toBe(noor.last('stage')?.title);
    expect(asked.slice(0, 2)).toEqual(['websocket', 'websocket']);
    expect(asked).toContain('polling');
    guest.close();
    await new Promise((resolve) => {
      wall.close(resolve);
      wall.closeAllConnections();
    });
  });

  it('is told what it did wrong by one answer, not two', async () => {
    const answer = await fetch(`${house.url}/socket.io/?EIO=3&transport=nothing`);
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ code: 0 });
    await house.ask('GET', '/healthz');
    expect(house.log.lines).toEqual([]);
  });
});
