/** From where the host of a link can be reached: this machine alone, its own network, nowhere at all, or anywhere. */
export type AddressReach = 'machine' | 'network' | 'nowhere' | 'anywhere';

/**
 * What a link's address tells of who can open it. A name is only judged by its form (RFC 6761, RFC 6762); what it
 * stands for nobody asks. `URL` has written numbers of every notation in their one usual form by then.
 */
export function addressReach(link: string): AddressReach {
  const name = new URL(link).hostname.replace(/\.$/, '');
  if (name.startsWith('[')) return reachOfVersion6(name.slice(1, -1));
  if (/^\d+\.\d+\.\d+\.\d+$/.test(name)) return reachOfVersion4(name);
  if (/(^|\.)localhost$/.test(name)) return 'machine';
  if (/\.invalid$/.test(name)) return 'nowhere';
  // A name without a dot is found by the search list of one network only.
  return /\.(local|home\.arpa|internal)$/.test(name) || !name.includes('.') ? 'network' : 'anywhere';
}

function reachOfVersion4(address: string): AddressReach {
  // Loopback, RFC 1122.
  if (/^(127|0)\./.test(address)) return 'machine';
  // Documentation, RFC 5737.
  if (/^(192\.0\.2|198\.51\.100|203\.0\.113)\./.test(address)) return 'nowhere';
  // Private, RFC 1918; link-local, RFC 3927; shared behind a provider, RFC 6598.
  const own = /^(10|192\.168|169\.254|172\.(1[6-9]|2\d|3[01])|100\.(6[4-9]|[7-9]\d|1[01]\d|12[0-7]))\./;
  return own.test(address) ? 'network' : 'anywhere';
}

function reachOfVersion6(address: string): AddressReach {
  if (address === '::1' || address === '::') return 'machine';
  const mapped = /^::ffff:([\da-f]+):([\da-f]+)$/.exec(address);
  if (mapped) {
    const bytes = mapped.slice(1).flatMap((part) => {
      const both = Number.parseInt(part, 16);
      return [both >> 8, both & 255];
    });
    return reachOfVersion4(bytes.join('.'));
  }
  // Documentation, RFC 3849 and RFC 9637.
  if (/^(2001:db8|3fff:0?[\da-f]{0,3}):/.test(address)) return 'nowhere';
  // Unique local, RFC 4193; link-local, RFC 4291.
  return /^(f[cd][\da-f]{2}|fe[89ab][\da-f]):/.test(address) ? 'network' : 'anywhere';
}
