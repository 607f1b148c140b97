import { createServer } from 'node:http';
import express from 'express';
import { afterEach, expect, it, vi } from 'vitest';
import { GuessThrottle } from '../../../server/access/guess-throttle.ts';
import { HouseOpenings } from '../../../server/access/open-houses.ts';
import { peersOf } from '../../../server/access/peers.ts';
import { askPeer, peerRoute } from '../../../server/passing/peer-route.ts';
import { SharedCounts } from '../../../server/passing/shared-counts.ts';
import { ManualClock } from '../support/manual-clock.ts';

const ends: (() => void)[] = [];
afterEach(() => {
  for (const end of ends.splice(0)) end();
});

/** A process of a cluster, as far as it counts wrong codes. */
async function process(houseKey: string, others: { readonly address: string }[]) {
  const guesses = new GuessThrottle(new ManualClock());
  const peers = peersOf(houseKey);
  const openings = new HouseOpenings(new ManualClock());
  const counts = Object.entries({ guesses, openings }).map(
    ([name, counted]) => new SharedCounts(name, counted, { others: async () => others as never }, peers),
  );
  const steps = Object.assign({}, ...counts.map(({ step }) => step));
  const site = express().use('/api', express.json(), peerRoute(peers, steps));
  const http = createServer(site);
  await new Promise<void>((done) => http.listen(0, '127.0.0.1', done));
  ends.push(
    () => http.close(),
    () => {
      for (const each of counts) each.close();
    },
  );
  const at = http.address();
  return { guesses, openings, peers, address: `127.0.0.1:${typeof at === 'object' ? at?.port : 0}` };
}
/** Whether two look-ups from there come at once: the clock stands still. */
async function atOnce({ guesses }: { readonly guesses: GuessThrottle }, from: string): Promise<boolean> {
  await guesses.turn(from);
  const second = guesses.turn(from).then(() => true);
  return Promise.race([second, new Promise<boolean>((done) => setTimeout(() => done(false), 50))]);
}

it('wrong codes at one process slow the same address down at the others, and no other address', async () => {
  const others: { address: string }[] = [];
  const one = await process('house', others);
  const other = await process('house', []);
  others.push({ address: other.address });
  for (let wrong = 0; wrong < 101; wrong += 1) one.guesses.failed('203.0.113.9');
  await expect.poll(() => atOnce(other, '203.0.113.9'), { timeout: 10_000 }).toBe(false);
  expect(await atOnce(other, '203.0.113.10')).toBe(true);
});

it('houses that a stranger opens at one process count at the others, for the same address', async () => {
  const others: { address: string }[] = [];
  const one = await process('house', others);
  const other = await process('house', []);
  others.push({ address: other.address });
  const told = vi.spyOn(other.openings, 'countElsewhere');
  const opened = Array.from({ length: 11 }, () => one.openings.take('203.0.113.9'));
  expect(opened).toEqual([...Array.from({ length: 10 }, () => true), false]);
  await expect.poll(() => told.mock.calls.length).toBe(10);
  expect(other.openings.take('203.0.113.9')).toBe(false);
  expect(other.openings.take('203.0.113.10')).toBe(true);
});

it('are believed from a process of the cluster only, and from none that hands on what it was asked', async () => {
  const one = await process('house', []);
  const stranger = peersOf('another house');
  const addresses = Array.from({ length: 101 }, () => '203.0.113.9');
  expect(await askPeer(stranger, one.address, 'guesses', { addresses })).toBe(false);
  const handedOn = { own: { ...one.peers.own, 'X-Forwarded-For': '198.51.100.7' } };
  expect(await askPeer(handedOn, one.address, 'guesses', { addresses })).toBe(false);
  expect(await atOnce(one, '203.0.113.9')).toBe(true);
  expect(await askPeer(one.peers, one.address, 'nothing', {})).toBe(false);
  expect(await askPeer(one.peers, one.address, 'guesses', { addresses: 'all' })).toBe(false);
  expect(await askPeer(one.peers, one.address, 'guesses', { addresses })).toBe(true);
  expect(await atOnce(one, '203.0.113.9')).toBe(false);
});
