import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import type { LimitCode } from '../../core/panel/recap/panel-result.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import type { Names } from './names.ts';

/** What each finding of the panel is drawn from. */
export interface FindingOf<Result> {
  readonly result: Result;
  readonly guests: number;
  readonly names: Names;
}

interface FindingProps {
  readonly title: string;
  /** What was found, as one would say it. */
  readonly said: string;
  /** Sentences below it, and the picture. */
  readonly children?: ComponentChildren;
  readonly table?: TableProps | undefined;
  /** Method, figures and limits; kept behind a fold, for most people want to know who won. */
  readonly reckoned: readonly string[];
}

/** One thing that the evening showed: in words, as a picture, as a table, and how one knows. */
export function Finding({ title, said, children, table, reckoned }: FindingProps) {
  const id = useId();
  return (
    <section class="finding" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <p class="finding-said">{said}</p>
      {children}
      <div class="finding-more">
        {table !== undefined && (
          <details>
            <summary>{words.asTable}</summary>
            <Table {...table} />
          </details>
        )}
        {reckoned.length > 0 && (
          <details data-print="open">
            <summary>{words.reckoned}</summary>
            <ul class="reckoned">
              {reckoned.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </details>
        )}
      </div>
    </section>
  );
}

interface TableProps {
  readonly caption: string;
  readonly columns: readonly string[];
  /** The first cell heads its row. */
  readonly rows: readonly (readonly string[])[];
}

export function Table({ caption, columns, rows }: TableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls where the screen is narrow, also by the keyboard
    <section class="table-frame" aria-label={`${caption}: ${words.asTable}`} tabIndex={0}>
      <table>
        <caption class="visually-hidden">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([head = '', ...cells], row) => (
            <tr key={`${row} ${head}`}>
              <th scope="row">{head}</th>
              {cells.map((cell, index) => (
                <td key={columns[index + 1] ?? index} class="figures">
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface Reckonable {
  readonly n: number;
  readonly limits: readonly LimitCode[];
}

/** From how many, and what to bear in mind. */
export const limitsOf = ({ n, limits }: Reckonable, guests: number): string[] => [
  words.answers(n, guests),
  ...limits.filter((code) => n > 0 || code !== 'small-panel').map((code) => words.limits[code](n)),
];
