import { useLayoutEffect, useRef } from 'preact/hooks';
import { entryKey, type LocalEntry } from '../../shared/follower/notebook.ts';
import { longestText, type TextField } from '../../shared/notes/entry.ts';
import { TextArea } from '../../shared/ui/text-area.tsx';
import type { PourId } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { refusalSentence } from '../page/refusal-sentence.ts';
import { useRoom } from '../room/room.ts';
import { useWritingLock } from './use-writing-lock.ts';

interface NoteFieldProps {
  readonly pour: PourId;
  readonly field: TextField;
  /** Where several glasses stand on one page, which one; read out with the label. */
  readonly glass?: string | undefined;
  readonly rows?: number | undefined;
  readonly hint?: boolean | undefined;
}

/** One field of one glass. What is typed is on the device at once, and its state is always said in words. */
export function NoteField({ pour, field, glass, rows = 3, hint = false }: NoteFieldProps) {
  const { follower } = useRoom();
  const entry = follower.notebook.entries.value.get(entryKey(pour, field));
  const value = follower.notebook.read(pour, field);
  const lock = useWritingLock();
  const box = useCaretKept(value);
  const label = words.fields[field];
  const error = refusedWords(entry);
  return (
    <div class="note" data-field={field} ref={box}>
      <TextArea
        label={glass === undefined ? label : words.inField(label, glass)}
        hint={hint ? words.fieldHints[field] : undefined}
        error={error}
        rows={rows}
        value={value}
        onInput={(typed) => {
          lock.key();
          follower.notebook.write(pour, field, typed);
        }}
        onFocus={lock.enter}
        onBlur={lock.leave}
      />
      {error === undefined && (
        <p class="note-state">{stateWords(entry, follower.notebook.kept.value, hint)}</p>
      )}
    </div>
  );
}

function stateWords(entry: LocalEntry | undefined, kept: boolean, reassuring: boolean): string {
  if (entry === undefined || entry.value === '') return reassuring ? words.saved.empty : '';
  if (entry.state.status === 'saved') return words.saved.saved;
  return kept ? words.saved.onPhone : words.saved.waiting;
}

function refusedWords(entry: LocalEntry | undefined): string | undefined {
  if (entry === undefined) return undefined;
  const { value } = entry;
  if (typeof value === 'string' && value.length > longestText) {
    return words.saved.tooLong(value.length - longestText);
  }
  return entry.state.status === 'refused'
    ? words.saved.refused(refusalSentence(entry.state.code))
    : undefined;
}

/** Words that arrive from the guest's other phone go into the field without moving the cursor of the one who types. */
function useCaretKept(value: string) {
  const box = useRef<HTMLDivElement>(null);
  const caret = useRef<readonly [number, number]>([0, 0]);
  const area = box.current?.querySelector('textarea');
  if (area && document.activeElement === area && area.value !== value) {
    caret.current = [area.selectionStart, area.selectionEnd];
  }
  const foreign = area !== null && area !== undefined && area.value !== value;
  useLayoutEffect(() => {
    if (foreign && area === document.activeElement) area?.setSelectionRange(...caret.current);
  });
  return box;
}
