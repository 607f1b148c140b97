import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../server/store/store.ts';
import { largestFrame, type Refusal } from '../../shared/wire/protocol.ts';
import { memoryStore } from '../support/memory-store.ts';
import { House, houseKey } from './support/house.ts';

let house: House;
let store: Store;
beforeEach(async () => {
  store = memoryStore();
  house = await House.open({ store });
});
afterEach(() => house.close());

const secret = 'words-that-belong-in-no-log';

describe('messages that no device of ours would send', () => {
  it('refuses them one by one, with one short sentence each, and keeps the device', async () => {
    const { made, host, noor } = await house.evening();
    const before = store.sessions.version(made.tasting);
    const ask = (what: unknown) => ({ id: 'an-id-long-enough', ask: what });
    const refused: [string, unknown[], string][] = [
      ['note:save', [null], 'malformed'],
      ['note:save', [[secret]], 'malformed'],
      ['note:save', [{ id: 'x', text: secret }], 'malformed'],
      ['note:save', [], 'malformed'],
      ['note:save', [{}, secret], 'malformed'],
      [
        'guest:ask',
        [JSON.parse('{"id":"12345678","ask":{"type":"LeaveTable","__proto__":{"a":1}}}')],
        'malformed',
      ],
      ['guest:ask', [ask({ type: '__proto__' })], 'malformed'],
      ['guest:ask', [ask({ type: 'CatchUp', pour: 'constructor' })], 'malformed'],
      ['guest:ask', [ask({ type: 'ChangeSeat', name: 'x'.repeat(500) })], 'too-large'],
      ['guest:ask', [ask({ type: 'LeaveTable', seat: 'somebody-else' })], 'malformed'],
      ['guest:ask', [ask({ type: 'ChangeSeat', name: new Uint8Array([1, 2]) })], 'malformed'],
      ['guest:ask', [nested(2000)], 'malformed'],
      ['probe', [{ roundTrip: -1 }], 'malformed'],
      ['host:ask', [ask({ type: 'Advance', from: 'gathering' })], 'wrong-role'],
      ['constructor', [{}], 'unknown-event'],
      ['stage', [{ secret }], 'unknown-event'],
    ];
    for (const [event, payload, code] of refused) {
      const answer = (await noor.raw(event, ...payload)) as Refusal;
      expect({ event, code: answer.code }).toEqual({ event, code });
      expect(JSON.stringify(answer).length).toBeLessThan(300);
    }
    const seat = ['constructor', '__proto__', 'toString'];
    for (const id of seat)
      expect(await host.host({ type: 'RemoveSeat', seat: id })).toMatchObject({ code: 'malformed' });
    expect(await host.save({ value: secret })).toMatchObject({ code: 'wrong-role' });
    expect(store.sessions.version(made.tasting)).toBe(before);
    expect(noor.closed).toBe(false);
    expect(house.log.lines.join()).not.toContain(secret);
  });

  it('does nothing for a message that cannot be answered', async () => {
    const { made, host } = await house.evening();
    const before = store.sessions.version(made.tasting);
    const emit = host.socket.emit.bind(host.socket) as (event: string, payload: unknown) => void;
    emit('host:ask', { id: 'an-id-long-enough', ask: { type: 'Advance', from: 'gathering' } });
    await host.level();
    expect(store.sessions.version(made.tasting)).toBe(before);
  });

  it('closes a device that sends more than a frame may hold, and nobody else notices', async () => {
    const { made, noor, tomas } = await house.evening();
    const asked = noor.save({ value: secret.repeat(largestFrame) });
    asked.catch(() => undefined);
    await noor.dismissed();
    await tomas.level();
    expect(tomas.closed).toBe(false);
    expect(store.notebooks.read(made.tasting, noor.seat).entries).toEqual([]);
  });

  it('takes the longest note that may be written, in any script', async () => {
    const { host, noor } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    expect(await noor.save({ value: '語'.repeat(4000) })).toMatchObject({ ok: true, revision: 1 });
    expect(await noor.save({ value: 'x'.repeat(4001) })).toMatchObject({ code: 'too-large' });
  });

  it('keeps what is written without lone surrogates and direction marks', async () => {
    const { host, noor } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    expect(await noor.save({ value: 'a\ud800b\u202ec\u0000d' })).toMatchObject({ ok: true, value: 'abcd' });
  });

  it('survives whatever JSON can say, without effect', async () => {
    const { made, noor } = await house.evening();
    const before = store.sessions.version(made.tasting);
    const events = ['host:ask', 'guest:ask', 'note:save', 'note:share', 'probe', 'toString', 'dismissal'];
    let sent = 0;
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...events), fc.jsonValue({ maxDepth: 6 }), async (event, payload) => {
        sent += 1;
        const answer = (await noor.raw(event, payload)) as Refusal;
        // What a page asks most often, so that it may be as small as can be.
        if (event === 'probe' && payload === null) return typeof answer === 'number';
        return answer.ok === false && answer.message.length > 0;
      }),
      // Within what a device may ask at once: the brake is not what is tested here.
      { numRuns: 55 },
    );
    expect(sent).toBe(55);
    expect(store.sessions.version(made.tasting)).toBe(before);
  });
});

describe('requests that no page of ours would make', () => {
  it('answers each with a status and a sentence', async () => {
    const { made, noor } = await house.evening();
    const key = houseKey;
    const plan = { plan: { title: secret, pours: [{ id: 'x', drink: 'wine', name: 'y', abv: 146 }] } };
    const asked: [string, string, Parameters<House['ask']>[2], number, string][] = [
      ['POST', '/api/tastings', { key, body: '{"plan":' }, 400, 'malformed'],
      ['POST', '/api/tastings', { key, body: { plan: secret.repeat(20_000) } }, 413, 'too-large'],
      ['POST', '/api/tastings', { key, body: plan }, 422, 'plan-invalid'],
      ['POST', '/api/tastings', { body: plan }, 401, 'wrong-key'],
      ['POST', '/api/tastings', { key: made.hostKey, body: plan }, 403, 'wrong-role'],
      ['GET', '/api/tastings', { key: noor.key }, 403, 'wrong-role'],
      ['GET', '/api/tastings/..%2f..%2fetc%2fpasswd/plan', { key }, 404, 'no-such-tasting'],
      ['GET', '/api/tastings/__proto__/plan', { key }, 404, 'no-such-tasting'],
      ['GET', `/api/tastings/${made.tasting}/plan`, { key: noor.key }, 403, 'wrong-role'],
      [
        'PUT',
        `/api/tastings/${made.tasting}/plan`,
        { key: made.hostKey, body: { plan: {}, base: 1 } },
        409,
        'already-open',
      ],
      ['DELETE', `/api/tastings/${made.tasting}`, { key: noor.key }, 403, 'wrong-role'],
      [
        'POST',
        `/api/tastings/${made.tasting}/keys`,
        { key, body: { for: 'seat', seat: 'toString' } },
        404,
        'no-such-seat',
      ],
      ['POST', '/api/seats', { body: { code: made.code } }, 400, 'malformed'],
      ['POST', '/api/seats', { body: '[1,2' }, 400, 'malformed'],
      ['GET', '/api/invitations/%E0%A4%A', {}, 400, 'malformed'],
      ['GET', `/api/keepsake/${made.tasting}`, { key: made.hostKey }, 403, 'wrong-role'],
      ['PATCH', '/api/nothing', {}, 404, 'unknown-event'],
    ];
    for (const [method, path, what, status, code] of asked) {
      const answer = await house.ask<Refusal>(method, path, what);
      expect({ method, path, status: answer.status, code: answer.body.code }).toEqual({
        method,
        path,
        status,
        code,
      });
      expect(answer.body.message.length).toBeLessThan(200);
    }
    expect(house.log.lines.join()).not.toContain(secret);
  });

  it('says where a plan is wrong without repeating what stands there', async () => {
    const plan = { pours: [{ id: 'x', drink: 'wine', name: 'y', abv: 146 }] };
    const { body } = await house.ask<Refusal>('POST', '/api/tastings', { key: houseKey, body: { plan } });
    expect(body.message).toMatch(/pours › 0 › abv/);
    expect(body.message).not.toContain('146');
  });

  it('keeps pages to themselves by headers, and plain http usable', async () => {
    const { headers } = await house.ask('GET', '/healthz');
    const policy = headers.get('content-security-policy') ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain(`ws://${new URL(house.url).host}`);
    expect(policy).not.toMatch(/unsafe|upgrade-insecure/);
    expect(headers.get('strict-transport-security')).toBeNull();
    expect(headers.get('x-powered-by')).toBeNull();
  });

  it('says so when the pages have not been built', async () => {
    const bare = await House.open({ pages: '/nowhere' });
    const answer = await fetch(`${bare.url}/j/ABC123`);
    expect(answer.status).toBe(503);
    expect(await answer.text()).toMatch(/npm run build/);
    await bare.close();
  });
});

function nested(depth: number): unknown {
  let value: unknown = 1;
  for (let level = 0; level < depth; level += 1) value = [value];
  return value;
}
