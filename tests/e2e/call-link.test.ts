import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PeerLink as Link } from '../../shared/call/peer-link.ts';
import type { CallSignal } from '../../shared/wire/call.ts';
import { lendBrowser } from '../support/browser.ts';

/** Two ends of one line of the call, as the mesh opens them, in a page of a real Chromium. */
let browser: Browser;
let page: Page;

beforeAll(async () => {
  const entry = new URL('../../shared/call/peer-link.ts', import.meta.url).pathname;
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, lib: { entry, formats: ['iife'], name: 'callLink' } },
  });
  const [chunk] = [built].flat().flatMap((each) => ('output' in each ? each.output : []));
  if (chunk?.type !== 'chunk') throw new Error('The line was not built.');
  browser = await lendBrowser({ fakeMedia: true });
  page = await browser.newPage();
  await page.addScriptTag({ content: `${chunk.code};Object.assign(window, { callLink });` });
});
afterAll(() => browser?.close());

describe('a line between two devices', () => {
  it('settles when both ends offer at once, over and over, and its pictures go on', async () => {
    const seen = await page.evaluate(async () => {
      const { PeerLink } = (window as unknown as { callLink: { PeerLink: typeof Link } }).callLink;
      const said: { readonly by: string; readonly is: string }[] = [];
      const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
      const ends: Record<string, Link> = {};
      const stale: string[] = [];
      const faults: string[] = [];
      const open = (name: string, other: string, first: boolean): Link =>
        new PeerLink({
          first,
          servers: [],
          // In order, and late enough for offers to cross.
          send: (signal: CallSignal) => {
            said.push({ by: name, is: signal.is });
            setTimeout(
              () => void ends[other]?.receive(signal).catch((error) => faults.push(String(error))),
              60,
            );
          },
          onTrack: () => undefined,
          onState: () => undefined,
          onStale: () => stale.push(name),
        });
      const [one, other] = [open('one', 'other', true), open('other', 'one', false)];
      Object.assign(ends, { one, other });
      const canvas = document.createElement('canvas');
      let turn = 0;
      const painting = setInterval(() => {
        turn += 1;
        canvas.getContext('2d')?.fillRect(turn % 200, turn % 100, 9, 9);
      }, 40);
      const [picture] = canvas.captureStream(25).getTracks();
      for (const each of [one, other]) each.publish(null, picture ?? null, 300_000);
      const connected = async () => {
        for (let tries = 0; tries < 100 && one.pc.connectionState !== 'connected'; tries += 1)
          await wait(100);
      };
      await connected();
      const frames = async ({ pc }: Link) =>
        [...(await pc.getStats()).values()].reduce(
          (sum, stats) => sum + (stats.type === 'inbound-rtp' ? (stats.framesDecoded ?? 0) : 0),
          0,
        );
      const rounds = [];
      for (let round = 0; round < 5; round += 1) {
        const before = said.length;
        for (const each of [one, other]) each.restart();
        await wait(1200);
        await connected();
        const [had, hadOther] = [await frames(one), await frames(other)];
        await wait(800);
        const offers = said.slice(before).filter(({ is }) => is === 'offer');
        rounds.push({
          offeredBy: [...new Set(offers.map(({ by }) => by))].sort(),
          states: [one, other].map(({ pc }) => `${pc.signalingState}, ${pc.connectionState}`),
          grows: [(await frames(one)) > had, (await frames(other)) > hadOther],
        });
      }
      clearInterval(painting);
      for (const each of [one, other]) each.close();
      return { rounds, stale, faults };
    });
    expect(seen.faults).toEqual([]);
    expect(seen.stale).toEqual([]);
    for (const round of seen.rounds)
      expect(round).toEqual({
        offeredBy: ['one', 'other'],
        states: ['stable, connected', 'stable, connected'],
        grows: [true, true],
      });
  });

  it('answers an offer that was said twice, and makes none of its own out of it', async () => {
    const said = await page.evaluate(async () => {
      const { PeerLink } = (window as unknown as { callLink: { PeerLink: typeof Link } }).callLink;
      const open = (first: boolean, send: (signal: CallSignal) => void): Link =>
        new PeerLink({
          first,
          servers: [],
          send,
          onTrack: () => undefined,
          onState: () => undefined,
          onStale: () => undefined,
        });
      let one: Link | undefined;
      const offer = await new Promise<CallSignal>((tell) => {
        one = open(true, (signal) => signal.is === 'offer' && tell(signal));
      });
      const answers: string[] = [];
      const other = open(false, (signal) => answers.push(signal.is));
      await Promise.all([other.receive(offer), other.receive(offer)]);
      const { signalingState } = other.pc;
      for (const each of [one, other]) each?.close();
      return { signalingState, answers: answers.filter((is) => is !== 'candidates') };
    });
    expect(said).toEqual({ signalingState: 'stable', answers: ['answer', 'answer'] });
  });

  it('comes about although the first offers, answers or candidates are lost', async () => {
    const seen = await page.evaluate(async () => {
      const { PeerLink } = (window as unknown as { callLink: { PeerLink: typeof Link } }).callLink;
      const without = async (lost: CallSignal['is']) => {
        const ends: Record<string, Link> = {};
        let dropped = 0;
        const begun = performance.now();
        const open = (other: string, first: boolean): Link =>
          new PeerLink({
            first,
            servers: [],
            send: (signal: CallSignal) => {
              if (signal.is === lost && performance.now() - begun < 2000) dropped += 1;
              else setTimeout(() => void ends[other]?.receive(signal).catch(() => undefined), 20);
            },
            onTrack: () => undefined,
            onState: () => undefined,
            onStale: () => undefined,
          });
        const [one, other] = [open('other', true), open('one', false)];
        Object.assign(ends, { one, other });
        for (let tries = 0; tries < 1200 && one.pc.connectionState !== 'connected'; tries += 1)
          await new Promise((resolve) => setTimeout(resolve, 100));
        const states = [one, other].map(({ pc }) => pc.connectionState);
        for (const each of [one, other]) each.close();
        return { lost, dropped: dropped > 0, states };
      };
      return Promise.all((['offer', 'answer', 'candidates'] as const).map(without));
    });
    const states = ['connected', 'connected'];
    expect(seen).toEqual(['offer', 'answer', 'candidates'].map((lost) => ({ lost, dropped: true, states })));
  });
});
