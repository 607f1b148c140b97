import { millilitres, seconds } from '../units.ts';
import type { DrinkWays } from './drink.ts';
import { type PassTimes, passesWith, timesFor } from './passes.ts';

/** Spirits: strong and aromatic, so the nose gets the longest and the palate a real rest. Times in seconds: common practice, no source. */
const times: PassTimes = {
  swirl: 15,
  look: 20,
  nose: 40,
  sip: 25,
  spit: 15,
  write: { look: 30, nose: 60, palate: 50, finish: 30 },
  review: 25,
  reflect: 40,
};

export const spirit: DrinkWays = {
  drink: 'spirit',
  pour: millilitres(20),
  lids: true,
  dropsOfWater: 3,
  passes: (level, closingPass, drops) => passesWith(timesFor(level, times), level, closingPass, drops),
  water: { ideal: seconds(45), floor: seconds(30) },
};
