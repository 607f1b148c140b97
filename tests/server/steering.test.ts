import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { strictScreen } from '../support/strict-views.ts';
import { credentials, type Device } from './support/device.ts';
import { aKey, House } from './support/house.ts';

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

type Evening = Awaited<ReturnType<House['evening']>>;

async function letIn({ made, host }: Evening): Promise<Device> {
  const key = aKey();
  await house.ask('POST', '/api/screens', { body: { code: made.code, key } });
  const { screensAsking } = await host.until('presence', (view) => view.screensAsking.length === 1);
  const path = `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`;
  await house.ask('POST', path, { key: made.hostKey, body: { admit: true } });
  return house.enter(credentials('screen', made.tasting, key));
}
const page = { is: 'page', page: 'one/nose/all' };

describe('[F8] the screens of a room', () => {
  it('are told what the host gives them to, and nobody else is', async () => {
    const evening = await house.evening();
    const screen = await letIn(evening);
    expect(strictScreen.parse(await screen.until('screen')).shows).toEqual({ is: 'room' });
    await evening.host.host({ type: 'SteerScreen', shows: page });
    const { shows } = await screen.until('screen', (view) => view.shows.is === 'page');
    expect(shows).toEqual(page);
    await evening.host.until('host', (view) => view.status === 'under-way' && view.screen.is === 'page');
    await evening.noor.level();
    expect(evening.noor.frames.join()).not.toContain(page.page);
    expect(evening.noor.count('screen')).toBe(0);
  });

  it('hear nothing before they are let in, and steer nothing then', async () => {
    const evening = await house.evening();
    await expect(house.enter(credentials('screen', evening.made.tasting, aKey()))).rejects.toMatchObject({
      code: 'wrong-key',
    });
    const screen = await letIn(evening);
    const refused = { ok: false, code: 'wrong-role' };
    expect(await screen.host({ type: 'SteerScreen', shows: page })).toMatchObject(refused);
    expect(await evening.noor.host({ type: 'SteerScreen', shows: page })).toMatchObject(refused);
    expect((await screen.until('screen')).shows).toEqual({ is: 'room' });
  });

  it('that join in the middle land on what the others show', async () => {
    const evening = await house.evening();
    await evening.host.host({ type: 'SteerScreen', shows: page });
    expect((await (await letIn(evening)).until('screen')).shows).toEqual(page);
  });

  it('are not counted when they are the small picture on a host\u2019s device, which stays when they are switched off', async () => {
    const evening = await house.evening();
    const { made, host } = evening;
    const screen = await letIn(evening);
    const picture = await house.enter(credentials('screen', made.tasting, made.hostKey));
    expect((await picture.until('screen')).shows).toEqual({ is: 'room' });
    await host.level();
    expect((await host.until('presence', ({ screens }) => screens > 0)).screens).toBe(1);
    expect(await picture.host({ type: 'Hold' })).toMatchObject({ ok: false, code: 'wrong-role' });
    await house.ask('DELETE', `/api/tastings/${made.tasting}/screens`, { key: made.hostKey });
    expect(await screen.dismissed()).toBe('key-withdrawn');
    await host.host({ type: 'SteerScreen', shows: { is: 'dark' } });
    expect((await picture.until('screen', (view) => view.shows.is === 'dark')).shows).toEqual({ is: 'dark' });
  });

  it('are given to no page with a name that could be anything else', async () => {
    const { host } = await house.evening();
    for (const name of ['<script>', 'a b', '', 'x'.repeat(200), 'ä']) {
      const answer = await host.host({ type: 'SteerScreen', shows: { is: 'page', page: name } });
      expect(answer).toMatchObject({ ok: false, code: 'malformed' });
    }
  });
});
