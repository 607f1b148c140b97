import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { ScreenAnswer } from '../../shared/wire/http.ts';
import { credentials } from './support/device.ts';
import { aKey, House } from './support/house.ts';

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

const asks = (code: string, key: string) =>
  house.ask<ScreenAnswer>('POST', '/api/screens', { body: { code, key } });
const answers = (tasting: string, id: string | undefined, key: string, admit: boolean) =>
  house.ask('POST', `/api/tastings/${tasting}/screens/${id}`, { key, body: { admit } });

describe('a room screen', () => {
  it('waits with a number until the host lets it in, then shows the stage and nothing private', async () => {
    const { made, host, noor } = await house.evening();
    const key = aKey();
    const first = await asks(made.code, key);
    expect(first.status).toBe(202);
    await expect(house.enter(credentials('screen', made.tasting, key))).rejects.toMatchObject({
      code: 'wrong-key',
    });
    const asking = await host.until('presence', ({ screensAsking }) => screensAsking.length === 1);
    const again = await asks(made.code, key);
    expect(again.body).toEqual(first.body);
    expect(first.body).toMatchObject({ admitted: false, number: asking.screensAsking[0]?.number });
    await answers(made.tasting, asking.screensAsking[0]?.id, made.hostKey, true);
    expect((await asks(made.code.toLowerCase(), key)).body).toEqual({
      tasting: made.tasting,
      admitted: true,
      code: made.code,
      linkCode: expect.stringMatching(new RegExp(`^${made.code}.{27}$`)),
      guestOrigins: expect.any(Array),
    });
    const screen = await house.enter(credentials('screen', made.tasting, key));
    await screen.until('stage');
    const shown = await host.until('presence', ({ screens }) => screens === 1);
    expect(shown.screensAsking).toEqual([]);
    await noor.save({ value: 'only mine' });
    await screen.level();
    expect(new Set(screen.heard.map(({ event }) => event))).toEqual(
      new Set(['stage', 'screen', 'board', 'board-change']),
    );
    expect(screen.frames.join()).not.toContain('only mine');
  });

  it('may ask for nothing that a host or a guest may', async () => {
    const { made, host } = await house.evening();
    const key = aKey();
    await asks(made.code, key);
    const { screensAsking } = await host.until('presence', (view) => view.screensAsking.length === 1);
    await answers(made.tasting, screensAsking[0]?.id, made.hostKey, true);
    const screen = await house.enter(credentials('screen', made.tasting, key));
    expect(await screen.host({ type: 'Hold' })).toMatchObject({ ok: false, code: 'wrong-role' });
    expect(await screen.guest({ type: 'LeaveTable' })).toMatchObject({ ok: false, code: 'wrong-role' });
    expect(await screen.save({ value: 'x' })).toMatchObject({ ok: false, code: 'wrong-role' });
    await expect(house.enter(credentials('host', made.tasting, key))).rejects.toMatchObject({
      code: 'wrong-role',
    });
    expect((await house.ask('GET', `/api/tastings/${made.tasting}/plan`, { key })).status).toBe(403);
  });

  it('is sent away when the host says no, and goes dark when the host takes the screens away', async () => {
    const { made, host } = await house.evening();
    const [refused, shown] = [aKey(), aKey()];
    await asks(made.code, refused);
    await asks(made.code, shown);
    const { screensAsking } = await host.until('presence', (view) => view.screensAsking.length === 2);
    await answers(made.tasting, screensAsking[0]?.id, made.hostKey, false);
    expect((await answers(made.tasting, screensAsking[0]?.id, made.hostKey, true)).status).toBe(409);
    // It goes on asking by itself, and is not put in front of the host again.
    expect(await asks(made.code, refused)).toMatchObject({ status: 401, body: { code: 'wrong-key' } });
    await answers(made.tasting, screensAsking[1]?.id, made.hostKey, true);
    const screen = await house.enter(credentials('screen', made.tasting, shown));
    await house.ask('DELETE', `/api/tastings/${made.tasting}/screens`, { key: made.hostKey });
    expect(await screen.dismissed()).toBe('key-withdrawn');
    await expect(house.enter(credentials('screen', made.tasting, shown))).rejects.toMatchObject({
      code: 'wrong-key',
    });
  });

  it('needs the code, is let in by hosts only, and never crowds the door', async () => {
    const { made, host, noor } = await house.evening();
    expect((await asks('ZZZZZZ', aKey())).status).toBe(404);
    expect((await asks(made.code, 'short')).status).toBe(400);
    await asks(made.code, aKey());
    const { screensAsking } = await host.until('presence', (view) => view.screensAsking.length === 1);
    expect((await answers(made.tasting, screensAsking[0]?.id, noor.key, true)).status).toBe(403);
    for (let screen = 0; screen < 4; screen += 1) expect((await asks(made.code, aKey())).status).toBe(202);
    expect((await asks(made.code, aKey())).body).toMatchObject({ code: 'table-full' });
    const full = await host.until('presence', (view) => view.screensAsking.length === 5);
    expect(new Set(full.screensAsking.map(({ number }) => number)).size).toBe(5);
  });
});
