import { type Signal, signal } from '@preact/signals';
import type { TastingId } from '../../core/ids.ts';
import type { Plan } from '../../core/tasting.ts';
import { type FailureCode, passesByItself } from '../../shared/wire/answer.ts';
import type { StoredPlan } from '../../shared/wire/http.ts';
import type { HostApi } from '../api.ts';

/** Where the words on this page are. */
export type Keeping =
  | { readonly is: 'kept' }
  /** Changed here; it will be sent at the next pause. */
  | { readonly is: 'changed' }
  | { readonly is: 'sending' }
  /** Not kept yet; it is tried again by itself where that may help. */
  | { readonly is: 'failed'; readonly code: FailureCode; readonly again: boolean }
  /** Another device has kept a different plan in the meantime; nothing is sent until somebody has chosen. */
  | { readonly is: 'elsewhere'; readonly theirs: StoredPlan };

export interface Draft {
  readonly plan: Signal<Plan>;
  readonly keeping: Signal<Keeping>;
  /** @param byItself nobody has asked for it: it gives way where another device has kept a plan in the meantime */
  readonly edit: (change: (plan: Plan) => Plan, byItself?: boolean) => void;
  /** Sends at once what waits for a pause. */
  readonly flush: () => void;
  /** Looks whether another device has changed the plan. Answers whether its plan was taken over. */
  readonly look: () => Promise<boolean>;
  readonly takeTheirs: () => void;
  readonly keepMine: () => void;
  readonly stop: () => void;
}

export interface DraftOptions {
  readonly api: Pick<HostApi, 'plan' | 'savePlan'>;
  readonly tasting: TastingId;
  readonly stored: StoredPlan;
  /** Calls back after so many ms; answers how to call it off. */
  readonly after: (ms: number, then: () => void) => () => void;
}

/** Ms of rest after the last change before it is sent, and before a failed sending is tried again. */
const pauseMs = 700;
const retriesMs = [2000, 5000, 10_000, 30_000] as const;

const same = (one: Plan, other: Plan): boolean => JSON.stringify(one) === JSON.stringify(other);

/** The plan under the finger, kept on the server as it changes, one sending at a time. */
export function openDraft({ api, tasting, stored, after }: DraftOptions): Draft {
  const plan = signal(stored.plan);
  const keeping = signal<Keeping>({ is: 'kept' });
  let base = stored.revision;
  let sent = stored.plan;
  /** Whether somebody has changed here what is not kept yet. */
  let touched = false;
  let failures = 0;
  let sending = false;
  let stopped = false;
  let callOff = (): void => {};

  function sendAfter(ms: number): void {
    callOff();
    if (!stopped) callOff = after(ms, () => void send());
  }

  async function send(): Promise<void> {
    callOff();
    if (sending || keeping.value.is === 'elsewhere' || keeping.value.is === 'kept') return;
    sending = true;
    keeping.value = { is: 'sending' };
    const mine = plan.value;
    const answer = await api.savePlan(tasting, { plan: mine, base });
    sending = false;
    if (answer.ok) {
      failures = 0;
      base = answer.body.revision;
      sent = mine;
      if (plan.value === mine) {
        touched = false;
        keeping.value = { is: 'kept' };
      } else {
        keeping.value = { is: 'changed' };
        sendAfter(stopped ? 0 : pauseMs);
        if (stopped) await send();
      }
      return;
    }
    if (answer.code === 'plan-changed') return meetTheirs();
    const again = passesByItself(answer.code);
    keeping.value = { is: 'failed', code: answer.code, again };
    if (again) sendAfter(retriesMs[Math.min(failures, retriesMs.length - 1)] ?? 30_000);
    failures += 1;
  }

  async function meetTheirs(): Promise<void> {
    const answer = await api.plan(tasting);
    if (!answer.ok) {
      keeping.value = { is: 'failed', code: answer.code, again: true };
      sendAfter(retriesMs[0]);
      return;
    }
    if (!touched || same(answer.body.plan, plan.value)) take(answer.body);
    else keeping.value = { is: 'elsewhere', theirs: answer.body };
  }

  function take(theirs: StoredPlan): void {
    callOff();
    base = theirs.revision;
    sent = theirs.plan;
    plan.value = theirs.plan;
    touched = false;
    keeping.value = { is: 'kept' };
  }

  return {
    plan,
    keeping,
    edit(change, byItself = false) {
      const next = change(plan.value);
      if (next === plan.value) return;
      plan.value = next;
      touched ||= !byItself;
      if (keeping.value.is === 'elsewhere') return;
      if (!sending) keeping.value = { is: 'changed' };
      sendAfter(pauseMs);
    },
    flush: () => void send(),
    async look() {
      if (sending || keeping.value.is !== 'kept') return false;
      const answer = await api.plan(tasting);
      if (!answer.ok || answer.body.revision <= base) return false;
      // While the answer was on its way something may have been typed here.
      if (keeping.value.is !== 'kept' || plan.value !== sent) return false;
      const changed = !same(answer.body.plan, plan.value);
      take(answer.body);
      return changed;
    },
    takeTheirs() {
      if (keeping.value.is === 'elsewhere') take(keeping.value.theirs);
    },
    keepMine() {
      if (keeping.value.is !== 'elsewhere') return;
      base = keeping.value.theirs.revision;
      keeping.value = { is: 'changed' };
      void send();
    },
    stop() {
      stopped = true;
      if (keeping.value.is === 'changed') void send();
      else callOff();
    },
  };
}

/** Sends what waits; resolves when the plan is kept, or when keeping it needs more than waiting. */
export function settled({ keeping, flush }: Pick<Draft, 'keeping' | 'flush'>): Promise<void> {
  flush();
  let end = (): void => {};
  const atRest = new Promise<void>((resolve) => {
    end = keeping.subscribe(({ is }) => {
      if (is !== 'changed' && is !== 'sending') resolve();
    });
  });
  return atRest.finally(() => end());
}
