import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { requestServer } from '../../../shared/page/server-request.ts';

const away = (after?: string) =>
  new Response(JSON.stringify({ ok: false, code: 'not-stored' }), {
    status: 503,
    ...(after === undefined ? {} : { headers: { 'Retry-After': after } }),
  });

let asked: (RequestInit | undefined)[] = [];
function answering(...answers: readonly Response[]): void {
  const left = [...answers];
  asked = [];
  vi.stubGlobal('fetch', async (_path: string, sent?: RequestInit) => {
    asked.push(sent);
    return left.shift() ?? away('1');
  });
}

beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout'] }));
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** Every pause ends at once. */
async function answerTo(request: Promise<unknown>): Promise<unknown> {
  void vi.advanceTimersByTimeAsync(60_000);
  return request;
}

it('is asked again as it was where the server has done nothing and names a pause', async () => {
  answering(away('1'), away('1'), Response.json({ seat: 3 }));
  const answer = requestServer('/api/seats', { key: 'key', body: { name: 'Noor' } });
  expect(await answerTo(answer)).toEqual({ ok: true, body: { seat: 3 } });
  expect(asked).toHaveLength(3);
  const sent = { method: 'POST', body: '{"name":"Noor"}', headers: { Authorization: 'Bearer key' } };
  for (const each of asked) expect(each).toMatchObject(sent);
});

it('is answered with what the server said when that goes on', async () => {
  answering();
  expect(await answerTo(requestServer('/api/seats', { body: {} }))).toEqual({
    ok: false,
    code: 'not-stored',
  });
  expect(asked).toHaveLength(5);
});

it.each([
  ['may have been done', away()],
  ['is to wait long', away('600')],
  ['was refused', new Response('{"code":"too-fast"}', { status: 429 })],
])('is not asked again where it %s', async (_why, answer) => {
  answering(answer);
  expect(await answerTo(requestServer('/api/seats', { body: {} }))).toMatchObject({ ok: false });
  expect(asked).toHaveLength(1);
});
