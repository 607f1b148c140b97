import { describe, expect, it } from 'vitest';
import { compile } from '../../../core/running-order/compile.ts';
import { wrapped } from '../../../host/print/line-wrap.ts';
import { runSheet } from '../../../host/print/run-sheet.ts';
import { timeOfDay } from '../../../shared/language/wall-clock.ts';
import { planOf } from '../../support/plans.ts';

describe('the run sheet', () => {
  it('has every cue once, in order, with the glass that it belongs to', () => {
    const plan = planOf(6);
    const { blocks } = runSheet(plan);
    expect(blocks.flatMap(({ rows }) => rows.map(({ cue }) => cue.id))).toEqual(
      compile(plan).map((cue) => cue.id),
    );
    expect(blocks.filter(({ position }) => position > 0).map(({ position }) => position)).toEqual([
      1, 2, 3, 4, 5, 6,
    ]);
    expect(blocks.filter(({ practice }) => practice)).toHaveLength(1);
  });

  it('tells the host’s own time, across midnight too', () => {
    const plan = planOf(6, { startsAt: '2027-03-12T22:30:00Z', timeZone: 'Europe/Vienna' });
    const { blocks, dated, ends } = runSheet(plan, (at, zone) => timeOfDay(at, 'en-GB', zone));
    expect(dated).toBe(true);
    expect(blocks[0]?.rows[0]?.at).toBe('23:30');
    // Ten minutes of gathering, three of welcome.
    expect(blocks[1]?.rows[0]?.at).toBe('23:40');
    expect(blocks[2]?.rows[0]?.at).toBe('23:43');
    expect(ends).toMatch(/^0[01]:/);
  });

  it('counts from the doors while the date is open', () => {
    const { blocks, dated } = runSheet(planOf(3));
    expect(dated).toBe(false);
    expect(blocks.slice(0, 3).map(({ rows }) => rows[0]?.at)).toEqual(['0:00', '0:10', '0:13']);
  });
});

describe('a name in a circle', () => {
  it('is broken between words and cut with an ellipsis', () => {
    expect(wrapped('Charcoal Burner’s Coat', 12, 3)).toEqual(['Charcoal', 'Burner’s', 'Coat']);
    expect(wrapped('one two three four five six', 7, 2)).toEqual(['one two', 'three…']);
    expect(wrapped('Unbreakablename', 8, 3)).toEqual(['Unbreak…']);
    expect(wrapped('', 8, 3)).toEqual([]);
  });
});
