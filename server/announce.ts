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
  /** Whether a person reads it in a terminal, and no file does. */
  readonly terminal: boolean;
}

const plain =
  'This is plain http: whoever is on the same network could read along. Use a network of your own with a password, or give a certificate in QUIETPOUR_TLS_KEY and QUIETPOUR_TLS_CERT.';

/**
 * Black on white by ECMA-48 (30 and 47) in a terminal of whatever colours, because half of all cameras read no code with
 * light squares on dark; a file gets no colours, and its light squares are the letters.
 */
const qrCode = (of: string, terminal: boolean): string =>
  renderUnicodeCompact(of, { ecc: 'M', border: 2, invert: terminal })
    .split('\n')
    .map((line) => (terminal ? `\u001B[30;47m${line}\u001B[0m` : line))
    .join('\n');

/**
 * What a host reads in the terminal: for every network that this machine is on, where the host goes, where guests go,
 * and a square for their cameras.
 */
export function announcement({
  scheme,
  port,
  external,
  origins,
  houseKey,
  data,
  terminal,
}: Addresses): string {
  const local = `${scheme}://localhost:${port}`;
  const reached = [...origins, ...external.map((name) => `${scheme}://${name}:${port}`)];
  const places = reached.length > 0 ? reached : [local];
  return [
    'Quietpour is running. Keep the host’s address to yourself: it opens every tasting here.',
    '',
    ...places.flatMap((origin) => [
      `  Host     ${origin}/host#key=${houseKey}`,
      `  Guests   ${origin}/`,
      '',
      qrCode(`${origin}/`, terminal),
      '',
    ]),
    ...(reached.length > 0
      ? [`On this machine itself the host also finds it at ${local}/host#key=${houseKey}`]
      : ['This machine is on no network: phones cannot reach it until it is.']),
    ...(scheme === 'http' && external.length > 0 ? ['', plain] : []),
    '',
    `Everything is kept in ${data}. Stop with Ctrl+C.`,
    '',
  ].join('\n');
}
