import type { Drink } from '../tasting.ts';
import { beer } from './beer.ts';
import type { DrinkWays } from './drink.ts';
import { spirit } from './spirit.ts';
import { wine } from './wine.ts';

export const waysOf: Readonly<Record<Drink, DrinkWays>> = { spirit, wine, beer };
