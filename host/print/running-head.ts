import { startOf } from '../../core/planning/invitation/invitation.ts';
import { wallTimeIn } from '../../core/planning/invitation/invitation-time.ts';
import type { Plan } from '../../core/tasting.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { locale } from '../locale.ts';

/** What a sheet belongs to: the evening and its date. */
export function runningHead(plan: Plan): string {
  const start = startOf(plan);
  const title = plan.title === '' ? paperWords.untitled : plan.title;
  if (start === undefined) return title;
  const { day, time } = wallTimeIn(start, plan.timeZone, locale);
  return `${title} · ${day}, ${time}`;
}
