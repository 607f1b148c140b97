import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import { openSqliteStore } from '../../server/store/sqlite.ts';
import type { RecapExport } from '../../shared/wire/http.ts';
import { type Guest, House } from './support/house.ts';
import { ManualClock } from './support/manual-clock.ts';
import { aPlan } from './support/plans.ts';

let folder: string;
let house: House;
const open = () =>
  House.open({ clock: new ManualClock(), store: openSqliteStore(join(folder, 'quietpour.db')) });
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'release-'));
  house = await open();
});
afterEach(async () => {
  await house.close();
  rmSync(folder, { recursive: true });
});

interface Made {
  readonly tasting: string;
  readonly hostKey: string;
}
const files = ['recap', 'recap.json', 'recap.csv'] as const;
const told = async ({ tasting, hostKey }: Made, file: (typeof files)[number] = 'recap'): Promise<string> => {
  const answer = await fetch(`${house.url}/api/tastings/${tasting}/${file}`, {
    headers: { authorization: `Bearer ${hostKey}` },
  });
  return answer.text();
};
const counted = async (made: Made): Promise<number | undefined> =>
  (JSON.parse(await told(made)) as EveningRecap).liking?.n;

/** Noor shares with her name, three of the others let their page count, two keep it; the evening is over. */
async function anEveningOver() {
  const made = await house.plan(aPlan({ liking: true }));
  const host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  const [noor, alba, bo, cyd, dot, eli] = [
    await house.guest(made, 'Noor'),
    await house.guest(made, 'Alba'),
    await house.guest(made, 'Bo'),
    await house.guest(made, 'Cyd'),
    await house.guest(made, 'Dot'),
    await house.guest(made, 'Eli'),
  ];
  await host.host({ type: 'JumpTo', cue: 'one/first/look' });
  const likings: readonly (readonly [Guest, number])[] = [
    [noor, 8],
    [alba, 4],
    [bo, 4],
    [cyd, 4],
    [dot, 1],
    [eli, 2],
  ];
  for (const [guest, value] of likings) await guest.save({ field: 'liking', value });
  await noor.save({ field: 'nose-words', value: { 'own:robin-of-the-yard': 'clear' } });
  await noor.share();
  for (const guest of [alba, bo, cyd]) await guest.share({ sharing: 'counted' });
  await host.host({ type: 'OpenDiscussion', pours: ['one'] });
  await host.host({ type: 'Finish' });
  return { made, host, noor, alba, bo, cyd, dot, eli };
}

describe('a recap that was shown', () => {
  it('[Q8] is the same to the byte after one guest or two let theirs count or take it back, and then changes by three', {
    timeout: 60_000,
  }, async () => {
    const { made, alba, dot, eli } = await anEveningOver();
    const first = await Promise.all(files.map((file) => told(made, file)));
    expect(await counted(made)).toBe(4);
    const again = async () => Promise.all(files.map((file) => told(made, file)));
    await dot.share({ sharing: 'counted' });
    expect(await again()).toEqual(first);
    await alba.share({ sharing: 'private' });
    expect(await again()).toEqual(first);
    await house.close();
    house = await open();
    expect(await again()).toEqual(first);
    const back = await house.enter({ protocol: 2, role: 'guest', tasting: made.tasting, key: eli.key });
    await back.share({ sharing: 'counted' });
    expect(await counted(made)).toBe(5);
  });

  it('[Q2, Q8] loses a named page at once, and has then no anonymous one to be found by subtraction', {
    timeout: 60_000,
  }, async () => {
    const { made, noor, dot } = await anEveningOver();
    expect(await told(made, 'recap.json')).toContain('robin-of-the-yard');
    await dot.share({ sharing: 'counted' });
    await noor.share({ sharing: 'private' });
    for (const file of files) expect(await told(made, file)).not.toContain('robin-of-the-yard');
    expect(await counted(made)).toBe(0);
    await dot.share({ sharing: 'private' });
    expect(await counted(made)).toBe(3);
    await noor.share();
    const file = JSON.parse(await told(made, 'recap.json')) as RecapExport;
    expect([file.recap.liking?.n, file.notes[0]?.notes.length]).toEqual([4, 1]);
  });

  it('[Q7, Q8] is forgotten with one who was in it, and no word of it was ever in a file', {
    timeout: 60_000,
  }, async () => {
    const { made, noor, cyd } = await anEveningOver();
    expect(await told(made)).toContain('robin-of-the-yard');
    const forget = (key: string) => house.ask('DELETE', `/api/keepsake/${made.tasting}`, { key });
    expect((await forget(cyd.key)).status).toBe(204);
    expect(await counted(made)).toBe(1);
    expect((await forget(noor.key)).status).toBe(204);
    expect(await counted(made)).toBe(0);
    for (const file of files) expect(await told(made, file)).not.toContain('robin-of-the-yard');
    const bytes = readdirSync(folder).map((name) => readFileSync(join(folder, name)).toString('latin1'));
    expect(bytes.join('\n')).not.toContain('robin-of-the-yard');
  });

  it('[Q8] asked for while a guest lets theirs count, is told once and stays', {
    timeout: 60_000,
  }, async () => {
    const { made, dot } = await anEveningOver();
    const asked = [told(made), dot.share({ sharing: 'counted' }), told(made), told(made)] as const;
    const [first, , ...others] = await Promise.all(asked);
    expect(new Set([first, ...others]).size).toBe(1);
  });
});
