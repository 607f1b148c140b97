import { signal } from '@preact/signals-core';
import { describe, expect, it } from 'vitest';
import { cueId, type PourId, pourId } from '../../../core/ids.ts';
import { compile } from '../../../core/running-order/compile.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import type { HostPour, HostTrial, HostUnderWay } from '../../../core/session/views/host.ts';
import { planSchema } from '../../../core/tasting.ts';
import { epochMs } from '../../../core/units.ts';
import { createHostActions } from '../../../host/conduct/actions/host-actions.ts';
import { keyCommand } from '../../../host/conduct/actions/key-map.ts';
import { primaryAction } from '../../../host/conduct/actions/primary-action.ts';
import { unopenedDiscussions } from '../../../host/conduct/drawers/unopened-discussions.ts';
import { stretchesOf } from '../../../host/conduct/order/stretches.ts';
import { demoEvening } from '../../../shared/demo/evening.ts';
import { createStatus } from '../../../shared/ui/status.ts';
import type { SentHostCommand } from '../../../shared/wire/commands.ts';

const order = compile(planSchema.parse(demoEvening));
const talk = order.find((cue) => cue.kind === 'discussion');
const names = order.find((cue) => cue.kind === 'reveal');
if (talk?.kind !== 'discussion' || names?.kind !== 'reveal')
  throw new Error('The demo has a talk and a reveal.');

const pour = (id: string, more: Partial<HostPour> = {}): HostPour => ({
  id: pourId(id),
  position: 1,
  flight: 0,
  name: id,
  producer: null,
  code: null,
  reached: true,
  revealed: false,
  dropped: false,
  movable: false,
  discussion: 'silent',
  ...more,
});
const [first, second, third] = talk.pours;
const at = (cue: Cue, pours: readonly HostPour[], trials: readonly HostTrial[] = []) =>
  primaryAction(
    { cue: cue.id, next: cueId('next'), pours, trials, results: [], toTell: [], naming: 'one-by-one' },
    cue,
  );

describe('the big button', () => {
  it('moves on, naming the cue it leaves [P1]', () => {
    const cue = order.find(({ kind }) => kind === 'water');
    if (cue === undefined) throw new Error('The demo has water.');
    expect(at(cue, [])).toEqual({ does: 'advance', from: cue.id, to: 'next' });
  });

  it('first opens the talk about every glass that has been tasted, then moves on', () => {
    const pours = [
      pour(first ?? ''),
      pour(second ?? '', { dropped: true }),
      pour(third ?? '', { reached: false }),
    ];
    expect(at(talk, pours)).toEqual({ does: 'open-discussion', pours: [first] });
    expect(at(talk, [pour(first ?? '', { discussion: 'open' })]).does).toBe('advance');
    expect(at(talk, [pour(first ?? '', { discussion: 'open' }), pour(second ?? '')])).toEqual({
      does: 'open-discussion',
      pours: [second],
    });
  });

  it('opens the talk about an odd-one-out with its flight', () => {
    const id = pourId('trial');
    const trial: HostTrial = { id, a: pourId('a'), b: pourId('b'), reached: true, discussion: 'silent' };
    const cue = { ...talk, pours: [...talk.pours, id] };
    const opened = talk.pours.map((each) => pour(each, { discussion: 'open' }));
    expect(at(cue, opened, [trial])).toEqual({ does: 'open-discussion', pours: [id] });
    expect(at(cue, opened, [{ ...trial, reached: false }]).does).toBe('advance');
  });

  it('does not open again what the host has closed', () => {
    expect(at(talk, [pour(first ?? '', { discussion: 'closed' })]).does).toBe('advance');
  });

  it('moves on from a talk about glasses that nobody has tasted', () => {
    expect(at(talk, [pour(first ?? '', { reached: false })]).does).toBe('advance');
  });

  it('tells the names at a reveal one by one, or together where the plan says so, then moves on [P21]', () => {
    const tells = (toTell: readonly PourId[], naming: HostUnderWay['naming'] = 'one-by-one') =>
      primaryAction(
        { cue: names.id, next: cueId('next'), pours: [], trials: [], results: [], toTell, naming },
        names,
      );
    const two = names.pours.slice(0, 2);
    const from = names.id;
    expect(tells(two)).toEqual({ does: 'reveal', from, pours: [two[0]] });
    expect(tells(two.slice(1))).toEqual({ does: 'reveal', from, pours: [two[1]] });
    expect(tells(two, 'all-at-once')).toEqual({ does: 'reveal', from, pours: two });
    expect(tells([]).does).toBe('advance');
  });

  it('offers to finish where nothing comes after', () => {
    const last = order.at(-1);
    expect(
      primaryAction(
        {
          cue: cueId('farewell'),
          next: null,
          pours: [],
          trials: [],
          results: [],
          toTell: [],
          naming: 'one-by-one',
        },
        last,
      ),
    ).toEqual({
      does: 'finish',
    });
  });
});

describe('the end of an evening', () => {
  const [ash, birch] = [pour(first ?? ''), pour(second ?? '')];
  const entry = (cue: Cue) => ({ cue: cue.id, at: epochMs(0), planned: cue.ideal, by: 'host' as const });
  const trial: HostTrial = {
    id: pourId('trial'),
    a: ash.id,
    b: birch.id,
    reached: true,
    discussion: 'silent',
  };

  it('asks about what was tasted and never opened, and takes it for talked about where its talk was come to', () => {
    const more = [pour('open', { discussion: 'open' }), pour('dropped', { dropped: true })];
    const view = {
      pours: [ash, pour('later'), pour('not-yet', { reached: false }), ...more],
      trials: [trial],
      timeline: [entry(talk)],
    };
    expect(unopenedDiscussions(view, order)).toEqual([
      { id: ash.id, likelyTalked: true },
      { id: 'later', likelyTalked: false },
      { id: 'trial', likelyTalked: false },
    ]);
    expect(unopenedDiscussions({ ...view, timeline: [] }, order)[0]).toEqual({
      id: ash.id,
      likelyTalked: false,
    });
  });

  it('opens those first, ends nothing when that is refused, and just ends when there are none', async () => {
    const asked: SentHostCommand[] = [];
    const conductingWith = (ok: boolean) =>
      createHostActions({
        commands: {
          waiting: signal(new Set()),
          send: (command) => {
            asked.push(command);
            return Promise.resolve(ok);
          },
        },
        status: createStatus(),
        onFinish: () => undefined,
      });
    conductingWith(true).finish([ash.id, trial.id]);
    await Promise.resolve();
    expect(asked.splice(0)).toEqual([
      { type: 'OpenDiscussion', pours: [ash.id, trial.id] },
      { type: 'Finish' },
    ]);
    conductingWith(true).finish([]);
    expect(asked.splice(0)).toEqual([{ type: 'Finish' }]);
    conductingWith(false).finish([ash.id]);
    await Promise.resolve();
    await Promise.resolve();
    expect(asked.map(({ type }) => type)).toEqual(['OpenDiscussion']);
  });
});

describe('the keyboard', () => {
  const press = (key: string, more: Partial<Parameters<typeof keyCommand>[0]> = {}) =>
    keyCommand({ key, repeat: false, chord: false, inField: false, onControl: false, ...more });

  it('knows the keys of a keyboard and of a presentation remote', () => {
    expect([' ', 'ArrowRight', 'PageDown'].map((key) => press(key))).toEqual(['next', 'next', 'next']);
    expect(['ArrowLeft', 'PageUp'].map((key) => press(key))).toEqual(['back', 'back']);
    expect([press('h'), press('H'), press('?')]).toEqual(['hold', 'hold', 'keys']);
    expect(['Enter', 'a', 'Escape', 'constructor'].map((key) => press(key))).toEqual(
      Array(4).fill(undefined),
    );
  });

  it('keeps still in a field, with a chord, and when a key is leant on', () => {
    for (const still of [{ inField: true }, { chord: true }, { repeat: true }]) {
      expect(press('PageDown', still)).toBeUndefined();
    }
  });

  it('leaves the space bar to a button that was reached with the keyboard', () => {
    expect(press(' ', { onControl: true })).toBeUndefined();
    expect(press('PageDown', { onControl: true })).toBe('next');
  });
});

describe('the folded running order', () => {
  it('has one line for each glass and loses no cue', () => {
    const stretches = stretchesOf(order);
    expect(stretches.flatMap(({ cues }) => cues)).toEqual(order);
    expect(stretches.filter(({ of }) => of === 'glass')).toHaveLength(6);
    expect(stretches.filter(({ of }) => of === 'practice')).toHaveLength(1);
  });

  it('keeps both halves of a glass that a break was called in', () => {
    const middle = order.findIndex((cue) => cue.kind === 'step' && cue.step === 'nose');
    const called: Cue = { ...talk, id: cueId('called-break-1'), kind: 'break', called: true } as Cue;
    const broken = [...order.slice(0, middle), called, ...order.slice(middle)];
    expect(stretchesOf(broken).flatMap(({ cues }) => cues)).toEqual(broken);
    expect(new Set(stretchesOf(broken).map(({ id }) => id)).size).toBe(stretchesOf(broken).length);
  });
});
