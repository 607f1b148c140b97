import { describe, expect, it } from 'vitest';
import { fuzz } from '../attack/fuzz/attack.ts';

describe('spoiled messages and requests', () => {
  it('have no effect on others, take nothing down, and are refused with a short sentence', async () => {
    const { messages, requests, refused, faults } = await fuzz(5000, 4680);
    expect(faults).toEqual([]);
    expect(messages + requests).toBeGreaterThanOrEqual(5000);
    expect(refused).toBeGreaterThan(3500);
  }, 60_000);
});
