import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { steadyCeiling, steadyFloor } from '../../../../core/planning/figures/rounding.ts';
import {
  type BottleOrder,
  bottlesToBuy,
  poursPerBottle,
} from '../../../../core/planning/shopping/quantities.ts';
import { remoteKit } from '../../../../core/planning/shopping/remote-kit.ts';
import { tableSupplies, USUAL_RATES } from '../../../../core/planning/shopping/table-supplies.ts';
import { millilitres } from '../../../../core/units.ts';

const volume = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(millilitres);

const order = (given: Partial<Record<keyof BottleOrder, number>>): BottleOrder => ({
  guests: given.guests ?? 12,
  poursPerGuest: given.poursPerGuest ?? 1,
  hostPours: given.hostPours ?? 0,
  pour: millilitres(given.pour ?? 20),
  bottle: millilitres(given.bottle ?? 700),
  reserve: given.reserve ?? 0,
});

describe('pours in a bottle', () => {
  // The trade counts 17 pours of 1.5 US fl oz in 750 mL (common practice, no source); the 17th is not full.
  it('counts full pours only and shows the fraction that the trade rounds up', () => {
    const { fullPours, servings, left } = poursPerBottle(millilitres(750), millilitres(44.36));
    expect(fullPours).toBe(16);
    expect(Math.round(servings)).toBe(17);
    expect(left).toBeCloseTo(40.24, 9);
  });

  it.each([
    [0.3, 0.1, 3],
    [0.7, 0.1, 7],
    [700, 0.7, 1000],
    [70.2, 23.4, 3],
    [4.35, 0.01, 435],
  ])('does not lose a pour of %d mL to the last binary digit', (bottle, pour, count) => {
    expect(poursPerBottle(millilitres(bottle), millilitres(pour))).toMatchObject({ fullPours: count });
  });

  it('does not round a pour up that is short by what an eye could measure', () => {
    expect(poursPerBottle(millilitres(749.99), millilitres(30))).toMatchObject({ fullPours: 24 });
  });

  it('fills no pour from a bottle smaller than it', () => {
    expect(poursPerBottle(millilitres(50), millilitres(60))).toMatchObject({ fullPours: 0, left: 50 });
  });

  it('never promises more than the bottle holds, nor leaves a full pour behind', () => {
    fc.assert(
      fc.property(volume(10, 5000), volume(0.1, 500), (bottle, pour) => {
        const { fullPours, left } = poursPerBottle(bottle, pour);
        expect(fullPours * pour).toBeLessThanOrEqual(bottle * (1 + 1e-9));
        expect((fullPours + 1) * pour).toBeGreaterThan(bottle * (1 - 1e-9));
        expect(left).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('bottles to buy', () => {
  it('counts the host, the reserve and whole pours', () => {
    const bought = bottlesToBuy(order({ guests: 30, hostPours: 2, reserve: 0.1 }));
    // 32 pours and 4 in reserve of 35 to the bottle.
    expect(bought).toMatchObject({
      kind: 'bottles',
      poursNeeded: 36,
      bottles: 2,
      poured: 720,
      leftOver: 680,
    });
  });

  it('takes no reserve pour for the last binary digit of a share', () => {
    expect(bottlesToBuy(order({ guests: 100, reserve: 0.07 }))).toMatchObject({ poursNeeded: 107 });
  });

  it('buys nothing for nobody, and copes with a crowd', () => {
    expect(bottlesToBuy(order({ guests: 0 }))).toMatchObject({ bottles: 0, poured: 0, leftOver: 0 });
    expect(bottlesToBuy(order({ guests: 200, pour: 44.36, bottle: 750 }))).toMatchObject({ bottles: 13 });
  });

  it('says so when no bottle holds a pour', () => {
    const small = bottlesToBuy(order({ bottle: 50, pour: 60 }));
    expect(small).toEqual({ kind: 'bottle-below-pour', bottle: 50, pour: 60 });
  });

  it('is never short, and never a bottle too many', () => {
    const orders = fc.record({
      guests: fc.nat(200),
      poursPerGuest: fc.nat(3),
      hostPours: fc.nat(2),
      pour: volume(1, 200),
      bottle: volume(20, 3000),
      reserve: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(orders, (given) => {
        const bought = bottlesToBuy(given);
        if (bought.kind === 'bottle-below-pour') {
          expect(given.bottle).toBeLessThan(given.pour);
          return;
        }
        const people = given.guests * given.poursPerGuest + given.hostPours;
        const full = bought.fullPoursPerBottle;
        expect(full).toBe(poursPerBottle(given.bottle, given.pour).fullPours);
        expect(bought.bottles * full).toBeGreaterThanOrEqual(people * (1 + given.reserve) - 1e-6);
        expect((bought.bottles - 1) * full).toBeLessThan(Math.max(1, bought.poursNeeded));
        expect(bought.bottles * given.bottle).toBeGreaterThanOrEqual(bought.poured * (1 - 1e-9));
      }),
    );
  });

  it('shows each figure in its reckoning', () => {
    const bought = bottlesToBuy(order({ guests: 24, pour: 30, hostPours: 1, reserve: 0.1 }));
    if (bought.kind !== 'bottles') throw new Error(bought.kind);
    const results = Object.fromEntries(bought.reckoning.map((each) => [each.code, each.result.value]));
    expect(results).toMatchObject({
      'pours-for-people': 25,
      'reserve-pours': 3,
      'pours-needed': bought.poursNeeded,
      'full-pours': 23,
      'bottles-to-buy': bought.bottles,
      'volume-poured': bought.poured,
      'left-over': bought.leftOver,
    });
  });
});

describe('rounding', () => {
  it('never strays a whole from the plain one', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e12, noNaN: true }), (value) => {
        expect(steadyFloor(value) - Math.floor(value)).toBeGreaterThanOrEqual(0);
        expect(steadyFloor(value)).toBeLessThanOrEqual(steadyCeiling(value));
        expect(Math.ceil(value) - steadyCeiling(value)).toBeGreaterThanOrEqual(0);
        expect(steadyFloor(value)).toBeLessThanOrEqual(value + Math.max(1e-9, 1e-13 * value));
      }),
    );
  });
});

describe('what lies on the table', () => {
  it('covers every seat', () => {
    const supplies = tableSupplies({ seats: 13, pours: 6, glassesAtOnce: 3, lids: true, droppers: true });
    expect(supplies).toMatchObject({
      tastingGlasses: 43,
      lids: 39,
      waterGlasses: 13,
      water: 13 * (250 + 600),
      spitCups: 13,
      napkins: 26,
      droppers: 7,
      noteSheets: 78,
    });
  });

  it('leaves lids and droppers to spirits, and nobody without a seat', () => {
    const wine = tableSupplies({ seats: 8, pours: 5, glassesAtOnce: 5, lids: false, droppers: false });
    expect(wine).toMatchObject({ lids: 0, droppers: 0 });
    const { reckoning, ...nothing } = tableSupplies({
      seats: 0,
      pours: 6,
      glassesAtOnce: 6,
      lids: true,
      droppers: true,
    });
    expect(Object.values(nothing).every((count) => count === 0)).toBe(true);
    expect(Object.keys(reckoning).sort()).toEqual(Object.keys(nothing).sort());
  });

  it('ends each reckoning in the figure shown', () => {
    fc.assert(
      fc.property(
        fc.nat(200),
        fc.nat(12),
        fc.nat(12),
        fc.boolean(),
        (seats, pours, glassesAtOnce, spirit) => {
          const order = { seats, pours, glassesAtOnce, lids: spirit, droppers: spirit };
          const { reckoning, ...figures } = tableSupplies(order);
          for (const [item, steps] of Object.entries(reckoning)) {
            expect(steps.at(-1)?.result.value, item).toBe(figures[item as keyof typeof figures]);
          }
          expect(figures.tastingGlasses).toBeGreaterThanOrEqual(seats * glassesAtOnce);
          expect(figures.droppers * USUAL_RATES.seatsPerDropper).toBeGreaterThanOrEqual(spirit ? seats : 0);
        },
      ),
    );
  });
});

describe('kits for guests at home', () => {
  it('takes the smallest vial that holds the pour with room to swell', () => {
    const kit = remoteKit(4, [15, 20, 29, 120].map(millilitres));
    expect(kit.vials).toEqual([
      { kind: 'vial', pour: 15, size: 20, count: 4 },
      { kind: 'vial', pour: 20, size: 30, count: 4 },
      { kind: 'vial', pour: 29, size: 50, count: 4 },
      { kind: 'no-vial-large-enough', pour: 120 },
    ]);
    expect(kit.total).toBe(12);
  });

  it('does not ask for the sizes in order', () => {
    const sizes = [50, 5, 30].map(millilitres);
    expect(remoteKit(1, [millilitres(20)], sizes).vials).toMatchObject([{ size: 30 }]);
  });

  it('needs nothing for no guests', () => {
    expect(remoteKit(0, [millilitres(15)]).total).toBe(0);
  });
});
