import { z } from 'zod';
import { crowdQuestions, type SurveyAnswers } from '../../core/planning/theme/crowd.ts';

const step = z.union([z.literal(0), z.literal(1), z.literal(2), z.literal(3)]);

/** What somebody who is coming said of themselves; the same at the door and in the store. */
export const surveyAnswersSchema = z.partialRecord(
  z.enum(crowdQuestions),
  step,
) as unknown as z.ZodType<SurveyAnswers>;
