import type { Database } from 'better-sqlite3';

/** Arrays among the values of a statement: `unnest` of the columns that they are. */
export function arraysIn(db: Database) {
  let kept: readonly unknown[][] = [];
  const most = Array.from({ length: 16 }, (_, index) => index);
  db.table('unnest', {
    columns: most.map((index) => `c${index}`),
    parameters: most.map((index) => `p${index}`),
    *rows(...given: unknown[]) {
      const columns = given.flatMap((at) => (typeof at === 'number' ? [kept[at] ?? []] : []));
      for (let row = 0; row < (columns[0]?.length ?? 0); row += 1)
        yield most.map((index) => columns[index]?.[row] ?? null);
    },
  });
  return {
    /** The values under the names that `inSqlite` gives them. */
    bound(values: readonly unknown[]): Readonly<Record<string, unknown>> {
      kept = values.map((value) => (Array.isArray(value) ? value : []));
      return Object.fromEntries(
        values.map((value, at) => [`p${at + 1}`, Array.isArray(value) ? at : (value ?? null)]),
      );
    },
  };
}

/** A commit is a head and what is done only where that was as expected; SQLite knows no such statement. */
export function partsOfCommit(text: string): readonly string[] | undefined {
  const whole = /^WITH head AS \((.*)\) SELECT 1 FROM head$/s.exec(text)?.[1];
  return whole?.split(/\), c\d+ AS \(/);
}

/** The words in which SQLite says the same. Those of lists and searches are not among them. */
export const inSqlite = (text: string): string =>
  text
    .replaceAll(/::\w+(\[\])?/g, '')
    .replaceAll(/ COLLATE "C"| FOR SHARE/g, '')
    .replaceAll('SELECT FROM', 'SELECT 1 FROM')
    .replaceAll(/make_interval\(secs => (\$\d+) \/ 1000\)/g, '$1')
    .replaceAll('extract(epoch FROM clock_timestamp()) * 1000', 'clock_timestamp()')
    .replaceAll('UPDATE heads h', 'UPDATE heads AS h')
    // In an order that the same seed gives again.
    .replaceAll('ORDER BY random()', text.includes('address') ? 'ORDER BY address' : 'ORDER BY tasting')
    .replaceAll(/unnest\(([^)]*)\)(?: AS)? (\w)\(([^)]*)\)/g, (_, arrays, name, columns) => {
      const named = String(columns).split(', ');
      return `(SELECT ${named.map((each, at) => `c${at} AS ${each}`).join(', ')} FROM unnest(${arrays})) AS ${name}`;
    })
    .replace(
      /^DELETE FROM (\w+) t USING (.*), head WHERE (.*)$/s,
      'DELETE FROM $1 AS t WHERE EXISTS (SELECT 1 FROM $2 WHERE $3)',
    )
    .replace(/, head\b/, ' WHERE true')
    .replaceAll(/\$(\d+)/g, '@p$1');
