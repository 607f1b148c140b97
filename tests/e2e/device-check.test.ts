import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoEvening } from '../../shared/demo/evening.ts';
import { beforeWords } from '../../shared/language/en/before.ts';
import { beforeEveningWords } from '../../shared/language/en/before-evening.ts';
import { deviceCheckWords as words } from '../../shared/language/en/device-check.ts';
import { deviceReportWords as reports } from '../../shared/language/en/device-reports.ts';
import { planWords } from '../../shared/language/en/plan.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { lendBrowser } from '../support/browser.ts';
import { createTasting } from '../support/tasting.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

/** Half a minute before the evening: a guest at home tries camera, sound and line, and the host sees who is ready. */
let premises: Premises;
let made: CreatedTasting;
beforeAll(async () => {
  premises = await Premises.open({ fakeMedia: true });
  made = await createTasting(premises, {
    ...demoEvening,
    guests: 4,
    remoteGuests: 2,
    callLink: 'https://call.example/six-lanterns',
  });
});
afterAll(() => premises?.close());

const checkPage = (origin = premises.room.origin) => `${origin}/kit/${made.code}`;

async function host(page: string): Promise<Person> {
  const person = await Person.arrives(premises.browser, 'Maren', 'tablet');
  await person.page.goto(`${premises.room.origin}/host#tasting=${made.tasting}&key=${made.hostKey}`);
  await person.page.getByRole('heading', { level: 1 }).waitFor();
  await person.page.goto(`${premises.room.origin}/host#/t/${made.tasting}/${page}`);
  return person;
}

/** A part of the check, and the sentence that says how it went. */
const part = (person: Person, name: keyof typeof words.parts) =>
  person.page
    .getByRole('listitem')
    .filter({ has: person.page.getByRole('heading', { name: words.parts[name] }) })
    .getByRole('status');

const live = (person: Person) =>
  person.page.evaluate(() => {
    const stream = document.querySelector('video')?.srcObject;
    return stream instanceof MediaStream ? stream.getTracks().map(({ readyState }) => readyState) : [];
  });

describe('a guest at home, before the evening', () => {
  it('comes there from the invitation, tries all four, tells the host, and takes it back', async () => {
    const lark = await Person.arrives(premises.browser, 'Lark', 'phone');
    await lark.page.goto(`${premises.room.origin}/j/${made.code}`);
    await lark.page.getByRole('link', { name: beforeWords.tryDevices }).click();
    await lark.page.getByRole('heading', { level: 1, name: words.title(demoEvening.title ?? '') }).waitFor();
    await lark.look('device-check', { whole: true });
    await lark.button(words.begin).click();
    await lark.text(words.camera.works).waitFor();
    await lark.text(words.microphone.works).waitFor();
    await lark.text(words.line.works).or(lark.text(words.line.voice)).waitFor();
    await expect.poll(() => lark.page.evaluate(() => document.querySelector('video')?.videoWidth)).toBe(640);
    expect(await part(lark, 'loudspeaker').textContent()).toBe(words.tone);
    await lark.button(words.play).click();
    await lark.button(words.heard).click();
    expect(await part(lark, 'loudspeaker').textContent()).toBe(words.loudspeaker.works);
    for (const [width, height] of [
      [360, 640],
      [390, 844],
    ] as const) {
      await lark.page.setViewportSize({ width, height });
      await lark.look(`device-check-tried-${width}x${height}`, { whole: true });
    }
    // One tap lets go of both.
    expect(await live(lark)).toEqual(['live', 'live']);
    await lark.button(words.stop).click();
    expect(await live(lark)).toEqual([]);

    await lark.button(words.send).click();
    await lark.text(words.noName).waitFor();
    await lark.field(words.name).fill('Lark');
    await lark.button(words.send).click();
    await lark.text(words.told).waitFor();

    const maren = await host('doors');
    await maren.page.getByRole('heading', { name: reports.title }).waitFor();
    await maren.text(reports.count(1, 2)).waitFor();
    await maren.text(new RegExp(`Lark.*${reports.ready}`)).waitFor();
    await maren.look('doors-device-reports');
    await maren.page.goto(`${premises.room.origin}/host#/t/${made.tasting}/plan`);
    await maren
      .button(new RegExp(`^${planWords.parts.before}`))
      .first()
      .click();
    await maren.text(reports.count(1, 2)).waitFor();
    await maren.text(beforeEveningWords.steps.vials.hint).waitFor();
    await maren.look('before-device-reports', { whole: true });

    // A page that was loaded anew still knows what it told, and can take it back.
    await lark.page.reload();
    await lark.button(words.begin).click();
    await lark.button(words.takeBack).click();
    await lark.text(words.takenBack).waitFor();
    await maren.page.goto(`${premises.room.origin}/host#/t/${made.tasting}/doors`);
    await maren.text(reports.none).waitFor();
    expect([...lark.faults, ...maren.faults]).toEqual([]);
  });

  it('lets go of camera and microphone when it is left', async () => {
    const wren = await Person.arrives(premises.browser, 'Wren', 'phone');
    await wren.page.goto(checkPage());
    await wren.button(words.begin).click();
    await wren.text(words.camera.works).waitFor();
    await wren.page.evaluate(() => {
      const stream = document.querySelector('video')?.srcObject as MediaStream;
      Object.assign(window, { tracks: stream.getTracks() });
      Object.defineProperty(document, 'visibilityState', { value: 'hidden' });
      document.dispatchEvent(new Event('visibilitychange'));
    });
    await wren.button(words.again).waitFor();
    const states = await wren.page.evaluate(() =>
      (window as unknown as { tracks: MediaStreamTrack[] }).tracks.map(({ readyState }) => readyState),
    );
    expect(states).toEqual(['ended', 'ended']);
  });

  it('over http says so in a sentence, offers the other call, and tries tone and line all the same', async () => {
    const rook = await Person.arrives(premises.browser, 'Rook', 'phone');
    // A browser takes http on this machine for safe; elsewhere it does not, and then looks like this to a page.
    await rook.page.addInitScript(() => {
      Object.defineProperty(window, 'isSecureContext', { value: false });
      Object.defineProperty(navigator, 'mediaDevices', { value: undefined });
    });
    await rook.page.goto(checkPage());
    await rook.text(words.plainHttp).waitFor();
    await rook.page.getByRole('link', { name: words.callLink }).waitFor();
    await rook.button(words.begin).click();
    await rook.text(words.line.works).or(rook.text(words.line.voice)).waitFor();
    expect(await part(rook, 'camera').textContent()).toBe(words.untried);
    await rook.page.setViewportSize({ width: 360, height: 640 });
    await rook.look('device-check-plain-http-360x640', { whole: true });
    expect(rook.faults).toEqual([]);
  });

  it('says of a browser without WebRTC that it cannot take part in the call, and offers the other one', async () => {
    const rail = await Person.arrives(premises.browser, 'Rail', 'phone');
    await rail.page.addInitScript(() => Reflect.deleteProperty(window, 'RTCPeerConnection'));
    await rail.page.goto(checkPage());
    await rail.text(words.noCall).waitFor();
    await rail.page.getByRole('link', { name: words.callLink }).waitFor();
    expect(rail.faults).toEqual([]);
    await rail.leaves();
  });

  it('says of a camera that was refused how to allow it', async () => {
    const strict = await lendBrowser();
    const dove = await Person.arrives(strict, 'Dove', 'phone');
    await dove.page.addInitScript(() => {
      MediaDevices.prototype.getUserMedia = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
    });
    await dove.page.goto(checkPage());
    await dove.button(words.begin).click();
    await dove.text(words.camera.refused).waitFor();
    await dove.text(words.microphone.refused).waitFor();
    await strict.close();
  });
});
