import { describe, expect, it, vi } from 'vitest';
import { commandId } from '../../../core/ids.ts';
import { entryKey } from '../../../shared/follower/notebook.ts';
import { device, noAnswer, notebookServer, pour } from './notebook-device.ts';

const key = entryKey(pour, 'nose');

describe('a notebook that is written on two devices', () => {
  it('keeps up with another device of the guest whose save came before the answer to a repeated one', async () => {
    const server = notebookServer();
    let deaf = true;
    const { notebook, time, entry } = device({
      send: async (save) => {
        const answer = server.take(save);
        return deaf ? noAnswer : answer;
      },
    });
    notebook.write(pour, 'nose', 'tar rope');
    await time.pass(700);
    server.take({ id: commandId('other-device'), pour, field: 'nose', value: 'tar rope\nhay', base: 1 });
    notebook.level(server.view());
    deaf = false;
    await time.pass(10_000);
    expect(entry()).toMatchObject({ value: 'tar rope\nhay', base: 2, state: { status: 'saved' } });
  });

  it('loses no word to a device that wrote on while the other one saved', async () => {
    const server = notebookServer();
    let deaf = true;
    const { notebook, time, entry } = device({
      send: async (save) => {
        const answer = server.take(save);
        return deaf ? noAnswer : answer;
      },
    });
    notebook.write(pour, 'nose', 'tar rope');
    await time.pass(700);
    server.take({ id: commandId('other-device'), pour, field: 'nose', value: 'tar rope\nhay', base: 1 });
    notebook.level(server.view());
    notebook.write(pour, 'nose', 'tar rope\nsalt');
    deaf = false;
    await time.pass(10_000);
    expect(server.stored.get(key)?.value).toBe('tar rope\nhay\nsalt');
    expect(entry()).toMatchObject({ value: 'tar rope\nhay\nsalt', state: { status: 'saved' } });
  });

  it('goes by revisions and not by clocks: two hours too early and two too late say the same', async () => {
    const hours = 3_600_000;
    const evening = async (wrong: number) => {
      vi.useFakeTimers({ now: Date.UTC(2031, 4, 9, 20) + wrong, toFake: ['Date'] });
      const server = notebookServer();
      const phone = device({ send: async (save) => server.take(save) });
      phone.notebook.write(pour, 'nose', 'tar rope');
      await phone.time.pass(700);
      vi.setSystemTime(Date.UTC(2031, 4, 9, 20) - wrong);
      const tablet = device({ send: async (save) => server.take(save) });
      tablet.notebook.level(server.view());
      tablet.notebook.write(pour, 'nose', 'tar rope\nhay');
      phone.notebook.write(pour, 'nose', 'tar rope\nsalt');
      await tablet.time.pass(700);
      await phone.time.pass(700);
      return server.stored.get(key);
    };
    try {
      const [early, late] = [await evening(-2 * hours), await evening(2 * hours)];
      expect(early).toEqual({ value: 'tar rope\nhay\nsalt', revision: 3 });
      expect(late).toEqual(early);
    } finally {
      vi.useRealTimers();
    }
  });
});
