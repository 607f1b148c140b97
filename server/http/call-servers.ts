import { Router } from 'express';
import type { TastingId } from '../../core/ids.ts';
import type { Session } from '../../core/session/state.ts';
import { callServersFor } from '../access/call-servers.ts';
import { type Identity, mayHost } from '../access/keys.ts';
import { Refused } from './answers.ts';
import { identityOf, tastingIn } from './asking.ts';
import type { HttpParts } from './parts.ts';

/** Servers that a call needs, for the devices that may be in it and for nobody else. */
export function callServerRoutes({ keyring, conductors, callServers, clock }: HttpParts): Router {
  const router = Router();
  router.get('/tastings/:tasting/call-servers', (request, response) => {
    const tasting = tastingIn(request);
    const identity = identityOf(request, keyring);
    if (identity.role === 'house' && !identity.opens(tasting)) throw new Refused('no-such-tasting');
    const conductor = conductors.of(tasting);
    if (conductor === undefined) throw new Refused('no-such-tasting');
    if (identity.role !== 'house' && identity.tasting !== tasting) throw new Refused('wrong-key');
    if (!mayBeInCall(identity, tasting, conductor.standing.session)) throw new Refused('wrong-role');
    response.json(callServersFor(callServers, identity.hash, clock.now()));
  });
  return router;
}

/**
 * Whoever hosts, a guest who sits at home, and a screen that the host has let in, until the evening is over. A guest at the
 * table, one who waits at the door or has left, and a helper have no part in a call.
 */
function mayBeInCall(identity: Identity, tasting: TastingId, session: Session): boolean {
  if (session.status === 'finished') return false;
  if (mayHost(identity, tasting)) return true;
  if (identity.role === 'screen') return true;
  if (identity.role !== 'seat' || session.status !== 'under-way') return false;
  const seat = session.seats[identity.seat];
  return seat?.remote === true && seat.presence === 'seated';
}
