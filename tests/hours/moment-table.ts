import { locales, moments, zones } from '../support/moment.ts';

interface Went {
  readonly well: boolean;
  readonly seconds: number;
}

/** Times of day down, zones across; each cell names its locales, with what went wrong in capitals and by its seed. */
export function inTable(went: ReadonlyMap<number, Went>): string {
  const across = zones.length * locales.length;
  const rows = Array.from({ length: moments.length / across }, (_, time) => {
    const cells = zones.map((_zone, zone) =>
      locales
        .flatMap((locale, place) => {
          const seed = time * across + zone * locales.length + place;
          const ran = went.get(seed);
          if (ran === undefined) return [];
          return ran.well ? [`${locale} ${ran.seconds} s`] : [`${locale} WRONG (${seed})`];
        })
        .join(', '),
    );
    return [moments[time * across]?.name.split(', ')[0] ?? '', ...cells];
  });
  const table = [['', ...zones], ...rows];
  const widths = (table[0] ?? []).map((_, column) =>
    Math.max(...table.map((row) => row[column]?.length ?? 0)),
  );
  const drawn = table.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd(),
  );
  const seconds = [...went.values()].reduce((sum, each) => sum + each.seconds, 0);
  const wrong = [...went.values()].filter(({ well }) => !well).length;
  return [
    ...drawn,
    `${went.size} moments in ${Math.round(seconds / 60)} minutes, ${wrong} of them wrong.`,
  ].join('\n');
}
