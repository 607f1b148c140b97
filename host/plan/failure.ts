import type { PlanFailure } from './plan-api.ts';
import { words } from './words.ts';

/** What to do about a failure of loading or copying. */
export function failureSentence(code: PlanFailure): string {
  if (code === 'no-answer') return words.noAnswer;
  return code === 'wrong-key' || code === 'wrong-role' ? words.wrongKey : words.refused;
}
