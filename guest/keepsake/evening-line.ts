import { faceOf } from '../../shared/language/wall-clock.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import type { KeepsakeLanguage } from './keepsake-language.ts';

/** With whom, where and when, as far as it is known. */
export function evening(
  { hostName, place, startsAt, timeZone }: Pick<Keepsake, 'hostName' | 'place' | 'startsAt' | 'timeZone'>,
  { home, guest }: KeepsakeLanguage,
): string[] {
  return [
    ...(hostName === '' ? [] : [home.withHost(hostName)]),
    ...(place === '' ? [] : [place]),
    ...(startsAt === null ? [] : [dayOf(startsAt, timeZone, guest.language)]),
  ];
}

export const dayOf = (startsAt: string, timeZone: string, language: string): string =>
  faceOf(language, { dateStyle: 'long' }, timeZone).format(Date.parse(startsAt));
