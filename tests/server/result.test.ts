import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { RoundResult } from '../../core/panel/round-result.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { planOf } from '../support/plans.ts';
import { strictStage } from '../support/strict-views.ts';
import { credentials, type Device } from './support/device.ts';
import { type Guest, House } from './support/house.ts';
import { ServerProcess, temporaryFolder } from './support/process.ts';

// Forty guests and processes of their own take a while on a busy machine; nothing here is measured.
vi.setConfig({ testTimeout: 120_000 });

const pours = ['ash', 'birch', 'cedar'] as const;
const rows = [
  ['ash', 'birch', 'cedar'],
  ['cedar', 'ash', 'birch'],
  ['birch', 'cedar', 'ash'],
];
const plan = planOf(3, {
  blind: true,
  ranking: 'each-flight',
  liking: true,
  guests: 40,
  codes: { ash: '903', birch: '417', cedar: '652' },
});
const ownOrders = { ...plan, ownOrders: true, servingOrders: [{ rows }] } as typeof plan;

/** Into the order that this guest finds, and how much they like each. */
async function answer(guest: Guest, order: readonly string[], counts: boolean): Promise<void> {
  for (const [index, pour] of order.entries()) {
    await guest.save({ pour, field: 'place', value: index + 1 });
    await guest.save({ pour, field: 'liking', value: 9 - 2 * index });
  }
  const choice = counts ? 'counts' : 'only-for-me';
  await guest.consent({ order: choice, liking: choice }, [...pours]);
}

async function tasted(host: Device): Promise<void> {
  for (const pour of pours) await host.host({ type: 'JumpTo', cue: `${pour}/water` });
  await host.host({ type: 'JumpTo', cue: 'flight-1/ranking' });
}

async function tell(host: Device, id?: string) {
  await host.host({ type: 'JumpTo', cue: 'flight-1/result' });
  return host.host({ type: 'TellResult', cue: 'flight-1/result' }, id);
}

const toldOn = async (device: Device, event: 'stage' | 'host'): Promise<readonly RoundResult[]> => {
  const view = await device.until(event, ({ results }) => results.length > 0);
  return view.results[0]?.parts ?? [];
};

describe('a result over the wire', () => {
  let house: House;
  beforeEach(async () => {
    house = await House.open({ seatLimit: 60 });
  });
  afterEach(() => house.close());

  const opened = async (of = plan) => {
    const made = await house.plan(of);
    const host = await house.host(made);
    await host.host({ type: 'OpenDoors' });
    return { made, host };
  };
  const sit = async (made: CreatedTasting, count: number): Promise<Guest[]> => {
    const guests: Guest[] = [];
    for (let seat = 0; seat < count; seat += 1) guests.push(await house.guest(made, `Guest ${seat + 1}`));
    return guests;
  };

  it('[R1, R2] of 40 guests with own orders is the same on every device, a television that joins late too', async () => {
    const { made, host } = await opened(ownOrders);
    const guests = await sit(made, 40);
    await tasted(host);
    for (const [index, guest] of guests.entries()) {
      const order = index % 4 === 3 ? ['cedar', 'birch', 'ash'] : ['birch', 'ash', 'cedar'];
      await answer(guest, order, index < 31);
    }
    expect(await tell(host)).toMatchObject({ ok: true });
    const parts = await toldOn(host, 'host');
    expect(parts).toMatchObject([
      {
        of: 'order',
        outcome: 'told',
        counted: 31,
        given: 40,
        meaning: 'clear-favourite',
        // 24 of 31 put birch, ash, cedar and 7 the other way round.
        pours: [
          { pour: 'birch', place: 1, mean: (24 * 1 + 7 * 2) / 31 },
          { pour: 'ash', place: 2, mean: (24 * 2 + 7 * 3) / 31 },
          { pour: 'cedar', place: 3, mean: (24 * 3 + 7 * 1) / 31 },
        ],
      },
      { of: 'liking', outcome: 'told', counted: 31, given: 40, pours: [{ pour: 'birch' }, {}, {}] },
    ]);
    const television = await house.enter(credentials('screen', made.tasting, made.hostKey));
    for (const device of [television, ...guests]) {
      expect(await toldOn(device, 'stage')).toEqual(parts);
      const stage = strictStage.parse(device.last('stage'));
      expect(stage.cards.map(({ id }) => id)).toEqual(['birch', 'cedar', 'ash']);
    }
    const said = JSON.stringify(parts);
    for (const { seat } of guests) expect(said).not.toContain(seat);
    expect(said).not.toContain('Guest');
  });

  it('[Q1, R1] sends nobody anything of an order before the tap, not even that one was given', async () => {
    const { made, host } = await opened();
    const guests = await sit(made, 5);
    const television = await house.enter(credentials('screen', made.tasting, made.hostKey));
    await tasted(host);
    const [writer, ...others] = guests;
    if (writer === undefined) throw new Error('Five sit there.');
    const listening = [host, television, ...others];
    const heard = async () => {
      for (const device of listening) await device.level();
      // Who is connected, and how fast, is told now and then whatever anybody does.
      return listening.map(({ heard }) => heard.filter(({ event }) => event !== 'presence').length);
    };
    const before = await heard();
    await answer(writer, ['cedar', 'ash', 'birch'], true);
    await new Promise((resolve) => setTimeout(resolve, 700));
    expect(await heard()).toEqual(before);
    for (const each of others) await answer(each, ['cedar', 'ash', 'birch'], true);
    for (const device of [television, ...others]) expect(device.last('stage')?.results).toEqual([]);
    await tell(host);
    expect(await toldOn(television, 'stage')).toMatchObject([{ counted: 5, given: 5 }, { counted: 5 }]);
  });

  it('[R1, R2] says that too few count, and stays as it was told whatever is changed afterwards', async () => {
    const { made, host } = await opened();
    const guests = await sit(made, 4);
    await tasted(host);
    for (const [index, guest] of guests.entries()) await answer(guest, [...pours], index < 2);
    await tell(host);
    const parts = await toldOn(host, 'host');
    expect(parts).toEqual(
      ['order', 'liking'].map((of) => ({ of, outcome: 'too-few', pours: pours.map((pour) => ({ pour })) })),
    );
    for (const guest of guests) await guest.consent({ order: 'counts', liking: 'counts' }, [...pours]);
    expect(await host.host({ type: 'TellResult', cue: 'flight-1/result' })).toMatchObject({
      code: 'nothing-to-do',
    });
    expect(host.last('host')?.results).toHaveLength(1);
  });

  it('takes no result from a device, and tells none by a tap that names no such cue', async () => {
    const { host } = await opened();
    await tasted(host);
    await host.host({ type: 'JumpTo', cue: 'flight-1/result' });
    const own = { type: 'TellResult', cue: 'flight-1/result', parts: [] };
    expect(await host.host(own)).toMatchObject({ ok: false, code: 'malformed' });
    expect(await host.host({ type: 'TellResult', cue: 'flight-9/result' })).toMatchObject({
      ok: false,
      code: 'moved-on',
    });
  });
});

describe('a server that is killed between the tap and the result', () => {
  const folder = temporaryFolder();
  const running: ServerProcess[] = [];
  afterEach(async () => {
    await Promise.all(running.map((each) => each.signal('SIGKILL')));
    folder.remove();
  });
  const start = async () => {
    const server = new ServerProcess(folder.path);
    running.push(server);
    const { url, houseKey } = await server.started();
    return { server, houseKey, house: new House({ url, stop: async () => undefined }) };
  };

  it('[R1] tells after its restart what it had told, and nothing else', async () => {
    const before = await start();
    const made = await before.house.plan(plan, before.houseKey);
    const host = await before.house.host(made);
    await host.host({ type: 'OpenDoors' });
    const guests: Guest[] = [];
    for (const name of ['Noor', 'Tomas', 'Ilse', 'Pádraig'])
      guests.push(await before.house.guest(made, name));
    await tasted(host);
    for (const guest of guests) await answer(guest, ['cedar', 'ash', 'birch'], true);
    const answered = await tell(host, 'the-tap-before-the-end');
    // On disk by now, and perhaps on no screen.
    await before.server.signal('SIGKILL');

    const after = await start();
    const [noor] = guests;
    const again = await after.house.enter(credentials('guest', made.tasting, noor?.key ?? ''));
    const parts = await toldOn(again, 'stage');
    expect(parts).toMatchObject([
      { of: 'order', counted: 4, pours: [{ pour: 'cedar', mean: 1 }, {}, {}] },
      {},
    ]);
    const hostAgain = await after.house.host(made);
    const same = { type: 'TellResult', cue: 'flight-1/result' };
    expect(await hostAgain.host(same, 'the-tap-before-the-end')).toEqual(answered);
    expect(await toldOn(hostAgain, 'host')).toEqual(parts);
    for (const device of [again, hostAgain]) device.close();
  });
});
