import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { epochMs } from '../../core/units.ts';
import { callServersFor, turnCredential } from '../../server/access/call-servers.ts';
import { lendBrowser } from '../support/browser.ts';
import { hasRelay, openRelay, type Relay } from '../support/relay.ts';

/**
 * What the server hands out, shown to Debian's coturn by a real Chromium that may take no other way. coturn goes by the
 * clock of the machine, not by the moment of this run.
 */
const secret = 'lanterns-on-the-north-pier';
const realNow = () => epochMs(Date.now() - Number(process.env.CLOCK_SHIFT ?? 0));
const hour = 3_600_000;

/** What came out at the other end of two connections in one page after so many ms, media by the relay only. */
interface Passed {
  readonly frames: number;
  readonly kinds: readonly string[];
  readonly gathered: readonly string[];
}

async function passThrough(page: Page, iceServers: readonly object[], ms: number): Promise<Passed> {
  return page.evaluate(
    async ([servers, wait]) => {
      const setting = { iceServers: servers, iceTransportPolicy: 'relay' } as RTCConfiguration;
      const [one, other] = [new RTCPeerConnection(setting), new RTCPeerConnection(setting)];
      const gathered: string[] = [];
      for (const [from, to] of [
        [one, other],
        [other, one],
      ] as const)
        from.onicecandidate = ({ candidate }) => {
          if (candidate === null || candidate.candidate === '') return;
          gathered.push(candidate.type ?? '');
          void to.addIceCandidate(candidate);
        };
      const canvas = document.createElement('canvas');
      const brush = canvas.getContext('2d');
      let turn = 0;
      const painting = setInterval(() => {
        turn += 1;
        brush?.fillRect(turn % 200, turn % 100, 9, 9);
      }, 40);
      for (const track of canvas.captureStream(25).getTracks()) one.addTrack(track);
      await one.setLocalDescription();
      await other.setRemoteDescription(one.localDescription as RTCSessionDescription);
      await other.setLocalDescription();
      await one.setRemoteDescription(other.localDescription as RTCSessionDescription);
      const until = performance.now() + wait;
      let frames = 0;
      const kinds = new Set<string>();
      while (performance.now() < until && frames < 25) {
        await new Promise((resolve) => setTimeout(resolve, 200));
        const stats = [...(await other.getStats()).values()] as Record<string, unknown>[];
        for (const each of stats) {
          if (each.type === 'inbound-rtp') frames = Number(each.framesDecoded ?? 0);
          if (each.type === 'candidate-pair' && each.state === 'succeeded')
            for (const { id, candidateType } of stats)
              if (id === each.localCandidateId || id === each.remoteCandidateId)
                kinds.add(String(candidateType));
        }
      }
      clearInterval(painting);
      one.close();
      other.close();
      return { frames, kinds: [...kinds].sort(), gathered: [...new Set(gathered)] };
    },
    [iceServers, ms] as const,
  );
}

describe.runIf(hasRelay())('a call through a relay', () => {
  let relay: Relay;
  let browser: Browser;
  let page: Page;
  let servers: (changes?: { readonly secret?: string; readonly at?: number }) => readonly object[];
  beforeAll(async () => {
    relay = await openRelay(secret);
    browser = await lendBrowser();
    page = await browser.newPage();
    const turn = [`turn:127.0.0.1:${relay.port}?transport=udp`, `turn:127.0.0.1:${relay.port}?transport=tcp`];
    servers = (changes = {}) =>
      callServersFor(
        { stun: [], turn, secret: changes.secret ?? secret },
        'hash of a key',
        epochMs(changes.at ?? realNow()),
      );
  });
  afterAll(async () => {
    await browser?.close();
    await relay?.close();
  });

  it('passes pictures on for whoever shows what the server made, and by no other way', async () => {
    const passed = await passThrough(page, servers(), 20_000);
    expect(passed.frames).toBeGreaterThanOrEqual(25);
    expect(passed.kinds).toEqual(['relay']);
    expect(passed.gathered).toEqual(['relay']);
    expect(relay.output()).toContain('ALLOCATE processed, success');
  });

  it('passes nothing on for a name of yesterday, nor for one that another secret signed', async () => {
    for (const wrong of [
      servers({ at: realNow() - 24 * hour }),
      servers({ secret: 'another-secret-of-theirs' }),
    ]) {
      const passed = await passThrough(page, wrong, 4000);
      expect(passed).toEqual({ frames: 0, kinds: [], gathered: [] });
    }
    // The same words with a later end are not signed.
    const { username, credential } = turnCredential(secret, 'a', epochMs(realNow() - 24 * hour));
    const later = `${Number(username.split(':')[0]) + 48 * 3600}:a`;
    const urls = [`turn:127.0.0.1:${relay.port}?transport=udp`];
    expect(await passThrough(page, [{ urls, username: later, credential }], 4000)).toMatchObject({
      frames: 0,
    });
  });
});
