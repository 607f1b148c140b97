import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blend } from '../../../../core/planning/strength/blending.ts';
import {
  abvAfterDrops,
  abvAfterWater,
  dropsOfWater,
  waterOfDrops,
  waterToReach,
} from '../../../../core/planning/strength/dilution.ts';
import { ethanolInPours, type Poured } from '../../../../core/planning/strength/ethanol.ts';
import { abvPercent, millilitres } from '../../../../core/units.ts';

const poured = (volume: number, strength: number): Poured => ({
  volume: millilitres(volume),
  strength: abvPercent(strength),
});
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const drink = (weakest: number) =>
  fc.tuple(between(1, 2000), between(weakest, 100)).map(([volume, strength]) => poured(volume, strength));

describe('water to a target strength', () => {
  it('reaches the target when the water is poured in', () => {
    fc.assert(
      fc.property(drink(1), between(0.01, 1), (whisky, share) => {
        const target = abvPercent(Math.max(0.01, whisky.strength * share));
        const answer = waterToReach(whisky, target);
        if (answer.kind !== 'add-water') throw new Error(answer.kind);
        const mixture = abvAfterWater(whisky, answer.water);
        expect(mixture.strength).toBeCloseTo(target, 8);
        expect(mixture.finalVolume / answer.finalVolume).toBeCloseTo(1, 8);
        const apart = (mixture.contraction - answer.contraction) / answer.finalVolume;
        expect(Math.abs(apart)).toBeLessThan(1e-9);
      }),
    );
  });

  it('needs more water than the sum without contraction says, down to 28.5 % vol', () => {
    fc.assert(
      fc.property(drink(28.5), between(0, 1), (whisky, share) => {
        const target = abvPercent(28.5 + share * (whisky.strength - 28.5));
        const answer = waterToReach(whisky, target);
        if (answer.kind !== 'add-water') throw new Error(answer.kind);
        expect(answer.contraction).toBeGreaterThanOrEqual(-1e-8);
        expect(answer.water).toBeGreaterThanOrEqual(answer.naiveWater - 1e-8);
      }),
    );
  });

  it('lets weak mixtures grow, but by no more than 0.16 % of their volume', () => {
    fc.assert(
      fc.property(drink(0), drink(0), (one, other) => {
        const mixture = blend([one, other]);
        expect(mixture.contraction).toBeGreaterThanOrEqual(-0.0016 * mixture.finalVolume);
      }),
    );
    expect(abvAfterWater(poured(100, 12), millilitres(100)).contraction).toBeLessThan(0);
  });

  it('says that water cannot raise strength, nor take the last of it', () => {
    expect(waterToReach(poured(700, 40), abvPercent(46))).toEqual({ kind: 'target-above-drink' });
    expect(waterToReach(poured(700, 40), abvPercent(0))).toEqual({ kind: 'never-reached' });
    expect(waterToReach(poured(700, 40), abvPercent(5e-324))).toEqual({ kind: 'never-reached' });
    expect(waterToReach(poured(700, 0), abvPercent(0))).toMatchObject({ kind: 'add-water', water: 0 });
  });
});

describe('liquids poured together', () => {
  it('keeps every gram of ethanol', () => {
    fc.assert(
      fc.property(fc.array(drink(0), { minLength: 1, maxLength: 6 }), (parts) => {
        const mixture = blend(parts);
        const after = ethanolInPours([{ volume: mixture.finalVolume, strength: mixture.strength }]);
        expect(after.volume).toBeCloseTo(ethanolInPours(parts).volume, 5);
      }),
    );
  });

  it('does not care for the order', () => {
    fc.assert(
      fc.property(drink(0), drink(0), drink(0), (one, two, three) => {
        expect(blend([one, two, three]).strength).toBeCloseTo(blend([three, one, two]).strength, 8);
      }),
    );
  });

  it('leaves a drink alone that nothing is added to', () => {
    expect(abvAfterWater(poured(20, 46.3), millilitres(0))).toMatchObject({
      strength: 46.3,
      finalVolume: 20,
      contraction: 0,
    });
  });

  it('refuses to mix nothing', () => {
    expect(() => blend([])).toThrow('There is nothing to mix.');
    expect(() => abvAfterWater(poured(0, 40), millilitres(0))).toThrow('There is nothing to mix.');
  });
});

describe('drops', () => {
  it('turns into millilitres and back', () => {
    fc.assert(
      fc.property(fc.nat(1000), between(0.01, 0.2), (drops, size) => {
        const drop = millilitres(size);
        expect(dropsOfWater(waterOfDrops(drops, drop), drop)).toBeCloseTo(drops, 8);
      }),
    );
    expect(dropsOfWater(millilitres(1))).toBe(20);
  });

  it('weakens a drink with each further drop', () => {
    fc.assert(
      fc.property(drink(5), fc.nat(50), (whisky, drops) => {
        const here = abvAfterDrops(whisky, drops).strength;
        expect(abvAfterDrops(whisky, drops + 1).strength).toBeLessThan(here);
      }),
    );
  });

  it('shows where the water, the densities and the result come from', () => {
    const { reckoning, strength, finalVolume, contraction } = abvAfterDrops(poured(20, 60), 3);
    expect(reckoning.map((each) => [each.code, each.source])).toEqual([
      ['drop-water', 'medicine-dropper'],
      ['source-mass', 'oiml-r22'],
      ['source-mass', 'oiml-r22'],
      ['mixed-mass-fraction', 'definition'],
      ['mixed-strength', 'oiml-r22'],
      ['final-volume', 'oiml-r22'],
      ['contraction', 'definition'],
    ]);
    expect(reckoning.slice(-3).map((each) => each.result)).toEqual([
      { value: strength, unit: '% vol' },
      { value: finalVolume, unit: 'mL' },
      { value: contraction, unit: 'mL' },
    ]);
  });
});
