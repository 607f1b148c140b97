import { z } from 'zod';
import { tastingId } from '../../core/ids.ts';
import { oldestProtocol, protocolVersion, type RefusalCode } from '../../shared/wire/protocol.ts';
import { type Identity, type Keyring, mayHost } from '../access/keys.ts';
import type { Conductors } from './conductors.ts';
import type { Badge } from './rooms.ts';

/** Read on its own, before anything else: an older page may show other credentials. */
const protocolSchema = z.object({ protocol: z.number() });

const credentialsSchema = z.strictObject({
  protocol: z.number(),
  role: z.enum(['host', 'guest', 'helper', 'screen']),
  tasting: z
    .string()
    .regex(/^[A-Za-z0-9_-]{1,40}$/)
    .transform(tastingId),
  key: z.string().min(1).max(128),
  known: z.number().int().min(0).max(10_000_000).optional(),
});

/** Who stands at the door with these credentials, or why they may not come in. */
export function admit(
  shown: unknown,
  identify: Keyring['identify'],
  conductors: Conductors,
): Badge | RefusalCode {
  const protocol = protocolSchema.safeParse(shown);
  if (!protocol.success) return 'malformed';
  const spoken = protocol.data.protocol;
  if (spoken < oldestProtocol || spoken > protocolVersion) return 'wrong-protocol';
  const credentials = credentialsSchema.safeParse(shown);
  if (!credentials.success) return 'malformed';
  const { role, tasting, key, known = 0 } = credentials.data;
  const identity = identify(key);
  // Without a key that opens something nobody learns which tastings exist.
  if (identity === undefined || !isFor(identity, tasting)) return 'wrong-key';
  // The same for another house's as for one that never was.
  if (identity.role === 'house' && !identity.opens(tasting)) return 'no-such-tasting';
  const opens = identity.role !== 'seat' || identity.device?.opens === true;
  const shownBy = { tasting, hash: identity.hash, opens, protocol: spoken, known };
  const conductor = conductors.of(tasting);
  if (conductor === undefined) return 'no-such-tasting';
  switch (role) {
    case 'host':
      return mayHost(identity, tasting) ? { ...shownBy, bearer: { role } } : 'wrong-role';
    case 'screen':
      if (identity.role === 'screen') return { ...shownBy, bearer: { role, preview: false } };
      return mayHost(identity, tasting) ? { ...shownBy, bearer: { role, preview: true } } : 'wrong-role';
    case 'helper':
      return identity.role === 'helper' ? { ...shownBy, bearer: { role } } : 'wrong-role';
    case 'guest': {
      if (identity.role !== 'seat') return 'wrong-role';
      const { session } = conductor.standing;
      const seat = session.status === 'unopened' ? undefined : session.seats[identity.seat];
      if (seat === undefined) return 'no-such-seat';
      return seat.presence === 'removed'
        ? 'not-seated'
        : { ...shownBy, bearer: { role, seat: identity.seat } };
    }
    default:
      return role satisfies never;
  }
}

const isFor = (identity: Identity, tasting: Badge['tasting']): boolean =>
  identity.role === 'house' || identity.tasting === tasting;
