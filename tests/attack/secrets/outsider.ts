import type { Chance } from '../../../server/chance.ts';
import type { Store } from '../../../server/store/store.ts';
import { House } from '../../server/support/house.ts';
import { ManualClock } from '../../server/support/manual-clock.ts';
import { aPlan } from '../../server/support/plans.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { OutsiderWire } from './outsider-wire.ts';

export interface OutsiderReport {
  /** Who saw what the other evening did not show; empty when the promise holds. */
  readonly findings: readonly string[];
  readonly frames: number;
  /** Who was let in, by whatever key. */
  readonly inside: readonly string[];
  /** Who heard of the call, by whatever key. */
  readonly inCall: readonly string[];
  /** Whether the talk brought the words at last: the ears are not deaf. */
  readonly heardAloud: boolean;
}

const canary = 'outsider-canary-9k2';
const fields = ['look', 'nose', 'palate', 'finish', 'thoughts'];

/** [Q1] Two evenings that differ only in one guest's notes, compared frame by frame for every key that exists. */
export async function compareTwins(plant = (store: Store): Store => store): Promise<OutsiderReport> {
  const [written, silent] = [await play(true, plant), await play(false, plant)];
  const findings: string[] = [];
  for (const [who, frames] of written.seen) {
    const twin = silent.seen.get(who) ?? [];
    const at = frames.findIndex((frame, index) => frame !== twin[index]);
    if (at >= 0 || frames.length !== twin.length)
      findings.push(`${who}, frame ${at}: ${frames[at]?.slice(0, 120)} | ${twin[at]?.slice(0, 120)}`);
    if (frames.join('').includes(canary)) findings.push(`${who} has the words`);
  }
  const frames = [...written.seen.values()].flat().length;
  const { inside, inCall } = written;
  return { findings, frames, inside, inCall, heardAloud: written.aloud && !silent.aloud };
}

async function play(writes: boolean, plant: (store: Store) => Store) {
  const clock = new ManualClock();
  const house = await House.open({ clock, chance: sameChance(), store: plant(memoryStore()) });
  const made = await house.plan(aPlan());
  const elsewhere = await house.plan(aPlan());
  const wires = new Map<string, OutsiderWire>();
  const seen = new Map<string, string[]>();
  const enter = async (who: string, role: string, key: string): Promise<OutsiderWire> => {
    const wire = await OutsiderWire.open(house.url, { protocol: 2, role, tasting: made.tasting, key });
    wires.set(who, wire);
    return wire;
  };
  let commands = 0;
  const ask = (wire: OutsiderWire, event: string, body: object): Promise<unknown> => {
    commands += 1;
    return wire.ask(event, { id: `of-the-room-${commands}`, ...body });
  };
  const issued = async (body: object): Promise<string> => {
    const path = `/api/tastings/${made.tasting}/keys`;
    return (await house.ask<{ key: string }>('POST', path, { key: made.hostKey, body })).body.key;
  };
  const seatKey = (name: string) => `key-made-on-the-device-of-${name}`;
  const sit = async (name: string, remote = false): Promise<string> => {
    const wanted = { id: `seat-for-${name}`, key: seatKey(name), name, remote };
    return (await house.takeSeat(made.code, wanted)).body.seat;
  };
  try {
    const host = await enter('host', 'host', made.hostKey);
    await ask(host, 'host:ask', { ask: { type: 'OpenDoors' } });
    const seat = await sit('writer', true);
    await sit('other');
    await sit('at-home', true);
    await ask(host, 'host:ask', { ask: { type: 'JumpTo', cue: 'one/first/look' } });
    const writer = await OutsiderWire.open(house.url, {
      protocol: 2,
      role: 'guest',
      tasting: made.tasting,
      key: seatKey('writer'),
    });
    await enter('other guest', 'guest', seatKey('other'));
    await enter('guest at home', 'guest', seatKey('at-home'));
    const report = (id: string, name: string) =>
      house.ask('PUT', `/api/invitations/${made.code}/kit`, {
        body: { id, told: { name, tried: { camera: 'works', line: 'voice' } } },
      });
    await report('kit-of-a-guest-at-home-1', 'Lark');
    const rounds = [...fields, 'again'];
    for (const [round, field] of rounds.entries()) {
      const value = `${canary} ${'x'.repeat(17 * round)}`;
      // By itself, so that the room's own commands have the same names in both evenings.
      const note = {
        id: `of-the-writer-${round}`,
        pour: 'one',
        field: fields[round] ?? 'nose',
        value,
        base: 0,
      };
      if (writes) await writer.ask('note:save', note);
      if (writes) await writer.ask('note:share', { id: `to-share-${round}`, pour: 'one', sharing: 'shared' });
      if (field === 'look') {
        await enter('second host', 'host', await issued({ for: 'host' }));
        await enter('screen', 'screen', made.hostKey);
        await enter('host-made link to the seat', 'guest', await issued({ for: 'seat', seat }));
        await enter('host as guest', 'guest', made.hostKey);
        await enter("another evening's host", 'host', elsewhere.hostKey);
        await enter('forged key', 'guest', 'forged-key-that-nobody-has-issued');
        await enter("guest as the room's host", 'host', seatKey('other'));
        await enter('helper', 'helper', await issued({ for: 'helper' }));
      }
      // The writer is in the call too, and all who may be hear of it.
      for (const [who, wire] of [...wires, ['writer', writer] as const]) {
        const peer = `peer-of-${who.replaceAll(/\W/g, '-')}`;
        const opened = { microphone: round % 2 === 0, camera: false, voiceOnly: false };
        await wire.ask('call:ask', { type: 'Watch' });
        if (round === 0) await wire.ask('call:ask', { type: 'Join', peer, as: 'self', shown: opened });
        else await wire.ask('call:ask', { type: 'Show', shown: opened });
        await wire.ask('call:ask', { type: 'Signal', to: 'peer-of-host', signal: { is: 'hello' } });
        await wire.ask('call:ask', { type: 'Signal', to: 'peer-of-writer', signal: { is: 'hello' } });
      }
      for (const wire of wires.values()) {
        await ask(wire, 'host:ask', { ask: { type: 'Remind', kind: 'water' } });
        // What it is answered must not tell what the writer's page has there.
        await ask(wire, 'note:save', { pour: 'one', field: 'nose', value: 'mine', base: 0 });
      }
      await clock.advance(1500);
      await writer.ask('probe', { roundTrip: null });
      for (const [who, wire] of wires) {
        await wire.ask('probe', { roundTrip: null });
        seen.set(who, wire.frames.map(withoutSocketId));
      }
      for (const key of [made.hostKey, elsewhere.hostKey, seatKey('other')]) {
        const { body } = await house.ask('GET', `/api/keepsake/${made.tasting}`, { key });
        seen.set(`keepsake by ${key}`, [JSON.stringify(body)]);
        for (const path of ['kits', 'call-servers', 'recap.json']) {
          const said = await house.ask('GET', `/api/tastings/${made.tasting}/${path}`, { key });
          seen.set(`${path} by ${key}`, [`${said.status} ${JSON.stringify(said.body)}`]);
        }
      }
    }
    await ask(host, 'host:ask', { ask: { type: 'OpenDiscussion', pours: ['one'] } });
    await clock.advance(1500);
    await host.ask('probe', { roundTrip: null });
    writer.close();
    const inside = [...wires].flatMap(([who, wire]) => (wire.ended ? [] : who));
    const inCall = [...wires].flatMap(([who, wire]) =>
      wire.frames.some((frame) => /^42\["call(-signal)?"/.test(frame)) ? who : [],
    );
    return { seen, inside, inCall, aloud: host.frames.join('').includes(canary) };
  } finally {
    for (const wire of wires.values()) wire.close();
    await house.close();
  }
}

/** The same ids, keys and codes in the same order, so that nothing has to be made alike but the transport's own ids. */
function sameChance(): Chance {
  let made = 0;
  const next = (length: number): string => {
    made += 1;
    return String(made).padStart(length, '0');
  };
  return { id: () => next(12), key: () => next(32), code: () => next(6), number: () => Number(next(2)) };
}

const withoutSocketId = (frame: string): string => frame.replace(/"(sid|pid)":"[\w-]+"/g, '"$1":""');
