import type { RequestHandler } from 'express';
import type { Peers } from '../access/peers.ts';

/** What one process may ask of another; whether it was done. */
export type PeerStep = (body: unknown) => Promise<boolean>;

/** Ms after which a process that does not answer is not asked any longer. */
const patience = 2000;

/** Where the processes of a cluster speak to each other; nobody else is let in here. */
export const peerRoute =
  (peers: Pick<Peers, 'passedBy'>, steps: Readonly<Record<string, PeerStep>>): RequestHandler =>
  async (request, response, next) => {
    const [, first, step = ''] = request.path.split('/');
    if (first !== 'peers') return next();
    // What another process was asked by somebody, and passes on, is not its own word.
    const own = peers.passedBy(request) && request.headers['x-forwarded-for'] === undefined;
    if (!own || request.method !== 'POST' || !Object.hasOwn(steps, step))
      return void response.status(404).end();
    const done = await steps[step]?.(request.body).catch(() => false);
    response.status(done === true ? 204 : 409).end();
  };

/** Whether another process has done it. */
export async function askPeer(
  peers: Pick<Peers, 'own'>,
  address: string,
  step: string,
  body: object,
): Promise<boolean> {
  try {
    const answer = await fetch(`http://${address}/api/peers/${step}`, {
      method: 'POST',
      headers: { ...peers.own, 'Content-Type': 'application/json' },
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(patience),
    });
    return answer.status === 204;
  } catch {
    return false;
  }
}
