import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { House, houseKey } from './support/house.ts';

const root = new URL('../..', import.meta.url).pathname;

let house: House;
beforeAll(async () => {
  house = await House.open();
});
afterAll(() => house.close());

describe('every answer', () => {
  it('keeps pages to their own scripts, styles and sockets, and out of frames', async () => {
    for (const path of ['/', '/host', '/api/tastings', '/healthz', '/nothing.txt']) {
      const { headers } = await fetch(house.url + path);
      const policy = new Map(
        (headers.get('content-security-policy') ?? '').split(';').map((directive) => {
          const [name = '', ...sources] = directive.trim().split(' ');
          return [name, sources];
        }),
      );
      expect(policy.get('default-src')).toEqual(["'none'"]);
      for (const name of ['script-src', 'style-src', 'worker-src', 'form-action']) {
        expect({ path, name, sources: policy.get(name) }).toEqual({ path, name, sources: ["'self'"] });
      }
      for (const name of ['frame-ancestors', 'base-uri', 'object-src']) {
        expect(policy.get(name)).toEqual(["'none'"]);
      }
      expect([...policy.values()].flat().filter((source) => /unsafe|^\*$|^https?:/.test(source))).toEqual([]);
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('x-frame-options')).toBe('DENY');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('set-cookie')).toBeNull();
      expect(headers.get('access-control-allow-origin')).toBeNull();
    }
  });

  it('lets the host\u2019s page, and nobody else, show the page of the room\u2019s screen in a frame', async () => {
    for (const path of ['/screen', '/screen/ABCDEF']) {
      const { headers } = await fetch(house.url + path);
      expect(headers.get('content-security-policy')).toMatch(/frame-ancestors 'self'(;|$)/);
      expect(headers.get('x-frame-options')).toBe('SAMEORIGIN');
    }
    for (const path of ['/screens', '/survey', '/host/screen']) {
      expect((await fetch(house.url + path)).headers.get('x-frame-options')).toBe('DENY');
    }
  });

  it('under /api is kept by nobody on the way', async () => {
    const { made, noor } = await house.evening();
    const asked: [string, string | undefined][] = [
      [`/api/invitations/${made.code}`, undefined],
      [`/api/keepsake/${made.tasting}`, noor.key],
      [`/api/keepsake/${made.tasting}/notes.css`, noor.key],
      ['/api/tastings', houseKey],
      ['/api/nothing.png', undefined],
      ['/metrics', undefined],
    ];
    for (const [path, key] of asked) {
      const headers = key === undefined ? {} : { authorization: `Bearer ${key}` };
      const answer = await fetch(house.url + path, { headers });
      expect({ path, cache: answer.headers.get('cache-control') }).toEqual({ path, cache: 'no-store' });
    }
  });

  it('of a socket is not compressed', async () => {
    const { noor } = await house.evening();
    const transport = noor.socket.io.engine.transport as unknown as { ws: { extensions: string } };
    expect(transport.ws.extensions).toBe('');
  });
});

describe('the walk through what others have learnt', () => {
  const rows = readFileSync(join(root, 'server/SECURITY.md'), 'utf8')
    .split('\n')
    .filter((line) => /^\| .*tests\/|^\| .*does not apply/.test(line));

  it('names a test that exists, or a reason, for every item', () => {
    const items = rows.map((row) => row.split('|')[1]?.trim() ?? '');
    for (const [chapter, count] of [
      ['4.4', 4],
      ['7.2', 4],
      ['8.2', 4],
      ['8.3', 3],
      ['2.3', 5],
      ['2.4', 2],
      ['14.2', 8],
    ] as const) {
      const wanted = Array.from({ length: count }, (_, index) => `${chapter}.${index + 1}`);
      expect(items.filter((item) => item.startsWith(`${chapter}.`))).toEqual(wanted);
    }
    for (const row of rows) {
      for (const [, file = ''] of row.matchAll(/`(tests\/[^`]+)`/g)) {
        expect({ file, there: existsSync(join(root, file)) }).toEqual({ file, there: true });
      }
    }
  });
});
