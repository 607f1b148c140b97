import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { CommandId, PourId } from '../../core/ids.ts';
import { cleanText } from '../../core/text.ts';
import { longestText, type NoteField, type NoteValue, type NoteValues, noteFields } from '../notes/entry.ts';
import { mergeValues } from '../notes/merge.ts';
import { blankOf, sameValue } from '../notes/value.ts';
import { type NoAnswer, passesByItself } from '../wire/answer.ts';
import type { NotebookView, NoteSave } from '../wire/notebook.ts';
import type { NoteAnswer } from '../wire/protocol.ts';

/** Where one entry stands, in words that a guest understands: saved, on this phone only, or not even there. */
type EntryState =
  | { readonly status: 'saved' }
  /** Kept on this device; not yet answered by the server. */
  | { readonly status: 'on-this-phone' }
  /** The server will not take it as it is; it stays on the device. */
  | { readonly status: 'refused'; readonly code: string };

export interface LocalEntry {
  readonly pour: PourId;
  readonly field: NoteField;
  readonly value: NoteValue;
  /** The server's revision that this value grew from. */
  readonly base: number;
  readonly state: EntryState;
}

/** Where a device keeps what is not safe elsewhere yet. `write` answers false when the device refuses. */
export interface NoteKeep {
  read(): string | null;
  write(text: string): boolean;
}

export interface Notebook {
  readonly entries: ReadonlySignal<ReadonlyMap<string, LocalEntry>>;
  /** False when this device refuses to keep anything: then only the server does. */
  readonly kept: ReadonlySignal<boolean>;
  /** Written on the device first, then sent. */
  write<Field extends NoteField>(pour: PourId, field: Field, value: NoteValues[Field]): void;
  /** What stands in a field; blank where nothing was written. */
  read<Field extends NoteField>(pour: PourId, field: Field): NoteValues[Field];
  /** Takes in what the server has, and sends again what it does not have. */
  level(view: NotebookView): void;
  /** Sends what waits, now. */
  flush(): void;
}

export interface NotebookOptions {
  readonly keep: NoteKeep;
  readonly send: (save: NoteSave) => Promise<NoteAnswer | NoAnswer>;
  readonly newId: () => CommandId;
  readonly after: (ms: number, run: () => void) => () => void;
}

export const entryKey = (pour: PourId, field: NoteField): string => `${pour}/${field}`;

/** Saved after a pause in writing; while somebody writes on, at least this often. */
const pause = 700;
/** After a send that nobody answered. */
const retry = 3000;

export function createNotebook({ keep, send, newId, after }: NotebookOptions): Notebook {
  const entries = signal<ReadonlyMap<string, LocalEntry>>(readKept(keep));
  const kept = signal(true);
  const sending = new Set<string>();
  /** Asked to be sent now while an older text was on its way, or waited for a line: follows it without a pause. */
  const hurried = new Set<string>();
  /**
   * Sent, and whether it arrived is not known. It is asked again just as it was: the same id gets the same answer,
   * so that a text is never taken for two that must be merged.
   */
  const unanswered = new Map<string, NoteSave>();
  /** Newer than what stands here, come while a save was on its way: its answer may be older than this. */
  const ahead = new Map<string, { readonly value: NoteValue; readonly revision: number }>();
  const planned = new Map<string, () => void>();

  const put = (entry: LocalEntry): void => {
    const next = new Map(entries.peek());
    next.set(entryKey(entry.pour, entry.field), entry);
    entries.value = next;
    kept.value = keep.write(JSON.stringify([...next.values()]));
  };

  const plan = (key: string, ms: number): void => {
    if (planned.has(key)) return;
    const cancel = after(ms, () => {
      planned.delete(key);
      void sendOne(key);
    });
    planned.set(key, cancel);
  };

  async function sendOne(key: string): Promise<void> {
    const entry = entries.peek().get(key);
    if (entry === undefined || entry.state.status !== 'on-this-phone' || sending.has(key)) return;
    const asked = unanswered.get(key);
    if (asked === undefined && isTooLong(entry.value))
      return put({ ...entry, state: { status: 'refused', code: 'too-long' } });
    const { pour, field, value, base } = entry;
    const save: NoteSave = asked ?? { id: newId(), pour, field, value, base };
    unanswered.set(key, save);
    sending.add(key);
    const answer = await send(save);
    sending.delete(key);
    if (answer.ok || !passesByItself(answer.code)) unanswered.delete(key);
    settle(key, save.value, answer);
  }

  function settle(key: string, sent: NoteValue, answer: NoteAnswer | NoAnswer): void {
    const entry = entries.peek().get(key);
    if (entry === undefined) return;
    if (!answer.ok) {
      if (passesByItself(answer.code)) plan(key, hurried.delete(key) ? 0 : retry);
      else if (sameValue(entry.value, sent))
        put({ ...entry, state: { status: 'refused', code: answer.code } });
      else plan(key, pause);
      return;
    }
    const heard = ahead.get(key);
    ahead.delete(key);
    // A save that is asked again is answered as it was the first time, whatever another device has written since.
    const server = heard !== undefined && heard.revision > answer.revision ? heard : answer;
    const value = sameValue(entry.value, sent)
      ? server.value
      : joined(entry.field, server.value, entry.value, sent);
    const state: EntryState = sameValue(value, server.value)
      ? { status: 'saved' }
      : { status: 'on-this-phone' };
    put({ ...entry, value, base: server.revision, state });
    const hurry = hurried.delete(key);
    if (state.status === 'on-this-phone') plan(key, hurry ? 0 : pause);
  }

  return {
    entries,
    kept,
    write(pour, field, value) {
      const key = entryKey(pour, field);
      const before = entries.peek().get(key);
      if (before !== undefined && sameValue(before.value, value)) return;
      put({ pour, field, value, base: before?.base ?? 0, state: { status: 'on-this-phone' } });
      plan(key, pause);
    },
    read(pour, field) {
      const entry = entries.value.get(entryKey(pour, field));
      return entry === undefined ? blankOf(field) : (entry.value as NoteValues[typeof field]);
    },
    level(view) {
      for (const { pour, field, value, revision } of view.entries) {
        const key = entryKey(pour, field);
        const mine = entries.peek().get(key);
        if (mine?.state.status === 'on-this-phone') ahead.set(key, { value, revision });
        if (mine === undefined || (mine.state.status === 'saved' && mine.base < revision)) {
          put({ pour, field, value, base: revision, state: { status: 'saved' } });
        }
      }
      this.flush();
    },
    flush() {
      for (const [key, entry] of entries.peek()) {
        if (entry.state.status === 'on-this-phone') {
          planned.get(key)?.();
          planned.delete(key);
          if (sending.has(key)) hurried.add(key);
          else void sendOne(key);
        }
      }
    },
  };
}

/**
 * What the server has now, and what was typed since it was sent: nothing of either is lost. A text that the server
 * has only tidied is still the same text.
 */
const joined = (field: NoteField, server: NoteValue, mine: NoteValue, sent: NoteValue): NoteValue =>
  sameValue(server, sent) || (typeof sent === 'string' && server === cleanText(sent))
    ? mine
    : mergeValues(field, server, mine);

const isTooLong = (value: NoteValue): boolean => typeof value === 'string' && value.length > longestText;

function isEntry(value: unknown): value is LocalEntry {
  const entry = value as Partial<LocalEntry> | null;
  return (
    typeof entry?.pour === 'string' &&
    noteFields.some((field) => field === entry.field && isOfKind(entry.value, blankOf(field))) &&
    typeof entry.base === 'number' &&
    typeof entry.state?.status === 'string'
  );
}

/** Something else may have written there: a value that its field cannot hold is no entry. */
function isOfKind(value: unknown, blank: NoteValue): boolean {
  if (blank === null) return value !== undefined;
  return typeof value === typeof blank && Array.isArray(value) === Array.isArray(blank);
}

function readKept(keep: NoteKeep): Map<string, LocalEntry> {
  try {
    const list = JSON.parse(keep.read() ?? '[]') as readonly unknown[];
    return new Map(list.filter(isEntry).map((entry) => [entryKey(entry.pour, entry.field), entry]));
  } catch {
    // Something else wrote there, or the device lost half of it: what the server has comes back on connecting.
    return new Map();
  }
}
