import { describe, expect, it } from 'vitest';
import { compile } from '../../../core/running-order/compile.ts';
import { planSchema } from '../../../core/tasting.ts';
import { verbOf } from '../../../host/evening/cue-words.ts';
import { words } from '../../../host/language.ts';
import { cueName, withinPart } from '../../../host/recap/cue-name.ts';
import { demoEvening } from '../../../shared/demo/evening.ts';

const evening = planSchema.parse({
  ...demoEvening,
  level: 'devotees',
  practice: true,
  closingPass: true,
  ranking: 'at-the-end',
});
const cues = compile(evening);

describe('what a cue is called when the host looks back', () => {
  it('is what it was called while it ran, for every cue of an evening', () => {
    for (const cue of cues) {
      if (cue.kind === 'practice') continue;
      expect(cueName({ cue: cue.id, kind: cue.kind })).toMatch(new RegExp(`^${verbOf(cue)}($|, )`));
    }
    expect(new Set(cues.map(({ kind }) => kind)).size).toBeGreaterThan(8);
  });

  it('tells the passes of one glass apart, and holds no word of an id', () => {
    const steps = cues.filter((cue) => cue.kind === 'step' && cue.pour === evening.pours[0]?.id);
    const names = steps.map(({ id, kind }) => cueName({ cue: id, kind }));
    expect(new Set(names).size).toBe(names.length);
    const passes = Object.values(words.cue.passes);
    for (const name of names) expect(passes).toContain(name.split(', ')[1]);
  });

  it('is not said twice where a part is called the same', () => {
    expect(withinPart('Break', 'Break')).toBe('Break');
    expect(withinPart('Glass 1', 'Water')).toBe('Glass 1: Water');
  });
});
