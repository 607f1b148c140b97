import { useLazyPart } from '../../../shared/page/lazy-part.ts';
import { sentenceFor } from '../../language.ts';
import type { ListSheetProps } from './list-sheet.tsx';
import { tablesPart } from './tables-part.ts';

/** Pours from a list, once what reads one has been fetched. */
export function PastedList(props: ListSheetProps) {
  const part = useLazyPart(tablesPart);
  if (part !== undefined) return <part.tables.ListSheet {...props} />;
  return tablesPart.failing.value ? <p role="alert">{sentenceFor('no-answer')}</p> : null;
}
