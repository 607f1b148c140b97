import type { ComponentChildren } from 'preact';
import {
  type GridColumn,
  type GridRow,
  pouredAt,
  readyIn,
} from '../../core/planning/serving/pouring-grid.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import { Button } from '../../shared/ui/button.tsx';
import type { PourTicks } from './pour-ticks.ts';

interface PouringFootProps {
  readonly ticks: PourTicks;
  readonly rows: readonly GridRow[];
  readonly columns: readonly GridColumn[];
  readonly vials?: boolean;
  readonly children?: ComponentChildren;
}

/** How far the glasses are, and the way back from the last tap. */
export function PouringFoot({ ticks, rows, columns, vials = false, children }: PouringFootProps) {
  return (
    <footer class="pouring-foot">
      <p class="pouring-count">
        <strong class="figures">
          {(vials ? words.vials : words).count(
            readyIn(ticks.levels, rows, columns),
            pouredAt(rows).length * columns.length,
          )}
        </strong>
        {ticks.last !== undefined && <span class="soft"> {ticks.last}</span>}
      </p>
      <div class="thumb-bar">
        {children}
        <Button disabled={ticks.last === undefined} onPress={ticks.undo}>
          {words.undo}
        </Button>
      </div>
    </footer>
  );
}
