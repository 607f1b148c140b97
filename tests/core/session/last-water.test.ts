import { describe, expect, it } from 'vitest';
import { stageView } from '../../../core/session/views/stage.ts';
import { seconds } from '../../../core/units.ts';
import { EveningTold } from '../../support/evening.ts';

const lastWater = (evening: EveningTold) => {
  const view = stageView(evening.underWay, 1);
  return view.status === 'under-way' ? view.lastWaterAt : undefined;
};

describe('[C1] the last rest with water', () => {
  it('counts from the first glass, then from each rest, and from a break that the host calls', () => {
    const evening = new EveningTold().wait(60);
    expect(lastWater(evening)).toBeNull();
    evening.goTo('ash/first/swirl');
    const first = evening.now;
    evening.wait(900).next();
    expect(lastWater(evening)).toBe(first);
    evening.goTo('ash/water');
    const water = evening.now;
    evening.wait(45).goTo('birch/first/sip').wait(300);
    expect(lastWater(evening)).toBe(water);
    expect(evening.host({ type: 'CallBreak', seconds: seconds(300) })).toBe('done');
    expect(lastWater(evening)).toBe(evening.now);
  });
});
