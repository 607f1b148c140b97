import Papa from 'papaparse';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import type { RecapExport } from '../../shared/wire/http.ts';
import { type Guest, House, houseKey } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

let house: House;
beforeEach(async () => {
  house = await House.open({ clock: new ManualClock() });
});
afterEach(() => house.close());

const fields = ['look', 'nose', 'palate', 'finish', 'thoughts'] as const;

/** Fills every kind of field of one page; `mark` stands in everything that is written. */
async function fill(guest: Guest, mark: string, liking: number) {
  for (const field of fields) await guest.save({ field, value: `${mark}-${field}` });
  await guest.save({ field: 'nose-words', value: { pear: 'clear', [`own:${mark}`]: 'hint' } });
  await guest.save({ field: 'colour', value: 'hay' });
  await guest.save({ field: 'structure', value: { sweet: 3 } });
  await guest.save({ field: 'liking', value: liking });
  await guest.save({ field: 'feelings', value: ['calm'] });
}

async function anEvening() {
  const { made, host, noor, tomas } = await house.evening(aPlan({ liking: true }));
  const hidden = [
    await house.guest(made, 'Alba'),
    await house.guest(made, 'Bo'),
    await house.guest(made, 'Cyd'),
  ];
  await host.host({ type: 'JumpTo', cue: 'one/first/look' });
  await fill(noor, 'open-canary', 8);
  await fill(tomas, 'private-canary', 1);
  for (const guest of hidden) await fill(guest, 'counted-canary', 4);
  await noor.share();
  for (const guest of hidden) await guest.share({ sharing: 'counted' });
  await host.host({ type: 'OpenDiscussion', pours: ['one'] });
  return { made, host, noor, tomas, hidden };
}

const text = async (tasting: string, file: string, key: string) => {
  const answer = await fetch(`${house.url}/api/tastings/${tasting}/${file}`, {
    headers: { authorization: `Bearer ${key}` },
  });
  return { status: answer.status, headers: answer.headers, text: await answer.text() };
};
const files = ['recap', 'recap.json', 'recap.csv'];

describe('the recap over HTTP', () => {
  it('[Q1, Q2] never has a word of a private page, nor a name or a written word of one that only counts', async () => {
    const { made, host, noor } = await anEvening();
    await host.host({ type: 'Finish' });
    for (const file of files) {
      const answer = await text(made.tasting, file, made.hostKey);
      expect(answer.status).toBe(200);
      for (const secret of ['private-canary', 'Tomas', 'counted-canary', 'Alba', 'Bo"', 'Cyd', noor.seat])
        expect(answer.text, `${file}: ${secret}`).not.toContain(secret);
      expect(answer.text.includes('open-canary-nose')).toBe(file !== 'recap');
      expect(answer.text.includes('Noor')).toBe(file !== 'recap');
    }
    const { body } = await house.ask<EveningRecap>('GET', `/api/tastings/${made.tasting}/recap`, {
      key: houseKey,
    });
    expect(body.guests).toBe(5);
    expect(body.liking).toMatchObject({
      n: 4,
      figures: { pours: [{ pour: 'one', liking: { n: 4, mean: 5 } }] },
    });
    expect(body.colours).toMatchObject({ figures: [{ colours: [{ colour: 'hay', guests: 4 }] }] });
  });

  it('[Q2] loses the last anonymous ones when one of three takes the page back', async () => {
    const { made, host, hidden } = await anEvening();
    await hidden[0]?.share({ sharing: 'private' });
    await host.host({ type: 'Finish' });
    const { text: body } = await text(made.tasting, 'recap', made.hostKey);
    expect(JSON.parse(body)).toMatchObject({
      liking: { n: 1, limits: ['small-panel', 'anonymous-left-out', 'not-everyone-shared'] },
    });
  });

  it('[Q1] reads no page of a pour whose talk was never opened', async () => {
    const { made, host, noor } = await house.evening();
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    await fill(noor, 'unopened-canary', 8);
    await noor.share();
    await host.host({ type: 'Finish' });
    for (const file of files)
      expect((await text(made.tasting, file, made.hostKey)).text).not.toContain('unopened-canary');
  });

  it('comes when the evening is over, to its host only', async () => {
    const { made, host, noor } = await anEvening();
    for (const file of files) {
      const early = await text(made.tasting, file, made.hostKey);
      expect([early.status, JSON.parse(early.text).code]).toEqual([409, 'not-finished']);
      expect((await text(made.tasting, file, noor.key)).status).toBe(403);
      expect((await text(made.tasting, file, 'no-key-of-this-house')).status).toBe(401);
    }
    const planned = await house.plan();
    expect((await text(planned.tasting, 'recap', planned.hostKey)).status).toBe(409);
    await host.host({ type: 'Finish' });
    const elsewhere = await house.plan();
    expect((await text(made.tasting, 'recap', elsewhere.hostKey)).status).toBe(401);
    const path = `/api/tastings/${made.tasting}`;
    expect((await house.ask('DELETE', path, { key: made.hostKey })).status).toBe(204);
    expect((await text(made.tasting, 'recap.json', houseKey)).status).toBe(404);
  });

  it('is a CSV that another reader reads back, in which nothing that was typed is a formula', async () => {
    const { made, host, noor } = await house.evening(aPlan({ title: '=1+1' }));
    const typed = [
      '=HYPERLINK("http://x.example";"a")',
      '+1',
      '-1',
      '@SUM(A1)',
      '\t=1',
      ' =1',
      '＝1',
      'a "quoted", line\nand more',
    ];
    await host.host({ type: 'JumpTo', cue: 'one/first/look' });
    for (const [index, field] of fields.entries()) await noor.save({ field, value: typed[index] });
    await noor.save({ pour: 'one', field: 'nose', base: 1, value: typed[5] });
    await noor.share();
    await host.host({ type: 'OpenDiscussion', pours: ['one'] });
    await host.host({ type: 'Finish' });
    const csv = await text(made.tasting, 'recap.csv', made.hostKey);
    expect(csv.headers.get('content-type')).toBe('text/csv; charset=utf-8');
    expect(csv.headers.get('content-disposition')).toContain('attachment');
    const { data, errors } = Papa.parse<Record<string, string>>(csv.text.replace(/^\uFEFF/, ''), {
      header: true,
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    const cells = data.flatMap((row) => Object.values(row));
    const numeric = /^-?[\d.]+(e-?\d+)?$/;
    expect(cells.filter((cell) => /^\s*[=+\-@＝]/.test(cell) && !numeric.test(cell))).toEqual([]);
    const notes = data.filter(({ section }) => section === 'notes');
    expect(notes.map(({ guest, glass, measure }) => [guest, glass, measure])).toContainEqual([
      'Noor',
      '1',
      'look',
    ]);
    expect(data.find(({ measure }) => measure === 'title')?.value).toBe("'=1+1");
    const { text: json } = await text(made.tasting, 'recap.json', made.hostKey);
    const file = JSON.parse(json) as RecapExport;
    expect(file.recap.title).toBe('=1+1');
    expect(file.notes[0]?.notes[0]?.sealed).toContainEqual({ field: 'look', value: typed[0] });
  });
});
