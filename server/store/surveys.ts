import type { Database } from 'better-sqlite3';
import type { SurveyAnswers } from '../../core/planning/theme/crowd.ts';
import type { RowDigests } from './row-digests.ts';
import { type SurveyShelf, surveyAnswersSchema } from './stored-survey.ts';
import type { Writer } from './writer.ts';

export function surveyShelf(db: Database, writer: Writer, digests: RowDigests): SurveyShelf {
  const upsert = db.prepare<[string, string, string]>(
    'INSERT OR REPLACE INTO surveys (tasting, respondent, answers) VALUES (?, ?, ?)',
  );
  const giveWay = db.prepare<[string, string, number]>(
    'DELETE FROM surveys WHERE (tasting, respondent) IN' +
      ' (SELECT tasting, respondent FROM surveys WHERE tasting = ? AND respondent <> ? ORDER BY random() LIMIT ?)',
  );
  const count = db.prepare<[string], number>('SELECT count(*) FROM surveys WHERE tasting = ?').pluck();
  const all = db
    .prepare<[string], string>('SELECT answers FROM surveys WHERE tasting = ? ORDER BY respondent')
    .pluck();
  return {
    answer: (tasting, respondent, answers, most) =>
      writer.write(tasting, () => {
        upsert.run(tasting, respondent, JSON.stringify(answers));
        digests.keep('surveys', tasting, respondent);
        const surplus = (count.get(tasting) ?? 0) - most;
        if (surplus > 0) giveWay.run(tasting, respondent, surplus);
      }),
    count: (tasting) => count.get(tasting) ?? 0,
    read: (tasting) => all.all(tasting).flatMap((answers) => answersIn(answers) ?? []),
  };
}

/** One that cannot be read is one fewer: no name hangs on it. */
function answersIn(text: string): SurveyAnswers | undefined {
  try {
    return surveyAnswersSchema.safeParse(JSON.parse(text)).data;
  } catch {
    return undefined;
  }
}
