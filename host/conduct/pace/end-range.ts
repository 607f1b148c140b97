import type { ForecastTime } from '../../../core/running-order/forecast.ts';
import { timeOfDay, words } from '../../language.ts';

/** The end as a range with the likely time; one time only, where the range is narrower than a minute. */
export function endRange({ early, likely, late }: ForecastTime): string {
  const [from, about, to] = [timeOfDay(early), timeOfDay(likely), timeOfDay(late)];
  return from === to ? words.pace.about(about) : words.pace.range(from, to, about);
}
