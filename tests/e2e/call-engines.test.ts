import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isSilent } from '../../core/call/call-gates.ts';
import { traitsOf } from '../../core/running-order/cue-traits.ts';
import { callWords as words } from '../../shared/language/en/call.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { seatWords } from '../../shared/language/en/seat.ts';
import { inPage } from '../engines/in-page.ts';
import { hasEngine } from '../engines/installed.ts';
import { openFirefox } from '../engines/puppeteer.ts';
import { Visitor } from '../engines/visitor.ts';
import { momentNow } from '../support/moment.ts';
import { CallEvening, joins, turnOn } from './call-evening.ts';
import { type Flow, flowOf, keepConnections, readFlow } from './call-media.ts';
import type { Guest } from './guest.ts';
import type { Person } from './person.ts';

/** A guest in Firefox in one call with the host's tablet and another guest in Chromium, each with what its browser makes up. */
const here = hasEngine('firefox');
const pictures = new URL('../screenshots', import.meta.url).pathname;
const inWords = `?language=${(momentNow()?.locale ?? 'en').split('-')[0]}`;
let evening: CallEvening;
let host: Person;
let lark: Guest;
let finch: Visitor;

/** Runs in the page: for each line that stands, whether this end laid it. */
const laidHere = (): boolean[] =>
  (window as unknown as { kept: RTCPeerConnection[] }).kept
    .filter(({ connectionState }) => connectionState === 'connected')
    .map(({ currentLocalDescription }) => currentLocalDescription?.type === 'offer');

const inFirefox = () => finch.device.read<Flow>(inPage(readFlow));
const atHost = () => flowOf(host.page);
const atLark = () => flowOf(lark.person.page);

/** Waits until more of it has gone over the lines. */
async function grows(look: () => Promise<Flow>, what: keyof Flow): Promise<void> {
  const before = (await look())[what];
  await expect.poll(async () => (await look())[what]).toBeGreaterThan(before);
}

const finchTurnsOn = async (device: 'microphone' | 'camera') => {
  await finch.presses('button', words[device].closed);
  await finch.sees('button', words[device].open);
};

beforeAll(async () => {
  if (!here) return;
  evening = await CallEvening.open();
  host = await evening.host();
  lark = await evening.guest('Lark');
  for (const person of [host, lark.person]) {
    await joins(person);
    await turnOn(person, 'camera');
  }
  await turnOn(host, 'microphone');
  finch = new Visitor(
    await openFirefox({ width: 390, height: 844 }, false, { fakeMedia: true, before: keepConnections }),
  );
  await finch.device.open(`${evening.house.url}/j/${evening.made.code}${inWords}`);
  await finch.types(guestWords.invitation.name, 'Finch');
  await finch.presses('radio', guestWords.invitation.atHome);
  await finch.presses('button', guestWords.invitation.sit);
  await finch.presses('button', guestWords.cautions.accept);
  // Nothing moves any more when these are put away.
  await finch.presses('button', seatWords.fourWords.seen);
});
afterAll(async () => {
  await finch?.device.close();
  await evening?.close();
});

describe.skipIf(!here)('a call of Firefox with Chromium', () => {
  it('carries pictures both ways, whichever of them lays the line', async () => {
    const laid = new Set<boolean>();
    // Which one does goes by ids that are drawn anew with each joining.
    for (let times = 0; laid.size < 2; times += 1) {
      if (times % 2 === 1) {
        await lark.person.button(words.more).click();
        await lark.person.button(words.leave).click();
        await joins(lark.person);
        await turnOn(lark.person, 'camera');
      } else {
        if (times > 0) {
          await finch.presses('button', words.more);
          await finch.presses('button', words.leave);
        }
        await finch.presses('button', words.join);
        await finchTurnsOn('camera');
      }
      for (const look of [inFirefox, atHost, atLark]) {
        await expect.poll(async () => (await look()).connected).toBe(2);
        await grows(look, 'frames');
      }
      for (const each of await finch.device.read<boolean[]>(inPage(laidHere))) laid.add(each);
    }
    mkdirSync(pictures, { recursive: true });
    writeFileSync(join(pictures, 'call-phone-in-firefox.png'), await finch.device.picture());
  });

  it('carries voices both ways', async () => {
    await grows(inFirefox, 'energyHeard');
    await finchTurnsOn('microphone');
    await grows(atHost, 'voicePacketsHeard');
    await grows(atLark, 'energyHeard');
  });

  it('[V1] carries nothing out of a closed microphone through a silence, and the host is heard in it', async () => {
    const from = evening.cues.findIndex(({ id }) => id.endsWith('/first/swirl'));
    const through = evening.cues.slice(from).findIndex((cue) => !isSilent(traitsOf(cue).call));
    expect(through).toBeGreaterThan(3);
    let quiet: Flow | undefined;
    for (const cue of evening.cues.slice(from, from + through)) {
      await evening.goTo(cue.id);
      await grows(inFirefox, 'energyHeard');
      if (quiet === undefined) {
        // Until what was on its way has come.
        const sent = async () => (await inFirefox()).voicePacketsSent;
        await expect
          .poll(async () => {
            const before = await sent();
            await host.page.waitForTimeout(500);
            return (await sent()) - before;
          })
          .toBe(0);
        quiet = await inFirefox();
      }
      const now = await inFirefox();
      expect({ cue: cue.id, packets: now.voicePacketsSent, energy: now.energySent }).toEqual({
        cue: cue.id,
        packets: quiet.voicePacketsSent,
        energy: quiet.energySent,
      });
    }
  });

  it('says nothing was wrong on any screen', () => {
    expect([host, lark.person].flatMap(({ faults }) => faults)).toEqual([]);
  });
});
