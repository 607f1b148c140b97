import { type PlanInput, planSchema } from '../../core/tasting.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';

/** A tasting on a server, made as the host's app makes one. */
export async function createTasting(
  place: { readonly room: { readonly origin: string }; readonly houseKey: string },
  plan: PlanInput,
): Promise<CreatedTasting> {
  const response = await fetch(`${place.room.origin}/api/tastings`, {
    method: 'POST',
    headers: { Authorization: `Bearer ${place.houseKey}`, 'Content-Type': 'application/json' },
    body: JSON.stringify({ plan: planSchema.parse(plan) }),
  });
  if (!response.ok) throw new Error(`The tasting was not made: ${await response.text()}`);
  return (await response.json()) as CreatedTasting;
}
