import { describe, expect, it } from 'vitest';
import { closeEyes } from '../../../guest/glass/closed-eyes.ts';
import { handClock } from '../follower/hand-clock.ts';

function nose(begunAgo = 0) {
  const time = handClock(1_900_000_000_000);
  const rung: string[] = [];
  const startsAt = time.now() - begunAgo;
  const eyes = closeEyes({
    startsAt,
    now: time.now,
    after: time.after,
    chime: (moment) => rung.push(`${moment} ${(time.now() - startsAt) / 1000}`),
  });
  eyes.endsAt(startsAt + 40_000);
  return { time, eyes, rung, startsAt };
}

describe('a step with closed eyes', () => {
  it('begins with a tone and ends with one at its time, not again when the room goes on', async () => {
    const { time, eyes, rung } = nose();
    await time.pass(55_000);
    eyes.leave(true);
    expect(rung).toEqual(['start 0', 'end 40']);
  });

  it('ends with the room where that goes on before its time', async () => {
    const { time, eyes, rung } = nose();
    await time.pass(25_000);
    eyes.leave(true);
    await time.pass(60_000);
    expect(rung).toEqual(['start 0', 'end 25']);
  });

  it('rings at the new end when the host gives more time, also once it was over', async () => {
    const { time, eyes, rung, startsAt } = nose();
    await time.pass(30_000);
    eyes.endsAt(startsAt + 60_000);
    await time.pass(45_000);
    eyes.endsAt(startsAt + 90_000);
    await time.pass(20_000);
    expect(rung).toEqual(['start 0', 'end 60', 'end 90']);
  });

  it('rings nothing while the host holds the clock', async () => {
    const { time, eyes, rung } = nose();
    eyes.endsAt(null);
    await time.pass(600_000);
    expect(rung).toEqual(['start 0']);
  });

  it('makes no sound when a guest looks something up and comes back, or loads the page anew', async () => {
    const { time, eyes, rung } = nose();
    await time.pass(10_000);
    eyes.leave(false);
    await time.pass(60_000);
    expect(rung).toEqual(['start 0']);
    const back = nose(10_000);
    await back.time.pass(60_000);
    expect(back.rung).toEqual(['end 40']);
  });
});
