import { expect, it } from 'vitest';
import { PartsDelivery } from '../../../server/live/parts-delivery.ts';
import { FakeSocket, fakeServer } from '../support/fake-socket.ts';
import { ManualClock } from '../support/manual-clock.ts';

it('lets go of devices that come and go while nothing is told, and keeps those that stay', () => {
  const live = fakeServer();
  let told: ReadonlyMap<string, string> = new Map([['one', 'pears']]);
  const delivery = new PartsDelivery<string>({
    io: live.io,
    clock: new ManualClock(),
    name: 'board',
    parts: () => told,
    send: (to, change) => to.emit('board-change', { version: 1, anew: false, ...change } as never),
  });
  let asked = 0;
  const come = () => {
    const socket = new FakeSocket();
    let here = true;
    Object.defineProperty(socket, 'connected', {
      get: () => {
        asked += 1;
        return here;
      },
      set: (is: boolean) => {
        here = is;
      },
    });
    live.sockets.push(socket);
    delivery.welcome([socket.asLive]);
    return socket;
  };
  const stays = come();
  // Each phone of an evening, four hours of bad Wi-Fi.
  for (let turn = 0; turn < 500; turn += 1) {
    const goes = come();
    goes.connected = false;
    live.sockets.pop();
  }
  asked = 0;
  told = new Map([['one', 'pears and hay']]);
  const before = stays.heard.length;
  delivery.deliver();
  // Whoever is still held is asked whether they are there; one more each time it is told.
  expect(asked).toBeLessThan(60);
  expect(stays.heard.length).toBe(before + 1);
});
