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
  /** The page on which camera and sound are tried: given for whoever joins from home, and then all is written for there. */
  readonly deviceCheck?: string | undefined;
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
  readonly call: (link: string) => string;
  readonly way: (way: WayIn) => string;
  readonly bringTitle: string;
  readonly bring: readonly string[];
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
  /** In place of the above for whoever joins from home. */
  readonly home: {
    readonly place: string;
    readonly ownCall: string;
    readonly tryDevices: (link: string) => string;
    /** With how many vials come. */
    readonly vials: (vials: number) => string;
    readonly readyTitle: string;
    readonly ready: readonly string[];
    readonly care: readonly string[];
    readonly allergens: string;
  };
}

const fiveMinutes = 5 * 60_000;

/** How long the evening is planned to last, rounded up to five minutes. */
export function plannedLength(plan: Plan): DurationMs {
  const seconds = compile(plan).reduce((sum, cue) => sum + cue.ideal, 0);
  return durationMs(Math.ceil((seconds * 1000) / fiveMinutes) * fiveMinutes);
}

/**
 * Names nothing that a blind tasting hides, and nothing of the pours at all but their number. For the table, or for home:
 * who sits at the one needs no word of the other.
 */
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
            ...(way.deviceCheck === undefined
              ? []
              : [words.otherZone(wallTimeIn(startsAt, 'UTC', words.language))]),
          ]),
      ...(plan.pours.length === 0 ? [] : [lengthIn(plan, words)]),
      ...(way.deviceCheck === undefined
        ? [plan.place === '' ? '' : words.where(plan.place)]
        : callOf(plan, words)),
    ]),
    whatIsPoured(plan, words),
    words.way(way),
    ...(way.deviceCheck === undefined
      ? [listed(words.bringTitle, words.bring)]
      : atHome(plan, way.deviceCheck, words)),
    listed(words.rulesTitle, words.rules),
    careOf(plan, way, words),
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
    place: way.deviceCheck === undefined ? plan.place : words.home.place,
    description: lines([
      plan.welcome,
      words.way(way),
      ...(way.deviceCheck === undefined
        ? []
        : [...callOf(plan, words), ...atHome(plan, way.deviceCheck, words)]),
      careOf(plan, way, words),
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

/** Where they see and hear the table: on the same page, or in another call that the plan names. */
const callOf = (plan: Plan, words: InvitationWords): string[] => [
  plan.callLink === undefined ? words.home.ownCall : words.call(plan.callLink),
];

/** What lies there on the evening, and what is tried before. */
function atHome(plan: Plan, deviceCheck: string, { home }: InvitationWords): string[] {
  const vials = plan.pours.length + plan.trials.length * vialsOfTrial;
  return [
    home.tryDevices(deviceCheck),
    listed(home.readyTitle, [...(vials === 0 ? [] : [home.vials(vials)]), ...home.ready]),
  ];
}

/** Two of each drink, because kits are packed before anybody knows which of the six orders a guest will get. */
const vialsOfTrial = 4;

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
function careOf(plan: Plan, { deviceCheck }: WayIn, words: InvitationWords): string {
  const { care, allergens } = deviceCheck === undefined ? words : words.home;
  if (withoutAlcohol(plan)) return `${words.withoutAlcohol} ${allergens}`;
  const age = isAgeCountry(plan.lawOf) ? words.age(ageToAsk(plan.lawOf).age) : words.ageByLaw;
  return listed(words.careTitle, [...care, allergens, age]);
}

const lines = (all: readonly string[]): string => all.filter((line) => line !== '').join('\n');
const listed = (title: string, items: readonly string[]): string =>
  [title, ...items.map((item) => `- ${item}`)].join('\n');
