import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { callWords as words } from '../../shared/language/en/call.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { seatWords } from '../../shared/language/en/seat.ts';
import { CallEvening, joins, turnOn } from './call-evening.ts';
import { flowOf, flowWithin } from './call-media.ts';
import type { Guest } from './guest.ts';
import type { Person } from './person.ts';

/** The call and the devices that come to it: pages that are left, second devices, other tablets, faulty cameras. */
let evening: CallEvening;
let host: Person;
let lark: Guest;
const everybody: Person[] = [];

beforeAll(async () => {
  evening = await CallEvening.open();
  host = await evening.host();
  lark = await evening.guest('Lark');
  everybody.push(host, lark.person);
  await joins(host);
  await joins(lark.person);
  await turnOn(host, 'microphone');
  await turnOn(lark.person, 'microphone');
});
afterAll(() => evening?.close());

const hearsEachOther = async (one: Person, other: Person): Promise<void> => {
  for (const { page } of [one, other])
    await expect.poll(async () => (await flowWithin(page, 500)).energyHeard).toBeGreaterThan(0);
};

describe('the call and its devices', () => {
  it('[V9] goes on, and is seen to, while the host looks at the doors, the plan or the pouring', async () => {
    const person = host;
    for (const page of ['doors', 'plan', 'pouring'] as const) {
      await person.page.goto(evening.hostPage(page));
      const above = person.page.getByRole('complementary', { name: words.title });
      await above.getByText(words.inCall(['Lark'])).waitFor();
      await hearsEachOther(person, lark.person);
      // The voices are played, and not only received.
      expect(
        await person.page
          .locator('audio')
          .evaluateAll((all: HTMLAudioElement[]) => all.map((each) => each.paused)),
      ).toEqual([false]);
      // While a page is read its upper edge lies under the sign, as under every bar that stays.
      await (page === 'doors' ? person.look('call-tablet-doors') : person.photograph(`call-tablet-${page}`));
    }
    // Its microphone is closed from there, and the call is the same when the host comes back.
    await person.button(words.microphone.open).click();
    await person.button(words.microphone.closed).waitFor();
    expect((await flowWithin(person.page, 500)).energySent).toBe(0);
    await person.page.getByRole('link', { name: words.toRoom }).click();
    await person.heading(hostWords.cue.kinds.gathering, 2).waitFor();
    await person.button(words.leave).waitFor();
    expect((await flowOf(person.page)).connected).toBe(1);
    await turnOn(person, 'microphone');
  });

  it('[V7, V9] is on one of the two devices of a seat, as the call alone where one likes, after a reload too', async () => {
    const { page } = lark.person;
    await lark.person.button(guestWords.seat.open).click();
    await lark.person.button(seatWords.showLink).click();
    const link = await lark.person.field(seatWords.link).inputValue();
    const second = await evening.device('second phone', 'phone');
    everybody.push(second);
    await second.page.goto(link);
    await second.button(guestWords.cautions.accept).click();
    // The call is at the first device, and this one says so.
    await second.text(words.elsewhere).waitFor();
    expect(await second.page.locator('audio').count()).toBe(0);
    await second.look('call-phone-second');
    await second.button(words.only).click();
    await second.heading(words.title, 1).waitFor();
    await second.button(words.bring).click();
    await turnOn(second, 'microphone');
    await turnOn(second, 'camera');
    await hearsEachOther(second, host);
    // The first one is silent: nothing of the call is played there, and nothing is sent.
    await lark.person.text(words.elsewhere).waitFor();
    expect(await page.locator('audio').count()).toBe(0);
    expect(await flowWithin(page, 500)).toMatchObject({ connected: 0, energySent: 0 });
    expect(await host.page.locator('.call-tile').count()).toBe(1);
    await second.look('call-phone-only');
    await second.page.reload();
    await second.heading(words.title, 1).waitFor();
    expect(await second.page.locator('.room-head').count()).toBe(0);
    await second.button(words.whole).click();
    await second.heading(words.title, 1).waitFor({ state: 'detached' });
    await second.leaves();
    await lark.person.button(guestWords.notes.back).click();
    await lark.person.button(words.join).click();
    await turnOn(lark.person, 'microphone');
    await hearsEachOther(lark.person, host);
  });

  it('goes on when the host takes another tablet in mid-call, and the first one is told', async () => {
    const other = await evening.host('other tablet');
    everybody.push(other);
    await other.button(words.join).click();
    await turnOn(other, 'microphone');
    await host.text(words.elsewhere).waitFor();
    expect(await flowWithin(host.page, 500)).toMatchObject({ connected: 0, energySent: 0 });
    await hearsEachOther(other, lark.person);
    await other.leaves();
    await host.button(words.join).click();
    await turnOn(host, 'microphone');
    await hearsEachOther(host, lark.person);
  });

  it('says in a sentence what is wrong with a camera or microphone, and the call goes on', async () => {
    const { person } = lark;
    const { page } = person;
    const says = (device: 'camera' | 'microphone', failure: keyof typeof words.failures) =>
      person.text(words.failure(words[device].name, words.failures[failure])).waitFor();
    // By the names of W3C, Media Capture and Streams, section 10.2.
    for (const [name, failure] of [
      ['NotAllowedError', 'refused'],
      ['NotFoundError', 'none'],
      ['NotReadableError', 'taken'],
    ] as const) {
      await page.evaluate((error) => {
        navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', error));
      }, name);
      await person.button(words.camera.closed).click();
      await says('camera', failure);
      await person.button(words.camera.closed).waitFor();
    }
    await page.evaluate(() => {
      Reflect.deleteProperty(navigator.mediaDevices, 'getUserMedia');
      const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
      navigator.mediaDevices.getUserMedia = async (wanted) => {
        const stream = await ask(wanted);
        for (const track of stream.getTracks()) Object.assign(window, { [track.kind]: track });
        return stream;
      };
    });
    await turnOn(person, 'camera');
    const happens = (kind: 'audio' | 'video', event: string) =>
      page.evaluate(
        ([name, said]) =>
          (window as unknown as Record<string, MediaStreamTrack>)[name ?? '']?.dispatchEvent(
            new Event(said ?? ''),
          ),
        [kind, event],
      );
    await happens('video', 'ended');
    await says('camera', 'unplugged');
    await expect.poll(async () => (await flowWithin(page, 500)).pictureBytesSent).toBe(0);
    await turnOn(person, 'camera');
    await expect.poll(async () => (await flowWithin(host.page, 500)).frames).toBeGreaterThan(0);
    // A telephone that rings takes the microphone, and gives it back.
    await happens('video', 'mute');
    await says('camera', 'taken');
    await happens('video', 'unmute');
    await expect.poll(() => page.locator('.call-failure').count()).toBe(0);
    await hearsEachOther(host, person);
  });

  it('says over http that browsers give no camera there, and offers the other call', async () => {
    // A browser takes http on this machine for safe; elsewhere it does not, and then looks like this to a page.
    const rook = await evening.guest('Rook', 'phone', (person) =>
      person.page.addInitScript(() => {
        Object.defineProperty(window, 'isSecureContext', { value: false });
        Object.defineProperty(navigator, 'mediaDevices', { value: undefined });
      }),
    );
    const { person } = rook;
    everybody.push(person);
    await joins(person);
    await person.button(words.camera.closed).click();
    const said = person.page.locator('.call-failure');
    await said.getByText(words.failures['needs-https']).waitFor();
    await said.getByRole('link', { name: words.other }).waitFor();
    await person.look('call-phone-http');
    // It stands over nothing, can be put away, and is said again to who taps again.
    const [sentence, verb] = await Promise.all(
      [said, person.page.locator('.room h1').first()].map((each) => each.boundingBox()),
    );
    expect((sentence?.y ?? 0) + (sentence?.height ?? 0)).toBeLessThanOrEqual(verb?.y ?? 0);
    await said.getByRole('button', { name: words.done }).click();
    await said.waitFor({ state: 'detached' });
    await person.button(words.camera.closed).click();
    await said.waitFor();
    await person.button(words.more).click();
    await person.button(words.leave).click();
    await person.button(words.join).waitFor();
    await person.leaves();
  });

  it('says in a browser without WebRTC that it cannot take part, leads to the other call, and all else goes on', async () => {
    // As in WebKitGTK; W3C, WebRTC 1.0, section 4.4.2 names what a page looks for.
    const tern = await evening.guest('Tern', 'small', (each) =>
      each.page.addInitScript(() => Reflect.deleteProperty(window, 'RTCPeerConnection')),
    );
    const { person } = tern;
    everybody.push(person);
    await person.button(words.join).click();
    const strip = person.page.getByRole('complementary', { name: words.title });
    await strip.getByRole('alert').getByText(words.noWebrtc).waitFor();
    const other = strip.getByRole('link', { name: words.other });
    expect(await other.getAttribute('href')).toBe('https://call.example/six-lanterns');
    const over = ({ scrollHeight, clientHeight }: Element) => scrollHeight - clientHeight;
    expect(await strip.evaluate(over)).toBe(0);
    await person.look('call-phone-no-webrtc');
    // Nobody sees them come, and their evening is like everybody's.
    expect(await host.page.locator('.call-tile', { hasText: 'Tern' }).count()).toBe(0);
    await person.button(guestWords.signals.needsHost).click();
    await person.page.getByRole('button', { name: guestWords.signals.needsHost, pressed: true }).waitFor();
    await person.button(guestWords.signals.needsHost).click();
    await person.button(words.hide).click();
    await strip.getByRole('alert').waitFor({ state: 'detached' });
    await person.leaves();
  });

  it('says on the tablet too that a poor line carries voices only, and shows pictures again when asked', async () => {
    const { page } = host;
    const pictures = () => page.locator('.call-tiles video').count();
    await turnOn(host, 'camera');
    await expect.poll(pictures).toBe(1);
    await page.evaluate(() => {
      const ask = RTCPeerConnection.prototype.getStats;
      const narrow = (stats: { readonly type: string }) =>
        stats.type === 'candidate-pair' ? { ...stats, availableOutgoingBitrate: 90_000 } : stats;
      RTCPeerConnection.prototype.getStats = async function getStats() {
        return new Map([...(await ask.call(this)).entries()].map(([id, stats]) => [id, narrow(stats)]));
      };
      Object.assign(window, {
        widen: () => Object.assign(RTCPeerConnection.prototype, { getStats: ask }),
      });
    });
    await host.text(words.poorLineHere).waitFor();
    await expect.poll(pictures).toBe(0);
    await host.look('call-tablet-poor-line');
    await page.evaluate(() => (window as unknown as { widen: () => void }).widen());
    await host.button(words.pictures).click();
    await expect.poll(pictures).toBe(1);
    await expect.poll(() => host.text(words.poorLineHere).count()).toBe(0);
    await hearsEachOther(host, lark.person);
  });

  it('[V9] goes on when the host finishes the evening, and ends when its pages are left', async () => {
    const person = host;
    await evening.conductor.host({ type: 'Finish' });
    await person.heading(hostWords.finished.title, 1).waitFor();
    await person.page.getByRole('complementary', { name: words.title }).waitFor();
    await person.look('call-tablet-finished');
    await expect.poll(async () => (await flowOf(person.page)).connected).toBe(1);
    await person.page.goto(`${evening.house.url}/host#/`);
    await person.heading(hostWords.home.title, 1).waitFor();
    await expect.poll(async () => (await flowOf(lark.person.page)).connected).toBe(0);
  });

  it('says nothing was wrong on any screen', () => {
    expect(everybody.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
