import type { IncomingMessage } from 'node:http';
import { describe, expect, it } from 'vitest';
import { addressOf } from '../../../server/access/address.ts';

const from = (remoteAddress: string | undefined, forwarded?: string): string =>
  addressOf({
    socket: { remoteAddress } as IncomingMessage['socket'],
    headers: forwarded === undefined ? {} : { 'x-forwarded-for': forwarded },
  });

describe('whom limits count as one', () => {
  it('is an IPv4 address, however it is written', () => {
    expect(from('192.0.2.7')).toBe('192.0.2.7');
    expect(from('::ffff:192.0.2.7')).toBe('192.0.2.7');
    expect(from(undefined)).toBe('unknown');
  });

  // Notation: RFC 4291, 2.2; the documentation prefix: RFC 3849.
  it('is a whole /64 of IPv6, for one device has all of it', () => {
    const one = '2001:db8:0:12::/64';
    for (const address of ['2001:db8:0:12::1', '2001:DB8::12:ffff:0:0:1', '2001:db8:0:12:9:8:7:6%eth0']) {
      expect(from(address)).toBe(one);
    }
    expect(from('2001:db8::1')).toBe('2001:db8:0:0::/64');
    expect(from('2001:db8:0:13::1')).not.toBe(one);
  });

  it('is what a proxy on this machine says last, and what nobody else says', () => {
    expect(from('127.0.0.1', '198.51.100.1')).toBe('198.51.100.1');
    expect(from('::1', '203.0.113.9, 198.51.100.1')).toBe('198.51.100.1');
    expect(from('::ffff:127.0.0.1', '203.0.113.9, 198.51.100.1, 127.0.0.1')).toBe('198.51.100.1');
    expect(from('192.0.2.7', '198.51.100.1')).toBe('192.0.2.7');
    expect(from('127.0.0.1', ' ,')).toBe('127.0.0.1');
    expect(from('127.0.0.1', 'x'.repeat(1000))).toHaveLength(60);
  });
});
