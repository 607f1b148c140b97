import { io } from 'socket.io-client';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { ServerToClient } from '../../shared/wire/protocol.ts';
import { credentials } from './support/device.ts';
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

  it('is told what it did wrong by one answer, not two', async () => {
    const answer = await fetch(`${house.url}/socket.io/?EIO=3&transport=nothing`);
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ code: 0 });
    await house.ask('GET', '/healthz');
    expect(house.log.lines).toEqual([]);
  });
});
