import { beer } from './beer.ts';
import type { DrinkWays } from './drink.ts';
import type { Drink } from './drink-kinds.ts';
import { spirit } from './spirit.ts';
import { wine } from './wine.ts';

export const waysOf: Readonly<Record<Drink, DrinkWays>> = { spirit, wine, beer };
