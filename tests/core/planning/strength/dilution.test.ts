import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { afterDrops, afterWater, waterToReach } from '../../../../core/planning/strength/dilution.ts';
import { ethanolInPour, type Poured } from '../../../../core/planning/strength/ethanol.ts';
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
        const mixture = afterWater(whisky, answer.water);
        expect(mixture.strength).toBeCloseTo(target, 8);
        expect(mixture.volume / answer.volume).toBeCloseTo(1, 8);
      }),
    );
  });

  it('needs more water than the sum without contraction says, down to 28.5 % vol', () => {
    fc.assert(
      fc.property(drink(28.5), between(0, 1), (whisky, share) => {
        const target = abvPercent(28.5 + share * (whisky.strength - 28.5));
        const answer = waterToReach(whisky, target);
        if (answer.kind !== 'add-water') throw new Error(answer.kind);
        const naive = whisky.volume * (whisky.strength / target - 1);
        expect(answer.water).toBeGreaterThanOrEqual(naive - 1e-8);
      }),
    );
  });

  it('says that water cannot raise strength, nor take the last of it', () => {
    expect(waterToReach(poured(700, 40), abvPercent(46))).toEqual({ kind: 'target-above-drink' });
    expect(waterToReach(poured(700, 40), abvPercent(0))).toEqual({ kind: 'never-reached' });
    expect(waterToReach(poured(700, 40), abvPercent(5e-324))).toEqual({ kind: 'never-reached' });
    expect(waterToReach(poured(700, 0), abvPercent(0))).toMatchObject({ kind: 'add-water', water: 0 });
  });
});

describe('water in a drink', () => {
  it('keeps every gram of ethanol', () => {
    fc.assert(
      fc.property(drink(0), between(0, 2000), (whisky, water) => {
        const mixture = afterWater(whisky, millilitres(water));
        expect(ethanolInPour(mixture).volume).toBeCloseTo(ethanolInPour(whisky).volume, 5);
      }),
    );
  });

  it('never makes it stronger, even pure ethanol by a drop too small to count', () => {
    for (let water = 1e-13; water < 5e-11; water += 1e-13)
      expect(afterWater(poured(700, 100), millilitres(water)).strength).toBeLessThanOrEqual(100);
  });

  it('leaves a drink alone that nothing is added to', () => {
    expect(afterWater(poured(20, 46.3), millilitres(0))).toMatchObject({ strength: 46.3, volume: 20 });
  });

  it('refuses to mix nothing', () => {
    expect(() => afterWater(poured(0, 40), millilitres(0))).toThrow('There is nothing to mix.');
  });
});

describe('drops', () => {
  it('weaken a drink with each further drop', () => {
    fc.assert(
      fc.property(drink(5), fc.nat(50), (whisky, drops) => {
        const here = afterDrops(whisky, drops).strength;
        expect(afterDrops(whisky, drops + 1).strength).toBeLessThan(here);
      }),
    );
  });

  it('show where the water, the densities and the result come from', () => {
    const { reckoning, strength, volume } = afterDrops(poured(20, 60), 3);
    expect(reckoning.map((each) => [each.code, each.source])).toEqual([
      ['drop-water', 'medicine-dropper'],
      ['source-mass', 'oiml-r22'],
      ['mixed-mass-fraction', 'definition'],
      ['mixed-strength', 'oiml-r22'],
      ['final-volume', 'oiml-r22'],
    ]);
    expect(reckoning.slice(-2).map((each) => each.result)).toEqual([
      { value: strength, unit: '% vol' },
      { value: volume, unit: 'mL' },
    ]);
  });
});
