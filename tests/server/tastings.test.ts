import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Invitation, ListedTasting, Opening, StoredPlan } from '../../shared/wire/http.ts';
import { credentials } from './support/device.ts';
import { House, houseKey } from './support/house.ts';
import { aPlan } from './support/plans.ts';

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

describe('plans over HTTP', () => {
  it('are kept, listed for the house, and saved only from the revision that is stored', async () => {
    const made = await house.plan();
    const path = `/api/tastings/${made.tasting}/plan`;
    const key = made.hostKey;
    const stored = await house.ask<StoredPlan>('GET', path, { key });
    expect(stored.body).toMatchObject({ code: made.code, revision: 1, stage: 'planned', plan: aPlan() });
    const plan = aPlan({ title: 'Another title' });
    expect(await house.ask('PUT', path, { key, body: { plan, base: 1 } })).toMatchObject({
      body: { revision: 2 },
    });
    const late = await house.ask('PUT', path, { key, body: { plan: aPlan(), base: 1 } });
    expect(late).toMatchObject({ status: 409, body: { code: 'plan-changed' } });
    const list = await house.ask<ListedTasting[]>('GET', '/api/tastings', { key: houseKey });
    expect(list.body).toMatchObject([{ tasting: made.tasting, title: 'Another title', stage: 'planned' }]);
  });

  it('open as they were last saved', async () => {
    const made = await house.plan();
    const body = { plan: aPlan({ title: 'Another title' }), base: 1 };
    await house.ask('PUT', `/api/tastings/${made.tasting}/plan`, { key: made.hostKey, body });
    const host = await house.host(made);
    await host.host({ type: 'OpenDoors' });
    expect((await host.until('host')).title).toBe('Another title');
  });

  it('show in an invitation what a guest may know before sitting down', async () => {
    const made = await house.plan(aPlan({ welcome: 'Come hungry.', blind: true, lawOf: 'US' }));
    const path = `/api/invitations/${made.code}`;
    const before = await house.ask<Invitation>('GET', path);
    expect(before.body).toMatchObject({
      title: 'Peat and patience',
      welcome: 'Come hungry.',
      minimumAge: 21,
      doors: 'not-yet',
    });
    expect(JSON.stringify(before.body)).not.toContain('Marshlight');
    const host = await house.host(made);
    await host.host({ type: 'OpenDoors' });
    expect((await house.ask<Invitation>('GET', path)).body).toMatchObject({
      stage: 'under-way',
      doors: 'open',
    });
    await host.host({ type: 'Finish' });
    // The code that is typed ends with the evening; the link goes on saying that it is over.
    expect((await house.ask('GET', path)).body).toMatchObject({ code: 'wrong-code' });
    const planPath = `/api/tastings/${made.tasting}/plan`;
    const { linkCode } = (await house.ask<StoredPlan>('GET', planPath, { key: made.hostKey })).body;
    expect((await house.ask<Invitation>('GET', `/api/invitations/${linkCode}`)).body).toMatchObject({
      stage: 'finished',
      doors: 'closed',
    });
    await host.host({ type: 'Reopen' });
    expect((await house.ask('GET', path)).status).toBe(200);
    await host.host({ type: 'Finish' });
    const list = await house.ask<ListedTasting[]>('GET', '/api/tastings', { key: houseKey });
    expect(list.body[0]?.stage).toBe('finished');
  });

  it('[P19] tell a plan what the evenings before leave for it, and nobody but its host', async () => {
    const { made, host, noor } = await house.evening();
    await host.host({ type: 'ChoosePacing', pacing: { by: 'steps' } });
    await host.host({ type: 'Finish' });
    const next = await house.plan();
    const path = `/api/tastings/${next.tasting}/opening`;
    const { status, body } = await house.ask<Opening>('GET', path, { key: next.hostKey });
    expect({ status, byHand: body.byHand }).toEqual({ status: 200, byHand: { by: 'steps' } });
    expect(body.habits.writing.variance).toBeGreaterThan(0);
    for (const key of [noor.key, made.hostKey, undefined])
      expect((await house.ask('GET', path, key === undefined ? {} : { key })).status).toBeGreaterThan(400);
  });

  it('go with everything in them when they are deleted, and devices are told', async () => {
    const { made, host, noor } = await house.evening();
    const path = `/api/tastings/${made.tasting}`;
    expect((await house.ask('DELETE', path, { key: made.hostKey })).status).toBe(204);
    expect(await noor.dismissed()).toBe('tasting-deleted');
    expect(await host.dismissed()).toBe('tasting-deleted');
    expect((await house.ask('GET', `${path}/plan`, { key: made.hostKey })).status).toBe(401);
    expect((await house.ask('GET', `${path}/plan`, { key: houseKey })).status).toBe(404);
    expect((await house.ask('GET', `/api/invitations/${made.code}`)).status).toBe(404);
    await expect(house.enter(credentials('guest', made.tasting, noor.key))).rejects.toMatchObject({
      code: 'wrong-key',
    });
  });
});
