import type { LazyPart } from '../../shared/page/lazy-part.ts';
import { words } from '../language.ts';

/** In place of a part of the page that is on its way; without a network it is tried again by itself. */
export function LoadingLine({ part }: { readonly part: LazyPart<unknown> }) {
  return <p class="soft page-fetching">{part.failing.value ? words.link.lost : words.link.connecting}</p>;
}
