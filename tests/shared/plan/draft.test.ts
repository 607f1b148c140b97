import { describe, expect, it } from 'vitest';
import { tastingId } from '../../../core/ids.ts';
import type { Plan } from '../../../core/tasting.ts';
import type { HostApi } from '../../../host/api.ts';
import { openDraft } from '../../../host/plan/draft.ts';
import type { FailureCode, HttpAnswer } from '../../../shared/wire/answer.ts';
import type { StoredPlan } from '../../../shared/wire/http.ts';
import { planOf } from '../../support/plans.ts';

const tasting = tastingId('t');
const titled =
  (title: string) =>
  (plan: Plan): Plan => ({ ...plan, title });

/** A server in memory, and timers that go off when told to. */
function desk() {
  let kept: StoredPlan = {
    tasting,
    code: 'ABC234',
    plan: planOf(3),
    revision: 1,
    stage: 'planned',
    linkCode: 'ABC123',
    guestOrigins: [],
  };
  let failing: FailureCode | undefined;
  const waiting = new Set<{ readonly ms: number; readonly then: () => void }>();
  const bases: number[] = [];
  const fail = <Body>(code: FailureCode): HttpAnswer<Body> => ({ ok: false, code });
  const api: Pick<HostApi, 'plan' | 'savePlan'> = {
    plan: async () => (failing === undefined ? { ok: true, body: kept } : fail(failing)),
    async savePlan(_, { plan, base }) {
      bases.push(base);
      if (failing !== undefined) return fail(failing);
      if (base !== kept.revision) return fail('plan-changed');
      kept = { ...kept, plan, revision: kept.revision + 1 };
      return { ok: true, body: { revision: kept.revision } };
    },
  };
  const after = (ms: number, then: () => void) => {
    const timer = { ms, then };
    waiting.add(timer);
    return () => void waiting.delete(timer);
  };
  const settle = async () => {
    for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
  };
  return {
    draft: openDraft({ api, tasting, stored: kept, after }),
    kept: () => kept,
    bases,
    waiting,
    failWith: (code: FailureCode | undefined) => {
      failing = code;
    },
    elsewhere: (title: string) => {
      kept = { ...kept, plan: { ...kept.plan, title }, revision: kept.revision + 1 };
    },
    settle,
    async ring() {
      const timers = [...waiting];
      waiting.clear();
      for (const { then } of timers) then();
      await settle();
    },
  };
}

describe('a plan under the finger', () => {
  it('is kept once at a pause, with the revision that it began from', async () => {
    const { draft, kept, bases, ring } = desk();
    draft.edit(titled('a'));
    draft.edit(titled('ab'));
    expect(draft.keeping.value.is).toBe('changed');
    await ring();
    draft.edit(titled('abc'));
    await ring();
    expect(kept().plan.title).toBe('abc');
    expect(bases).toEqual([1, 2]);
    expect(draft.keeping.value.is).toBe('kept');
  });

  it('keeps what is typed while the sending is on its way', async () => {
    const { draft, kept, ring, settle } = desk();
    draft.edit(titled('a'));
    draft.flush();
    draft.edit(titled('ab'));
    await settle();
    expect(kept().plan.title).toBe('a');
    expect(draft.keeping.value.is).toBe('changed');
    await ring();
    expect(kept().plan.title).toBe('ab');
  });

  it('tries again by itself while the server is away, and loses nothing', async () => {
    const { draft, kept, failWith, ring } = desk();
    failWith('no-answer');
    draft.edit(titled('a'));
    await ring();
    await ring();
    expect(draft.keeping.value).toEqual({ is: 'failed', code: 'no-answer', again: true });
    failWith(undefined);
    await ring();
    expect(kept().plan.title).toBe('a');
    expect(draft.keeping.value.is).toBe('kept');
  });

  it('does not try again what the server refuses', async () => {
    const { draft, failWith, waiting, ring } = desk();
    failWith('plan-invalid');
    draft.edit(titled('a'));
    await ring();
    expect(draft.keeping.value).toEqual({ is: 'failed', code: 'plan-invalid', again: false });
    expect(waiting.size).toBe(0);
  });

  it('tells of another device and sends nothing until one plan is chosen', async () => {
    for (const choice of ['mine', 'theirs'] as const) {
      const { draft, kept, bases, elsewhere, ring, settle } = desk();
      elsewhere('theirs');
      draft.edit(titled('mine'));
      await ring();
      expect(draft.keeping.value.is).toBe('elsewhere');
      draft.edit(titled('mine, still'));
      expect(draft.keeping.value.is).toBe('elsewhere');
      await ring();
      expect(bases).toEqual([1]);
      expect(kept().plan.title).toBe('theirs');
      if (choice === 'mine') draft.keepMine();
      else draft.takeTheirs();
      await settle();
      expect(kept().plan.title).toBe(choice === 'mine' ? 'mine, still' : 'theirs');
      expect(draft.plan.value.title).toBe(kept().plan.title);
      expect(draft.keeping.value.is).toBe('kept');
    }
  });

  it('gives way to another device with what nobody has asked for, and not with what somebody typed besides', async () => {
    for (const typed of [false, true]) {
      const { draft, bases, elsewhere, ring } = desk();
      elsewhere('theirs');
      draft.edit(titled('drawn by lot'), true);
      if (typed) draft.edit(titled('mine'));
      await ring();
      expect(bases).toEqual([1]);
      expect(draft.keeping.value.is).toBe(typed ? 'elsewhere' : 'kept');
      expect(draft.plan.value.title).toBe(typed ? 'mine' : 'theirs');
    }
  });

  it('remembers no longer what somebody typed once it is kept', async () => {
    const { draft, elsewhere, ring } = desk();
    draft.edit(titled('mine'));
    await ring();
    elsewhere('theirs');
    draft.edit(titled('drawn by lot'), true);
    await ring();
    expect(draft.plan.value.title).toBe('theirs');
  });

  it('takes over what another device has kept where nothing is typed here', async () => {
    const { draft, elsewhere } = desk();
    expect(await draft.look()).toBe(false);
    elsewhere('theirs');
    expect(await draft.look()).toBe(true);
    expect(draft.plan.value.title).toBe('theirs');
    draft.edit(titled('mine'));
    elsewhere('again');
    expect(await draft.look()).toBe(false);
    expect(draft.plan.value.title).toBe('mine');
  });

  it('is sent before the page goes', async () => {
    const { draft, kept, settle } = desk();
    draft.edit(titled('last words'));
    draft.stop();
    await settle();
    expect(kept().plan.title).toBe('last words');
  });
});
