import { Router } from 'express';
import { z } from 'zod';
import { adviseCrowd, avoidedBy } from '../../core/planning/theme/crowd.ts';
import type { CrowdView } from '../../shared/wire/http.ts';
import { addressOf } from '../access/address.ts';
import { Allowances } from '../access/allowances.ts';
import { surveyAnswersSchema } from '../store/stored-survey.ts';
import { Refused } from './answers.ts';
import { hostedTasting, parsed } from './asking.ts';
import type { HttpParts } from './parts.ts';
import type { RowFor } from './row-for-code.ts';

const surveySchema = z.strictObject({
  respondent: z.string().regex(/^[A-Za-z0-9_-]{20,40}$/),
  answers: surveyAnswersSchema,
});

/**
 * More than most tables, so that a link that went round cannot fill the disk. Whoever answers beyond them takes the place
 * of one drawn by lot: what a program has filled in is diluted by every guest who answers after it.
 */
const mostRespondents = 400;
/** Answers from one address: forty guests behind one router, some of whom change their mind, and then one each minute. */
const answersFrom = { perSecond: 1 / 60, burst: 80 };

/** The guests who are coming say how used they are to tasting; the host sees the spread, never who said what. */
export function surveyRoutes({ store, keyring, clock }: HttpParts, rowFor: RowFor): Router {
  const answering = new Allowances(clock, answersFrom);
  const router = Router();
  router.put('/invitations/:code/survey', async (request, response) => {
    const { respondent, answers } = parsed(surveySchema, request.body);
    const { tasting } = await rowFor(String(request.params.code), request);
    if (!answering.take(`${tasting} ${addressOf(request)}`)) throw new Refused('too-fast');
    await store.surveys.answer(tasting, respondent, answers, mostRespondents);
    response.status(204).end();
  });
  router.get('/tastings/:tasting/crowd', (request, response) => {
    const surveys = store.surveys.read(hostedTasting(request, keyring));
    response.json({
      answered: surveys.length,
      advice: adviseCrowd(surveys),
      avoids: avoidedBy(surveys),
    } satisfies CrowdView);
  });
  return router;
}
