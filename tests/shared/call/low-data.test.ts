import { describe, expect, it } from 'vitest';
import { missingSince, tooPoorForPictures } from '../../../shared/call/low-data.ts';

const way = (room: number | null, missing: number | null) => ({ room, missing });

describe('a line that is too poor for pictures', () => {
  it('is one of which three measures in a row say so, on the way out', () => {
    const poor = way(149_999, null);
    expect(tooPoorForPictures([poor, poor])).toBe(false);
    expect(tooPoorForPictures([poor, poor, poor])).toBe(true);
    expect(tooPoorForPictures([poor, poor, way(150_000, null)])).toBe(false);
    expect(tooPoorForPictures([poor, way(900_000, null), poor, poor])).toBe(false);
  });

  it('or on the way in, where more than a tenth of the best picture is missing', () => {
    const poor = way(null, 0.11);
    expect(tooPoorForPictures([poor, poor, poor])).toBe(true);
    expect(tooPoorForPictures([poor, way(100_000, 0), way(2_000_000, 0.3)])).toBe(true);
    // A line that loses one packet in twenty carries pictures.
    expect(tooPoorForPictures([1, 2, 3].map(() => way(900_000, 0.05)))).toBe(false);
  });

  it('is not one of which nothing is known', () => {
    expect(tooPoorForPictures([1, 2, 3].map(() => way(null, null)))).toBe(false);
  });

  it('is measured from one look to the next', () => {
    expect(missingSince(undefined, { received: 90, lost: 10 })).toBe(0.1);
    expect(missingSince({ received: 90, lost: 10 }, { received: 170, lost: 30 })).toBe(0.2);
    expect(missingSince({ received: 90, lost: 10 }, { received: 90, lost: 10 })).toBeNull();
    // What came late is counted back (RFC 3550, appendix A.3).
    expect(missingSince({ received: 90, lost: 10 }, { received: 110, lost: 5 })).toBe(0);
  });
});
