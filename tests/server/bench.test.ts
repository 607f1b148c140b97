import { beforeAll, describe, expect, it } from 'vitest';
import { bundleChildren } from '../bench/child.ts';
import { needOf } from '../bench/cluster.ts';
import { type Figure, met, quantile } from '../bench/figures.ts';
import { growthPicture } from '../bench/growth-picture.ts';
import { measureNotes } from '../bench/notes.ts';
import { report } from '../bench/report.ts';
import { measureSessions } from '../bench/sessions.ts';
import { measureStorm } from '../bench/storm.ts';
import { measureTap, tapFigures } from '../bench/tap.ts';

/** That what measures measures the right thing; how long anything takes is no business of a test. */
const measured = (figures: readonly Figure[]): boolean =>
  figures.length > 0 && figures.every(({ value }) => Number.isFinite(value));

beforeAll(bundleChildren);

describe('the bench', () => {
  it('lets the floor, bare socket.io and ours send the same bytes to as many guests', async () => {
    const run = await measureTap(3, 2);
    expect(measured(tapFigures(run))).toBe(true);
    expect(run.bytes.ours.length).toBe(4);
    expect(new Set(run.bytes.ours).size).toBeGreaterThan(1);
    expect(run.bytes.floor.slice(1)).toEqual(run.bytes.ours.slice(0, -1));
    expect(run.bytes.bare).toEqual(run.bytes.floor);
    expect(growthPicture([run], [])).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
  });

  it('has notes acknowledged, and evenings that turn by their own clock', async () => {
    const notes = await measureNotes(3, 1);
    expect(measured(notes)).toBe(true);
    const run = await measureSessions({ sessions: 2, guests: 2, seconds: 1, busyDisk: true });
    expect(run.turned).toBeGreaterThan(0);
    const table = report([{ name: 'Notes', at: 'now', figures: notes, sessions: [run] }]);
    expect(table).toContain('| 2, busy disk |');
  });

  it('lets a crowd come back to ours and to a bare server that greets as ours does', async () => {
    expect(measured(await measureStorm(3, 1))).toBe(true);
  });

  it('reckons what many processes need from what one of them has done', () => {
    // By hand: 0.4 / (200 x 20) = 100 millionths each; 0.5 / 100 millionths = 5000; 100,000 x 10 KiB = 0.95 GiB.
    const run = { sessions: 200, busy: 0.4, turned: 600, bytesPerGuest: 10_240 };
    const { perProcess, processes, arithmetic } = needOf(run, 15, 800);
    expect([perProcess, processes]).toEqual([5000, 1]);
    expect(arithmetic).toContain('= 50 events a second, of 800');
    expect(arithmetic).toContain('100000 x 10.0 KiB = 1.0 GiB');
  });

  it('calls what misses its goal missed, and what was not measured not met', () => {
    const figure = { name: 'wait', unit: 'ms', goal: 10 };
    expect(met({ ...figure, value: 10 })).toBe(true);
    expect(met({ ...figure, value: 10.1 })).toBe(false);
    expect(met({ ...figure, value: 10.1, atLeast: true })).toBe(true);
    expect(met({ ...figure, value: quantile([], 0.99) })).toBe(false);
    // Nearest rank of 1..200: the 198th.
    expect(
      quantile(
        Array.from({ length: 200 }, (_, index) => 200 - index),
        0.99,
      ),
    ).toBe(198);
  });
});
