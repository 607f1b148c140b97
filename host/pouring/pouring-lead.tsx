import type { GridColumn } from '../../core/planning/serving/pouring-grid.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';

interface PouringLeadProps {
  readonly lead: string;
  readonly columns: readonly GridColumn[];
}

/** How to tick glasses, and what has to be so when they are poured, with its reason. */
export function PouringLead({ lead, columns }: PouringLeadProps) {
  const steps = new Set(columns.flatMap((column) => column.steps.map(({ step }) => step)));
  const why = [
    ...(steps.has('covered') ? [words.whyCovered] : []),
    ...(steps.has('watered') ? [words.whyWatered] : []),
  ];
  return <p class="soft pouring-lead">{[...why, lead].join(' ')}</p>;
}
