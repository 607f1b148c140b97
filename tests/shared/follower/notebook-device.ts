import { commandId, type PourId, pourId, seatId } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { createNotebook, entryKey, type NoteKeep } from '../../../shared/follower/notebook.ts';
import type { NoteField, NoteValue } from '../../../shared/notes/entry.ts';
import { mergeValues } from '../../../shared/notes/merge.ts';
import type { NoAnswer } from '../../../shared/wire/answer.ts';
import type { NotebookView, NoteSave } from '../../../shared/wire/notebook.ts';
import type { NoteAnswer } from '../../../shared/wire/protocol.ts';
import { handClock } from './hand-clock.ts';

export const pour = pourId('p1');
/** The server's side of a notebook as the wire promises it: one revision a save, merging what grew from an older one. */
export function notebookServer() {
  const stored = new Map<string, { value: NoteValue; revision: number }>();
  const answers = new Map<string, NoteAnswer>();
  return {
    stored,
    saves: [] as NoteSave[],
    take(save: NoteSave): NoteAnswer {
      this.saves.push(save);
      const answered = answers.get(save.id);
      if (answered !== undefined) return answered;
      const before = stored.get(entryKey(save.pour, save.field)) ?? { value: '', revision: 0 };
      const value =
        save.base < before.revision ? mergeValues(save.field, before.value, save.value) : save.value;
      const next = { value, revision: before.revision + 1 };
      stored.set(entryKey(save.pour, save.field), next);
      const answer: NoteAnswer = { ok: true, ...next, savedAt: epochMs(1) };
      answers.set(save.id, answer);
      return answer;
    },
    view(): NotebookView {
      return {
        seat: seatId('s1'),
        consents: [],
        sharings: [],
        entries: [...stored].map(([name, { value, revision }]) => {
          const [of = '', field = 'nose'] = name.split('/');
          return { pour: pourId(of), field: field as NoteField, value, revision, savedAt: epochMs(1) };
        }),
      };
    },
  };
}

export function memoryKeep(start: string | null = null): NoteKeep & { text: string | null } {
  return {
    text: start,
    read() {
      return this.text;
    },
    write(text) {
      this.text = text;
      return true;
    },
  };
}

export const noAnswer: NoAnswer = { ok: false, code: 'no-answer' };
let ids = 0;

export interface DeviceOptions {
  readonly keep?: NoteKeep;
  readonly send: (save: NoteSave) => Promise<NoteAnswer | NoAnswer>;
}

export function device({ keep = memoryKeep(), send }: DeviceOptions) {
  const time = handClock();
  const newId = () => {
    ids += 1;
    return commandId(`note-${ids}-xxxxxx`);
  };
  const notebook = createNotebook({ keep, send, newId, after: time.after });
  const entry = (of: PourId = pour) => notebook.entries.peek().get(entryKey(of, 'nose'));
  return { notebook, time, entry };
}
