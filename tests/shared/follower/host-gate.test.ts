import { describe, expect, it } from 'vitest';
import { pourId } from '../../../core/ids.ts';
import { hostView, runningOrderView } from '../../../core/session/views/host.ts';
import { epochMs } from '../../../core/units.ts';
import { createHostGate } from '../../../shared/follower/host-gate.ts';
import { doorsAt, EveningTold } from '../../support/evening.ts';
import { handClock } from './hand-clock.ts';

function gated() {
  const time = handClock(doorsAt);
  const gate = createHostGate({ now: () => epochMs(time.now()), after: time.after });
  const evening = new EveningTold();
  evening.lead = 200;
  const view = () => hostView(evening.underWay, evening.events.length);
  const order = () => runningOrderView(evening.underWay, evening.events.length);
  const level = () => {
    gate.receiveView(view());
    gate.receiveOrder(order());
  };
  const cue = () => {
    const shown = gate.view.peek();
    return shown?.status === 'under-way' ? String(shown.cue) : undefined;
  };
  level();
  return { time, gate, evening, view, order, level, cue };
}

describe('a host’s own screen', () => {
  it('[F4] turns at the moment that is set for everybody, like the phones', async () => {
    const { time, evening, level, cue } = gated();
    evening.next();
    level();
    await time.pass(199);
    expect(cue()).toBe('gathering');
    await time.pass(1);
    expect(cue()).toBe('welcome');
  });

  it('[F4] keeps the running order that it shows until the cue turns, so that no cue is without its words', async () => {
    const { time, gate, evening, level, cue } = gated();
    evening.goTo('birch/first/nose');
    level();
    await time.pass(200);
    evening.wait(0.2);
    expect(evening.host({ type: 'DropPour', pour: pourId('birch') })).toBe('done');
    level();
    const shows = () => gate.runningOrder.peek()?.cues.some(({ id }) => id === cue());
    expect([cue(), shows()]).toEqual(['birch/first/nose', true]);
    await time.pass(200);
    expect([cue(), shows()]).toEqual(['cedar/first/swirl', true]);
  });

  it('shows a change of the order at once when no cue turns, with or without a new view', () => {
    const { gate, evening, order } = gated();
    expect(evening.host({ type: 'FitTo', endsAt: epochMs(doorsAt) })).toBe('done');
    gate.receiveOrder(order());
    expect(gate.runningOrder.peek()?.unfitted.length).toBeGreaterThan(10);
  });

  it('[F2] never goes back, neither in the view nor in the order', async () => {
    const { time, gate, evening, view, order, level, cue } = gated();
    const old = { view: view(), order: order() };
    evening.next();
    evening.host({ type: 'DropPour', pour: pourId('fir') });
    level();
    gate.receiveView(old.view);
    gate.receiveOrder(old.order);
    await time.pass(200);
    expect(cue()).toBe('welcome');
    expect(gate.runningOrder.peek()?.version).toBe(evening.events.length);
  });

  it('shows the end at once', () => {
    const { gate, evening } = gated();
    evening.next();
    gate.receiveView(hostView(evening.underWay, evening.events.length));
    evening.host({ type: 'Finish' });
    if (evening.session.status !== 'finished') throw new Error('It is finished.');
    gate.receiveView(hostView(evening.session, evening.events.length));
    expect(gate.view.peek()?.status).toBe('finished');
  });
});
