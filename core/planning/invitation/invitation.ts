import { compile } from '../../running-order/compile.ts';
import type { Drink, Plan } from '../../tasting.ts';
import { type DurationMs, durationMs, type EpochMs } from '../../units.ts';
import { ageToAsk, isAgeCountry } from '../strength/legal-ages.ts';
import { type CalendarEvent, calendarFile } from './invitation-calendar.ts';
import { instantOf, type WallTime, wallTimeIn } from './invitation-time.ts';

/** What the host has beside the plan: where guests go. */
export interface WayIn {
  readonly link: string;
  readonly code: string;
}

/** Everything that a person reads; the words are a language's own. */
export interface InvitationWords {
  /** BCP 47, for dates. */
  readonly language: string;
  readonly untitled: string;
  readonly greeting: (title: string, host: string) => string;
  readonly drinks: Readonly<Record<Drink, (pours: number) => string>>;
  readonly blind: string;
  readonly when: (at: WallTime) => string;
  readonly otherZone: (at: WallTime) => string;
  readonly dateToCome: string;
  readonly lasts: (hours: number, minutes: number) => string;
  readonly where: (place: string) => string;
  readonly atHome: string;
  readonly call: (link: string) => string;
  readonly way: (way: WayIn) => string;
  readonly bringTitle: string;
  readonly bring: readonly string[];
  readonly bringAtHome: readonly string[];
  readonly rulesTitle: string;
  readonly rules: readonly string[];
  readonly careTitle: string;
  readonly care: readonly string[];
  /** To be told what somebody must not have. */
  readonly allergens: string;
  readonly age: (age: number) => string;
  readonly ageByLaw: string;
  readonly withoutAlcohol: string;
  readonly sign: (host: string) => string;
}

const fiveMinutes = 5 * 60_000;

/** How long the evening is planned to last, rounded up to five minutes. */
export function plannedLength(plan: Plan): DurationMs {
  const seconds = compile(plan).reduce((sum, cue) => sum + cue.ideal, 0);
  return durationMs(Math.ceil((seconds * 1000) / fiveMinutes) * fiveMinutes);
}

/** Names nothing that a blind tasting hides, and nothing of the pours at all but their number. */
export function invitationText(plan: Plan, way: WayIn, words: InvitationWords): string {
  const startsAt = startOf(plan);
  const paragraphs = [
    words.greeting(titleOf(plan, words), plan.hostName),
    plan.welcome,
    lines([
      ...(startsAt === undefined
        ? [words.dateToCome]
        : [
            words.when(wallTimeIn(startsAt, plan.timeZone, words.language)),
            ...atOtherZones(plan, startsAt, words),
          ]),
      ...(plan.pours.length === 0 ? [] : [lengthIn(plan, words)]),
      ...(plan.place === '' ? [] : [words.where(plan.place)]),
      ...(plan.remoteGuests > 0 ? [words.atHome] : []),
      ...(plan.callLink === undefined ? [] : [words.call(plan.callLink)]),
    ]),
    whatIsPoured(plan, words),
    words.way(way),
    listed(words.bringTitle, [...words.bring, ...(plan.remoteGuests > 0 ? words.bringAtHome : [])]),
    listed(words.rulesTitle, words.rules),
    careOf(plan, words),
    plan.hostName === '' ? '' : words.sign(plan.hostName),
  ];
  return `${paragraphs.filter((paragraph) => paragraph !== '').join('\n\n')}\n`;
}

/** The file for calendars; undefined while the date is not set. */
export function invitationFile(
  plan: Plan,
  way: WayIn,
  words: InvitationWords,
  made: { readonly uid: string; readonly revision: number; readonly now: EpochMs },
): string | undefined {
  const startsAt = startOf(plan);
  if (startsAt === undefined) return undefined;
  return calendarFile({
    uid: made.uid,
    sequence: made.revision,
    madeAt: made.now,
    startsAt,
    lasts: plannedLength(plan),
    title: titleOf(plan, words),
    place: plan.place,
    description: lines([
      plan.welcome,
      words.way(way),
      ...(plan.callLink === undefined ? [] : [words.call(plan.callLink)]),
      careOf(plan, words),
    ]),
    link: way.link,
  } satisfies CalendarEvent);
}

/** When the doors open; undefined while that is open. */
export const startOf = (plan: Pick<Plan, 'startsAt'>): EpochMs | undefined =>
  plan.startsAt === undefined ? undefined : instantOf(plan.startsAt);

/** Whether nothing that is poured holds ethanol, as far as the plan knows. */
const withoutAlcohol = (plan: Plan): boolean =>
  plan.pours.length > 0 && plan.pours.every((pour) => pour.abv === 0);

const titleOf = (plan: Plan, words: InvitationWords): string =>
  plan.title === '' ? words.untitled : plan.title;

/** Guests elsewhere reckon from UTC: it is the one clock that everybody's phone can turn into their own. */
function atOtherZones(plan: Plan, startsAt: EpochMs, words: InvitationWords): string[] {
  const utc = wallTimeIn(startsAt, 'UTC', words.language);
  return plan.remoteGuests > 0 ? [words.otherZone(utc)] : [];
}

function lengthIn(plan: Plan, words: InvitationWords): string {
  const minutes = Math.round(plannedLength(plan) / 60_000);
  return words.lasts(Math.floor(minutes / 60), minutes % 60);
}

function whatIsPoured(plan: Plan, words: InvitationWords): string {
  if (plan.pours.length === 0) return '';
  const poured = words.drinks[plan.drink](plan.pours.length);
  return plan.blind ? `${poured} ${words.blind}` : poured;
}

/** The usual cautions; local law where the country is not known. */
function careOf(plan: Plan, words: InvitationWords): string {
  if (withoutAlcohol(plan)) return `${words.withoutAlcohol} ${words.allergens}`;
  const age = isAgeCountry(plan.lawOf) ? words.age(ageToAsk(plan.lawOf).age) : words.ageByLaw;
  return listed(words.careTitle, [...words.care, words.allergens, age]);
}

const lines = (all: readonly string[]): string => all.filter((line) => line !== '').join('\n');
const listed = (title: string, items: readonly string[]): string =>
  [title, ...items.map((item) => `- ${item}`)].join('\n');
