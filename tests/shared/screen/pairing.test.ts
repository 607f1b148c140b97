import { describe, expect, it } from 'vitest';
import { tastingId } from '../../../core/ids.ts';
import { askEvery, createPairing, type RequestScreen, troubledEvery } from '../../../guest/screen/pairing.ts';
import { handClock } from '../follower/hand-clock.ts';

type Answer = Awaited<ReturnType<RequestScreen>>;

const tasting = tastingId('t1');
const number = (value: number): Answer => ({ ok: true, body: { tasting, admitted: false, number: value } });
const admitted: Answer = {
  ok: true,
  body: {
    tasting,
    admitted: true,
    code: 'ABC123',
    linkCode: 'ABC123XYZ',
    guestOrigins: ['http://192.0.2.7:8080'],
  },
};
const refused = (code: 'no-answer' | 'wrong-key' | 'wrong-code' | 'table-full'): Answer => ({
  ok: false,
  code,
});

/** A server that gives these answers, one after the other, the last one for ever. */
function asking(...answers: readonly [Answer, ...Answer[]]) {
  const clock = handClock();
  const asked: { readonly at: number; readonly code: string; readonly key: string }[] = [];
  const pairing = createPairing({
    code: 'ABC123',
    key: 'made-on-this-screen',
    after: clock.after,
    ask: async (ask) => {
      const answer = answers[Math.min(asked.length, answers.length - 1)] ?? answers[0];
      asked.push({ at: clock.now(), ...ask });
      return answer;
    },
  });
  return { clock, asked, pairing };
}

describe('pairing a screen', () => {
  it('asks every three seconds with the same key until it is let in, and then no more', async () => {
    const { clock, asked, pairing } = asking(number(47), number(47), admitted);
    await clock.pass(0);
    expect(pairing.state.value).toEqual({ at: 'waiting', number: 47, trouble: null });
    await clock.pass(60_000);
    expect(pairing.state.value).toEqual({
      at: 'admitted',
      admission: {
        tasting,
        key: 'made-on-this-screen',
        code: 'ABC123',
        linkCode: 'ABC123XYZ',
        guestOrigins: ['http://192.0.2.7:8080'],
      },
    });
    expect(asked.map(({ at }) => at)).toEqual([0, askEvery, 2 * askEvery]);
    expect(new Set(asked.map(({ key }) => key)).size).toBe(1);
  });

  it('keeps its number on the screen while the network is gone', async () => {
    const { clock, pairing } = asking(number(12), refused('no-answer'), number(12));
    await clock.pass(askEvery);
    expect(pairing.state.value).toEqual({ at: 'waiting', number: 12, trouble: 'no-answer' });
    await clock.pass(askEvery);
    expect(pairing.state.value).toEqual({ at: 'waiting', number: 12, trouble: null });
  });

  it('waits longer where the server asks for patience', async () => {
    const { clock, asked, pairing } = asking(refused('table-full'), number(30));
    await clock.pass(troubledEvery - 1);
    expect(pairing.state.value).toEqual({ at: 'asking', trouble: 'table-full' });
    await clock.pass(1);
    expect(asked).toHaveLength(2);
    expect(pairing.state.value).toMatchObject({ at: 'waiting', number: 30 });
  });

  it.each(['wrong-key', 'wrong-code'] as const)('asks no more after %s: a person has to', async (code) => {
    const { clock, asked, pairing } = asking(number(5), refused(code));
    await clock.pass(600_000);
    expect(pairing.state.value).toEqual({ at: 'refused', code });
    expect(asked).toHaveLength(2);
  });

  it('is quiet once it is closed, whatever answer is still on its way', async () => {
    const { clock, asked, pairing } = asking(number(5));
    pairing.close();
    await clock.pass(600_000);
    expect(asked).toHaveLength(1);
    expect(pairing.state.value).toEqual({ at: 'asking', trouble: null });
  });
});
