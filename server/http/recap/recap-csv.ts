import type { PourId } from '../../../core/ids.ts';
import type { OrderFigures } from '../../../core/panel/recap/order-comparison.ts';
import type { EveningRecap } from '../../../core/recap/evening-recap.ts';
import { type CsvCell, writeCsv } from '../../../shared/csv/write-csv.ts';
import type { NoteValue } from '../../../shared/notes/entry.ts';
import type { RecapExport } from '../../../shared/wire/http.ts';

const columns = ['section', 'glass', 'pour', 'guest', 'measure', 'value', 'n'] as const;

interface Row {
  readonly section: string;
  readonly pour?: PourId | null;
  readonly guest?: string;
  readonly measure: string;
  readonly value: CsvCell;
  readonly n?: number;
}

/** One measure to a line, so that it can be sorted, filtered and pivoted; codes are those of the JSON export. */
export function recapCsv({ recap, notes }: RecapExport): string {
  const byId = new Map(recap.pours.map((pour) => [pour.id, pour]));
  const rows = [
    ...eveningRows(recap),
    ...timingRows(recap),
    ...recap.told.flatMap((part) => toldRows(part)),
    ...recap.rankings.flatMap(({ result }, index) => {
      const section = recap.rankings.length > 1 ? `ranking ${index + 1}` : 'ranking';
      return [
        ...standing(section, result),
        ...(result.outcome === 'result' ? orderRows(section, result.figures, result.n) : []),
      ];
    }),
    ...likingRows(recap),
    ...trialRows(recap),
    ...wordRows(recap),
    ...countRows(recap),
    ...guessRows(recap),
    ...notes.flatMap(({ pour, notes: shared }) =>
      shared.flatMap(({ guest, sealed, addedLater }): Row[] => [
        ...sealed.map(({ field, value }) => ({
          section: 'notes',
          pour,
          guest,
          measure: field,
          value: textOf(value),
        })),
        ...addedLater.map(({ field, value }) => ({
          section: 'notes added later',
          pour,
          guest,
          measure: field,
          value: textOf(value),
        })),
      ]),
    ),
  ];
  return writeCsv([
    columns,
    ...rows.map(({ section, pour = null, guest = null, measure, value, n = null }): CsvCell[] => {
      const known = pour === null ? undefined : byId.get(pour);
      return [section, known?.position ?? null, known?.name ?? pour, guest, measure, value, n];
    }),
  ]);
}

/** As the room was told it. */
const toldRows = ({ of, pours, counted, meaning, luck }: EveningRecap['told'][number]): Row[] => {
  const section = `told ${of}`;
  return [
    { section, measure: 'meaning', value: meaning, n: counted },
    { section, measure: 'p', value: luck, n: counted },
    ...pours.flatMap(({ pour, place, mean }): Row[] => [
      { section, pour, measure: 'place', value: place, n: counted },
      { section, pour, measure: 'mean', value: mean, n: counted },
    ]),
  ];
};

const guessRows = ({ guesses }: EveningRecap): Row[] =>
  (guesses ?? []).flatMap(({ fact, pours, guesses: n, mean, chance, meaning }) => [
    { section: 'guesses', measure: `${fact} glasses`, value: pours, n },
    { section: 'guesses', measure: `${fact} mean rank`, value: mean, n },
    { section: 'guesses', measure: `${fact} p`, value: chance, n },
    { section: 'guesses', measure: `${fact} meaning`, value: meaning, n },
  ]);

const eveningRows = (recap: EveningRecap): Row[] => [
  { section: 'evening', measure: 'title', value: recap.title },
  { section: 'evening', measure: 'opened', value: new Date(recap.timing.openedAt).toISOString() },
  { section: 'evening', measure: 'finished', value: new Date(recap.timing.finishedAt).toISOString() },
  { section: 'evening', measure: 'guests', value: recap.guests },
  { section: 'evening', measure: 'remote guests', value: recap.remoteGuests },
];

function timingRows({ timing }: EveningRecap): Row[] {
  const section = 'timing';
  return [
    { section, measure: 'planned s', value: timing.planned },
    { section, measure: 'took s', value: timing.took },
    { section, measure: 'overrun s', value: timing.overrun },
    { section, measure: 'meaning', value: timing.meaning },
    ...timing.cues.flatMap(({ cue, planned, took }): Row[] => [
      { section: 'timing of cues', measure: `${cue} planned s`, value: planned },
      { section: 'timing of cues', measure: `${cue} took s`, value: took },
    ]),
  ];
}

type Standing =
  | { outcome: 'result'; n: number; method: string; meaning: string; limits: readonly string[] }
  | { outcome: 'none'; n: number; reason: string; limits: readonly string[] };

function standing(section: string, result: Standing): Row[] {
  const { n } = result;
  const said =
    result.outcome === 'result'
      ? [
          { section, measure: 'meaning', value: result.meaning, n },
          { section, measure: 'method', value: result.method, n },
        ]
      : [{ section, measure: 'no result', value: result.reason, n }];
  return [...said, { section, measure: 'limits', value: result.limits.join(' '), n }];
}

const orderRows = (section: string, figures: OrderFigures<PourId>, n: number): Row[] => [
  ...figures.places.flatMap(({ pour, rankSum, place }): Row[] => [
    { section, pour, measure: 'place', value: place, n },
    { section, pour, measure: 'rank sum', value: rankSum, n },
  ]),
  { section, measure: 'Friedman chi square', value: figures.chi2, n },
  { section, measure: 'degrees of freedom', value: figures.df, n },
  { section, measure: 'p', value: figures.p, n },
  { section, measure: 'Kendall W', value: figures.kendallW, n },
  { section, measure: figures.differences.method, value: figures.differences.threshold, n },
  ...figures.apart.map(
    ({ better, worse }): Row => ({
      section,
      pour: better,
      measure: `ahead of ${worse}`,
      value: 1,
      n,
    }),
  ),
];

function likingRows({ liking }: EveningRecap): Row[] {
  if (liking === null) return [];
  if (liking.outcome === 'none') return standing('liking', liking);
  const { pours, order, ratedAll } = liking.figures;
  return [
    ...standing('liking', liking),
    ...pours.flatMap(({ pour, liking: rated }): Row[] => {
      if (rated.status === 'no-ratings') return [];
      const { n } = rated;
      const figures: readonly (readonly [string, number | null])[] = [
        ['mean', rated.mean],
        ['median', rated.median],
        ['lower quartile', rated.quartiles[0]],
        ['upper quartile', rated.quartiles[1]],
        ['least', rated.least],
        ['most', rated.most],
        ['standard deviation', rated.standardDeviation],
        ...rated.counts.map((count, index) => [`chose ${index + 1}`, count] as const),
      ];
      return figures.map(([measure, value]) => ({ section: 'liking', pour, measure, value, n }));
    }),
    ...(order === null ? [] : orderRows('liking', order, ratedAll)),
  ];
}

const trialRows = ({ trials }: EveningRecap): Row[] =>
  trials.flatMap(({ a, b, result }): Row[] => {
    const section = `odd one out: ${a} ${b}`;
    if (result.outcome === 'none') return standing(section, result);
    const { n, figures } = result;
    return [
      ...standing(section, result),
      { section, measure: 'right', value: figures.correct, n },
      { section, measure: 'right by guessing', value: figures.expectedByGuessing, n },
      { section, measure: 'critical number', value: figures.critical, n },
      { section, measure: 'p', value: figures.p, n },
    ];
  });

function wordRows({ words }: EveningRecap): Row[] {
  if (words.outcome === 'none') return standing('words', words);
  return [
    ...standing('words', words),
    ...words.figures.pours.flatMap(({ pour, n, words: counted }) =>
      counted.map(({ word, guests }): Row => ({ section: 'words', pour, measure: word, value: guests, n })),
    ),
    ...words.figures.tests.map(
      ({ word, adjustedP }): Row => ({
        section: 'words apart',
        measure: word,
        value: adjustedP,
      }),
    ),
  ];
}

const countRows = ({ colours, structure }: EveningRecap): Row[] => [
  ...(colours.outcome === 'none' ? [] : colours.figures).flatMap(({ pour, n, colours: named }) =>
    named.map(({ colour, guests }): Row => ({ section: 'colours', pour, measure: colour, value: guests, n })),
  ),
  ...(structure.outcome === 'none' ? [] : structure.figures).flatMap(({ pour, marks }) =>
    marks.flatMap(({ mark, n, median, counts }): Row[] => [
      { section: 'structure', pour, measure: `${mark} median`, value: median, n },
      ...counts.map((count, index) => ({
        section: 'structure',
        pour,
        measure: `${mark} step ${index + 1}`,
        value: count,
        n,
      })),
    ]),
  ),
];

/** A value as one cell: a text as it is, marks as `word: strength`. */
function textOf(value: NoteValue): CsvCell {
  if (value === null || typeof value === 'string' || typeof value === 'number') return value;
  if (Array.isArray(value)) return value.join('; ');
  return Object.entries(value)
    .map(([code, mark]) => `${code}: ${mark}`)
    .join('; ');
}
