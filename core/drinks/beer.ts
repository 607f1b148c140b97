import { millilitres, seconds } from '../units.ts';
import type { DrinkWays } from './drink.ts';
import { type PassTimes, passesWith, timesFor } from './passes.ts';

/** Beer: the head falls and the aroma flies off, so everything before the sip is brisk. Times in seconds: common practice, no source. */
const times: PassTimes = {
  swirl: 10,
  look: 20,
  nose: 25,
  sip: 20,
  spit: 15,
  write: { look: 30, nose: 45, palate: 45, finish: 25 },
  review: 20,
  reflect: 35,
};

export const beer: DrinkWays = {
  drink: 'beer',
  pour: millilitres(75),
  lids: false,
  dropsOfWater: 0,
  passes: (level, closingPass) => passesWith(timesFor(level, times), level, closingPass),
  water: { ideal: seconds(30), floor: seconds(20) },
};
