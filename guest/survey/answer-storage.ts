import { allergenWords } from '../../shared/language/en/allergens.ts';
import { type DeviceStorage, keepJson, keptJson } from '../../shared/page/device-storage.ts';
import type { SurveyReply } from '../../shared/wire/http.ts';
import type { Allergen } from '../../shared/wire/views.ts';

export type Answers = SurveyReply['answers'];
export type Question = Exclude<keyof Answers, 'avoids'>;

/** What this device remembers of a survey, so that its answers can be changed later instead of counted twice. */
export interface KeptSurvey extends SurveyReply {
  readonly sent: boolean;
}

const isAllergen = (value: unknown): value is Allergen =>
  typeof value === 'string' && Object.hasOwn(allergenWords.names, value);

const shelf = (code: string): string => `quietpour.survey.${code}`;

/** Undefined where nothing is kept, or something that is no survey. */
export function readSurvey(
  code: string,
  questions: readonly Question[],
  storage?: () => DeviceStorage,
): KeptSurvey | undefined {
  const kept = keptJson(shelf(code), storage);
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { respondent, answers, sent } = kept as Record<string, unknown>;
  if (typeof respondent !== 'string' || !/^[A-Za-z0-9_-]{20,40}$/.test(respondent)) return undefined;
  if (typeof answers !== 'object' || answers === null) return undefined;
  const given = answers as Record<string, unknown>;
  const known = questions.flatMap((question) => {
    const answer = given[question];
    return answer === 0 || answer === 1 || answer === 2 || answer === 3 ? [[question, answer]] : [];
  });
  const avoids = Array.isArray(given.avoids) ? given.avoids.filter(isAllergen) : [];
  return {
    respondent,
    answers: {
      ...(Object.fromEntries(known) as Answers),
      ...(avoids.length === 0 ? {} : { avoids }),
    },
    sent: sent === true,
  };
}

/** @returns whether the device will remember it */
export const keepSurvey = (code: string, survey: KeptSurvey, storage?: () => DeviceStorage): boolean =>
  keepJson(shelf(code), survey, storage);
