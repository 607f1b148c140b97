import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leadFor } from '../../../server/live/lead.ts';

describe('the lead of a change of cue [F4]', () => {
  it('covers the reach of all but the slowest twentieth', () => {
    expect(leadFor([])).toBe(150);
    expect(leadFor([2])).toBe(80);
    expect(leadFor([100])).toBe(130);
    // Nearest rank: the 19th of 20.
    expect(leadFor([...Array(19).fill(120), 60_000])).toBe(150);
    expect(leadFor([...Array(18).fill(120), 150, 60_000])).toBe(180);
  });

  it('stays within its bounds and does not fall when a device gets slower', () => {
    const reaches = fc.array(fc.double({ min: 0, max: 60_000, noNaN: true }), {
      minLength: 1,
      maxLength: 50,
    });
    fc.assert(
      fc.property(reaches, fc.nat(), fc.nat({ max: 1000 }), (measured, which, slower) => {
        const lead = leadFor(measured);
        const index = which % measured.length;
        const after = leadFor(measured.map((ms, at) => (at === index ? ms + slower : ms)));
        expect(lead).toBeGreaterThanOrEqual(80);
        expect(lead).toBeLessThanOrEqual(400);
        expect(after).toBeGreaterThanOrEqual(lead);
      }),
    );
  });
});
