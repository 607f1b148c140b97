import type { WrittenNote } from '../../../shared/talk/board-pages.ts';
import { words } from '../language.ts';

/** What one person wrote and shared. */
export function NoteCard({ note: { name, remote, sealed, later } }: { readonly note: WrittenNote }) {
  return (
    <li class="board-card">
      <p class="board-who" dir="auto">
        {name === '' ? <span class="soft">{words.talk.unnamed}</span> : name}
        {remote && <span class="soft"> · {words.talk.remote}</span>}
      </p>
      {sealed !== '' && (
        <p class={later === '' ? 'board-said' : 'board-said board-earlier'} dir="auto">
          {sealed}
        </p>
      )}
      {later !== '' && (
        <p class="board-said board-later" dir="auto">
          <span class="board-later-mark">{words.talk.later}:</span> {later}
        </p>
      )}
    </li>
  );
}
