import { expect, it } from 'vitest';
import { pourId } from '../../core/ids.ts';
import { OutsiderWire } from '../attack/secrets/outsider-wire.ts';
import { memoryStore } from '../support/memory-store.ts';
import { House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

const rows = [
  ['two', 'three', 'one'],
  ['three', 'one', 'two'],
].map((row) => row.map(pourId));

/** An evening with own orders, all that its guests and its screen were sent, and what the guests take home on the way. */
async function heardBy(order: readonly string[]): Promise<readonly string[]> {
  const plan = aPlan({
    blind: true,
    ownOrders: true,
    discussion: 'each-flight',
    ranking: 'each-flight',
    servingOrders: [{ rows }],
  });
  const pours = order.flatMap((id) => plan.pours.find((pour) => pour.id === id) ?? []);
  const clock = new ManualClock();
  let made = 0;
  const drawn = (length: number): string => {
    made += 1;
    return String(made).padStart(length, '0');
  };
  const chance = {
    id: () => drawn(12),
    key: () => drawn(32),
    code: () => drawn(6),
    number: () => Number(drawn(2)),
  };
  const house = await House.open({ clock, chance, store: memoryStore() });
  try {
    const { tasting, code, hostKey } = await house.plan({ ...plan, pours });
    const enter = (role: string, key: string) =>
      OutsiderWire.open(house.url, { protocol: 2, role, tasting, key });
    const host = await enter('host', hostKey);
    let commands = 0;
    const ask = async (wire: OutsiderWire, event: string, body: object): Promise<void> => {
      commands += 1;
      const answer = await wire.ask(event, { id: `of-the-room-${commands}`, ...body });
      expect(answer, JSON.stringify(body)).toMatchObject([{ ok: true }]);
    };
    await ask(host, 'host:ask', { ask: { type: 'OpenDoors' } });
    const guests: OutsiderWire[] = [];
    const heard: string[] = [];
    const keys = ['ada', 'ben'].map((name) => `key-made-on-the-device-of-${name}`);
    for (const key of keys) {
      await house.takeSeat(code, { id: `seat-${key.slice(-3)}`, key, name: key.slice(-3) });
      guests.push(await enter('guest', key));
    }
    const wires = [...guests, await enter('screen', hostKey)];
    const compiled = ['first/look', 'writing/write/nose', 'water'];
    for (const [place, named] of order.entries()) {
      for (const cue of compiled)
        await ask(host, 'host:ask', { ask: { type: 'JumpTo', cue: `${named}/${cue}` } });
      for (const [seat, guest] of guests.entries()) {
        const pour = rows[seat]?.[place];
        await ask(guest, 'note:save', { pour, field: 'nose', value: `nose of ${pour}`, base: 0 });
        await ask(guest, 'note:share', { pour, sharing: 'shared' });
      }
      for (const key of keys)
        heard.push(JSON.stringify((await house.ask('GET', `/api/keepsake/${tasting}`, { key })).body));
      await clock.advance(1500);
    }
    for (const cue of ['ranking', 'discussion', 'reveal']) {
      await ask(host, 'host:ask', { ask: { type: 'JumpTo', cue: `flight-1/${cue}` } });
      if (cue === 'discussion')
        await ask(host, 'host:ask', { ask: { type: 'OpenDiscussion', pours: ['one', 'two'] } });
      if (cue === 'reveal') await ask(host, 'host:ask', { ask: { type: 'Reveal', pours: ['three'] } });
      await clock.advance(1500);
    }
    for (const wire of wires) {
      await wire.ask('probe', { roundTrip: null });
      heard.push(...wire.frames.map((frame) => frame.replace(/"(sid|pid)":"[\w-]+"/g, '')));
    }
    for (const wire of [host, ...wires]) wire.close();
    return heard;
  } finally {
    await house.close();
  }
}

it('[Q4, F6] tells nobody the order of the plan, by frame or keepsake, where each has an order of their own', async () => {
  const one = await heardBy(['one', 'two', 'three']);
  const other = await heardBy(['three', 'one', 'two']);
  expect(one.length).toBeGreaterThan(60);
  expect(one.join('')).toContain('nose of two');
  expect(other).toEqual(one);
});
