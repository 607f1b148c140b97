import { noHabits } from '../../core/running-order/forecast.ts';

/**
 * What was stored by earlier versions, as today's would have stored it: event as stored → event of today, plan as stored →
 * plan of today. What comes out is parsed by today's schemas, so a field that only got a default in the schema needs no line
 * here. Never remove one: logs are kept for years.
 */
type Stored = Readonly<Record<string, unknown>>;

/** By the type of the event as it was stored. */
const events: Readonly<Record<string, (event: Stored) => Stored>> = {
  // The first logs knew nothing of what earlier evenings taught.
  // An evening that began without guesses goes on without them.
  DoorsOpened: (event) => ({
    guess: null,
    ...event,
    habits: event.habits ?? noHabits,
    plan: planOfToday(event.plan),
  }),
  // Kits to check, glasses that were missed, who has read the cautions and who is poured no more came later.
  SeatTaken: (event) =>
    isStored(event.seat)
      ? {
          ...event,
          seat: { kit: [], missed: [], cautionsRead: false, onlyWater: false, ...event.seat },
        }
      : event,
};

export function eventOfToday(stored: unknown): unknown {
  if (!isStored(stored) || typeof stored.type !== 'string' || !Object.hasOwn(events, stored.type))
    return stored;
  return events[stored.type]?.(stored);
}

/** So far every field that came later has its default in the plan's own schema. */
export const planOfToday = (stored: unknown): unknown => stored;

const isStored = (value: unknown): value is Stored =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
