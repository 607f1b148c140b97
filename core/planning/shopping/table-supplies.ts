import { type Millilitres, millilitres } from '../../units.ts';
import { requireAmount, requireBetween, requireHeadCount } from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';

export interface TableSupplyOrder {
  /** Places laid in the room, the host's own included where the host tastes along. */
  readonly seats: number;
  /** Pours that each seat tastes in the whole evening. */
  readonly pours: number;
  /** Glasses that stand before a seat at once: all pours, or one flight when glasses are washed between. */
  readonly glassesAtOnce: number;
  /** Lids keep the nose of a spirit in the glass; off for wine and beer. */
  readonly lids: boolean;
  /** Drops of water are for spirits; off for wine and beer. */
  readonly droppers: boolean;
}

/** What a seat needs. The figures are common practice, no source; a host may know better. */
export interface SupplyRates {
  readonly waterPerSeat: Millilitres;
  /** To drink and to rinse with after each pour. */
  readonly waterPerPour: Millilitres;
  readonly spitCupsPerSeat: number;
  readonly napkinsPerSeat: number;
  /** Neighbours share a dropper. */
  readonly seatsPerDropper: number;
  /** One spare glass for so many glasses. */
  readonly glassesPerSpare: number;
}

export const USUAL_RATES: SupplyRates = {
  waterPerSeat: millilitres(250),
  waterPerPour: millilitres(100),
  spitCupsPerSeat: 1,
  napkinsPerSeat: 2,
  seatsPerDropper: 2,
  glassesPerSpare: 12,
};

export interface TableSupplies {
  readonly tastingGlasses: number;
  readonly lids: number;
  readonly waterGlasses: number;
  readonly water: Millilitres;
  readonly spitCups: number;
  readonly napkins: number;
  readonly droppers: number;
  readonly noteSheets: number;
  readonly reckoning: Readonly<Record<Exclude<keyof TableSupplies, 'reckoning'>, Reckoning>>;
}

interface Counted {
  readonly count: number;
  readonly reckoning: Reckoning;
}

function perSeat(seats: number, each: number): Counted {
  const count = seats * each;
  const inputs = { seats: figure(seats, 'seats'), perSeat: figure(each, 'pieces') };
  return { count, reckoning: [step('items-per-seat', inputs, figure(count, 'pieces'), 'common-practice')] };
}

function shared(seats: number, seatsEach: number): Counted {
  const count = Math.ceil(seats / seatsEach);
  const inputs = { seats: figure(seats, 'seats'), seatsEach: figure(seatsEach, 'seats') };
  return { count, reckoning: [step('items-shared', inputs, figure(count, 'pieces'), 'common-practice')] };
}

function withSpare(items: Counted, itemsEach: number): Counted {
  const spare = Math.ceil(items.count / itemsEach);
  const count = items.count + spare;
  const before = figure(items.count, 'pieces');
  return {
    count,
    reckoning: [
      ...items.reckoning,
      step(
        'items-spare',
        { items: before, itemsEach: figure(itemsEach, 'pieces') },
        figure(spare, 'pieces'),
        'common-practice',
      ),
      step(
        'items-with-spare',
        { items: before, spare: figure(spare, 'pieces') },
        figure(count, 'pieces'),
        'definition',
      ),
    ],
  };
}

function requireRates(rates: SupplyRates): void {
  requireAmount('volume', rates.waterPerSeat);
  requireAmount('volume', rates.waterPerPour);
  requireHeadCount('rate', rates.spitCupsPerSeat);
  requireHeadCount('rate', rates.napkinsPerSeat);
  requireHeadCount('rate', rates.seatsPerDropper);
  requireHeadCount('rate', rates.glassesPerSpare);
  requireBetween('rate', rates.seatsPerDropper, 1, 10_000);
  requireBetween('rate', rates.glassesPerSpare, 1, 10_000);
}

/**
 * Everything that stands or lies on the table but the drinks. No seats need nothing.
 * @throws FigureOutOfRange for a count that is not a whole number from 0 to 10,000, or a rate that shares one
 * thing among 0.
 */
export function tableSupplies(order: TableSupplyOrder, rates: SupplyRates = USUAL_RATES): TableSupplies {
  requireHeadCount('seats', order.seats);
  requireHeadCount('pours', order.pours);
  requireHeadCount('pours', order.glassesAtOnce);
  requireRates(rates);
  const { seats } = order;
  const glasses = withSpare(perSeat(seats, order.glassesAtOnce), rates.glassesPerSpare);
  const lids = perSeat(seats, order.lids ? order.glassesAtOnce : 0);
  const waterGlasses = perSeat(seats, 1);
  const spitCups = perSeat(seats, rates.spitCupsPerSeat);
  const napkins = perSeat(seats, rates.napkinsPerSeat);
  const droppers = order.droppers ? shared(seats, rates.seatsPerDropper) : perSeat(seats, 0);
  const noteSheets = perSeat(seats, order.pours);
  const water = millilitres(seats * (rates.waterPerSeat + order.pours * rates.waterPerPour));
  const waterStep = step(
    'water-for-table',
    {
      seats: figure(seats, 'seats'),
      perSeat: figure(rates.waterPerSeat, 'mL'),
      pours: figure(order.pours, 'pours'),
      perPour: figure(rates.waterPerPour, 'mL'),
    },
    figure(water, 'mL'),
    'common-practice',
  );
  return {
    tastingGlasses: glasses.count,
    lids: lids.count,
    waterGlasses: waterGlasses.count,
    water,
    spitCups: spitCups.count,
    napkins: napkins.count,
    droppers: droppers.count,
    noteSheets: noteSheets.count,
    reckoning: {
      tastingGlasses: glasses.reckoning,
      lids: lids.reckoning,
      waterGlasses: waterGlasses.reckoning,
      water: [waterStep],
      spitCups: spitCups.reckoning,
      napkins: napkins.reckoning,
      droppers: droppers.reckoning,
      noteSheets: noteSheets.reckoning,
    },
  };
}
