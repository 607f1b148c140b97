import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import type { PlannedPour } from '../../../../core/planning/order/axes/pour-facts.ts';
import { carryOverAt, fullCarryOver } from '../../../../core/planning/order/carry-over.ts';
import { bestLineup, type FlightCut, weighOrder } from '../../../../core/planning/order/lineup.ts';
import { readAxes } from '../../../../core/planning/order/order-axes.ts';
import type { Pour } from '../../../../core/tasting.ts';
import { anyLineup, plannedPours } from './lineup-arbitraries.ts';

function* permutations<T>(items: readonly T[]): Generator<T[]> {
  if (items.length === 0) yield [];
  for (const [index, item] of items.entries()) {
    for (const rest of permutations([...items.slice(0, index), ...items.slice(index + 1)]))
      yield [item, ...rest];
  }
}

/** Whether an order keeps groups whole and, where asked, in their order. */
function keepsGroups(order: readonly PlannedPour[], cut: FlightCut): boolean {
  if (cut.kind !== 'groups') return true;
  const flights = order.map(({ id }) => cut.groups.findIndex((group) => group.includes(id)));
  const runs = flights.filter((flight, at) => at === 0 || flight !== flights[at - 1]);
  const inOrder = runs.every((flight, at) => at === 0 || flight > (runs[at - 1] ?? -1));
  return new Set(runs).size === runs.length && (cut.order === 'least-carry-over' || inOrder);
}

/** True where a break stands before this position of an order. */
function breakBefore(order: readonly PlannedPour[], position: number, cut: FlightCut): boolean {
  if (cut.kind === 'one') return false;
  if (cut.kind === 'sizes') return position === cut.sizes[0];
  const flightAt = (at: number) => cut.groups.findIndex((group) => group.includes(order[at]?.id ?? ''));
  return flightAt(position) !== flightAt(position - 1);
}

/** The least cost by trying every order, summed afresh from the pairs. */
function bruteForce(pours: readonly PlannedPour[], cut: FlightCut): number {
  const readings = new Map(readAxes(pours).pours.map((reading) => [reading.id, reading]));
  const pairs = new Map<string, number>();
  for (const [a, before] of readings) {
    for (const [b, after] of readings) pairs.set(`${a}>${b}`, fullCarryOver(before, after));
  }
  let least = Number.POSITIVE_INFINITY;
  for (const order of permutations(pours)) {
    if (!keepsGroups(order, cut)) continue;
    let cost = 0;
    order.forEach((pour, position) => {
      for (let at = 0; at < position; at++) {
        const full = pairs.get(`${order[at]?.id}>${pour.id}`) ?? 0;
        const next = breakBefore(order, position, cut) ? 'neighbour-after-break' : 'neighbour';
        cost += carryOverAt(full, at === position - 1 ? next : 'earlier');
      }
    });
    least = Math.min(least, cost);
  }
  return least;
}

/** Every cut that n pours allow in the properties below: one flight, sizes, and groups both ways. */
const cutOf = (pours: readonly PlannedPour[], choice: number): FlightCut => {
  const ids = pours.map(({ id }) => id);
  const half = Math.ceil(ids.length / 2);
  if (choice === 0 || ids.length < 2) return { kind: 'one' };
  if (choice === 1) return { kind: 'sizes', sizes: [half, ids.length - half] };
  const groups = [ids.filter((_, at) => at % 2 === 0), ids.filter((_, at) => at % 2 === 1)];
  return { kind: 'groups', groups, order: choice === 2 ? 'as-given' : 'least-carry-over' };
};

describe('the order that carries over least', () => {
  it("takes a plan's pours as they are", () => {
    expectTypeOf<Pour>().toExtend<PlannedPour>();
  });

  it('agrees with trying every order, up to 6 pours, whatever the flights', () => {
    fc.assert(
      fc.property(anyLineup(6), fc.integer({ min: 0, max: 3 }), (pours, choice) => {
        const cut = cutOf(pours, choice);
        expect(bestLineup(pours, { cut }).cost).toBe(bruteForce(pours, cut));
      }),
      { numRuns: 60 },
    );
  });

  it('agrees with trying every order of 7 pours', () => {
    fc.assert(
      fc.property(plannedPours('spirit', 7, 7), (pours) => {
        expect(bestLineup(pours).cost).toBe(bruteForce(pours, { kind: 'one' }));
      }),
      { numRuns: 3 },
    );
  });

  it('is the same order however the pours were listed', () => {
    fc.assert(
      fc.property(
        anyLineup(9).chain((pours) =>
          fc.tuple(fc.constant(pours), fc.shuffledSubarray(pours, { minLength: pours.length })),
        ),
        ([pours, shuffled]) => {
          expect(bestLineup(shuffled)).toEqual(bestLineup(pours));
        },
      ),
    );
  });

  it('keeps flights whole, serves every pour once, and sums its steps', () => {
    fc.assert(
      fc.property(anyLineup(9), fc.integer({ min: 0, max: 3 }), (pours, choice) => {
        const cut = cutOf(pours, choice);
        const lineup = bestLineup(pours, { cut });
        const served = lineup.steps.flatMap(({ pour }) => pours.find(({ id }) => id === pour) ?? []);
        expect(served.map(({ id }) => id).sort()).toEqual(pours.map(({ id }) => id).sort());
        expect(keepsGroups(served, cut)).toBe(true);
        expect(lineup.cost).toBe(lineup.steps.reduce((sum, { cost }) => sum + cost, 0));
        if (cut.kind === 'sizes') {
          const inFlight = (flight: number) => lineup.steps.filter((step) => step.flight === flight).length;
          expect(cut.sizes.map((_, flight) => inFlight(flight))).toEqual(cut.sizes);
        }
        expect(weighOrder(served, { cut }).cost).toBe(lineup.cost);
      }),
    );
  });

  it('never costs more than an order made by hand', () => {
    fc.assert(
      fc.property(anyLineup(10), fc.integer({ min: 0, max: 1 }), (pours, choice) => {
        const cut = cutOf(pours, choice);
        expect(bestLineup(pours, { cut }).cost).toBeLessThanOrEqual(weighOrder(pours, { cut }).cost);
      }),
    );
  });

  it('orders sixteen and refuses seventeen with a sentence', () => {
    const many = Array.from(
      { length: 17 },
      (_, at): PlannedPour => ({ id: `p${at}`, drink: 'spirit', abv: 60 - at }),
    );
    const abvs = bestLineup(many.slice(0, 16)).steps.map(({ pour }) => Number(pour.slice(1)));
    expect(abvs).toEqual(Array.from({ length: 16 }, (_, at) => 15 - at));
    expect(() => bestLineup(many)).toThrow(/up to 16 pours; take 1 out/);
  });

  it('has nothing to say about nothing', () => {
    expect(bestLineup([])).toEqual({ steps: [], cost: 0, risks: [], missing: [], silent: [] });
  });

  it('refuses doubled pours and flights that do not fit', () => {
    const one: PlannedPour = { id: 'a', drink: 'beer' };
    expect(() => bestLineup([one, one])).toThrow(/only once/);
    expect(() => bestLineup([one], { cut: { kind: 'sizes', sizes: [2] } })).toThrow(/hold 2 pours/);
    expect(() => bestLineup([one], { cut: { kind: 'sizes', sizes: [1, 0] } })).toThrow(/at least one/);
    const strange: FlightCut = { kind: 'groups', groups: [['b']], order: 'as-given' };
    expect(() => bestLineup([one], { cut: strange })).toThrow(/exactly one flight/);
  });
});

describe('what an order says of itself', () => {
  const mild: PlannedPour = { id: 'mild', drink: 'spirit', abv: 40, peat: 0, cask: 'bourbon', ageYears: 10 };
  const strong: PlannedPour = { ...mild, id: 'strong', abv: 58 };
  const smoky: PlannedPour = { ...mild, id: 'smoky', peat: 3 };

  it('names the axis that put each pour after the one before', () => {
    const lineup = bestLineup([smoky, strong, mild]);
    expect(lineup.steps.map(({ pour }) => pour)).toEqual(['mild', 'strong', 'smoky']);
    expect(lineup.steps.map(({ reason }) => reason)).toMatchObject([
      { code: 'opens' },
      { code: 'rises', axis: 'strength' },
      { code: 'rises', axis: 'smoke' },
    ]);
  });

  it('warns of smoke before a delicate pour, and longer water where a break parts them', () => {
    const [worst] = weighOrder([smoky, mild]).risks;
    expect(worst).toMatchObject({
      code: 'smoke-before-a-lower-one',
      earlier: 'smoky',
      later: 'mild',
      severity: 'strong',
      remedy: 'longer-water-or-move',
    });
    const parted = weighOrder([smoky, mild], { cut: { kind: 'sizes', sizes: [1, 1] } });
    expect(parted.cost).toBeLessThan(weighOrder([smoky, mild]).cost);
    expect(parted.risks[0]).toMatchObject({ distance: 'neighbour-after-break' });
    expect(parted.steps[1]?.reason).toMatchObject({ code: 'starts-again', axis: 'smoke' });
    expect(weighOrder([smoky, mild]).steps[1]?.reason).toMatchObject({ code: 'gives-way', axis: 'smoke' });
  });

  it('names smaller risks too, the heaviest first', () => {
    const { risks } = weighOrder([{ ...smoky, abv: 52 }, mild]);
    expect(risks.map(({ axis, severity, remedy }) => [axis, severity, remedy])).toEqual([
      ['smoke', 'strong', 'longer-water-or-move'],
      ['strength', 'some', 'longer-water'],
    ]);
    expect(
      weighOrder([{ ...mild, abv: 52 }, mild, smoky, mild].map((pour, at) => ({ ...pour, id: `${at}` })))
        .risks[0],
    ).toMatchObject({ axis: 'smoke', earlier: '2', later: '3' });
  });

  it('leaves no risk where nothing falls', () => {
    expect(bestLineup([mild, strong]).risks).toEqual([]);
    expect(bestLineup([mild, strong]).cost).toBe(0);
  });

  it('names ties instead of settling them silently', () => {
    const lineup = bestLineup([
      { ...mild, id: 'b' },
      { ...mild, id: 'a' },
    ]);
    expect(lineup.steps).toMatchObject([
      { pour: 'a', equallyGood: ['b'] },
      { pour: 'b', equallyGood: [], reason: { code: 'equal' } },
    ]);
  });

  it('names missing facts, puts the pour in the middle and says what was assumed', () => {
    const unknown: PlannedPour = { id: 'unknown', drink: 'spirit' };
    const lineup = bestLineup([
      { id: 'low', drink: 'spirit', abv: 40 },
      { id: 'high', drink: 'spirit', abv: 60 },
      unknown,
    ]);
    expect(lineup.steps.map(({ pour }) => pour)).toEqual(['low', 'unknown', 'high']);
    expect(lineup.missing).toEqual([{ pour: 'unknown', axis: 'strength', facts: ['abv'] }]);
    expect(lineup.steps[1]?.reason.code).toBe('rises-if-assumed');
    expect(lineup.silent.map(({ axis }) => axis)).toEqual(['smoke', 'pungency', 'dryness', 'cask', 'age']);
  });

  it('counts nonsense as not known', () => {
    const nonsense: PlannedPour = {
      id: 'n',
      drink: 'spirit',
      abv: Number.NaN,
      peat: 9,
      ageYears: -3,
      cask: '??',
    };
    const lineup = bestLineup([mild, nonsense]);
    expect(lineup.missing.map(({ axis }) => axis).sort()).toEqual(['age', 'cask', 'smoke', 'strength']);
    expect(Number.isFinite(lineup.cost)).toBe(true);
  });

  it('lets age lead a vertical, and turns it round for a host who wants the old first', () => {
    const young: PlannedPour = { ...strong, id: 'young', ageYears: 8 };
    const old: PlannedPour = { ...mild, id: 'old', ageYears: 21 };
    const order = (options: Parameters<typeof bestLineup>[1]) =>
      bestLineup([young, old], options).steps.map(({ pour }) => pour);
    expect(order({})).toEqual(['old', 'young']);
    expect(order({ lead: 'age' })).toEqual(['young', 'old']);
    expect(order({ lead: 'age', youngFirst: false })).toEqual(['old', 'young']);
  });

  it('keeps lingering smoke in mind beyond the next glass', () => {
    const milds = ['m1', 'm2', 'm3'].map((id) => ({ ...mild, id }));
    expect(weighOrder([...milds, smoky]).cost).toBe(0);
    // Six points of smoke on the next glass, a fifth of that on each of the two after it.
    expect(weighOrder([smoky, ...milds]).steps.map(({ cost }) => cost)).toEqual([0, 6000, 1200, 1200]);
  });
});
