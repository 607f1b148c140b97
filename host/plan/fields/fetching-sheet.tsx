import type { LazyPart } from '../../../shared/page/lazy-part.ts';
import { sentenceFor } from '../../language.ts';

/** In place of a sheet that is on its way. */
export function FetchingSheet({ part }: { readonly part: LazyPart<unknown> }) {
  return part.failing.value ? <p role="alert">{sentenceFor('no-answer')}</p> : null;
}
