import { type NetworkInterfaceInfo, networkInterfaces } from 'node:os';

/** Networks between machines that exist only inside this one; guests cannot be there. */
const inside = /^(docker|br-|veth|virbr|vmnet|vboxnet|tun|tap|utun|zt|wg)/i;

/** IPv4 addresses of this machine that others may reach, those on usual local networks first. */
export function externalAddresses(
  interfaces: NodeJS.Dict<NetworkInterfaceInfo[]> = networkInterfaces(),
): string[] {
  const found = Object.entries(interfaces).flatMap(([name, infos]) =>
    (infos ?? [])
      .filter(({ family, internal }) => family === 'IPv4' && !internal)
      .map(({ address }) => ({ address, rank: rankOf(name, address) })),
  );
  return found.sort((a, b) => a.rank - b.rank).map(({ address }) => address);
}

/** Addresses for private networks as RFC 1918 sets them apart; 169.254/16 means that no network gave one (RFC 3927). */
function rankOf(name: string, address: string): number {
  if (inside.test(name)) return 3;
  if (address.startsWith('169.254.')) return 4;
  if (address.startsWith('192.168.')) return 0;
  return /^(10\.|172\.(1[6-9]|2\d|3[01])\.)/.test(address) ? 1 : 2;
}
