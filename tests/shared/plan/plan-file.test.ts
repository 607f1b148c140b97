import { describe, expect, it } from 'vitest';
import { photoId } from '../../../core/ids.ts';
import { againOf, readPlanFile, writePlanFile } from '../../../host/plan/copies/plan-file.ts';
import { decodeFile, mostBytes } from '../../../host/plan/csv/decode-file.ts';
import { delimiterOf } from '../../../host/plan/csv/delimiter.ts';
import { mostLines, parseList } from '../../../host/plan/csv/parse-list.ts';
import { planOf } from '../../support/plans.ts';

describe('a plan as a file', () => {
  it('opens as it was, but for photos, which stay on their server', () => {
    const plan = planOf(3, {
      blind: true,
      startsAt: '2026-11-27T19:00:00+01:00',
      theme: { kind: 'vertical', by: 'age' },
    });
    const withPhoto = {
      ...plan,
      pours: plan.pours.map((pour) => ({ ...pour, photos: { front: photoId('p') } })),
    };
    for (const text of [writePlanFile(withPhoto), `\uFEFF${writePlanFile(plan)}`]) {
      const opened = readPlanFile(text);
      if (opened.is !== 'plan') throw new Error(opened.is);
      // But for the ids of its pours, which are drawn anew each time [Q4].
      const pours = opened.plan.pours.map((pour, index) => ({ ...pour, id: plan.pours[index]?.id }));
      expect({ ...opened.plan, pours }).toEqual(plan);
    }
  });

  it('names each problem by its place', () => {
    const plan = planOf(2);
    const spoilt = { ...plan, guests: 900, pours: plan.pours.map((pour) => ({ ...pour, abv: 146 })) };
    const opened = readPlanFile(JSON.stringify(spoilt));
    expect(opened.is === 'problems' && opened.problems.map(({ where }) => where)).toEqual([
      'pours 1 abv',
      'pours 2 abv',
      'guests',
    ]);
    expect(readPlanFile(JSON.stringify({ ...plan, pours: [plan.pours[0], plan.pours[0]] })).is).toBe(
      'problems',
    );
  });

  it.each(['', '{', 'null', '[]', '"plan"', '7'])('is not %j', (text) => {
    expect(readPlanFile(text)).toEqual({ is: 'not-json' });
  });

  it('of a duplicate has no date', () => {
    const again = againOf(planOf(2, { startsAt: '2026-11-27T19:00:00Z' }), 'x'.repeat(200));
    expect(again.startsAt).toBeUndefined();
    expect(again.title).toHaveLength(120);
    expect(readPlanFile(writePlanFile(again)).is).toBe('plan');
  });
});

describe('the file of a list', () => {
  const bytes = (...values: number[]) => new Uint8Array(values);

  it('is decoded as spreadsheets write it', () => {
    const text = 'Stärke;Größe';
    const wide = new Uint8Array(
      new Uint16Array([0xfeff, ...[...text].map((letter) => letter.charCodeAt(0))]).buffer,
    );
    const narrow = Uint8Array.from([...text], (letter) => letter.charCodeAt(0));
    expect(decodeFile(new TextEncoder().encode(text))).toEqual({ is: 'text', text });
    expect(decodeFile(wide)).toEqual({ is: 'text', text });
    expect(decodeFile(narrow)).toEqual({ is: 'text', text });
  });

  it('is refused where it is none', () => {
    expect(decodeFile(bytes(0x50, 0x4b, 3, 4, 0))).toEqual({ is: 'workbook' });
    expect(decodeFile(bytes(0x89, 0x50, 0, 0))).toEqual({ is: 'not-text' });
    expect(decodeFile(new Uint8Array(mostBytes + 1))).toEqual({ is: 'too-large' });
  });

  it.each([
    ['a\tb, c\td', '\t'],
    ['a;b,5;c\nd;e;f', ';'],
    ['a|b\nc|d', '|'],
    ['Orchard Wall, 46,3 %', ', '],
    ['a,b,c', ','],
    ['"a;b",c\n"d;e",f', ','],
    ['alone', ','],
  ])('%j is parted by %j', (text, delimiter) => {
    expect(delimiterOf(text)).toBe(delimiter);
  });

  it('is read up to a bound, and says so', () => {
    const long = parseList('a,b\n'.repeat(mostLines + 5));
    expect(long.cut).toBe(true);
    expect(long.lines).toHaveLength(mostLines);
  });
});
