import { momentNow } from '../support/moment.ts';

const locale = momentNow()?.locale ?? 'en-GB';
const { hourCycle = 'h23' } = new Intl.DateTimeFormat(locale, { hour: 'numeric' }).resolvedOptions();
const countsTo24 = hourCycle === 'h23';

/** Stands in a message for any time of day. */
export const aTime = '\uE000';
/** Stands in a message for any whole number that takes the plural. */
export const aNumber = 77;
/** Stands in a message for any words. */
export const anything = '\uE001';

/** As Unicode CLDR writes it: HH:mm for en-GB and de, h:mm a for en-US. */
const time = countsTo24 ? '(?:[01]\\d|2[0-3]):[0-5]\\d' : '(?:1[0-2]|[1-9]):[0-5]\\d\\s[AP]M';

/** What a message of the pages looks like, whatever stands in its gaps; nothing beside it is asked. */
export const like = (message: string): RegExp =>
  new RegExp(
    message
      .replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&')
      // The browser driver reads a space that may not break as any other.
      .replaceAll(/\s/g, '\\s')
      .replaceAll(aTime, time)
      .replaceAll(String(aNumber), '(\\d+(?:[.,]\\d{3})*)')
      .replaceAll(anything, '.*'),
  );

/** A time of day of which the 24-hour figures are known, as the pages write it. */
export const written = (figures: string): string =>
  new Intl.DateTimeFormat(locale, {
    timeZone: 'UTC',
    hour: countsTo24 ? '2-digit' : 'numeric',
    minute: '2-digit',
  }).format(Date.parse(`2031-01-01T${figures}:00Z`));

/** A day as the pages write it in a sentence, without the day of the week. */
export const writtenDay = (date: string): string =>
  new Intl.DateTimeFormat(locale, { timeZone: 'UTC', dateStyle: 'long' }).format(
    Date.parse(`${date}T12:00:00Z`),
  );
