import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { epochMs } from '../../../core/units.ts';
import { entryKey, type NoteKeep } from '../../../shared/follower/notebook.ts';
import { longestText } from '../../../shared/notes/entry.ts';
import type { NoAnswer } from '../../../shared/wire/answer.ts';
import type { NoteSave } from '../../../shared/wire/notebook.ts';
import type { NoteAnswer } from '../../../shared/wire/protocol.ts';
import { device, memoryKeep, noAnswer, notebookServer, pour } from './notebook-device.ts';

const key = entryKey(pour, 'nose');

describe('a notebook on one device', () => {
  it('keeps a text on the device before it sends it, and says where it is', async () => {
    const server = notebookServer();
    const keep = memoryKeep();
    const { notebook, time, entry } = device({ keep, send: async (save) => server.take(save) });
    notebook.write(pour, 'nose', 'tar rope');
    expect(entry()?.state.status).toBe('on-this-phone');
    expect(keep.text).toContain('tar rope');
    expect(server.saves).toEqual([]);
    await time.pass(700);
    expect(entry()?.state.status).toBe('saved');
    expect(server.stored.get(key)?.value).toBe('tar rope');
  });

  it('sends few saves for ten edits a second, and the last text wins', async () => {
    const server = notebookServer();
    const { notebook, time, entry } = device({ send: async (save) => server.take(save) });
    for (let edit = 1; edit <= 100; edit += 1) {
      notebook.write(pour, 'nose', 'x'.repeat(edit));
      await time.pass(100);
    }
    await time.pass(2000);
    expect(server.saves.length).toBeLessThan(20);
    expect(server.stored.get(key)?.value).toBe('x'.repeat(100));
    expect(entry()?.state.status).toBe('saved');
  });

  it('asks again with the same id until it is answered, so that an edit in the middle doubles nothing', async () => {
    const server = notebookServer();
    let deaf = true;
    const { notebook, time, entry } = device({
      send: async (save) => {
        const answer = server.take(save);
        return deaf ? noAnswer : answer;
      },
    });
    notebook.write(pour, 'nose', 'green apple, smoke');
    await time.pass(700);
    notebook.write(pour, 'nose', 'green apple, a little smoke');
    deaf = false;
    await time.pass(10_000);
    expect(server.saves[1]?.id).toBe(server.saves[0]?.id);
    expect(server.stored.get(key)?.value).toBe('green apple, a little smoke');
    expect(entry()).toMatchObject({
      value: 'green apple, a little smoke',
      state: { status: 'saved' },
    });
  });

  it('sends what was asked for at once right after the older text that is on its way', async () => {
    const server = notebookServer();
    const onTheirWay: (() => void)[] = [];
    const { notebook, time } = device({
      send: (save) => new Promise((resolve) => onTheirWay.push(() => resolve(server.take(save)))),
    });
    notebook.write(pour, 'nose', 'smoke');
    await time.pass(700);
    notebook.write(pour, 'nose', 'smoke and tar');
    notebook.flush();
    expect(onTheirWay).toHaveLength(1);
    onTheirWay[0]?.();
    await time.pass(0);
    await time.pass(0);
    expect(onTheirWay).toHaveLength(2);
    onTheirWay[1]?.();
    await time.pass(0);
    expect(server.stored.get(key)?.value).toBe('smoke and tar');
  });

  it('sends at once when the line is back, though the save before has just been given up', async () => {
    const server = notebookServer();
    const onTheirWay: ((given: NoteAnswer | NoAnswer) => void)[] = [];
    const sent: NoteSave[] = [];
    const { notebook, time } = device({
      send(save) {
        sent.push(save);
        return new Promise((resolve) => onTheirWay.push(resolve));
      },
    });
    notebook.write(pour, 'nose', 'tar');
    await time.pass(20_000);
    notebook.level(server.view());
    onTheirWay[0]?.(noAnswer);
    await time.pass(10);
    expect(sent.map(({ id }) => id)).toEqual([sent[0]?.id, sent[0]?.id]);
  });

  it('tries again after a server that could not store, and keeps what it will not take', async () => {
    const refusals = ['not-stored', 'too-fast', 'not-seated'] as const;
    let asked = 0;
    const { notebook, time, entry } = device({
      send: async () => {
        const code = refusals[asked] ?? 'not-seated';
        asked += 1;
        return { ok: false, code, message: '' };
      },
    });
    notebook.write(pour, 'nose', 'salt');
    await time.pass(20_000);
    expect(asked).toBe(3);
    expect(entry()).toMatchObject({ value: 'salt', state: { status: 'refused', code: 'not-seated' } });
  });

  it('does not send a text that is too long, and saves it once it has been shortened', async () => {
    const server = notebookServer();
    const { notebook, time, entry } = device({ send: async (save) => server.take(save) });
    notebook.write(pour, 'nose', 'y'.repeat(longestText + 1));
    await time.pass(5000);
    expect(server.saves).toEqual([]);
    expect(entry()?.state).toEqual({ status: 'refused', code: 'too-long' });
    notebook.write(pour, 'nose', 'y'.repeat(longestText));
    await time.pass(5000);
    expect(entry()?.state.status).toBe('saved');
  });

  it('goes on without a device that keeps anything, and says so', async () => {
    const server = notebookServer();
    const refusing: NoteKeep = { read: () => null, write: () => false };
    const { notebook, time } = device({ keep: refusing, send: async (save) => server.take(save) });
    notebook.write(pour, 'nose', 'peat');
    expect(notebook.kept.peek()).toBe(false);
    await time.pass(1000);
    expect(server.stored.get(key)?.value).toBe('peat');
  });

  it('bears ten minutes without a network where nothing is kept, asks calmly, and loses no word', async () => {
    const server = notebookServer();
    let online = false;
    let asked = 0;
    const { notebook, time, entry } = device({
      keep: { read: () => null, write: () => false },
      send: async (save) => {
        asked += 1;
        return online ? server.take(save) : noAnswer;
      },
    });
    const words: string[] = [];
    for (let minute = 1; minute <= 10; minute += 1) {
      words.push(`minute ${minute}`);
      notebook.write(pour, 'nose', words.join(', '));
      await time.pass(60_000);
      expect(entry()?.state.status).toBe('on-this-phone');
    }
    expect(server.stored.size).toBe(0);
    // One try every three seconds at most, and the last save goes out by itself.
    expect(asked).toBeLessThanOrEqual(210);
    online = true;
    await time.pass(5000);
    expect(server.stored.get(key)?.value).toBe(words.join(', '));
    expect(entry()?.state.status).toBe('saved');
  });

  it('sends after a reload what the page before could not', async () => {
    const server = notebookServer();
    const keep = memoryKeep();
    const first = device({ keep, send: async () => noAnswer });
    first.notebook.write(pour, 'nose', 'honey');
    await first.time.pass(1000);
    const second = device({ keep, send: async (save) => server.take(save) });
    expect(second.entry()?.value).toBe('honey');
    second.notebook.level(server.view());
    await second.time.pass(0);
    expect(server.stored.get(key)?.value).toBe('honey');
  });

  it.each(['{', '[1', 'null', '"x"', '[null]', '[{"pour":1}]', '{}'])(
    'begins empty when something else stands where it keeps: %s',
    (text) => {
      const { notebook } = device({ keep: memoryKeep(text), send: async () => noAnswer });
      expect([...notebook.entries.peek().keys()]).toEqual([]);
    },
  );

  it('does not take a text that the server has only tidied for two texts', async () => {
    let answer: () => void = () => undefined;
    const { notebook, time, entry } = device({
      send: async (save) => {
        await new Promise<void>((resolve) => {
          answer = resolve;
        });
        const value = String(save.value).replace('\u202e', '');
        return { ok: true, revision: save.base + 1, value, savedAt: epochMs(1) };
      },
    });
    notebook.write(pour, 'nose', 'plum\u202e jam');
    await time.pass(700);
    notebook.write(pour, 'nose', 'plum\u202e jam, warm');
    answer();
    await time.pass(700);
    answer();
    await time.pass(0);
    expect(entry()).toMatchObject({ value: 'plum jam, warm', base: 2, state: { status: 'saved' } });
  });
});

describe('two devices of one guest', () => {
  it('take each other’s words in without losing or doubling one', async () => {
    const server = notebookServer();
    const send = async (save: NoteSave) => server.take(save);
    const phone = device({ send });
    const laptop = device({ send });
    phone.notebook.write(pour, 'nose', 'tar');
    await phone.time.pass(1000);
    laptop.notebook.level(server.view());
    expect(laptop.entry()).toMatchObject({ value: 'tar', state: { status: 'saved' } });
    phone.notebook.write(pour, 'nose', 'tar and rope');
    laptop.notebook.write(pour, 'nose', 'tar\napples');
    await phone.time.pass(1000);
    await laptop.time.pass(1000);
    expect(server.stored.get(key)?.value).toBe('tar and rope\ntar\napples');
    phone.notebook.level(server.view());
    expect(phone.entry()?.value).toBe(laptop.entry()?.value);
  });

  it('end level with the server and keep every line, however they write and drop out', async () => {
    const step = fc.record({
      who: fc.constantFrom(0, 1),
      line: fc.stringMatching(/^[a-z]{1,6}$/),
      deaf: fc.boolean(),
      wait: fc.integer({ min: 0, max: 3000 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 12 }), async (steps) => {
        const server = notebookServer();
        let deaf = false;
        const send = async (save: NoteSave) => {
          const answer = server.take(save);
          return deaf ? noAnswer : answer;
        };
        const devices = [device({ send }), device({ send })];
        const lines = new Set<string>();
        for (const [index, each] of steps.entries()) {
          const mine = devices[each.who];
          if (mine === undefined) continue;
          deaf = each.deaf;
          const line = `${each.line}${index}`;
          lines.add(line);
          const before = mine.entry()?.value ?? '';
          mine.notebook.write(pour, 'nose', before === '' ? line : `${before}\n${line}`);
          for (const other of devices) await other.time.pass(each.wait);
        }
        deaf = false;
        for (let round = 0; round < 3; round += 1) {
          for (const each of devices) {
            await each.time.pass(10_000);
            each.notebook.level(server.view());
          }
        }
        const text = String(server.stored.get(key)?.value ?? '');
        for (const each of devices) expect(each.entry()?.value).toBe(text);
        expect(new Set(text.split('\n'))).toEqual(lines);
        expect(text.split('\n')).toHaveLength(lines.size);
      }),
      { numRuns: 60 },
    );
  });
});
