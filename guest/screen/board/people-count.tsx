import { words } from '../language.ts';

/** How many people, as a figure beside what they found. */
export function PeopleCount({ count }: { readonly count: number }) {
  return (
    <span class="board-people figures">
      <span aria-hidden="true">{count}</span>
      <span class="visually-hidden">{words.talk.said(count)}</span>
    </span>
  );
}
