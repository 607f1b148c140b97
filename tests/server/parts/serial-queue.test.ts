import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SerialQueue } from '../../../server/live/serial-queue.ts';

const turn = () => new Promise<void>((resolve) => setImmediate(resolve));

describe('the queue of a session', () => {
  it('never runs a task without a lane beside another, nor a lane beside itself, and keeps the order', async () => {
    const lane = fc.constantFrom(undefined, 'a', 'b', 'c');
    const task = fc.record({ lane, turns: fc.nat({ max: 3 }), fails: fc.boolean() });
    await fc.assert(
      fc.asyncProperty(fc.array(task, { maxLength: 30 }), async (tasks) => {
        const queue = new SerialQueue();
        const running: (string | undefined)[] = [];
        const begun: number[] = [];
        const results = await Promise.allSettled(
          tasks.map(({ lane, turns, fails }, index) =>
            queue.add(async () => {
              begun.push(index);
              const alone = lane === undefined ? running.length > 0 : running.includes(undefined);
              if (alone || (lane !== undefined && running.includes(lane))) throw new Error('beside');
              running.push(lane);
              for (let count = 0; count < turns; count += 1) await turn();
              running.splice(running.indexOf(lane), 1);
              if (fails) throw new Error('on its own');
              return index;
            }, lane),
          ),
        );
        expect(begun).toEqual(tasks.map((_, index) => index));
        results.forEach((result, index) => {
          if (tasks[index]?.fails) expect(result).toMatchObject({ reason: { message: 'on its own' } });
          else expect(result).toEqual({ status: 'fulfilled', value: index });
        });
        await queue.idle();
        expect(queue.busy).toBe(false);
      }),
      { numRuns: 100 },
    );
  });

  it('lets what goes first pass everything that waits, alone, and in its own order', async () => {
    const queue = new SerialQueue();
    const done: string[] = [];
    const does = (name: string) => async () => {
      await turn();
      done.push(name);
    };
    const notes = Array.from({ length: 100 }, (_, index) =>
      queue.add(does(`note ${index}`), `seat ${index}`),
    );
    await turn();
    await Promise.all([queue.addFirst(does('tap 1')), queue.addFirst(does('tap 2'))]);
    // Only what was under way already, and never more than a few of them.
    expect(done.indexOf('tap 1')).toBeLessThanOrEqual(16);
    expect(done.indexOf('tap 2')).toBe(done.indexOf('tap 1') + 1);
    await Promise.all(notes);
    expect(done.filter((name) => name.startsWith('note'))).toEqual(
      Array.from({ length: 100 }, (_, index) => `note ${index}`),
    );
  });

  it('lets neighbours of different lanes run together, so that they are committed together', async () => {
    const queue = new SerialQueue();
    let most = 0;
    let now = 0;
    const task = async () => {
      now += 1;
      most = Math.max(most, now);
      await turn();
      now -= 1;
    };
    await Promise.all(['a', 'b', 'c', 'd'].map((lane) => queue.add(task, lane)));
    expect(most).toBe(4);
  });
});
