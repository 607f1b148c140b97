import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cueId } from '../../../core/ids.ts';
import { durationMs, epochMs } from '../../../core/units.ts';
import { createWritingLock, grace } from '../../../guest/room/writing-lock.ts';
import type { StageView } from '../../../shared/wire/views.ts';
import { handClock } from '../follower/hand-clock.ts';

const base = {
  title: '',
  drink: 'wine',
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

const at = (cue: string, version = 1): StageView => ({
  ...base,
  version,
  status: 'under-way',
  cue: {
    id: cueId(cue),
    kind: 'step',
    pass: 'writing',
    step: 'write',
    sense: 'nose',
    position: null,
    pours: [],
    named: false,
    allergens: null,
    say: null,
    gate: false,
    asksReady: true,
    timed: true,
    remindsOfWater: true,
    call: 'hush',
  },
  next: null,
  takesEffectAt: epochMs(0),
  clock: { kind: 'held', startsAt: epochMs(0), remaining: durationMs(0) },
  progress: { cue: 1, of: 9 },
  pacedBy: 'host',
  reminder: null,
  lastWaterAt: null,
});
const finished: StageView = { ...base, version: 99, status: 'finished', finishedAt: epochMs(0) };

function locked() {
  const time = handClock(1_000_000);
  const lock = createWritingLock({ now: time.now, after: time.after });
  const shows = () => {
    const stage = lock.shown.peek();
    return stage?.status === 'under-way' ? stage.cue.id : (stage?.status ?? null);
  };
  lock.follow(at('write'));
  return { time, lock, shows };
}

describe('the screen lock', () => {
  it('follows the room at once while nobody types', () => {
    const { lock, shows } = locked();
    lock.follow(at('sip'));
    expect(shows()).toBe('sip');
    expect(lock.ahead.peek()).toBeNull();
  });

  it('[F5] stays with somebody who types, and says where the room is', () => {
    const { lock, shows } = locked();
    lock.enterField();
    lock.follow(at('sip'));
    expect(shows()).toBe('write');
    expect(lock.ahead.peek()).toEqual(at('sip'));
  });

  it('[F5] stays with somebody who was writing before the room could be reached', () => {
    const time = handClock(1_000_000);
    const lock = createWritingLock({ now: time.now, after: time.after });
    lock.enterField();
    lock.follow(at('a'));
    expect([lock.shown.peek(), lock.ahead.peek()]).toEqual([null, at('a')]);
    lock.goOn();
    expect([lock.shown.peek(), lock.ahead.peek()]).toEqual([at('a'), null]);
  });

  it('[F5] moves when they ask for it, and when they leave the field', () => {
    for (const leave of ['goOn', 'leaveField'] as const) {
      const { lock, shows } = locked();
      lock.enterField();
      lock.follow(at('sip'));
      lock[leave]();
      expect(shows()).toBe('sip');
      expect(lock.ahead.peek()).toBeNull();
    }
  });

  it('[F5] moves 20 s after the last key', async () => {
    const { lock, shows, time } = locked();
    lock.enterField();
    lock.follow(at('sip'));
    await time.pass(15_000);
    lock.key();
    await time.pass(grace.withoutKey - 1);
    expect(shows()).toBe('write');
    await time.pass(1);
    expect(shows()).toBe('sip');
  });

  it('[F5] moves after 60 s even when they type on, wherever the room has gone since', async () => {
    const { lock, shows, time } = locked();
    lock.enterField();
    lock.follow(at('sip'));
    for (let second = 0; second < 59; second += 1) {
      await time.pass(1000);
      lock.key();
      if (second === 30) lock.follow(at('spit'));
    }
    expect(shows()).toBe('write');
    await time.pass(1000);
    expect(shows()).toBe('spit');
  });

  it('[P5] lets news of the same cue through while somebody types, and forgets the banner when the host goes back', () => {
    const { lock, shows } = locked();
    lock.enterField();
    lock.follow(at('write', 2));
    expect(lock.shown.peek()?.version).toBe(2);
    lock.follow(at('sip', 3));
    lock.follow(at('write', 4));
    expect(shows()).toBe('write');
    expect(lock.ahead.peek()).toBeNull();
  });

  it('[F5] does not let the end of the evening take the keyboard either', async () => {
    const { lock, shows, time } = locked();
    lock.enterField();
    lock.follow(finished);
    expect(shows()).toBe('write');
    await time.pass(grace.atMost);
    expect(shows()).toBe('finished');
  });

  it('moves nothing any more once it is closed', async () => {
    const { lock, shows, time } = locked();
    lock.enterField();
    lock.follow(at('sip'));
    lock.close();
    await time.pass(grace.atMost);
    expect(shows()).toBe('write');
  });

  it('never shows a cue that the room has not been at, and is level a minute after the last change', async () => {
    const step = fc.constantFrom('enter', 'key', 'leave', 'a', 'b', 'c', 'go', 'wait');
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 30 }), async (steps) => {
        const { lock, shows, time } = locked();
        const been = ['write'];
        for (const each of steps) {
          if (each === 'enter') lock.enterField();
          else if (each === 'key') lock.key();
          else if (each === 'leave') lock.leaveField();
          else if (each === 'go') lock.goOn();
          else if (each === 'wait') await time.pass(7000);
          else {
            been.push(each);
            lock.follow(at(each));
          }
          expect(been).toContain(shows());
          const behind = lock.ahead.peek() !== null;
          expect(shows() === been.at(-1)).toBe(!behind);
          expect(behind && !lock.writing.peek()).toBe(false);
        }
        await time.pass(grace.atMost);
        expect(shows()).toBe(been.at(-1));
      }),
    );
  });
});
