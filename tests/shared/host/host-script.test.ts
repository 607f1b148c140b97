import { describe, expect, it } from 'vitest';
import { drinks, levels } from '../../../core/drinks/drink-kinds.ts';
import { compile } from '../../../core/running-order/compile.ts';
import { planSchema } from '../../../core/tasting.ts';
import { demoEvening } from '../../../shared/demo/evening.ts';
import { say } from '../../../shared/language/en/host-script.ts';
import { sayOf } from '../../../shared/language/host-script.ts';

const plan = planSchema.parse(demoEvening);
const everything = drinks.flatMap((drink) =>
  levels.flatMap((level) =>
    compile({
      ...plan,
      drink,
      level,
      ranking: 'each-flight',
      pours: plan.pours.map((pour) => ({ ...pour, drink })),
    }).map((cue) => ({ cue, drink, level })),
  ),
);
const sentences = (text: string): number =>
  text.split(/[.!?](?:\s|$)/).filter((part) => part.trim() !== '').length;

describe('what the host says aloud', () => {
  it('is there for every cue of every drink and crowd, in one to four sentences', () => {
    for (const { cue, drink, level } of everything) {
      for (const glass of [1, 6]) {
        const text = sayOf(say, cue, { drink, level, glass, silent: false });
        expect(text, cue.id).not.toBe(say.anyStep);
        expect(sentences(text), `${cue.id}: ${text}`).toBeGreaterThanOrEqual(1);
        expect(sentences(text), `${cue.id}: ${text}`).toBeLessThanOrEqual(4);
        expect(text.length, `${cue.id}: ${text}`).toBeLessThanOrEqual(260);
      }
    }
  });

  it('differs by drink at every step of a pass', () => {
    for (const { cue, level } of everything.filter(({ cue: { kind } }) => kind === 'step')) {
      if (cue.kind === 'step' && cue.pass === 'writing' && cue.step === 'spit') continue;
      const said = drinks.map((drink) => sayOf(say, cue, { drink, level, glass: 6, silent: false }));
      expect(new Set(said).size, cue.id).toBe(drinks.length);
    }
  });

  it('explains a step for the first two glasses only', () => {
    const nose = everything.find(({ cue }) => cue.kind === 'step' && cue.step === 'nose');
    if (nose === undefined) throw new Error('The demo is nosed.');
    const said = (glass: number) => sayOf(say, nose.cue, { ...nose, glass, silent: false });
    expect(said(1)).toBe(said(2));
    expect(said(3)).toBe(said(4));
    expect(said(1).startsWith(said(3))).toBe(true);
    expect(said(1)).not.toBe(said(3));
  });

  it('does not say that a talk is open before it is', () => {
    const talk = everything.find(({ cue }) => cue.kind === 'discussion');
    if (talk === undefined) throw new Error('The demo has a talk.');
    for (const level of levels) {
      const before = sayOf(say, talk.cue, { ...talk, level, glass: 1, silent: true });
      expect(before).not.toBe(sayOf(say, talk.cue, { ...talk, level, glass: 1, silent: false }));
    }
  });

  it('gives way to the host’s own words', () => {
    const [first] = everything;
    if (first === undefined) throw new Error('There are cues.');
    const own = { ...first.cue, say: 'My own words.' };
    expect(sayOf(say, own, { ...first, glass: 1, silent: false })).toBe('My own words.');
  });

  it('never tells anybody that they may drive', () => {
    const all = JSON.stringify(say);
    expect(all).not.toMatch(/(fit|safe|able|may|can) to drive/i);
    for (const level of levels) expect(say.cues.farewell[level]).toMatch(/nobody drives/i);
  });
});

describe('the demo evening', () => {
  it('is a whole plan of six pours in two flights, each with a code of its own', () => {
    expect(plan.pours).toHaveLength(6);
    expect(plan.flightSizes).toEqual([3, 3]);
    expect(new Set(Object.values(plan.codes)).size).toBe(6);
    expect(plan.pours.every(({ id }) => plan.codes[id] !== undefined)).toBe(true);
  });
});
