import { describe, expect, it } from 'vitest';
import { clashesOf } from '../../../../core/planning/order/fact-clashes.ts';
import { drynessTerm, powerStep, powerSteps } from '../../../../core/planning/order/mark-steps.ts';
import { planWords as german } from '../../../../shared/language/de/plan.ts';
import { planWords as english } from '../../../../shared/language/en/plan.ts';

const marks = Array.from({ length: 21 }, (_, index) => index / 2);

describe('what a mark means', () => {
  it('goes through the seven categories of odour intensity, from the first to the last', () => {
    // VDI 3882 part 1: 0 not perceptible, very weak, weak, distinct, strong, very strong, 6 extremely strong; seen.
    expect(new Set(marks.map(powerStep))).toEqual(new Set([0, 1, 2, 3, 4, 5, 6]));
    expect([0, 5, 10].map(powerStep)).toEqual([0, 3, 6]);
    for (const words of [english, german]) expect(words.ahead.powerSteps).toHaveLength(powerSteps);
  });

  it('goes from sweet to dry by the four terms of wine labels, and never back', () => {
    const terms = marks.map(drynessTerm);
    expect([...new Set(terms)]).toEqual(['sweet', 'medium', 'medium-dry', 'dry']);
  });

  it('is called dry where sugar says sweet only with a question to the host', () => {
    // Sweet from 45 g/L, dry to 4 g/L: Delegated Regulation (EU) 2019/33, annex III, from memory.
    for (const dryness of marks) {
      const codes = (sugarGPerL: number) =>
        clashesOf({ id: 'p', drink: 'wine', colour: 'white', sugarGPerL, marks: { dryness } }).map(
          ({ code }) => code,
        );
      expect(codes(60).includes('sugar-against-mark')).toBe(drynessTerm(dryness) === 'dry');
      expect(codes(2).includes('sugar-against-mark')).toBe(drynessTerm(dryness) === 'sweet');
    }
  });
});
