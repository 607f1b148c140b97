import { pourId } from '../../core/ids.ts';
import { cellsOf } from '../../shared/csv/read-written-csv.ts';
import { type CsvCell, type CsvForm, writeCsv } from '../../shared/csv/write-csv.ts';
import { notebookWords } from '../../shared/language/en/notebook.ts';
import { recapWords } from '../../shared/language/en/recap.ts';
import { recapCsvWords as words } from '../../shared/language/en/recap-csv.ts';
import { closingText } from '../../shared/words/en/closing.ts';
import type { Names } from './names.ts';

type Texts = Readonly<Record<string, string>>;
const named = (texts: Texts, code: string): string | undefined =>
  Object.hasOwn(texts, code) ? texts[code] : undefined;

function sectionIn(section: string, names: Names): string {
  const [, round] = /^ranking (\d+)$/.exec(section) ?? [];
  if (round !== undefined) return words.ranking(round);
  const [, a, b] = /^odd one out: (\S+) (\S+)$/.exec(section) ?? [];
  if (a !== undefined && b !== undefined)
    return words.oddOneOut([a, b].map((pour) => names.pour(pourId(pour))).join(', '));
  return named(words.sections, section) ?? section;
}

function measureIn(section: string, measure: string, pour: string, names: Names): string {
  switch (section) {
    case 'words':
    case 'words apart':
      return names.word(measure);
    case 'colours':
      return names.colour(pourId(pour), measure).word;
    case 'notes':
    case 'notes added later':
      return named(notebookWords.fields, measure) ?? measure;
    default:
      break;
  }
  const known = named(words.measures, measure);
  if (known !== undefined) return known;
  const [, of = '', what, step = ''] = /^(.+?) (planned s|took s|median|step (\d))$/.exec(measure) ?? [];
  if (what === 'planned s') return words.plannedFor(of);
  if (what === 'took s') return words.tookFor(of);
  if (what === 'median') return words.medianOf(names.mark(of));
  if (what !== undefined) return words.stepOf(names.mark(of), step);
  if (measure.startsWith('chose ')) return words.chose(measure.slice('chose '.length));
  const [, worse] = /^ahead of (.+)$/.exec(measure) ?? [];
  return worse === undefined ? measure : words.ahead(names.pour(pourId(worse)));
}

/** What somebody marked: `code: mark` or bare codes, each in words. */
function marksIn(field: string, value: string, pour: string, names: Names): string {
  if (field === 'colour') return names.colour(pourId(pour), value).word;
  const parts = value.split('; ').map((part) => {
    const [, code = part, mark = ''] = /^(.*): ([^:]*)$/.exec(part) ?? [];
    switch (field) {
      case 'nose-words':
      case 'palate-words':
      case 'finish-words':
        return `${names.word(code)}: ${named(closingText.strengths, mark) ?? mark}`;
      case 'structure':
        return `${names.mark(code)}: ${mark}`;
      case 'review':
        return `${names.word(code)}: ${named(closingText.review, mark) ?? mark}`;
      case 'feelings':
        return named(closingText.feelings, part) ?? part;
      default:
        return undefined;
    }
  });
  return parts.includes(undefined) ? value : parts.join('; ');
}

function valueIn(measure: string, value: CsvCell): CsvCell {
  if (typeof value !== 'string') return value;
  if (measure === 'meaning' || measure === 'no result') return named(words.results, value) ?? value;
  if (measure === 'method') return named(recapWords.methods, value) ?? value;
  if (measure !== 'limits') return value;
  return value
    .split(' ')
    .map((code) => named(words.limits, code) ?? code)
    .join('; ');
}

/**
 * The server's table of an evening, whose headings and codes are those of its JSON, in the language of the page: what
 * people wrote and every figure stay as they are, written as spreadsheets of its region read them. A code of another
 * version stands as it is.
 */
export function csvInWords(
  csv: string,
  names: Names,
  idOf: (position: CsvCell) => string,
  form?: CsvForm,
): string {
  const [head = [], ...rows] = cellsOf(csv);
  return writeCsv(
    [
      head.map((column) => named(words.columns, String(column)) ?? column),
      ...rows.map(([section, glass, pour, guest, measure, value, n]): CsvCell[] => [
        sectionIn(String(section), names),
        glass ?? null,
        pour ?? null,
        guest ?? null,
        measureIn(String(section), String(measure), idOf(glass ?? null), names),
        typeof value === 'string' && String(section).startsWith('notes')
          ? marksIn(String(measure), value, idOf(glass ?? null), names)
          : valueIn(String(measure), value ?? null),
        n ?? null,
      ]),
    ],
    form,
  );
}
