import type { Database } from 'better-sqlite3';
import type { SurveyAnswers } from '../../core/planning/theme/crowd.ts';
import type { SurveyShelf } from './store.ts';
import type { Writer } from './writer.ts';

export function surveyShelf(db: Database, writer: Writer): SurveyShelf {
  const upsert = db.prepare<[string, string, string]>('INSERT OR REPLACE INTO surveys VALUES (?, ?, ?)');
  const count = db.prepare<[string], number>('SELECT count(*) FROM surveys WHERE tasting = ?').pluck();
  const all = db
    .prepare<[string], string>('SELECT answers FROM surveys WHERE tasting = ? ORDER BY respondent')
    .pluck();
  return {
    answer: (tasting, respondent, answers) =>
      writer.write(() => {
        upsert.run(tasting, respondent, JSON.stringify(answers));
      }),
    count: (tasting) => count.get(tasting) ?? 0,
    read: (tasting) => all.all(tasting).map((answers) => JSON.parse(answers) as SurveyAnswers),
  };
}
