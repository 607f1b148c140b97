import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newsBetween, withNews } from '../../../shared/wire/news.ts';

/** Of one shape, as a view is: lists stay lists, and fields may go and come. */
const leaf = fc.oneof(fc.string({ maxLength: 3 }), fc.integer(), fc.boolean(), fc.constant(null));
const inner = fc.record(
  { code: leaf, count: leaf, lists: fc.array(leaf, { maxLength: 3 }) },
  { requiredKeys: [] },
);
const view = fc.record({
  title: leaf,
  clock: fc.option(inner),
  glasses: fc.array(fc.record({ position: leaf, pour: fc.option(inner) }), { maxLength: 4 }),
  rows: fc.array(fc.array(leaf, { maxLength: 2 }), { maxLength: 2 }),
});
const overTheWire = (told: unknown): unknown =>
  told === undefined ? undefined : JSON.parse(JSON.stringify(told));

describe('what is new of a value', () => {
  it('makes of what it was what it is, whatever both were', () => {
    fc.assert(
      fc.property(view, view, (was, is) => {
        const news = overTheWire(newsBetween(was, is));
        expect(news === undefined ? was : withNews(was, news)).toEqual(is);
      }),
    );
  });

  it('is nothing where nothing is', () => {
    fc.assert(fc.property(view, (one) => newsBetween(one, overTheWire(one)) === undefined));
  });

  it('says of each field and of each place only what is another in it', () => {
    const was = {
      id: 'a',
      clock: { kind: 'running', endsAt: 5 },
      glasses: [{ at: 1, pour: null }, { at: 2 }],
    };
    const is = { id: 'a', clock: { kind: 'running', endsAt: 9 }, glasses: [{ at: 1, pour: 'x' }, { at: 2 }] };
    expect(newsBetween(was, is)).toEqual([{ clock: [{ endsAt: 9 }], glasses: { 0: [{ pour: 'x' }] } }]);
    // What has lost a field, or has another length, is told whole.
    expect(newsBetween({ clock: { kind: 'running', endsAt: 5 } }, { clock: { kind: 'held' } })).toEqual([
      { clock: { kind: 'held' } },
    ]);
    expect(newsBetween({ open: ['a'] }, { open: ['a', 'b'] })).toEqual([{ open: ['a', 'b'] }]);
  });
});
