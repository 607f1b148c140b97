import type { StoredPlan } from '../../shared/wire/http.ts';

/** Where guests go, best address first; this page's own where the server knows of no better one. */
export function guestAddresses(
  { guestOrigins, code }: Pick<StoredPlan, 'guestOrigins' | 'code'>,
  own: string,
) {
  const origins = guestOrigins.length > 0 ? guestOrigins : [own];
  return origins.map((origin) => ({
    /** As a phone is led there. */
    link: `${origin}/j/${code}`,
    /** The questions before the evening. */
    survey: `${origin}/survey/${code}`,
    /** As it is read out and typed. */
    spoken: origin.replace(/^https?:\/\//, ''),
  }));
}

/** A code in two halves, as it is read out. */
export function halves(code: string): readonly [string, string] {
  const middle = Math.ceil(code.length / 2);
  return [code.slice(0, middle), code.slice(middle)];
}
