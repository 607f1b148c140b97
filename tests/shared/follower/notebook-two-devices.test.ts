import { describe, expect, it } from 'vitest';
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
        const ack = server.take(save);
        return deaf ? noAnswer : ack;
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
        const ack = server.take(save);
        return deaf ? noAnswer : ack;
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
});
