/**
 * Whether a browser's page may talk to this server: only pages that came from the address they now ask, or from one
 * that was named at the start. A request without an origin does not come from a page of another site.
 */
export function originAllowed(
  origin: string | undefined,
  host: string | undefined,
  others: readonly string[],
): boolean {
  if (origin === undefined) return true;
  if (others.includes(origin)) return true;
  if (host === undefined || !URL.canParse(origin)) return false;
  const { protocol, host: from } = new URL(origin);
  const defaultPort = protocol === 'https:' ? ':443' : ':80';
  return /^https?:$/.test(protocol) && from === host.toLowerCase().replace(new RegExp(`${defaultPort}$`), '');
}
