import type { Database } from 'better-sqlite3';
import { type HouseId, type TastingId, tastingId } from '../../core/ids.ts';
import type { Plan } from '../../core/tasting.ts';
import { epochMs } from '../../core/units.ts';
import { hostWords as germanWords } from '../../shared/language/de/host.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { type TastingStage, tastingStages } from '../../shared/wire/http.ts';
import { fold, foldings } from '../../shared/words/fold.ts';
import { dateWords } from './date-words.ts';
import { digestOf } from './row-digests.ts';
import type { TastingRow, TastingSearch, TastingSummary } from './store.ts';

export interface SummaryRow {
  readonly tasting: string;
  readonly created_at: number;
  readonly code: string;
  readonly title: string;
  readonly starts_at: string | null;
  readonly pours: number;
  readonly guests: number;
  readonly stage: string;
  readonly finished_at: number | null;
}

/**
 * What the list of evenings says of each, in a table of its own, so that no plan and no log is read for it. What writes is
 * to be called inside the write that makes it true.
 */
export interface Summaries {
  add(row: TastingRow): void;
  planned(tasting: TastingId, plan: Plan): void;
  happened(tasting: TastingId, events: readonly Happened[]): void;
  find(tasting: TastingId): TastingSummary | undefined;
  /** As `TastingShelf.isOf`, by what is kept here. */
  isOf(tasting: TastingId, house: HouseId | undefined): boolean;
  page(search: TastingSearch): TastingSummary[];
  gone(tasting: TastingId): void;
}

/** Of a summary, what a list shows. */
export const listedColumns = 'tasting, created_at, code, title, starts_at, pours, guests, stage, finished_at';
export const summaryColumns = `${listedColumns}, words, house, digest`;

export function summariesIn(db: Database): Summaries {
  const insert = db.prepare(
    `INSERT INTO summaries (${summaryColumns})
     VALUES (@tasting, @createdAt, @code, @title, @startsAt, @pours, @guests, 'planned', NULL, @words, @house, NULL)`,
  );
  const replan = db.prepare(
    `UPDATE summaries SET title = @title, starts_at = @startsAt, pours = @pours, guests = @guests, words = @words
     WHERE tasting = @tasting`,
  );
  const move = db.prepare<[TastingStage, number | null, string]>(
    'UPDATE summaries SET stage = ?, finished_at = ? WHERE tasting = ?',
  );
  const retitle = db.prepare<[string, string, string]>(
    'UPDATE summaries SET title = ?, words = words || ? WHERE tasting = ?',
  );
  const one = db.prepare<[string], SummaryRow>(`SELECT ${listedColumns} FROM summaries WHERE tasting = ?`);
  const some = db.prepare<[object], SummaryRow>(
    `SELECT ${listedColumns} FROM summaries
     WHERE house IS @house AND (@createdAt IS NULL OR created_at < @createdAt OR (created_at = @createdAt AND tasting > @tasting))
       AND NOT EXISTS (
         SELECT 1 FROM json_each(@words) sought
         WHERE instr(words || lower(' ' || code) || CASE stage ${stageCases} ELSE '' END, sought.value) = 0)
     ORDER BY created_at DESC, tasting LIMIT @most`,
  );

  const ofHouse = db
    .prepare<[string, string | null], number>('SELECT 1 FROM summaries WHERE tasting = ? AND house IS ?')
    .pluck();
  const remove = db.prepare<[string]>('DELETE FROM summaries WHERE tasting = ?');
  const whole = db.prepare<[string], Record<string, string | number | null>>(
    'SELECT * FROM summaries WHERE tasting = ?',
  );
  const stamp = db.prepare<[string, string]>('UPDATE summaries SET digest = ? WHERE tasting = ?');
  const written = (tasting: TastingId): void => {
    const row = whole.get(tasting);
    if (row !== undefined) stamp.run(digestOf(row), tasting);
  };
  return {
    gone(tasting) {
      remove.run(tasting);
    },
    add({ tasting, code, plan, createdAt, house }) {
      insert.run({ ...saidOf(plan), tasting, code, createdAt, house: house ?? null });
      written(tasting);
    },
    planned(tasting, plan) {
      replan.run({ ...saidOf(plan), tasting });
      written(tasting);
    },
    happened(tasting, events) {
      const moved = lastMove(events);
      if (moved !== undefined) move.run(moved.stage, moved.finishedAt, tasting);
      const title = events.findLast(({ type }) => type === 'TitleMended')?.title;
      if (title !== undefined) retitle.run(title, ` ${foldings(title).join(' ')}`, tasting);
      if (moved !== undefined || title !== undefined) written(tasting);
    },
    find(tasting) {
      const row = one.get(tasting);
      return row && summaryFromRow(row);
    },
    isOf: (tasting, house) => ofHouse.get(tasting, house ?? null) !== undefined,
    page: ({ house, find, after, most }) =>
      some
        .all({
          house: house ?? null,
          createdAt: after?.createdAt ?? null,
          tasting: after?.tasting ?? '',
          words: JSON.stringify(soughtWords(find)),
          most,
        })
        .map(summaryFromRow),
  };
}

function saidOf({ title, hostName, place, startsAt, timeZone, pours, guests }: Plan) {
  const said = [title, hostName, place, dateWords(startsAt ?? '', timeZone)].flatMap(foldings);
  return {
    title,
    startsAt: startsAt ?? null,
    pours: pours.length,
    guests,
    words: ` ${said.join(' ')}`,
  };
}

/** Every word has to be found, also in the middle of another one; a figure only where one begins, so that 5 is not 15. */
export const soughtWords = (find: string): string[] =>
  find
    .split(/\s+/)
    .map(fold)
    .filter((word) => word !== '')
    .map((word) => (/^\p{N}/u.test(word) ? ` ${word}` : word));

const stageWords = (stage: TastingStage): string =>
  [hostWords, germanWords].map(({ home }) => ` ${fold(home.stages[stage])}`).join('');

/** In SQL, what each stage is called in every language. */
export const stageCases = tastingStages
  .map((stage) => `WHEN '${stage}' THEN '${stageWords(stage)}'`)
  .join(' ');

/** What leads an evening into another stage. */
export const moves: readonly string[] = ['DoorsOpened', 'TastingFinished', 'TastingReopened'];

/** Of an event what a summary needs. */
type Happened = { readonly type: string; readonly at?: number; readonly title?: string };

/** Where these events lead; undefined when they leave the evening where it was. */
function lastMove(
  events: readonly Happened[],
): { readonly stage: TastingStage; readonly finishedAt: number | null } | undefined {
  const last = events.findLast(({ type }) => moves.includes(type));
  if (last === undefined) return undefined;
  return last.type === 'TastingFinished'
    ? { stage: 'finished', finishedAt: last.at ?? null }
    : { stage: 'under-way', finishedAt: null };
}

export const summaryFromRow = (row: SummaryRow): TastingSummary => ({
  tasting: tastingId(row.tasting),
  code: row.code,
  title: row.title,
  startsAt: row.starts_at,
  // A disk that rots may leave another word there; its pages say what is wrong.
  stage: tastingStages.find((stage) => stage === row.stage) ?? 'under-way',
  createdAt: epochMs(row.created_at),
  finishedAt: row.finished_at === null ? null : epochMs(row.finished_at),
  pours: row.pours,
  guests: row.guests,
});
