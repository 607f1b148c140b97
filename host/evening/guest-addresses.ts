import type { StoredPlan } from '../../shared/wire/http.ts';

/** Where guests go, best address first; this page's own where the server knows of no better one. */
export function guestAddresses(
  { guestOrigins, linkCode }: Pick<StoredPlan, 'guestOrigins' | 'linkCode'>,
  own: string,
) {
  const origins = guestOrigins.length > 0 ? guestOrigins : [own];
  return origins.map((origin) => ({
    /** As a phone is led there. */
    link: `${origin}/j/${linkCode}`,
    /** The questions before the evening. */
    survey: `${origin}/survey/${linkCode}`,
    /** Camera, sound and line, tried at home. */
    deviceCheck: `${origin}/kit/${linkCode}`,
    /** As it is read out and typed. */
    spoken: origin.replace(/^https?:\/\//, ''),
  }));
}
