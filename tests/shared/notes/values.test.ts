import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type NoteField, type NoteValue, noteFields } from '../../../shared/notes/entry.ts';
import { mergeValues } from '../../../shared/notes/merge.ts';
import { addedSince, blankOf, isBlank, sameValue } from '../../../shared/notes/value.ts';
import { noteSaveSchema } from '../../../shared/wire/notebook.ts';
import { feelings, reviewAnswers, strengths } from '../../../shared/words/closing.ts';

const codes = fc.constantFrom('apple', 'smoke', 'own:grandmother’s attic', 'salt');
const marks = <Mark>(mark: fc.Arbitrary<Mark>) => fc.dictionary(codes, mark, { noNullPrototype: true });
const text = fc.string({ unit: 'grapheme', maxLength: 40 }).map((typed) => typed.replace(/\r/g, ''));

function someValue(field: NoteField): fc.Arbitrary<NoteValue> {
  switch (field) {
    case 'look':
    case 'nose':
    case 'palate':
    case 'finish':
    case 'thoughts':
      return text;
    case 'nose-words':
    case 'palate-words':
    case 'finish-words':
      return marks(fc.constantFrom(...strengths));
    case 'structure':
      return marks(fc.integer({ min: 1, max: 5 }));
    case 'guess':
      return fc.record(
        { style: fc.constantFrom('riesling', 'merlot'), age: fc.integer({ min: 0, max: 40 }) },
        { requiredKeys: [], noNullPrototype: true },
      );
    case 'review':
      return marks(fc.constantFrom(...reviewAnswers));
    case 'feelings':
      return fc.subarray([...feelings]);
    case 'colour':
      return fc.constantFrom('straw', 'gold', null);
    case 'liking':
      return fc.option(fc.integer({ min: 1, max: 9 }));
    case 'place':
      return fc.option(fc.integer({ min: 1, max: 16 }));
    case 'odd-one-out':
      return fc.option(
        fc.record(
          { glass: fc.integer({ min: 1, max: 3 }), guessed: fc.boolean() },
          { noNullPrototype: true },
        ),
      );
    default:
      return field satisfies never;
  }
}
const pairs = fc
  .constantFrom(...noteFields)
  .chain((field) => fc.tuple(fc.constant(field), someValue(field), someValue(field)));

describe('values of a notebook', () => {
  it('merge to themselves, and never to something blank when one of them says something', () => {
    fc.assert(
      fc.property(pairs, ([field, one, other]) => {
        expect(sameValue(mergeValues(field, one, one), one)).toBe(true);
        const merged = mergeValues(field, one, other);
        if (!isBlank(one) || !isBlank(other)) expect(isBlank(merged)).toBe(false);
        expect(sameValue(mergeValues(field, one, blankOf(field)), one)).toBe(true);
      }),
    );
  });

  it('merge without losing a word or a mark of either device', () => {
    const one = { apple: 'hint', smoke: 'clear' } as const;
    expect(mergeValues('nose-words', one, { smoke: 'strong', salt: 'hint' })).toEqual({
      apple: 'hint',
      smoke: 'strong',
      salt: 'hint',
    });
    expect(mergeValues('feelings', ['calm'], ['glad', 'calm'])).toEqual(['calm', 'glad']);
    expect(mergeValues('liking', 7, 4)).toBe(4);
    expect(mergeValues('liking', 7, null)).toBe(7);
  });

  it('[Q3] add to the seal what is new or changed, and nothing where nothing changed', () => {
    fc.assert(
      fc.property(pairs, ([field, sealed]) => {
        expect(isBlank(addedSince(field, sealed, sealed))).toBe(true);
      }),
    );
    expect(addedSince('nose', 'hay', 'hay\nand wet slate')).toBe('and wet slate');
    expect(addedSince('nose', 'hay', 'slate')).toBe('slate');
    expect(addedSince('nose-words', { apple: 'hint' }, { apple: 'strong', salt: 'hint' })).toEqual({
      apple: 'strong',
      salt: 'hint',
    });
    expect(addedSince('liking', null, 6)).toBe(6);
    expect(addedSince('odd-one-out', { glass: 1, guessed: true }, { glass: 2, guessed: true })).toEqual({
      glass: 2,
      guessed: true,
    });
    expect(addedSince('feelings', ['calm'], ['calm', 'glad'])).toEqual(['glad']);
  });

  it('say the same in whatever order their marks stand', () => {
    expect(sameValue({ a: 1, b: 2 }, { b: 2, a: 1 })).toBe(true);
    expect(sameValue({ a: 1 }, { a: 2 })).toBe(false);
    expect(sameValue(null, '')).toBe(false);
  });

  it('pass the door as they are, and nothing else does', () => {
    const save = (field: string, value: unknown) =>
      noteSaveSchema.safeParse({ id: 'command-1', pour: 'ash', field, value, base: 0 });
    fc.assert(
      fc.property(pairs, ([field, value]) => {
        const parsed = save(field, value);
        expect(parsed.success, `${field}: ${JSON.stringify(value)}`).toBe(true);
      }),
    );
    const proto = save('nose-words', JSON.parse('{"__proto__": "hint"}'));
    expect(proto.success && Object.entries(proto.data.value ?? {})).toEqual([]);
    const refused: readonly (readonly [string, unknown])[] = [
      ['nose', 5],
      ['nose', null],
      ['liking', 0],
      ['liking', 9.5],
      ['liking', '7'],
      ['place', 17],
      ['colour', 3],
      ['structure', { body: 6 }],
      ['nose-words', { apple: 'very' }],
      ['nose-words', { constructor: 'hint' }],
      ['nose-words', Object.fromEntries(Array.from({ length: 61 }, (_, at) => [`w${at}`, 'hint']))],
      ['odd-one-out', { glass: 4, guessed: false }],
      ['feelings', ['hungry']],
      ['price', 12],
    ];
    for (const [field, value] of refused)
      expect(save(field, value).success, `${field}: ${JSON.stringify(value)}`).toBe(false);
  });
});
