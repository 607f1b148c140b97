import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { lazyPart } from '../../../shared/page/lazy-part.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** A part whose network fails so many times before it comes. */
function failing(times: number) {
  let asked = 0;
  const part = lazyPart(async () => {
    asked += 1;
    if (asked <= times) throw new Error('no network');
    return 'the part';
  });
  return { part, asked: () => asked };
}
const settle = () => vi.advanceTimersByTimeAsync(0);

describe('a part that is fetched lazyPart', () => {
  it('is asked for once, however often it is drawn', async () => {
    const { part, asked } = failing(0);
    expect(part.now.value).toBeUndefined();
    for (let drawn = 0; drawn < 3; drawn += 1) part.fetch();
    await settle();
    part.fetch();
    expect([part.now.value, asked()]).toEqual(['the part', 1]);
  });

  it('says that it fails, and is tried again by itself until it comes', async () => {
    const { part, asked } = failing(2);
    part.fetch();
    await settle();
    expect([part.failing.value, part.now.value, asked()]).toEqual([true, undefined, 1]);
    await vi.advanceTimersByTimeAsync(3000);
    expect([part.failing.value, asked()]).toEqual([true, 2]);
    await vi.advanceTimersByTimeAsync(3000);
    expect([part.failing.value, part.now.value, asked()]).toEqual([false, 'the part', 3]);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(asked()).toBe(3);
  });

  it('is tried at once when somebody asks again, and not twice', async () => {
    const { part, asked } = failing(1);
    part.again();
    expect(asked()).toBe(0);
    part.fetch();
    part.again();
    await settle();
    expect(asked()).toBe(1);
    part.again();
    part.again();
    await settle();
    expect([part.now.value, asked()]).toEqual(['the part', 2]);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(asked()).toBe(2);
  });
});
