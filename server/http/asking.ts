import type { Request, RequestHandler } from 'express';
import { z } from 'zod';
import { type TastingId, tastingId } from '../../core/ids.ts';
import { type Identity, type Keyring, mayHost } from '../access/keys.ts';
import { Refused } from './answers.ts';

const tastingSchema = z
  .string()
  .regex(/^[A-Za-z0-9_-]{1,40}$/)
  .transform(tastingId);

/** Who asks, by `Authorization: Bearer <key>`. Throws `Refused` when there is no key or it opens nothing. */
export function identityOf(request: Request, keyring: Keyring): Identity {
  const key = keyIn(request);
  const identity = key === undefined ? undefined : keyring.identify(key);
  if (identity === undefined) throw new Refused('wrong-key');
  return identity;
}

const keyIn = (request: Request): string | undefined =>
  /^Bearer ([A-Za-z0-9_-]{1,128})$/i.exec(request.headers.authorization ?? '')?.[1];

/** Before any route asks who it is: see `Keyring.learn`. */
export const learnKey =
  (keyring: Keyring): RequestHandler =>
  async (request, _response, next) => {
    await keyring.learn(keyIn(request));
    next();
  };

export function tastingIn(request: Request): TastingId {
  const asked = tastingSchema.safeParse(request.params.tasting);
  if (!asked.success) throw new Refused('no-such-tasting');
  return asked.data;
}

/** The tasting that the request names, once it is clear that whoever asks may host it. */
export function hostedTasting(request: Request, keyring: Keyring): TastingId {
  const tasting = tastingIn(request);
  const identity = identityOf(request, keyring);
  if (mayHost(identity, tasting)) return tasting;
  // The same for another house's as for one that never was.
  if (identity.role === 'house') throw new Refused('no-such-tasting');
  throw new Refused(identity.role === 'host' ? 'wrong-key' : 'wrong-role');
}

/** Throws `Refused` with `code`; says where in the message it is wrong, never what stood there. */
export function parsed<Output>(
  schema: z.ZodType<Output>,
  body: unknown,
  code: 'malformed' | 'plan-invalid' = 'malformed',
): Output {
  const result = schema.safeParse(body);
  if (result.success) return result.data;
  const [first] = result.error.issues;
  if (code === 'malformed' || first === undefined) throw new Refused(code);
  const names = first.path.filter((part) => typeof part === 'number' || /^\w{1,40}$/.test(String(part)));
  const where = names.map(String).join(' › ') || 'its fields';
  throw new Refused(code, `This plan cannot be kept as it is: look at ${where}, then save again.`);
}
