import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { epochMs } from '../../core/units.ts';
import { turnCredential } from '../../server/access/call-servers.ts';
import { callWords as words } from '../../shared/language/en/call.ts';
import { type PoorLine, poorLineTo } from '../support/poor-line.ts';
import { hasRelay, openRelay, type Relay } from '../support/relay.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { CallEvening, joins, turnOn } from './call-evening.ts';
import { flowWithin } from './call-media.ts';
import type { Guest } from './guest.ts';
import type { Person } from './person.ts';

/**
 * The whole call between devices that reach each other through a relay only: Debian's coturn on this machine, behind a line
 * that can lose and hold up what goes over it. The network of a test machine is not ours to slow down.
 */
const secret = 'lanterns-on-the-north-pier';

/** What each connection was given, and the only way that it may take. coturn goes by the clock of the machine. */
function throughTheRelayOnly({ username, credential }: { username: string; credential: string }): void {
  const given: RTCIceServer[] = [];
  const Original = window.RTCPeerConnection;
  window.RTCPeerConnection = class extends Original {
    constructor(configuration: RTCConfiguration = {}) {
      given.push(...(configuration.iceServers ?? []));
      const iceServers = (configuration.iceServers ?? []).map((each) => ({ ...each, username, credential }));
      super({ iceServers, iceTransportPolicy: 'relay' });
    }
  };
  Object.assign(window, { given });
}

describe.runIf(hasRelay())('the call through a relay only', () => {
  let relay: Relay;
  let line: PoorLine;
  let evening: CallEvening;
  let host: Person;
  let lark: Guest;
  beforeAll(async () => {
    relay = await openRelay(secret);
    line = await poorLineTo(relay.port, seededRandom(5));
    const turn = [`turn:127.0.0.1:${line.port}?transport=udp`];
    const real = epochMs(Date.now() - Number(process.env.CLOCK_SHIFT ?? 0) + 3_600_000);
    evening = await CallEvening.open({ callServers: { stun: [], turn, secret } }, async (person) => {
      await person.page.addInitScript(throughTheRelayOnly, turnCredential(secret, person.name, real));
    });
    host = await evening.host();
    lark = await evening.guest('Lark');
    for (const person of [host, lark.person]) {
      await joins(person);
      await turnOn(person, 'camera');
      await turnOn(person, 'microphone');
    }
  });
  afterAll(async () => {
    await evening?.close();
    line?.close();
    await relay?.close();
  });

  const bothSeeAndHear = async (frames: number): Promise<void> => {
    for (const { page } of [host, lark.person])
      await expect
        .poll(async () => {
          const flow = await flowWithin(page, 1000);
          return flow.energyHeard > 0 && flow.frames >= frames;
        })
        .toBe(true);
  };
  const kindsOf = ({ page }: Person) =>
    page.evaluate(async () => {
      const { kept } = window as unknown as { kept: RTCPeerConnection[] };
      const kinds: string[] = [];
      for (const pc of kept)
        for (const stats of (await pc.getStats()).values())
          if (stats.type.endsWith('-candidate')) kinds.push(stats.candidateType);
      return [...new Set(kinds)];
    });

  it('carries pictures and voices with what the server hands out, and by no other way', async () => {
    await bothSeeAndHear(5);
    for (const person of [host, lark.person]) {
      expect(await kindsOf(person)).toEqual(['relay']);
      const given = await person.page.evaluate(() => (window as unknown as { given: RTCIceServer[] }).given);
      expect(given[0]?.urls).toEqual([`turn:127.0.0.1:${line.port}?transport=udp`]);
      expect(given[0]?.username).toMatch(/^\d+:[0-9a-f]{16}$/);
    }
    expect(line.passed.on).toBeGreaterThan(100);
  });

  it('goes on with one packet in twenty lost and a fifth of a second there and back', async () => {
    // Each packet crosses this line twice on its way from device to device.
    line.become(1 - Math.sqrt(0.95), 50);
    Object.assign(line.passed, { all: 0, on: 0 });
    await lark.person.page.waitForTimeout(8000);
    await bothSeeAndHear(1);
    expect(1 - line.passed.on / line.passed.all).toBeGreaterThan(0.015);
    for (const person of [host, lark.person]) expect(await person.text(words.poorLine).count()).toBe(0);
  });

  it('becomes voices only by itself, with a word, where four packets in ten are lost on the way', async () => {
    line.become(1 - Math.sqrt(0.6), 50);
    await lark.person.text(words.poorLine).waitFor();
    await lark.person.button(words.camera.closed).waitFor();
    expect(await lark.person.page.locator('video').count()).toBe(0);
    await lark.person.look('call-phone-poor-line');
    line.become(0, 0);
    await expect.poll(async () => (await flowWithin(lark.person.page, 1000)).energyHeard).toBeGreaterThan(0);
    expect((await flowWithin(lark.person.page, 500)).frames).toBe(0);
    await lark.person.button(words.more).click();
    await lark.person.page.getByRole('switch', { name: words.voiceOnly }).click();
    await lark.person.page.getByRole('dialog').getByRole('button', { name: words.done }).click();
    expect([host, lark.person].flatMap(({ faults }) => faults)).toEqual([]);
  });
});
