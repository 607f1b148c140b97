import { describe, expect, it } from 'vitest';
import type { SessionEvent } from '../../core/session/event.ts';
import { attackCluster } from '../attack/cluster/cluster.ts';
import { faultsIn, type History } from '../attack/simulation/checks/seen.ts';
import { EveningTold } from '../support/evening.ts';
import { planOf } from '../support/plans.ts';

/** A log with three titles, and what honest devices saw of it. */
function honest(): { readonly log: readonly SessionEvent[]; readonly history: History } {
  const evening = new EveningTold(planOf(3));
  for (const title of ['one', 'two', 'three']) evening.host({ type: 'MendTitle', title });
  const log = evening.events;
  const versionOf = (title: string): number =>
    1 + log.findIndex((event) => event.type === 'TitleMended' && event.title === title);
  const asked = ['one', 'two', 'three'].map((title, index) => ({
    title,
    asked: 10 * index,
    answered: { at: 10 * index + 5, version: versionOf(title) },
  }));
  return { log, history: { asked, seen: [] } };
}

describe('the checker of histories', () => {
  it('has nothing against an honest one, and a command without an answer may have been done or not', () => {
    const { log, history } = honest();
    expect(faultsIn(history, log)).toEqual([]);
    const [one, two, three] = history.asked;
    if (one === undefined || two === undefined || three === undefined) throw new Error('Three were asked.');
    const unknown = [one, { title: two.title, asked: two.asked }, three, { title: 'four', asked: 50 }];
    expect(faultsIn({ ...history, asked: unknown }, log)).toEqual([]);
  });

  it('finds what was answered before it was stored, and then lost', () => {
    const { log, history } = honest();
    expect(faultsIn(history, log.slice(0, -1)).join()).toContain('"three" was answered and is lost');
  });

  it('finds the append of a stale owner: done twice, or written over', () => {
    const { log, history } = honest();
    const last = log.at(-1);
    if (last === undefined) throw new Error('There is a last event.');
    expect(faultsIn(history, [...log, last]).join()).toContain('"three" stands in the log 2 times');
    const over = [...log.slice(0, -2), last, last].slice(0, log.length);
    expect(faultsIn(history, over).join()).toContain('"two" was answered and is lost');
  });

  it('finds an order that is not that of real time', () => {
    const { log, history } = honest();
    const [one, two, three] = history.asked;
    if (one === undefined || two === undefined || three === undefined) throw new Error('Three were asked.');
    const asked = [
      one,
      { ...two, asked: 40, answered: { ...two.answered, at: 45, version: two.answered?.version ?? 0 } },
      three,
    ];
    expect(faultsIn({ ...history, asked }, log).join()).toContain(
      '"three" was answered before "two" was asked',
    );
  });

  it('finds a view that the log does not make, one from the future, and one that goes back', () => {
    const { log, history } = honest();
    const view = { version: log.length + 1 };
    const seen = [
      { device: 'Noor', view },
      { device: 'Noor', view: { version: log.length } },
    ];
    const said = faultsIn({ ...history, seen }, log).join();
    expect(said).toContain(`saw version ${log.length + 1} of a log of ${log.length}`);
    expect(said).toContain('went back');
    expect(said).toContain('something else');
  });
});

it('three processes go on through a killed owner, a stopped one and a restart, and nothing is lost, doubled or old', async () => {
  const { faults, acknowledged, views, outages } = await attackCluster({ rounds: 2, evenings: 2, seed: 11 });
  expect(faults).toEqual([]);
  expect(acknowledged).toBeGreaterThan(10);
  expect(views).toBeGreaterThan(10);
  expect([...outages.values()].flat()).toHaveLength(2);
});
