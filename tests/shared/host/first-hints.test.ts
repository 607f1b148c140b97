import { describe, expect, it } from 'vitest';
import { compile } from '../../../core/running-order/compile.ts';
import { planSchema } from '../../../core/tasting.ts';
import { type FirstHint, firstHintAt } from '../../../host/conduct/now/first-hints.ts';
import { demoEvening } from '../../../shared/demo/evening.ts';
import { hostWords as english } from '../../../shared/language/en/host.ts';

const cues = compile(planSchema.parse(demoEvening));

/** The hints of an evening in their order, as a host meets them who has been given these before. */
function evening(given: Set<string> = new Set()): FirstHint[] {
  return cues.flatMap((cue) => {
    const hint = firstHintAt(cue, given);
    if (hint === undefined) return [];
    given.add(hint);
    return [hint];
  });
}

describe('the hints of a first evening', () => {
  it('come one at a time, each once, before the second glass', () => {
    expect(evening()).toEqual(['next', 'table', 'time', 'back', 'tools']);
    const second = cues.findIndex((cue) => cue.kind === 'water') + 1;
    expect(cues.slice(second).map((cue) => firstHintAt(cue, new Set(evening())))).not.toContain('tools');
  });

  it('are all given some time, and never twice', () => {
    const given = new Set<string>();
    expect(new Set(evening(given))).toEqual(new Set(Object.keys(english.room.firstHints)));
    expect(evening(given)).toEqual([]);
  });

  it('are one line each', () => {
    for (const line of Object.values(english.room.firstHints)) expect(line.length).toBeLessThan(110);
  });
});
