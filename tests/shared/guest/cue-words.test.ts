import { describe, expect, it } from 'vitest';
import { drinks, levels } from '../../../core/drinks/drink-kinds.ts';
import { compile } from '../../../core/running-order/compile.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import { planSchema } from '../../../core/tasting.ts';
import { cueWordsFor, type WordedCue } from '../../../guest/stage/cue-words.ts';
import { cueWords } from '../../../shared/language/en/cues.ts';

const seen = (cue: Cue): WordedCue => ({
  kind: cue.kind,
  step: 'step' in cue ? cue.step : null,
  sense: cue.kind === 'step' ? (cue.sense ?? null) : null,
});

const evenings = drinks.flatMap((drink) =>
  levels.map((level) => {
    const pours = ['a', 'b', 'c', 'd'].map((id) => ({ id, drink, name: id }));
    return {
      drink,
      level,
      cues: compile(planSchema.parse({ drink, level, pours, blind: true, ranking: 'each-flight' })),
    };
  }),
);

describe('a guest’s words', () => {
  it.each(evenings)('are there for every cue of an evening of $drink for $level', ({ drink, cues }) => {
    for (const cue of cues) {
      const { verb, hint } = cueWordsFor(cueWords, seen(cue), drink);
      expect(verb, cue.id).toMatch(/^\S{3,8}$/);
      expect(hint.length, cue.id).toBeGreaterThan(10);
      expect(hint.length, cue.id).toBeLessThan(80);
    }
  });

  it('ask for spitting wherever there is a sip, practised or not', () => {
    for (const drink of drinks) expect(cueWords.step.spit[drink].hint).toMatch(/cup/);
    expect(cueWords.practice.spit.hint).toMatch(/cup/);
  });
});
