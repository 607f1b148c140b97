import { type Millilitres, millilitres } from '../../units.ts';
import { requireBetween, requireHeadCount } from '../figures/figure-errors.ts';
import { figure, type Reckoning, step } from '../figures/reckoning.ts';
import { steadyCeiling, steadyFloor } from '../figures/rounding.ts';

export interface BottlePours {
  readonly fullPours: number;
  readonly left: Millilitres;
  /** Bottle over pour with its fraction: 16.9 is why the trade counts 17 where 16 are full. */
  readonly servings: number;
  readonly reckoning: Reckoning;
}

/** 0.01 mL is a fifth of a drop; 100 L is a barrel. */
function requireVessel(name: 'pour' | 'bottle', volume: Millilitres): void {
  requireBetween(name, volume, 0.01, 100_000);
}

/**
 * Full pours in a bottle. A bottle smaller than the pour gives 0 full pours and all of it left.
 * @throws FigureOutOfRange for a pour or bottle outside 0.01..100,000 mL.
 */
export function poursPerBottle(bottle: Millilitres, pour: Millilitres): BottlePours {
  requireVessel('bottle', bottle);
  requireVessel('pour', pour);
  const servings = bottle / pour;
  const fullPours = steadyFloor(servings);
  const left = millilitres(Math.max(0, bottle - fullPours * pour));
  return {
    fullPours,
    left,
    servings,
    reckoning: [
      step(
        'servings-in-bottle',
        { bottle: figure(bottle, 'mL'), pour: figure(pour, 'mL') },
        figure(servings, '1'),
        'definition',
      ),
      step('full-pours', { servings: figure(servings, '1') }, figure(fullPours, 'pours'), 'definition'),
      step(
        'left-in-bottle',
        {
          bottle: figure(bottle, 'mL'),
          pours: figure(fullPours, 'pours'),
          pour: figure(pour, 'mL'),
        },
        figure(left, 'mL'),
        'definition',
      ),
    ],
  };
}

/** One extra pour in ten, for a spill or a second nose. Common practice, no source. */
export const USUAL_RESERVE = 0.1;

export interface BottleOrder {
  /** Everybody who is poured to, in the room and at home, without the host. */
  readonly guests: number;
  /** How many glasses of this drink each guest gets: 1, more where it returns in a comparison. */
  readonly poursPerGuest: number;
  /** The host's own: one to taste ahead of the evening, one to taste along. */
  readonly hostPours: number;
  readonly pour: Millilitres;
  readonly bottle: Millilitres;
  /** Share of the pours kept back, 0 to 1; a part of a pour is rounded up to a whole one. */
  readonly reserve: number;
}

export type BottlesToBuy =
  | {
      readonly kind: 'bottles';
      readonly bottles: number;
      readonly poursNeeded: number;
      readonly fullPoursPerBottle: number;
      /** All pours needed, reserve included. */
      readonly poured: Millilitres;
      readonly leftOver: Millilitres;
      readonly reckoning: Reckoning;
    }
  /** No glass is filled from two bottles, so a bottle must hold one pour at least. */
  | { readonly kind: 'bottle-below-pour'; readonly bottle: Millilitres; readonly pour: Millilitres };

/**
 * Bottles to buy so that every pour comes whole out of one bottle. Nobody to pour for needs 0 bottles.
 * @throws FigureOutOfRange for head counts that are not whole numbers from 0 to 10,000, a reserve outside 0..1,
 * a pour or bottle outside 0.01..100,000 mL.
 */
export function bottlesToBuy(order: BottleOrder): BottlesToBuy {
  requireHeadCount('guests', order.guests);
  requireHeadCount('pours per guest', order.poursPerGuest);
  requireHeadCount('host pours', order.hostPours);
  requireBetween('reserve', order.reserve, 0, 1);
  const perBottle = poursPerBottle(order.bottle, order.pour);
  if (perBottle.fullPours === 0) {
    return { kind: 'bottle-below-pour', bottle: order.bottle, pour: order.pour };
  }
  const people = order.guests * order.poursPerGuest + order.hostPours;
  const reserve = steadyCeiling(people * order.reserve);
  const poursNeeded = people + reserve;
  const bottles = Math.ceil(poursNeeded / perBottle.fullPours);
  const poured = millilitres(poursNeeded * order.pour);
  const leftOver = millilitres(Math.max(0, bottles * order.bottle - poured));
  return {
    kind: 'bottles',
    bottles,
    poursNeeded,
    fullPoursPerBottle: perBottle.fullPours,
    poured,
    leftOver,
    reckoning: [
      step(
        'pours-for-people',
        {
          guests: figure(order.guests, 'guests'),
          perGuest: figure(order.poursPerGuest, 'pours'),
          hostPours: figure(order.hostPours, 'pours'),
        },
        figure(people, 'pours'),
        'definition',
      ),
      step(
        'reserve-pours',
        { pours: figure(people, 'pours'), reserve: figure(order.reserve, '1') },
        figure(reserve, 'pours'),
        'common-practice',
      ),
      step(
        'pours-needed',
        { pours: figure(people, 'pours'), reserve: figure(reserve, 'pours') },
        figure(poursNeeded, 'pours'),
        'definition',
      ),
      ...perBottle.reckoning,
      step(
        'bottles-to-buy',
        { poursNeeded: figure(poursNeeded, 'pours'), fullPours: figure(perBottle.fullPours, 'pours') },
        figure(bottles, 'bottles'),
        'definition',
      ),
      step(
        'volume-poured',
        { poursNeeded: figure(poursNeeded, 'pours'), pour: figure(order.pour, 'mL') },
        figure(poured, 'mL'),
        'definition',
      ),
      step(
        'left-over',
        {
          bottles: figure(bottles, 'bottles'),
          bottle: figure(order.bottle, 'mL'),
          poured: figure(poured, 'mL'),
        },
        figure(leftOver, 'mL'),
        'definition',
      ),
    ],
  };
}
