import { describe, expect, it } from 'vitest';
import { commandId, pourId, seatId } from '../../../core/ids.ts';
import { unopened } from '../../../core/session/state.ts';
import { epochMs } from '../../../core/units.ts';
import { mayWrite, notebookView, written } from '../../../server/live/notes.ts';
import type { StoredEntry } from '../../../server/store/store.ts';
import type { NoteField, NoteValue } from '../../../shared/notes/entry.ts';
import type { NoteSave } from '../../../shared/wire/notebook.ts';
import { consentsBefore } from '../../../shared/wire/permits.ts';
import { ash, birch, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const noor = seatId('noor');
const then = epochMs(1000);
const now = epochMs(2000);

const saveOf = (value: NoteValue, base: number, field: NoteField = 'nose'): NoteSave => ({
  id: commandId('a-save'),
  pour: ash,
  field,
  value,
  base,
});
const storedAs = (value: NoteValue, more: Partial<StoredEntry> = {}): StoredEntry => ({
  pour: ash,
  field: 'nose',
  value,
  revision: 3,
  savedAt: then,
  ...more,
});

describe('who may write', () => {
  const evening = () => new EveningTold(planOf(3)).sit('noor').goTo('ash/water');

  it('is who sits there, about what has been in front of them', () => {
    expect(mayWrite(evening().session, noor, ash)).toBeUndefined();
    expect(mayWrite(evening().session, noor, birch)).toBe('not-reached');
    expect(mayWrite(evening().session, noor, pourId('elsewhere'))).toBe('not-reached');
  });

  it('is nobody before the doors are open', () => {
    expect(mayWrite(unopened, noor, ash)).toBe('not-open');
  });

  it('is nobody without a seat, nobody who waits at the door, nobody who was removed', () => {
    const asked = evening();
    asked.host({ type: 'SetDoors', doors: 'ask' });
    asked.sit('tomas');
    asked.host({ type: 'RemoveSeat', seat: noor });
    for (const seat of ['nobody', 'tomas', 'noor'].map(seatId)) {
      expect(mayWrite(asked.session, seat, ash)).toBe('not-seated');
    }
  });

  it('is who has left, and everybody after the end', () => {
    const over = evening().sit('tomas');
    over.guest('noor', { type: 'LeaveTable' });
    expect(mayWrite(over.session, noor, ash)).toBeUndefined();
    over.host({ type: 'Finish' });
    expect(mayWrite(over.session, noor, ash)).toBeUndefined();
    expect(mayWrite(over.session, seatId('tomas'), ash)).toBeUndefined();
  });
});

describe('what a save leaves', () => {
  it('is the first revision where nothing stood', () => {
    expect(written(undefined, saveOf('apples', 0), false, now)).toStrictEqual({
      pour: ash,
      field: 'nose',
      value: 'apples',
      revision: 1,
      savedAt: now,
    });
  });

  it('is what is sent where the device knew what stood, or claims to know more', () => {
    for (const base of [3, 4]) {
      expect(written(storedAs('apples'), saveOf('pears', base), false, now)).toStrictEqual(
        storedAs('pears', { revision: 4, savedAt: now }),
      );
    }
  });

  it('is both where another device wrote in between', () => {
    expect(written(storedAs('apples'), saveOf('pears', 2), false, now)).toMatchObject({
      value: 'apples\npears',
      revision: 4,
    });
  });

  it('is untouched where the same is sent again', () => {
    const stored = storedAs('apples');
    expect(written(stored, saveOf('apples', 3), false, now)).toBe(stored);
    expect(written(stored, saveOf('apples', 0), true, now)).toBe(stored);
    const words = storedAs({ peat: 'clear', hay: 'hint' }, { field: 'nose-words' });
    const turned = { hay: 'hint', peat: 'clear' } as const;
    expect(written(words, saveOf(turned, 3, 'nose-words'), false, now)).toBe(words);
  });

  it('[Q3] keeps beside it what stood when the discussion was opened, from the first write after it on', () => {
    expect(written(storedAs('apples'), saveOf('pears', 3), true, now)).toMatchObject({
      value: 'pears',
      sealedValue: 'apples',
    });
    const once = storedAs('pears', { sealedValue: 'apples' });
    expect(written(once, saveOf('plums', 3), true, now)).toMatchObject({
      value: 'plums',
      sealedValue: 'apples',
    });
  });

  it('[Q3] was sealed blank where it was begun afterwards, also after an answer is changed once more', () => {
    expect(written(undefined, saveOf('apples', 0), true, now)).toMatchObject({ sealedValue: '' });
    const first = written(undefined, saveOf(7, 0, 'liking'), true, now);
    expect(first).toMatchObject({ value: 7, sealedValue: null });
    expect(written(first as StoredEntry, saveOf(8, 1, 'liking'), true, now)).toMatchObject({
      value: 8,
      sealedValue: null,
    });
  });

  it('is refused when a text is longer than 4,000 characters, also when only both together are', () => {
    const half = 'a'.repeat(2000);
    expect(written(undefined, saveOf('a'.repeat(4000), 0), false, now)).toMatchObject({ revision: 1 });
    expect(written(undefined, saveOf('a'.repeat(4001), 0), false, now)).toBe('too-long');
    expect(written(storedAs(half), saveOf('b'.repeat(1999), 0), false, now)).toMatchObject({ revision: 4 });
    expect(written(storedAs(half), saveOf('b'.repeat(2000), 0), false, now)).toBe('too-long');
  });

  it('is refused when there are more than sixty words, also when only both together are', () => {
    const words = (name: string, count: number) =>
      Object.fromEntries(Array.from({ length: count }, (_, at) => [`${name}-${at}`, 'clear'])) as NoteValue;
    const marked = storedAs(words('a', 30), { field: 'nose-words' });
    const save = (value: NoteValue) => saveOf(value, 0, 'nose-words');
    expect(written(undefined, save(words('a', 60)), false, now)).toMatchObject({ revision: 1 });
    expect(written(undefined, save(words('a', 61)), false, now)).toBe('too-long');
    expect(written(marked, save(words('b', 30)), false, now)).toMatchObject({ revision: 4 });
    expect(written(marked, save(words('b', 31)), false, now)).toBe('too-long');
  });

  it('may be an answer that was taken back', () => {
    const liked = storedAs(7, { field: 'liking' });
    expect(written(liked, saveOf(null, 3, 'liking'), false, now)).toMatchObject({ value: null, revision: 4 });
  });
});

describe("a guest's own notebook", () => {
  it('has everything that they wrote and permitted, and nothing of what is kept for the board', () => {
    const entries = [storedAs('pears', { sealedValue: 'apples' })];
    const consents = [{ pour: ash, consents: consentsBefore('counted') }];
    expect(notebookView({ seat: noor, entries, consents })).toStrictEqual({
      seat: noor,
      entries: [{ pour: ash, field: 'nose', value: 'pears', revision: 3, savedAt: then }],
      consents: [
        {
          pour: ash,
          consents: {
            page: { sharing: 'private', parts: [] },
            order: 'counts',
            liking: 'counts',
            'odd-one-out': 'counts',
          },
        },
      ],
      sharings: [{ pour: ash, sharing: 'counted' }],
    });
  });
});
