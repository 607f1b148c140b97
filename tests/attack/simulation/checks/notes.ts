import { cleanText } from '../../../../core/text.ts';
import type { NoteValue } from '../../../../shared/notes/entry.ts';
import type { Disk } from '../disk.ts';
import { type History, marksIn } from '../history.ts';
import type { GuestDevice } from '../people.ts';
import { expect } from './log.ts';

/** Once all is calm: every word that was written is in the store, once, where it was written. */
export function checkNotes(history: History, disk: Disk, guests: readonly GuestDevice[]): void {
  for (const entry of disk.notes.values()) {
    const found = marksIn(String(entry.value));
    expect(history, 'notes', new Set(found).size === found.length, `A word is doubled: ${entry.value}`);
    for (const each of found) {
      const mark = history.marks.get(each);
      const own = mark?.seat === entry.seat && mark.pour === entry.pour && mark.field === entry.field;
      expect(history, 'Q1', own, `${each} stands in a page of ${entry.seat}.`);
    }
  }
  for (const mark of history.marks.values()) {
    const stored = String(disk.notes.get(`${mark.seat} ${mark.pour} ${mark.field}`)?.value ?? '');
    if (stored.includes(mark.mark)) continue;
    const heard = history.acknowledged.has(mark.mark) ? 'acknowledged' : 'never acknowledged';
    history.fault('notes', `${mark.mark} of ${mark.seat} is lost; it was ${heard}.`);
  }
  for (const guest of guests) checkPhone(history, disk, guest);
  checkSealed(history, disk);
}

/** What a phone shows as saved, and as shared, is what the server has. */
function checkPhone(history: History, disk: Disk, { device, seat, follower }: GuestDevice): void {
  if (follower === undefined) return;
  for (const { pour, field, value, state } of follower.notebook.entries.peek().values()) {
    const stored = disk.notes.get(`${seat} ${pour} ${field}`)?.value;
    const level = state.status === 'saved' && stored === cleanText(String(value));
    expect(
      history,
      'notes',
      level,
      `${device.name} shows “${value}” as ${state.status}; stored is “${stored}”.`,
    );
  }
  const ofSeat = [...disk.consents].filter(([key]) => key.startsWith(`${seat} `));
  const stored = ofSeat.map(([key, consents]) => `${key.split(' ')[1]} ${JSON.stringify(consents)}`);
  const shown = [...follower.consents.peek()].map(
    ([pour, consents]) => `${pour} ${JSON.stringify(consents)}`,
  );
  const same = shown.toSorted().join() === stored.toSorted().join();
  expect(history, 'Q2', same, `${device.name} shows ${shown} as shared; shared is ${stored}.`);
}

/** [Q3] What the board calls sealed is what stood there when the discussion was first opened. */
function checkSealed(history: History, disk: Disk): void {
  const standing = new Map<string, NoteValue>();
  const sealed = new Map<string, ReadonlyMap<string, NoteValue>>();
  for (const entry of disk.journal) {
    if (entry.kind === 'append') {
      for (const event of entry.events) {
        if (event.type !== 'DiscussionOpened') continue;
        for (const pour of event.pours) if (!sealed.has(pour)) sealed.set(pour, new Map(standing));
      }
    } else if (entry.kind === 'save') {
      const { pour, field, value, sealedValue } = entry.entry;
      const key = `${entry.seat} ${pour} ${field}`;
      const stood = sealed.get(pour);
      const right = stood === undefined ? undefined : (stood.get(key) ?? '');
      expect(history, 'Q3', sealedValue === right || value === right, `${key} was not sealed as it stood.`);
      standing.set(key, value);
    }
  }
}
