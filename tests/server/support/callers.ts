import { expect } from 'vitest';
import type { CallSettings } from '../../../server/access/call-servers.ts';
import type { CallView } from '../../../shared/wire/call.ts';
import type { CallAnswer } from '../../../shared/wire/protocol.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { credentials, type Device } from './device.ts';
import { aKey, type Guest, House } from './house.ts';
import { ManualClock } from './manual-clock.ts';

/** A house on a clock of its own, whose guests sit at home. */
export class HouseFromAfar {
  readonly clock: ManualClock;
  readonly house: House;

  private constructor(clock: ManualClock, house: House) {
    this.clock = clock;
    this.house = house;
  }

  static async open(callServers?: CallSettings): Promise<HouseFromAfar> {
    const clock = new ManualClock();
    return new HouseFromAfar(
      clock,
      await House.open({ clock, store: memoryStore(), ...(callServers && { callServers }) }),
    );
  }

  async evening() {
    const made = await this.house.evening();
    await Promise.all([made.noor, made.tomas].map(atHome));
    return made;
  }

  async screenOf({ made, host }: FromAfar): Promise<Device> {
    const key = aKey();
    await this.house.ask('POST', '/api/screens', { body: { code: made.code, key } });
    await this.clock.advance(300);
    const { screensAsking } = await host.until('presence', (view) => view.screensAsking.length === 1);
    const path = `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`;
    await this.house.ask('POST', path, { key: made.hostKey, body: { admit: true } });
    await this.clock.advance(300);
    await host.until('presence', (view) => view.screensAsking.length === 0);
    return this.house.enter(credentials('screen', made.tasting, key));
  }
}

export type FromAfar = Awaited<ReturnType<HouseFromAfar['evening']>>;

export const closed = { microphone: false, camera: false, voiceOnly: false };
export const ask = (device: Device, asked: object) => device.raw('call:ask', asked) as Promise<CallAnswer>;
export const join = (device: Device, peer: string, more: object = {}) =>
  ask(device, { type: 'Join', peer: `peer-${peer}`, as: 'self', shown: closed, ...more });
export const signal = (device: Device, to: string, sdp = 'v=0') =>
  ask(device, { type: 'Signal', to: `peer-${to}`, signal: { is: 'offer', sdp } });
export const named = ({ peers }: CallView): string[] => peers.map(({ peer }) => peer.slice('peer-'.length));
export const inCall = (device: Device, ...names: string[]) =>
  device.until('call', (view) => named(view).join() === names.join());
export const refused = (code: string) => ({ ok: false, code, message: expect.stringMatching(/\.$/) });

export async function atHome(guest: Guest): Promise<Guest> {
  await guest.guest({ type: 'ChangeSeat', remote: true });
  return guest;
}
