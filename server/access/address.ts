import type { IncomingMessage } from 'node:http';
import { isIPv6 } from 'node:net';

/**
 * Whom limits count as one: an IPv4 address, or a whole /64 of IPv6, for whoever has one address of it has all 2^64
 * (RFC 4291, 2.5.4; RFC 6177). A reverse proxy on this machine says whom it speaks for; nobody else is believed, and of
 * a list only the last, which the proxy itself has added.
 */
export function addressOf(request: Pick<IncomingMessage, 'socket' | 'headers'>): string {
  const { socket, headers } = request;
  const forwarded = [headers['x-forwarded-for'] ?? []].flat().join(',').split(',');
  const told = forwarded.map((each) => each.trim()).filter((each) => each !== '');
  let address = socket.remoteAddress ?? 'unknown';
  let believed = isThisMachine(address) || fromPeers.has(request);
  while (believed) {
    const before = told.pop();
    if (before === undefined) break;
    address = before;
    believed = isThisMachine(address);
  }
  return network(address);
}

/** Requests that another process of the same cluster has passed on: it says whom it speaks for. */
const fromPeers = new WeakSet<object>();
export const believePeer = (request: IncomingMessage): void => void fromPeers.add(request);

const isThisMachine = (address: string): boolean => /^(::ffff:)?127\.|^::1$/i.test(address);

/** Whatever cannot be read as an address counts as itself, shortened. */
function network(address: string): string {
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address)?.[1];
  if (mapped !== undefined) return mapped;
  if (!isIPv6(address)) return address.slice(0, 60);
  const [head = '', tail] = address.replace(/%.*$/, '').toLowerCase().split('::');
  const left = head === '' ? [] : head.split(':');
  const right = tail === undefined || tail === '' ? [] : tail.split(':');
  const groups = [...left, ...Array.from({ length: 8 - left.length - right.length }, () => '0'), ...right];
  return `${groups
    .slice(0, 4)
    .map((group) => group.replace(/^0+(?=.)/, ''))
    .join(':')}::/64`;
}
