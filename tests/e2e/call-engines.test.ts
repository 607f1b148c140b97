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

/**
 * A guest in Firefox in one call with the host's tablet and another guest in Chromium, then with a tablet in Firefox too; each
 * with what its browser makes up.
 */
const here = hasEngine('firefox');
const pictures = new URL('../screenshots', import.meta.url).pathname;
const inWords = `?language=${(momentNow()?.locale ?? 'en').split('-')[0]}`;
let evening: CallEvening;
let host: Person;
let lark: Guest;
let finch: Visitor;
let tablet: Visitor | undefined;

/** Runs in the page: for each line that stands, whether this end laid it. */
const laidHere = (): boolean[] =>
  (window as unknown as { kept: RTCPeerConnection[] }).kept
    .filter(({ connectionState }) => connectionState === 'connected')
    .map(({ currentLocalDescription }) => currentLocalDescription?.type === 'offer');

const inPageOf = (visitor: Visitor) => () => visitor.device.read<Flow>(inPage(readFlow));
const inFirefox = () => inPageOf(finch)();
const atHost = () => flowOf(host.page);
const atLark = () => flowOf(lark.person.page);

/** Waits until more of it has gone over the lines. */
async function grows(look: () => Promise<Flow>, what: keyof Flow): Promise<void> {
  const before = (await look())[what];
  await expect.poll(async () => (await look())[what]).toBeGreaterThan(before);
}

const turnsOn = async (visitor: Visitor, device: 'microphone' | 'camera') => {
  await visitor.presses('button', words[device].closed);
  await visitor.sees('button', words[device].open);
};
const arrives = async (width: number, height: number) =>
  new Visitor(await openFirefox({ width, height }, false, { fakeMedia: true, before: keepConnections }));

/** Until what was on its way has come, and nothing more of a voice leaves. @returns what had left by then */
async function fallsSilent(look: () => Promise<Flow>): Promise<Flow> {
  const sent = async () => (await look()).voicePacketsSent;
  await expect
    .poll(async () => {
      const before = await sent();
      await lark.person.page.waitForTimeout(500);
      return (await sent()) - before;
    })
    .toBe(0);
  return look();
}

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
  finch = await arrives(390, 844);
  await finch.device.open(`${evening.house.url}/j/${evening.made.code}${inWords}`);
  await finch.types(guestWords.invitation.name, 'Finch');
  await finch.presses('radio', guestWords.invitation.atHome);
  await finch.presses('button', guestWords.invitation.sit);
  await finch.presses('button', guestWords.cautions.accept);
  // Nothing moves any more when these are put away.
  await finch.presses('button', seatWords.fourWords.seen);
});
afterAll(async () => {
  await tablet?.device.close();
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
        await turnsOn(finch, 'camera');
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
    await turnsOn(finch, 'microphone');
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
      quiet ??= await fallsSilent(inFirefox);
      const now = await inFirefox();
      expect({ cue: cue.id, packets: now.voicePacketsSent, energy: now.energySent }).toEqual({
        cue: cue.id,
        packets: quiet.voicePacketsSent,
        energy: quiet.energySent,
      });
    }
  });

  it('[V1, V7] goes on with the host at a tablet in Firefox, with Firefox and Chromium, in talk and in silence', async () => {
    const [gathering] = evening.cues;
    const swirl = evening.cues.find(({ id }) => id.endsWith('/first/swirl'));
    if (gathering === undefined || swirl === undefined) throw new Error('There is no swirl.');
    await evening.goTo(gathering.id);
    const { house, made } = evening;
    tablet = await arrives(1024, 768);
    await tablet.device.open(`${house.url}/host${inWords}#tasting=${made.tasting}&key=${made.hostKey}`);
    await tablet.sees('heading', /./);
    await tablet.device.open(evening.hostPage('room'));
    await tablet.presses('button', words.join);
    await host.text(words.elsewhere).waitFor();
    await turnsOn(tablet, 'camera');
    const atTablet = inPageOf(tablet);
    for (const look of [atTablet, inFirefox, atLark]) {
      await expect.poll(async () => (await look()).connected).toBe(2);
      await grows(look, 'frames');
    }
    await turnsOn(tablet, 'microphone');
    await turnsOn(finch, 'microphone');
    for (const look of [atTablet, inFirefox, atLark]) await grows(look, 'energyHeard');
    writeFileSync(join(pictures, 'call-tablet-in-firefox.png'), await tablet.device.picture());
    await evening.goTo(swirl.id);
    await fallsSilent(inFirefox);
    for (const look of [inFirefox, atLark]) await grows(look, 'energyHeard');
    expect(await flowOf(host.page)).toMatchObject({ connected: 0 });
  });

  it('says nothing was wrong on any screen', () => {
    expect([host, lark.person].flatMap(({ faults }) => faults)).toEqual([]);
  });
});
