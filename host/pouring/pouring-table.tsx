import type { PourId } from '../../core/ids.ts';
import { levelOf, nextOfGroup, stepsDone } from '../../core/planning/serving/pouring.ts';
import { type GridColumn, type GridRow, pouredAt } from '../../core/planning/serving/pouring-grid.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import { temperatures } from '../../shared/language/en/temperature.ts';
import { Covered } from '../evening/covered-name.tsx';
import type { PourTicks } from './pour-ticks.ts';

interface PouringTableProps {
  /** Kits for home in place of the glasses of the room. */
  readonly vials?: boolean;
  readonly rows: readonly GridRow[];
  readonly columns: readonly GridColumn[];
  readonly ticks: Pick<PourTicks, 'levels' | 'stepsOf' | 'tick'>;
  /** Whether the name of this pour is covered. */
  readonly covers: (pour: PourId) => boolean;
}

/** Places down, pours across in pouring order; every glass a button, and every head one for all of its glasses. */
export function PouringTable(props: PouringTableProps) {
  const { rows, columns, covers, vials = false } = props;
  const places = pouredAt(rows).map(({ place }) => place);
  return (
    <section class="pouring-scroll" aria-label={vials ? words.vials.table : words.table}>
      <table class="pouring-table">
        <thead>
          <tr>
            <td />
            {columns.map((column) => (
              <th key={column.id} scope="col">
                <span class="pouring-code">
                  {column.kind === 'trial' ? words.oddOne : (column.code ?? column.name)}
                </span>
                {(column.kind === 'trial' || column.code !== null) && (
                  <span class="pouring-name">
                    <Covered instead={words.bottle} covered={covers(column.id)}>
                      <bdi>{column.name}</bdi>
                    </Covered>
                  </span>
                )}
                {column.serve && <span class="pouring-name">{temperatures(column.serve)}</span>}
                <GroupButton
                  {...props}
                  group={{ places, pours: [column.id] }}
                  label={(step) => (vials ? words.vials : words).column(nameOf(column), step)}
                />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.place}>
              <th scope="row">
                <span class="pouring-code">{whoAt(row)}</span>
                {(row.name !== null || row.leftHanded) && (
                  <span class="pouring-name">
                    {[
                      ...(row.name === null ? [] : [words.place(row.place)]),
                      ...(row.leftHanded ? [words.leftHanded] : []),
                    ].join(', ')}
                  </span>
                )}
                {row.onlyWater ? (
                  <span class="pouring-all pouring-all-ready">{words.onlyWater}</span>
                ) : (
                  <GroupButton
                    {...props}
                    group={{ places: [row.place], pours: columns.map(({ id }) => id) }}
                    label={(step) => words.row(whoAt(row), step)}
                  />
                )}
              </th>
              {columns.map((column) => (
                <td key={column.id}>
                  <Glass {...props} row={row} column={column} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const nameOf = ({ code, name, kind }: GridColumn): string =>
  kind === 'trial' ? words.oddOne : (code ?? name);
const whoAt = ({ name, place, kit }: GridRow): string =>
  kit === undefined ? (name ?? words.place(place)) : words.vials.kit(kit);

interface GroupButtonProps extends PouringTableProps {
  readonly group: Parameters<PourTicks['tick']>[0];
  readonly label: (step: string) => string;
}

/** The next step for those of a row or a column that are furthest behind. */
function GroupButton({ columns, ticks: { levels, stepsOf, tick }, group, label }: GroupButtonProps) {
  const next = nextOfGroup(levels, group, stepsOf);
  const step =
    next &&
    columns.find(({ id }) => next.pours.includes(id))?.steps.find(({ moves }) => moves === next.done)?.step;
  if (step === undefined) return <span class="pouring-all pouring-all-ready">{words.allReady}</span>;
  return (
    <button
      type="button"
      class="pouring-all"
      aria-label={label(words.doStep[step])}
      onClick={() => tick(group)}
    >
      {words.doStep[step]}
    </button>
  );
}

interface GlassProps extends PouringTableProps {
  readonly row: GridRow;
  readonly column: GridColumn;
}

/** One glass with its steps: filled marks for what is done, and the last one in a word. */
function Glass({ row, column, ticks: { levels, tick } }: GlassProps) {
  const { steps } = column;
  const level = stepsDone(steps, levelOf(levels, column.id, row.place));
  const last = steps[level - 1]?.step;
  const ready = level >= steps.length;
  const glass = row.glasses.get(column.id);
  const where = glass === undefined ? '' : 'codes' in glass ? glass.codes : words.glassOrder(glass.position);
  // [C4] What already stands there may be taken away; nothing more is poured.
  const done = ready || row.onlyWater;
  const state = row.onlyWater
    ? words.notHere
    : last === undefined
      ? words.empty
      : ready
        ? words.ready
        : words.steps[last];
  return (
    <button
      type="button"
      class={`pouring-glass${ready ? ' pouring-glass-ready' : level > 0 ? ' pouring-glass-begun' : ''}`}
      aria-disabled={done ? true : undefined}
      onClick={() => (row.onlyWater ? undefined : tick({ places: [row.place], pours: [column.id] }))}
    >
      <span class="visually-hidden">{words.glass(whoAt(row), nameOf(column))} </span>
      <span class="pouring-state">{state}</span>
      {steps.length > 1 && (
        <span class="pouring-marks" aria-hidden="true">
          {steps.map(({ step }, index) => (
            <span key={step} class={index < level ? 'pouring-mark pouring-mark-done' : 'pouring-mark'} />
          ))}
        </span>
      )}
      <span class="pouring-where">{where}</span>
    </button>
  );
}
