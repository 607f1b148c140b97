import { describe, expect, it } from 'vitest';
import { compile } from '../../../core/running-order/compile.ts';
import { type Pour, pourSchema } from '../../../core/tasting.ts';
import { cueWordsFor } from '../../../guest/stage/cue-words.ts';
import { verbOf } from '../../../host/evening/cue-words.ts';
import { waterInPour } from '../../../host/plan/figures/water-in-pour.ts';
import { cueWords } from '../../../shared/language/en/cues.ts';
import { say } from '../../../shared/language/en/host-script.ts';
import { sayOf } from '../../../shared/language/host-script.ts';
import { planOf } from '../../support/plans.ts';

const spirit = (more: Partial<Pour> = {}): Pour =>
  pourSchema.parse({ id: 'ash', drink: 'spirit', name: 'The ash cask', abv: 46, pourMl: 25, ...more });

/** An evening of pours that the tests do not look at. */
const plan = planOf(0);

describe('water in a pour', () => {
  it('makes 46 % of 25 ml a little weaker with three drops', () => {
    // Between the published 46 % with none and with five drops, 45.55485 %: see tests/outside/dilution.json.
    const strength = waterInPour(spirit(), plan)?.dropped.strength ?? 0;
    expect(strength).toBeGreaterThan(45.55485);
    expect(strength).toBeLessThan(46);
    expect(waterInPour(spirit(), plan)?.reached).toBeNull();
  });

  it('says how much brings it down to a wished strength, and nothing where water cannot', () => {
    const reached = waterInPour(spirit({ dilutedAbv: 40 }), plan)?.reached;
    expect(reached?.strength).toBe(40);
    expect(reached?.water).toBeGreaterThan(25 * (46 / 40 - 1));
    expect(waterInPour(spirit({ dilutedAbv: 50 }), plan)?.reached).toBeNull();
  });

  it('is no matter of wine, nor of a strength that nobody knows', () => {
    expect(waterInPour(spirit({ drink: 'wine' }), plan)).toBeNull();
    expect(waterInPour(spirit({ abv: undefined }), plan)).toBeNull();
  });
});

describe('the drops after the first nosing', () => {
  const cue = compile(planOf(1, { drops: 'after-nose' })).find(({ id }) => id === 'ash/writing/swirl');

  it('are called by their name on every device, and said aloud', () => {
    if (cue?.kind !== 'step') expect.fail('There is no such step.');
    expect(verbOf(cue)).toBe('Add 3 drops');
    const { kind, pass, step } = cue;
    expect(cueWordsFor(cueWords, { kind, pass, step, sense: null }, 'spirit').verb).toBe('Add 3 drops');
    expect(cueWordsFor(cueWords, { kind, pass: 'first', step, sense: null }, 'spirit').verb).toBe('Swirl');
    const hearers = { drink: 'spirit', level: 'regulars', glass: 1, silent: true } as const;
    expect(sayOf(say, cue, hearers)).toContain('three drops');
  });
});
