import { z } from 'zod';
import { allergens } from '../../core/drinks/allergens.ts';
import type { TastingId } from '../../core/ids.ts';
import { type CrowdQuestion, crowdQuestions, type SurveyAnswers } from '../../core/planning/theme/crowd.ts';

const step = z.union([z.literal(0), z.literal(1), z.literal(2), z.literal(3)]);

/** What somebody who is coming said of themselves; the same at the door and in the store. */
export const surveyAnswersSchema = z.strictObject({
  ...(Object.fromEntries(crowdQuestions.map((question) => [question, step.exactOptional()])) as Record<
    CrowdQuestion,
    z.ZodExactOptional<typeof step>
  >),
  avoids: z.array(z.enum(allergens)).max(allergens.length).exactOptional(),
}) satisfies z.ZodType<SurveyAnswers>;

/** What the guests who are coming said of themselves, without names. */
export interface SurveyShelf {
  /** In place of what this respondent said before; beyond `most` in place of another one, drawn by lot. */
  answer(tasting: TastingId, respondent: string, answers: SurveyAnswers, most: number): Promise<void>;
  count(tasting: TastingId): number;
  read(tasting: TastingId): SurveyAnswers[];
}
