import { createHmac, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import { believePeer } from './address.ts';

/** What one process of a cluster sends to another with what it passes on; nobody else knows it. */
const header = 'x-quietpour-passed';

export interface Peers {
  /** Whether another process has passed this on; then it is believed for whom it speaks. */
  passedBy(request: IncomingMessage): boolean;
  /** The header by which another process knows this one. */
  readonly own: Readonly<Record<string, string>>;
  /** The headers of a request as it is passed on. */
  headersFor(request: IncomingMessage, address: string): readonly (readonly [string, string])[];
}

export function peersOf(houseKey: string): Peers {
  const secret = createHmac('sha256', houseKey)
    .update('passed on by a process of the same cluster')
    .digest('hex');
  return {
    own: { [header]: secret },
    passedBy(request) {
      const shown = Buffer.from(String(request.headers[header] ?? ''));
      const wanted = Buffer.from(secret);
      if (shown.length !== wanted.length || !timingSafeEqual(shown, wanted)) return false;
      believePeer(request);
      return true;
    },
    headersFor: (request, address) => {
      const sent = request.rawHeaders;
      const pairs = Array.from(
        { length: sent.length / 2 },
        (_, at) => [sent[2 * at] ?? '', sent[2 * at + 1] ?? ''] as const,
      );
      const kept = pairs.filter(([name]) => name.toLowerCase() !== header);
      return [...kept, ['X-Forwarded-For', address], [header, secret]];
    },
  };
}
