import { words } from '../language.ts';

/** In place of a part of the page that is on its way. */
export function Fetching() {
  return <p class="soft page-fetching">{words.link.connecting}</p>;
}
