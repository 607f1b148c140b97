/**
 * How a locale writes hours and minutes: where it counts to 24 always with two figures for the hour, so that 01:08 stands
 * under 14:52; where it counts to 12 as people there write it. To be spread into the options of `Intl.DateTimeFormat`
 * (ECMA-402); what a locale counts to is the Unicode CLDR's word.
 * @param locale BCP 47
 */
export function hourAndMinute(locale: string): HourAndMinute {
  const known = asked.get(locale) ?? askedOf(locale);
  asked.set(locale, known);
  return known;
}

interface HourAndMinute {
  readonly hour: 'numeric' | '2-digit';
  readonly minute: '2-digit';
}

/** Asked once for each locale: a running order has ninety times, and each asking takes as long as all of them together. */
const asked = new Map<string, HourAndMinute>();

function askedOf(locale: string): HourAndMinute {
  const { hourCycle = 'h23' } = new Intl.DateTimeFormat(locale, { hour: 'numeric' }).resolvedOptions();
  return { hour: hourCycle === 'h23' || hourCycle === 'h24' ? '2-digit' : 'numeric', minute: '2-digit' };
}
