import SqliteDatabase from 'better-sqlite3';
import { z } from 'zod';
import { eventSchema } from '../../core/session/event.ts';
import { planSchema } from '../../core/tasting.ts';
import { migrate } from '../../server/store/migrate.ts';
import { storedAnswerSchema } from '../../server/store/stored-answer.ts';
import { storedDeviceReportsSchema } from '../../server/store/stored-device-reports.ts';
import { storedNoteSchemas } from '../../server/store/stored-note.ts';
import { storedPouringSchema } from '../../server/store/stored-pouring.ts';
import { surveyAnswersSchema } from '../../server/store/stored-survey.ts';
import { keptConsentsSchema } from '../../shared/wire/notebook.ts';

/** Everything that lies in a store, as text: its tables, and what may stand in each column that holds JSON. */
export function storedShapes(): string {
  const schemas = {
    plan: planSchema,
    event: eventSchema,
    answer: storedAnswerSchema,
    pouring: storedPouringSchema,
    survey: surveyAnswersSchema,
    kits: storedDeviceReportsSchema,
    consents: keptConsentsSchema,
    ...Object.fromEntries([...storedNoteSchemas].map(([field, schema]) => [`note ${field}`, schema])),
  };
  const shapes = Object.entries(schemas).map(([name, schema]) => [
    name,
    z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }),
  ]);
  return `${JSON.stringify({ tables: tables(), ...Object.fromEntries(shapes) }, null, 1)}\n`;
}

function tables(): readonly string[] {
  const db = new SqliteDatabase(':memory:');
  migrate(db);
  const made = db
    .prepare<[], string>('SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name')
    .pluck()
    .all();
  db.close();
  return made.map((sql) => sql.replaceAll(/\s+/g, ' '));
}
