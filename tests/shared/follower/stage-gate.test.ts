import { describe, expect, it } from 'vitest';
import { cueId } from '../../../core/ids.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import { createStageGate } from '../../../shared/follower/stage-gate.ts';
import type { StageUnderWay, StageView } from '../../../shared/wire/views.ts';
import { handClock } from './hand-clock.ts';

const base = {
  title: 'An evening',
  drink: 'spirit',
  blind: false,
  ownOrders: false,
  liking: false,
  sparkles: false,
  extraWords: [],
  terms: 'plain',
  callLink: null,
  glasses: [],
  cards: [],
  results: [],
  openBoards: [],
  sealed: [],
  justTold: [],
  truths: [],
} as const;

function at(version: number, cue: string, takesEffectAt = 0): StageUnderWay {
  return {
    ...base,
    version,
    status: 'under-way',
    cue: {
      id: cueId(cue),
      kind: 'water',
      pass: null,
      step: null,
      sense: null,
      position: null,
      pours: [],
      named: false,
      allergens: null,
      say: null,
      gate: false,
      asksReady: true,
      timed: true,
      remindsOfWater: false,
      call: 'hush',
    },
    next: null,
    takesEffectAt: epochMs(takesEffectAt),
    clock: { kind: 'held', startsAt: epochMs(0), remaining: durationMs(1000) },
    progress: { cue: 1, of: 2 },
    pacedBy: 'host',
    reminder: null,
    lastWaterAt: null,
  };
}

const finished = (version: number): StageView => ({
  ...base,
  version,
  status: 'finished',
  finishedAt: epochMs(0),
});

function gated() {
  const time = handClock(10_000);
  const gate = createStageGate({ now: () => epochMs(time.now()), after: time.after });
  return { time, gate, shown: () => gate.stage.peek() };
}

describe('the stage gate', () => {
  it('shows the first view at once, so that a newcomer never looks at nothing', () => {
    const { gate, shown } = gated();
    gate.receive(at(1, 'a', 10_500));
    expect(shown()?.version).toBe(1);
  });

  it('[F4] holds a new cue back until the moment that is set for everybody', async () => {
    const { gate, shown, time } = gated();
    gate.receive(at(1, 'a'));
    gate.receive(at(2, 'b', 10_200));
    await time.pass(199);
    expect(shown()?.version).toBe(1);
    await time.pass(1);
    expect(shown()?.version).toBe(2);
  });

  it('[F4] shows a cue whose moment has passed at once', () => {
    const { gate, shown } = gated();
    gate.receive(at(1, 'a'));
    gate.receive(at(2, 'b', 9_000));
    expect(shown()?.version).toBe(2);
  });

  it('[F4] does not wait for a moment so far ahead that a clock must be wrong', () => {
    const { gate, shown } = gated();
    gate.receive(at(1, 'a'));
    gate.receive(at(2, 'b', 10_000 + 60_000));
    expect(shown()?.version).toBe(2);
  });

  it('lets a change within the cue through at once', () => {
    const { gate, shown } = gated();
    gate.receive(at(1, 'a', 9_000));
    gate.receive(at(2, 'a', 9_000));
    expect(shown()?.version).toBe(2);
  });

  it('shows the newer of two views that both wait, and only once its moment has come', async () => {
    const { gate, shown, time } = gated();
    gate.receive(at(1, 'a'));
    gate.receive(at(2, 'b', 10_100));
    gate.receive(at(3, 'c', 10_300));
    await time.pass(200);
    expect(shown()?.version).toBe(1);
    await time.pass(100);
    expect(shown()?.version).toBe(3);
  });

  it('[F2] never goes back in version, not even behind a view that still waits', async () => {
    const { gate, shown, time } = gated();
    gate.receive(at(5, 'a'));
    gate.receive(at(4, 'older'));
    expect(shown()?.version).toBe(5);
    gate.receive(at(7, 'b', 10_100));
    gate.receive(at(6, 'a'));
    expect(shown()?.version).toBe(5);
    await time.pass(100);
    expect(shown()?.version).toBe(7);
  });

  it('[F2] is brought level by one message after any gap', () => {
    const { gate, shown } = gated();
    gate.receive(at(1, 'a'));
    gate.receive(at(90, 'z', 9_000));
    expect(shown()?.version).toBe(90);
  });

  it('shows the end at once, and nothing that waited comes after it', async () => {
    const { gate, shown, time } = gated();
    gate.receive(at(1, 'a'));
    gate.receive(at(2, 'b', 10_100));
    gate.receive(finished(3));
    await time.pass(1000);
    expect(shown()?.status).toBe('finished');
  });

  it('shows nothing any more once it is closed', async () => {
    const { gate, shown, time } = gated();
    gate.receive(at(1, 'a'));
    gate.receive(at(2, 'b', 10_100));
    gate.close();
    await time.pass(1000);
    expect(shown()?.version).toBe(1);
  });
});
