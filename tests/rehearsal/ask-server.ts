import { nanoid } from 'nanoid';
import type { TastingId } from '../../core/ids.ts';
import type { PlanInput } from '../../core/tasting.ts';
import { planSchema } from '../../core/tasting.ts';
import type { TakeSeatRequest } from '../../shared/wire/commands.ts';
import type { CreatedTasting, Keepsake, TakenSeat } from '../../shared/wire/http.ts';
import type { Refusal } from '../../shared/wire/protocol.ts';

export class ServerRefused extends Error {
  readonly code: string;
  constructor({ code, message }: Pick<Refusal, 'code' | 'message'>) {
    super(message);
    this.code = code;
  }
}

export const createTasting = (origin: string, houseKey: string, plan: PlanInput): Promise<CreatedTasting> =>
  asked(`${origin}/api/tastings`, { key: houseKey, body: { plan: planSchema.parse(plan) } });

export const takeSeat = (origin: string, who: Omit<TakeSeatRequest, 'id'>): Promise<TakenSeat> =>
  asked(`${origin}/api/seats`, { body: { id: nanoid(), ...who } });

export const fetchKeepsake = (origin: string, tasting: TastingId, key: string): Promise<Keepsake> =>
  asked(`${origin}/api/keepsake/${tasting}`, { key });

/** Rejects with `ServerRefused` when the server says no. */
async function asked<Body>(
  url: string,
  { key, body }: { readonly key?: string; readonly body?: unknown },
): Promise<Body> {
  const response = await fetch(url, {
    method: body === undefined ? 'GET' : 'POST',
    headers: {
      ...(key === undefined ? {} : { authorization: `Bearer ${key}` }),
      ...(body === undefined ? {} : { 'content-type': 'application/json' }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const answer: unknown = await response.json();
  if (!response.ok) throw new ServerRefused(answer as Refusal);
  return answer as Body;
}
