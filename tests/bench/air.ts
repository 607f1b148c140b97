import { commandId, type PourId, pourId } from '../../core/ids.ts';
import { compile } from '../../core/running-order/compile.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { createProbing } from '../../shared/follower/clock-probing.ts';
import { followAsGuest } from '../../shared/follower/guest-follower.ts';
import { handClock } from '../shared/follower/hand-clock.ts';
import { until } from '../support/until.ts';
import { startChild } from './child.ts';
import { newId, openEvening, takeSeats } from './evening.ts';
import type { Figure } from './figures.ts';

/** A frame's head: two to four bytes, and of a client four more to mask it (RFC 6455, 5.2). */
const framed = (length: number, mask: number): number => length + (length < 126 ? 2 : 4) + mask;

/**
 * What one guest's line carries in an evening, as bytes of WebSocket frames: every cue is gone through with the follower of
 * the page, which writes where there is something to write; probes and signs of life, of which a fast evening has too few,
 * are weighed one by one and counted as the evening would have them.
 */
export async function measureAir(): Promise<Figure[]> {
  const plan = planSchema.parse(demoEvening);
  const cues = compile(plan);
  const seconds = cues.reduce((sum, { ideal }) => sum + ideal, 0);
  const ours = startChild('our-server');
  const sums = { probes: 0, probeBytes: 0, shown: 0, other: 0 };
  try {
    const { port, houseKey } = await ours.ask<{ port: number; houseKey: string }>('listen');
    const evening = await openEvening(port, houseKey, plan);
    const [auth] = (await takeSeats(port, evening, 1)) as { key: string }[];
    const guest = followAsGuest({
      origin: `http://127.0.0.1:${port}`,
      tasting: evening.tasting,
      key: auth?.key ?? '',
      keep: { read: () => null, write: () => true },
      newId: () => commandId(newId()),
      onSocket(socket) {
        const probing = new Set<string>();
        const weigh = (data: unknown, mask: number): void => {
          const text = String(data ?? '');
          const bytes = framed(1 + Buffer.byteLength(text), mask);
          const [, id = ''] = /^[23](\d+)\[/.exec(text) ?? [];
          if (text.includes('["probe"')) {
            probing.add(id);
            sums.probes += 1;
          }
          if (probing.has(id)) sums.probeBytes += bytes;
          else if (/^2\["(stage|news)"/.test(text)) sums.shown += bytes;
          else sums.other += bytes;
        };
        socket.io.engine.on('packet', ({ type, data }: { type: string; data?: unknown }) => {
          // Beats and signs of life are reckoned below.
          if (type !== 'noop' && type !== 'ping') weigh(data, 0);
        });
        socket.io.engine.on('packetCreate', ({ type, data }: { type: string; data?: unknown }) => {
          if (type !== 'pong') weigh(data, 4);
        });
      },
    });
    for (const cue of cues) {
      await evening.host.ask('host:ask', { id: newId(), ask: { type: 'JumpTo', cue: cue.id } });
      await until(
        'the guest follows',
        () => guest.stage.peek()?.status === 'under-way' && cueOf(guest) === cue.id,
      );
      if (cue.kind === 'step' && cue.step === 'write' && cue.sense) await write(guest, cue.pour, cue.sense);
    }
    guest.close();
    const each = sums.probeBytes / sums.probes;
    const probes = each * (await probesWithin(seconds));
    const signs = (seconds / betweenSigns) * framed(1, 0);
    // One "2" each ten seconds and one "3" back.
    const beats = (seconds / 10) * (framed(1, 0) + framed(1, 4));
    const name = `one guest and evening of ${Math.round(seconds / 60)} min, after loading`;
    return [
      {
        name: `bytes on the air, ${name}`,
        value: (sums.shown + sums.other + probes + signs + beats) / 1000,
        unit: 'kB',
        goal: 60,
      },
      { name: 'of these the stage', value: sums.shown / 1000, unit: 'kB' },
      { name: 'of these notes, their answers and all else', value: sums.other / 1000, unit: 'kB' },
      { name: 'of these probes of clock and line', value: probes / 1000, unit: 'kB' },
      { name: 'of these signs of life and beats', value: (signs + beats) / 1000, unit: 'kB' },
    ];
  } finally {
    await ours.stop();
  }
}

type Guest = ReturnType<typeof followAsGuest>;
const cueOf = (guest: Guest): string | undefined => {
  const stage = guest.stage.peek();
  return stage?.status === 'under-way' ? stage.cue.id : undefined;
};

/** A sentence in two goes, as somebody writes who stops to think. */
async function write(
  guest: Guest,
  pour: PourId,
  sense: 'look' | 'nose' | 'palate' | 'finish',
): Promise<void> {
  for (const words of ['Pears, hay', 'Pears, hay and a little smoke behind them']) {
    guest.notebook.write(pourId(pour), sense, words);
    const saved = () =>
      [...guest.notebook.entries.peek().values()].every(({ state }) => state.status === 'saved');
    await until('the note is saved', saved);
  }
}

/** Seconds from one sign of life to the next, at the mean: 1.5, and up to the next look a quarter later. */
const betweenSigns = 1.625;

/** How many probes a guest sends while cues run for so long. */
async function probesWithin(seconds: number): Promise<number> {
  const clock = handClock();
  let count = 0;
  const probing = createProbing({
    probe: async () => {
      count += 1;
      return true;
    },
    cueRuns: () => true,
    onSilence: () => undefined,
    now: clock.now,
    after: clock.after,
  });
  probing.start();
  for (let passed = 0; passed < seconds; passed += betweenSigns) {
    await clock.pass(betweenSigns * 1000);
    probing.heard();
  }
  probing.stop();
  return count;
}
