import type { CDPSession } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { documentWords as german } from '../../shared/language/de/document.ts';
import type { DocumentWords } from '../../shared/language/en/document.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { House } from '../server/support/house.ts';
import { exportsOf } from '../support/languages.ts';
import { Guest } from './guest.ts';
import { Premises } from './premises.ts';

/**
 * What phones do to a page in the course of an evening: the network goes without a word, the screen is locked and the
 * page frozen, another page is looked at and left again. Each time the room goes on meanwhile, and the page must be
 * level with it afterwards, with every word that was typed.
 */
const plan = planSchema.parse({ ...demoEvening, pacing: { by: 'host' } });
const cues = compile(plan);
const first = plan.pours[0]?.id ?? '';
const cueCalled = (id: string): Cue => {
  const cue = cues.find((each) => each.id === id);
  if (cue === undefined) throw new Error(`The demo evening has no cue ${id}.`);
  return cue;
};
const writing = cueCalled(`${first}/writing/write/nose`);
const later = cueCalled('welcome');

let premises: Premises;
let host: Device;
let guest: Guest;
let wire: CDPSession;
let code = '';

beforeAll(async () => {
  premises = await Premises.open({ pageCache: true });
  const house = new House({ url: premises.room.origin, stop: async () => undefined });
  const made: CreatedTasting = await house.plan(plan, premises.houseKey);
  code = made.code;
  host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  guest = await Guest.arrives(premises.browser, 'Berit');
  await guest.person.page.goto(`${premises.wifi.origin}/j/${made.code}`);
  await guest.sitsDown();
  await guest.readsCautions();
  guest.person.lineMayFail = true;
  wire = await guest.person.page.context().newCDPSession(guest.person.page);
  await wire.send('Debugger.enable');
  // What the browser really did, so that a test of it cannot pass by it not happening.
  await guest.person.page.evaluate(() => {
    const count = (name: string) => () => {
      document.body.dataset[name] = String(Number(document.body.dataset[name] ?? 0) + 1);
    };
    window.addEventListener('pageshow', (event) => event.persisted && count('kept')());
  });
});
afterAll(async () => {
  host?.close();
  await premises?.close();
});

const goTo = async (cue: Cue): Promise<void> => {
  expect(await host.host({ type: 'JumpTo', cue: cue.id })).toMatchObject({ ok: true });
};
/** Ms from now until the page shows the cue and has everything saved; printed, for the machine decides how long it takes. */
async function levelAt(cue: Cue, what: string): Promise<void> {
  const begun = performance.now();
  await guest.isAt(cue);
  console.log(`${what}: level after ${(performance.now() - begun).toFixed(0)} ms`);
}
/**
 * No timer runs and nothing that arrives is looked at, as in a page that a phone has frozen. The browser's own freezing
 * takes hidden pages only, and none is hidden here, so that the debugger holds it.
 */
async function freeze(): Promise<void> {
  const held = new Promise((resolve) => wire.once('Debugger.paused', resolve));
  await wire.send('Debugger.pause');
  await held;
}

const happened = (name: string) =>
  guest.person.page.evaluate((each) => Number(document.body.dataset[each] ?? 0), name);
const typed = () => guest.field('nose').inputValue();

beforeEach(async () => {
  await goTo(writing);
  await guest.isAt(writing);
});

describe('a page whose network or phone lets it down', () => {
  it('keeps what is typed without a network, and is level once it is back', async () => {
    await guest.person.page.context().setOffline(true);
    premises.wifi.cut();
    await guest.writes('nose', 'quince');
    premises.wifi.mend();
    await guest.person.page.context().setOffline(false);
    const begun = performance.now();
    await guest.seesSaved();
    console.log(`offline: saved after ${(performance.now() - begun).toFixed(0)} ms`);
    expect(await typed()).toContain('quince');
  });

  it('follows a room that went on while it was offline', async () => {
    await guest.putsPenDown();
    await guest.person.page.context().setOffline(true);
    premises.wifi.cut();
    await goTo(later);
    premises.wifi.mend();
    await guest.person.page.context().setOffline(false);
    await levelAt(later, 'offline');
  });

  it('follows a room that went on while the page was frozen', async () => {
    await guest.putsPenDown();
    await freeze();
    await goTo(later);
    await wire.send('Debugger.resume');
    await levelAt(later, 'frozen');
  });

  it('is level after it was frozen for so long that its socket died', async () => {
    await guest.putsPenDown();
    await freeze();
    premises.wifi.cut();
    premises.wifi.mend();
    await goTo(later);
    await wire.send('Debugger.resume');
    await levelAt(later, 'frozen, with a dead socket');
  });

  it('is level when it is come back to from another page', async () => {
    await guest.putsPenDown();
    await guest.person.page.goto(`${premises.wifi.origin}/healthz`);
    await goTo(later);
    // Without waiting for it to load: a page that was kept does not.
    await guest.person.page.evaluate(() => window.history.back());
    await levelAt(later, 'come back to');
    expect(await happened('kept')).toBe(1);
    await goTo(writing);
    await guest.isAt(writing);
    expect(await typed()).toContain('quince');
  });

  it('follows by requests where no WebSocket gets through', async () => {
    const behind = await Guest.arrives(premises.browser, 'Colm');
    // As behind a proxy that refuses to pass them on.
    await behind.person.page.addInitScript(() => {
      class Refused {
        onerror: ((event: Event) => void) | null = null;
        constructor() {
          setTimeout(() => this.onerror?.(new Event('error')));
        }
        close() {}
      }
      Object.assign(window, { WebSocket: Refused });
    });
    await behind.person.page.goto(`${premises.room.origin}/j/${code}`);
    await behind.sitsDown();
    await behind.readsCautions();
    await behind.isAt(writing);
    await behind.writes('nose', 'linden');
    await behind.seesSaved();
    await behind.putsPenDown();
    await goTo(later);
    await behind.isAt(later);
    expect(behind.person.faults).toEqual([]);
  });
});

/** English also where this run is in German. */
const english = (await exportsOf('shared/language', 'en', 'document.ts')).documentWords as DocumentWords;

describe('a browser that cannot run the page', () => {
  /** What a browser shows at each address, in the language that it prefers. */
  const shows = async (
    locale: string,
    javaScriptEnabled: boolean,
    sentences: Readonly<Record<string, string>>,
  ) => {
    const context = await premises.browser.newContext({ locale, javaScriptEnabled });
    // To a browser that is too old the script makes no sense, and it runs nothing of it.
    await context.route('**/assets/*.js', (route) =>
      route.fulfill({ contentType: 'text/javascript', body: 'let page = from ?. the future;' }),
    );
    for (const [path, sentence] of Object.entries(sentences)) {
      const page = await context.newPage();
      await page.goto(premises.room.origin + path);
      await page.getByText(sentence, { exact: true }).waitFor();
    }
    await context.close();
  };

  it('says so in a sentence where JavaScript is switched off', async () => {
    await shows('en-GB', false, { '/': english.guestNoScript, '/host': english.hostNoScript });
    await shows('de-DE', false, { [`/j/${code}`]: german.guestNoScript, '/survey/x': german.surveyNoScript });
  });

  it('says so in a sentence where it is too old', async () => {
    await Promise.all([
      shows('en-GB', true, { '/': english.guestTooOld }),
      shows('de-DE', true, { '/seat': german.guestTooOld }),
      shows('de-DE', true, { '/host': german.hostTooOld }),
    ]);
  });
});
