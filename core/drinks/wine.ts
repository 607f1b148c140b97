import { millilitres, seconds } from '../units.ts';
import type { DrinkWays } from './drink.ts';
import { type PassTimes, passesWith, timesFor } from './passes.ts';

/** Wine: colour and mouth-feel say more than in a spirit, so the look and the sip get longer. Times in seconds: common practice, no source. */
const times: PassTimes = {
  swirl: 15,
  look: 30,
  nose: 35,
  sip: 25,
  spit: 15,
  write: { look: 35, nose: 55, palate: 55, finish: 30 },
  review: 25,
  reflect: 40,
};

export const wine: DrinkWays = {
  drink: 'wine',
  pour: millilitres(50),
  lids: false,
  dropsOfWater: 0,
  passes: (level, closingPass) => passesWith(timesFor(level, times), level, closingPass),
  water: { ideal: seconds(30), floor: seconds(20) },
};
