import type { GuestWords } from '../../shared/language/en/guest.ts';
import type { Keepsake } from '../../shared/wire/http.ts';

/** With whom, where and when, as far as it is known. */
export function evening(
  keepsake: Pick<Keepsake, 'hostName' | 'place' | 'startsAt' | 'timeZone'>,
  words: GuestWords,
): string[] {
  const { hostName, place, startsAt, timeZone } = keepsake;
  return [
    ...(hostName === '' ? [] : [words.keepsake.withHost(hostName)]),
    ...(place === '' ? [] : [place]),
    ...(startsAt === null ? [] : [dayOf(startsAt, timeZone, words.language)]),
  ];
}

function dayOf(startsAt: string, timeZone: string, language: string): string {
  const day = new Date(startsAt);
  try {
    return new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone }).format(day);
  } catch {
    // A zone that this phone does not know: its own is better than nothing.
    return new Intl.DateTimeFormat(language, { dateStyle: 'long' }).format(day);
  }
}
