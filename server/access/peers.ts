import { createHmac, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import { believePeer } from './address.ts';

/** What one process of a cluster sends to another with what it passes on; nobody else knows it. */
const header = 'x-quietpour-passed';
/** The name of the process that passes it on. */
const byHeader = 'x-quietpour-passed-by';

export interface Peers {
  /** Whether another process has passed this on; then it is believed for whom it speaks. */
  passedBy(request: IncomingMessage): boolean;
  /** Which process has passed on what `passedBy` is true of. */
  passing(request: IncomingMessage): string | undefined;
  /** The header by which another process knows this one. */
  readonly own: Readonly<Record<string, string>>;
  /** The headers of a request as it is passed on. */
  headersFor(request: IncomingMessage, address: string): readonly (readonly [string, string])[];
}

/** @param name of this process among the others */
export function peersOf(houseKey: string, name = ''): Peers {
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
    passing: ({ headers }) => headers[byHeader]?.toString(),
    headersFor: (request, address) => {
      const sent = request.rawHeaders;
      const pairs = Array.from(
        { length: sent.length / 2 },
        (_, at) => [sent[2 * at] ?? '', sent[2 * at + 1] ?? ''] as const,
      );
      const kept = pairs.filter(([each]) => ![header, byHeader].includes(each.toLowerCase()));
      return [...kept, ['X-Forwarded-For', address], [header, secret], [byHeader, name]];
    },
  };
}
