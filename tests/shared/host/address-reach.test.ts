import { describe, expect, it } from 'vitest';
import { addressReach } from '../../../host/invite/address-reach.ts';

/** First and last address of each range, and the neighbours outside, as the RFC beside it gives them. */
const ranges = [
  ['loopback, RFC 1122', 'machine', ['127.0.0.0', '127.255.255.255'], ['126.255.255.255', '128.0.0.0']],
  ['private, RFC 1918', 'network', ['10.0.0.0', '10.255.255.255'], ['9.255.255.255', '11.0.0.0']],
  ['private, RFC 1918', 'network', ['172.16.0.0', '172.31.255.255'], ['172.15.255.255', '172.32.0.0']],
  ['private, RFC 1918', 'network', ['192.168.0.0', '192.168.255.255'], ['192.167.255.255', '192.169.0.0']],
  ['link-local, RFC 3927', 'network', ['169.254.0.0', '169.254.255.255'], ['169.253.255.255', '169.255.0.0']],
  ['shared, RFC 6598', 'network', ['100.64.0.0', '100.127.255.255'], ['100.63.255.255', '100.128.0.0']],
  ['documentation, RFC 5737', 'nowhere', ['192.0.2.0', '192.0.2.255'], ['192.0.1.255', '192.0.3.0']],
  [
    'documentation, RFC 5737',
    'nowhere',
    ['198.51.100.0', '198.51.100.255'],
    ['198.51.99.255', '198.51.101.0'],
  ],
  ['documentation, RFC 5737', 'nowhere', ['203.0.113.0', '203.0.113.255'], ['203.0.112.255', '203.0.114.0']],
  ['loopback, RFC 4291', 'machine', ['[::1]', '[0:0:0:0:0:0:0:1]'], ['[2000::1]', '[1::1]']],
  ['unique local, RFC 4193', 'network', ['[fc00::]', '[fdff:ffff::1]'], ['[fbff:ffff::1]', '[fe00::]']],
  ['link-local, RFC 4291', 'network', ['[fe80::]', '[febf:ffff::1]'], ['[fe7f:ffff::1]', '[fec0::]']],
  [
    'documentation, RFC 3849',
    'nowhere',
    ['[2001:db8::]', '[2001:db8:ffff::1]'],
    ['[2001:db7::1]', '[2001:db9::]'],
  ],
  [
    'documentation, RFC 9637',
    'nowhere',
    ['[3fff::]', '[3fff:fff:ffff::1]'],
    ['[3ffe:ffff::1]', '[3fff:1000::]'],
  ],
] as const;

describe('from where an address can be reached', () => {
  it.each(ranges)('%s: %s', (_range, reach, inside, outside) => {
    for (const host of inside)
      expect([host, addressReach(`http://${host}:8080/join`)]).toEqual([host, reach]);
    for (const host of outside) expect([host, addressReach(`http://${host}/`)]).toEqual([host, 'anywhere']);
  });

  it('reads numbers in every notation that a link may have', () => {
    expect(addressReach('http://0x7f.1/')).toBe('machine');
    expect(addressReach('http://3232235777/')).toBe('network');
    expect(addressReach('http://[::ffff:192.168.1.1]/')).toBe('network');
    expect(addressReach('http://[::ffff:8.8.4.4]/')).toBe('anywhere');
  });

  it('judges names by their form alone (RFC 6761, RFC 6762, RFC 8375)', () => {
    expect(addressReach('http://localhost:3000/')).toBe('machine');
    expect(addressReach('http://table.localhost/')).toBe('machine');
    expect(addressReach('http://cellar.local./')).toBe('network');
    expect(addressReach('http://Cellar.LOCAL/')).toBe('network');
    expect(addressReach('http://cellar.home.arpa/')).toBe('network');
    expect(addressReach('http://cellar/')).toBe('network');
    expect(addressReach('https://nothing.invalid/')).toBe('nowhere');
  });

  it('takes no public name for a number that it begins with', () => {
    for (const name of [
      'fdroid-evening.org',
      'fc-cellar.org',
      '10.evening.org',
      '127.evening.org',
      'local.evening.org',
    ])
      expect([name, addressReach(`https://${name}/`)]).toEqual([name, 'anywhere']);
  });
});
