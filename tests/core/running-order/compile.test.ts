import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levels } from '../../../core/drinks/drink-kinds.ts';
import { compile } from '../../../core/running-order/compile.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import { flightsOf, type Level } from '../../../core/tasting.ts';
import { planOf } from '../../support/plans.ts';

const spoken = (cue: Cue) => {
  if (cue.kind === 'step') return [cue.pass, cue.step, ...(cue.sense ? [cue.sense] : [])].join(' ');
  return cue.kind;
};
const ofPour = (cues: readonly Cue[], pour: string) =>
  cues.filter((cue) => cue.kind === 'step' && cue.pour === pour).map(spoken);
const minutes = (cues: readonly Cue[]) => cues.reduce((sum, cue) => sum + cue.ideal, 0) / 60;

describe('a running order', () => {
  it('begins with gathering, welcome, ground rules and the moves with plain water', () => {
    expect(compile(planOf(3)).slice(0, 8).map(spoken)).toEqual([
      'gathering',
      'welcome',
      'ground-rules',
      ...Array.from({ length: 5 }, () => 'practice'),
    ]);
    expect(compile(planOf(3, { practice: false })).map(spoken)).not.toContain('practice');
  });

  // The passes of each crowd: common practice, no source.
  const senses = ['first swirl', 'first look', 'first nose', 'first sip', 'first spit'];
  const words = [
    'writing write look',
    'writing write nose',
    'writing sip',
    'writing spit',
    'writing write palate',
    'writing write finish',
  ];
  it.each<[Level, string[]]>([
    ['newcomers', [...senses, ...words]],
    ['regulars', [...senses, ...words, 'closing review']],
    ['devotees', [...senses, ...words, 'closing review', 'closing reflect']],
  ])('walks %s through a glass', (level, expected) => {
    expect(ofPour(compile(planOf(3, { level })), 'ash')).toEqual(expected);
  });

  it('lets a spirit be nosed neat before it gets its drops, and wine be what it is', () => {
    const steps = (drops: 'poured' | 'after-nose' | 'none', drink: 'spirit' | 'wine') =>
      ofPour(compile(planOf(3, { level: 'newcomers', drops, drink })), 'ash');
    expect(steps('after-nose', 'spirit')).toEqual([...senses, 'writing swirl', ...words]);
    for (const drops of ['poured', 'none'] as const)
      expect(steps(drops, 'spirit')).toEqual([...senses, ...words]);
    expect(steps('after-nose', 'wine')).toEqual([...senses, ...words]);
  });

  it.each<[Level, number, number[]]>([
    ['newcomers', 3, [3]],
    ['regulars', 6, [3, 3]],
    ['devotees', 9, [3, 3, 3]],
  ])('serves %s %i pours in flights of %j, parted by breaks of 5 to 10 minutes', (level, pours, sizes) => {
    const plan = planOf(pours, { level });
    expect(flightsOf(plan).map((flight) => flight.pours.length)).toEqual(sizes);
    const breaks = compile(plan).filter((cue) => cue.kind === 'break');
    expect(breaks).toHaveLength(sizes.length - 1);
    for (const cue of breaks) {
      expect(cue.ideal).toBeGreaterThanOrEqual(300);
      expect(cue.ideal).toBeLessThanOrEqual(600);
      expect(cue.floor).toBe(300);
    }
  });

  it('gives newcomers the slower senses and devotees the longer evening', () => {
    const nose = (level: Level) =>
      compile(planOf(3, { level })).find((cue) => cue.id === 'ash/first/nose')?.ideal ?? 0;
    expect(nose('newcomers')).toBeGreaterThan(nose('regulars'));
    expect(minutes(compile(planOf(9, { level: 'devotees' })))).toBeGreaterThan(minutes(compile(planOf(6))));
  });

  it('stretches noses, and whatever else the host says, without touching the rest', () => {
    const slow = compile(planOf(3, { pace: { nose: 2 } }));
    const usual = compile(planOf(3));
    const times = slow.map((cue, index) => cue.ideal / (usual[index]?.ideal ?? 0));
    slow.forEach((cue, index) => {
      expect(times[index]).toBe(cue.kind === 'step' && cue.step === 'nose' ? 2 : 1);
    });
  });

  const rounds = (more: Parameters<typeof planOf>[1], pours = 6) =>
    compile(planOf(pours, { flightSizes: [3, 3], ...more }))
      .filter(({ kind }) => ['ranking', 'discussion', 'result', 'reveal'].includes(kind))
      .map(({ id }) => String(id));

  it('tells the names of blind pours after their talk, and no names elsewhere', () => {
    expect(rounds({ blind: true }, 3)).toEqual(['flight-1/discussion', 'flight-1/reveal']);
    expect(rounds({ blind: true, discussion: 'each-pour' }, 2)).toEqual([
      'ash/discussion',
      'ash/reveal',
      'birch/discussion',
      'birch/reveal',
    ]);
    expect(rounds({ blind: true, discussion: 'at-the-end' })).toEqual([
      'evening/discussion',
      'evening/reveal',
    ]);
    for (const discussion of ['each-pour', 'each-flight', 'at-the-end'] as const)
      expect(compile(planOf(6, { discussion })).map(spoken)).not.toContain('reveal');
  });

  it('[R3] lets a ranking wait for no names: they are told after it and its result', () => {
    const blind = true;
    expect(rounds({ blind, ranking: 'each-flight', discussion: 'each-pour' }, 3)).toEqual([
      'ash/discussion',
      'birch/discussion',
      'cedar/discussion',
      'flight-1/ranking',
      'flight-1/result',
      'flight-1/reveal',
    ]);
    expect(rounds({ blind, ranking: 'each-flight' }, 3)).toEqual([
      'flight-1/ranking',
      'flight-1/discussion',
      'flight-1/result',
      'flight-1/reveal',
    ]);
    expect(rounds({ blind, ranking: 'at-the-end' })).toEqual([
      'flight-1/discussion',
      'flight-2/discussion',
      'evening/ranking',
      'evening/result',
      'evening/reveal',
    ]);
    expect(rounds({ blind, ranking: 'each-flight', discussion: 'at-the-end' })).toEqual([
      'flight-1/ranking',
      'flight-2/ranking',
      'evening/discussion',
      'evening/result',
      'evening/reveal',
    ]);
  });

  it('[R3] holds with own orders, whatever is chosen, and names every pour once', () => {
    const plans = fc.record({
      blind: fc.constant(true),
      ownOrders: fc.boolean(),
      liking: fc.boolean(),
      rankNamed: fc.boolean(),
      discussion: fc.constantFrom('each-pour', 'each-flight', 'at-the-end'),
      ranking: fc.constantFrom('none', 'each-flight', 'at-the-end'),
      flightSizes: fc.array(fc.integer({ min: 1, max: 4 }), { maxLength: 4 }),
    });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), plans, (pours, more) => {
        const cues = compile(planOf(pours, more));
        const named = cues.flatMap((cue) => (cue.kind === 'reveal' ? cue.pours : []));
        expect(named.toSorted()).toEqual(planOf(pours).pours.map(({ id }) => id));
        const before = new Set<string>();
        for (const cue of cues) {
          if (cue.kind === 'reveal') for (const pour of cue.pours) before.add(pour);
          if (cue.kind === 'ranking' && !more.rankNamed)
            expect(
              cue.pours.filter((pour) => before.has(pour)),
              cue.id,
            ).toEqual([]);
          if (cue.kind === 'result' && cue.tells.includes('order') && !more.rankNamed)
            expect(
              cue.pours.filter((pour) => before.has(pour)),
              cue.id,
            ).toEqual([]);
        }
      }),
    );
  });

  it('[R3] tells the names first where the host chose that, and only then', () => {
    expect(rounds({ blind: true, ranking: 'at-the-end', rankNamed: true })).toEqual([
      'flight-1/discussion',
      'flight-1/reveal',
      'flight-2/discussion',
      'flight-2/reveal',
      'evening/ranking',
      'evening/result',
    ]);
  });

  it('tells every ranking and every liking in one result, after the talk about those pours', () => {
    const flights = fc.array(fc.integer({ min: 1, max: 4 }), { maxLength: 4 });
    const talks = fc.constantFrom('each-pour', 'each-flight', 'at-the-end');
    const rankings = fc.constantFrom('none', 'each-flight', 'at-the-end');
    fc.assert(
      fc.property(flights, talks, rankings, fc.boolean(), (flightSizes, discussion, ranking, liking) => {
        const cues = compile(planOf(9, { flightSizes, discussion, ranking, liking, blind: true }));
        const results = cues.flatMap((cue, at) => (cue.kind === 'result' ? [{ cue, at }] : []));
        const tells = (of: 'order' | 'liking', pours: readonly string[]) =>
          results.filter(
            ({ cue }) =>
              cue.tells.includes(of) && pours.every((pour) => cue.pours.some((own) => own === pour)),
          );
        cues.forEach((cue, at) => {
          if (cue.kind !== 'ranking') return;
          expect(tells('order', cue.pours).map((told) => told.at > at)).toEqual([true]);
        });
        for (const { id } of planOf(9).pours) {
          const liked = tells('liking', [id]);
          expect(liked).toHaveLength(liking ? 1 : 0);
          const talk = cues.findIndex((cue) => cue.kind === 'discussion' && cue.pours.includes(id));
          for (const { at } of liked) expect(at).toBeGreaterThan(talk);
        }
      }),
    );
  });

  it('takes any number of pours from 0 to 16, with ids that are unique, and keeps the rules of care', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 16 }),
        fc.constantFrom(...levels),
        fc.array(fc.integer({ min: 1, max: 16 }), { maxLength: 6 }),
        fc.constantFrom('spirit', 'wine', 'beer'),
        fc.constantFrom('each-pour', 'each-flight', 'at-the-end'),
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        (pours, level, flightSizes, drink, discussion, factor) => {
          const pace = { look: factor, nose: factor, sip: factor, write: factor, discussion: factor };
          const plan = planOf(pours, { level, flightSizes, drink, discussion, pace });
          const cues = compile(plan);
          expect(flightsOf(plan).flatMap((flight) => flight.pours)).toEqual(plan.pours);
          expect(new Set(cues.map((cue) => cue.id)).size).toBe(cues.length);
          cues.forEach((cue, index) => {
            expect(cue.ideal).toBeGreaterThanOrEqual(cue.floor);
            expect(Number.isInteger(cue.ideal)).toBe(true);
            const next = cues[index + 1];
            if (cue.kind === 'step' && cue.step === 'sip')
              expect(next, '[C1]').toMatchObject({ step: 'spit' });
            if (cue.kind === 'step' && next?.kind === 'step') expect(next.pour, '[C1]').toBe(cue.pour);
            if (cue.kind === 'step' && next?.kind === 'step') expect(next.flight, '[C1]').toBe(cue.flight);
            if (cue.kind === 'step' && next?.kind !== 'step')
              expect(next, '[C1]').toMatchObject({ kind: 'water' });
          });
          expect(cues.filter((cue) => cue.kind === 'break')).toHaveLength(
            Math.max(0, flightsOf(plan).length - 1),
          );
          expect(compile(plan)).toEqual(cues);
        },
      ),
    );
  });

  it('keeps the ids of its cues when the plan changes around them', () => {
    const before = new Set(compile(planOf(6)).map((cue) => cue.id));
    const after = compile(planOf(9, { closingPass: false })).map((cue) => cue.id);
    expect(after.filter((id) => before.has(id)).length).toBeGreaterThan(60);
  });

  it('[C2] takes the host’s seconds and words, but never cuts spit, water or a break below its floor', () => {
    const cueEdits = {
      'ash/first/nose': { seconds: 90, say: 'Longer than you think.' },
      'ash/first/spit': { seconds: 5 },
      'ash/water': { seconds: 5 },
      'flight-1/break': { seconds: 60 },
    };
    const cues = new Map(compile(planOf(6, { cueEdits })).map((cue) => [String(cue.id), cue]));
    expect(cues.get('ash/first/nose')).toMatchObject({ ideal: 90, say: 'Longer than you think.' });
    expect(cues.get('ash/first/spit')?.ideal).toBe(10);
    expect(cues.get('ash/water')?.ideal).toBe(30);
    expect(cues.get('flight-1/break')?.ideal).toBe(300);
  });
});
