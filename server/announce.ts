import { renderUnicodeCompact } from 'uqr';

export interface Addresses {
  readonly scheme: 'http' | 'https';
  readonly port: number;
  /** Host names or addresses under which others reach this machine, best first. */
  readonly external: readonly string[];
  /** Whole origins that were named at the start. */
  readonly origins: readonly string[];
  readonly houseKey: string;
  readonly data: string;
}

/** What a host reads in the terminal: where to go, where guests go, and a code for their cameras. */
export function announcement({ scheme, port, external, origins, houseKey, data }: Addresses): string {
  const local = `${scheme}://localhost:${port}`;
  const reached = [...origins, ...external.map((name) => `${scheme}://${name}:${port}`)];
  const host = [...reached, local].map((origin) => `  ${origin}/host#key=${houseKey}`);
  const guests = (reached.length > 0 ? reached : [local]).map((origin) => `  ${origin}/`);
  const best = reached[0] ?? local;
  const alone =
    reached.length > 0 ? [] : ['', 'This machine is on no network: phones cannot reach it until it is.'];
  return [
    'Quietpour is running. Keep the host’s address to yourself: it opens every tasting here.',
    '',
    'Host, on this machine or a tablet:',
    ...host,
    '',
    'Guests, on the same network:',
    ...guests,
    ...alone,
    '',
    renderUnicodeCompact(`${best}/`, { ecc: 'M', border: 2 }),
    '',
    `Everything is kept in ${data}. Stop with Ctrl+C.`,
    '',
  ].join('\n');
}
