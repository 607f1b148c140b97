import { describe, expect, it } from 'vitest';
import { createToldMeasures } from '../../../shared/follower/told-measures.ts';

describe('what a device tells of its network', () => {
  it('tells nothing before it has measured, and what it measured once', () => {
    const measures = createToldMeasures();
    expect(measures.news({ roundTrip: null, reach: null })).toBeNull();
    expect(measures.news({ roundTrip: 40.4, reach: 61.2 })).toEqual({ roundTrip: 40, reach: 62 });
    expect(measures.news({ roundTrip: 41, reach: 60 })).toBeNull();
  });

  it('tells what became a quarter more or less, or 5 ms where that is more', () => {
    const measures = createToldMeasures();
    measures.news({ roundTrip: 100, reach: 100 });
    expect(measures.news({ roundTrip: 124, reach: 76 })).toBeNull();
    expect(measures.news({ roundTrip: 100, reach: 126 })).toEqual({ roundTrip: 100, reach: 126 });
    expect(measures.news({ roundTrip: 100, reach: 160 })).not.toBeNull();
    const near = createToldMeasures();
    near.news({ roundTrip: 1, reach: 1 });
    expect(near.news({ roundTrip: 5, reach: 6 })).toBeNull();
    expect(near.news({ roundTrip: 5, reach: 6.5 })).not.toBeNull();
  });

  it('tells it again on a new line', () => {
    const measures = createToldMeasures();
    measures.news({ roundTrip: 40, reach: 60 });
    measures.forget();
    expect(measures.news({ roundTrip: 40, reach: 60 })).not.toBeNull();
  });
});
