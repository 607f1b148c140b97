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

export function dayOf(startsAt: string, timeZone: string, language: string): string {
  const day = new Date(startsAt);
  try {
    return new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone }).format(day);
  } catch {
    // A zone that this phone does not know: its own is better than nothing.
    return new Intl.DateTimeFormat(language, { dateStyle: 'long' }).format(day);
  }
}
