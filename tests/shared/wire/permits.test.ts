import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  consentsBefore,
  type KeptConsents,
  permitsOf,
  sharingBefore,
  withConsents,
} from '../../../shared/wire/permits.ts';
import {
  countedAnswers,
  countings,
  pageParts,
  sharings,
  sharingsBefore,
} from '../../../shared/wire/sharing.ts';

const consents: fc.Arbitrary<KeptConsents> = fc.record(
  {
    page: fc.record({ sharing: fc.constantFrom(...sharings), parts: fc.subarray([...pageParts]) }),
    order: fc.constantFrom(...countings),
    liking: fc.constantFrom(...countings),
    'odd-one-out': fc.constantFrom(...countings),
    guess: fc.constantFrom(...countings),
    nearest: fc.constantFrom('may-be-named' as const, 'unnamed' as const),
    marks: fc.constant('counts' as const),
  },
  { requiredKeys: [] },
);

describe('what a guest permits of a page', () => {
  it('[Q2] is nothing before they answer, and nothing of a page that stays theirs', () => {
    expect(permitsOf({})).toEqual({});
    expect(permitsOf({ page: { sharing: 'private', parts: pageParts } })).toEqual({});
  });

  it('[Q2] is the senses that were chosen, with the name or without', () => {
    expect(permitsOf({ page: { sharing: 'named', parts: ['nose'] } })).toEqual({
      nose: 'named',
      'nose-words': 'named',
    });
    expect(permitsOf({ page: { sharing: 'unnamed', parts: ['look', 'thoughts'] } })).toEqual({
      look: 'unnamed',
      colour: 'unnamed',
      thoughts: 'unnamed',
      review: 'unnamed',
      feelings: 'unnamed',
    });
  });

  it('[Q10] counts an order, a liking and an odd pick each by its own consent, without a name', () => {
    expect(permitsOf({ order: 'counts', liking: 'only-for-me' })).toEqual({ place: 'counted' });
    expect(
      permitsOf({ page: { sharing: 'named', parts: ['nose', 'verdict'] }, 'odd-one-out': 'counts' }),
    ).toEqual({
      nose: 'named',
      'nose-words': 'named',
      'odd-one-out': 'named',
    });
  });

  it('[Q9, Q10] puts no verdict on a page without a name, and none anywhere that is only for its guest', () => {
    fc.assert(
      fc.property(consents, (given) => {
        const permits = permitsOf(given);
        for (const [answer, field] of [
          ['order', 'place'],
          ['liking', 'liking'],
          ['odd-one-out', 'odd-one-out'],
        ] as const) {
          expect(permits[field]).not.toBe('unnamed');
          if (given[answer] !== 'counts') expect(permits).not.toHaveProperty(field);
          if (given.page?.sharing !== 'named') expect(permits[field]).not.toBe('named');
        }
      }),
    );
  });

  it('[Q2] is withdrawn as a whole by whoever says so of the page and of every answer', () => {
    const withdrawn: KeptConsents = {
      page: { sharing: 'private', parts: [] },
      ...Object.fromEntries(countedAnswers.map((answer) => [answer, 'only-for-me'])),
    };
    fc.assert(
      fc.property(consents, (before) => {
        expect(permitsOf(withConsents(before, withdrawn))).toEqual({});
      }),
    );
  });

  it('keeps what it is not about', () => {
    const before: KeptConsents = { page: { sharing: 'named', parts: ['nose'] }, order: 'counts' };
    expect(withConsents(before, { liking: 'counts' })).toEqual({ ...before, liking: 'counts' });
  });
});

describe('a choice on a page of before', () => {
  it('means what it meant: the page with a name, its marks counted, or nothing', () => {
    expect(permitsOf(consentsBefore('private'))).toEqual({});
    expect(new Set(Object.values(permitsOf(consentsBefore('shared'))))).toEqual(new Set(['named']));
    expect(permitsOf(consentsBefore('counted'))).toEqual({
      colour: 'counted',
      'nose-words': 'counted',
      'palate-words': 'counted',
      'finish-words': 'counted',
      structure: 'counted',
      place: 'counted',
      liking: 'counted',
      'odd-one-out': 'counted',
    });
  });

  it('is told to such a page again as it was made, after any other', () => {
    for (const one of sharingsBefore)
      for (const other of sharingsBefore)
        expect(sharingBefore(withConsents(consentsBefore(one), consentsBefore(other)))).toBe(other);
  });
});
