import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flightsOf, planSchema } from '../../core/tasting.ts';
import { hostLink } from '../../host/access/key-link.ts';
import { hrefOf } from '../../host/route.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { notebookWords } from '../../shared/language/en/notebook.ts';
import { resultWords as words } from '../../shared/language/en/result.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { House, type Guest as StandIn } from '../server/support/house.ts';
import { lendBrowser } from '../support/browser.ts';
import { Guest } from './guest.ts';
import { Person } from './person.ts';

/**
 * Eight stand-ins put two flights in order, and each order has its result on every screen: the host's tablet, a phone of
 * 360 px in a light room, one of 320 px in a dark one, and the television.
 */
const plan = planSchema.parse({
  ...demoEvening,
  blind: true,
  practice: false,
  ranking: 'each-flight',
  liking: true,
  flightSizes: [6],
});
const pours = plan.pours.map(({ id }) => id);

let browser: Browser;
let house: House;
let made: CreatedTasting;
let host: Person;
let berit: Guest;
let colm: Guest;
let screen: Person;
const standIns: StandIn[] = [];
const everywhere = () => [host, berit.person, colm.person, screen];

beforeAll(async () => {
  browser = await lendBrowser();
  house = await House.open();
  made = await house.plan(plan);
  const opening = await house.host(made);
  await opening.host({ type: 'OpenDoors' });
  for (let seat = 0; seat < 8; seat += 1) standIns.push(await house.guest(made, `Stand-in ${seat + 1}`));
  for (const pour of pours) await opening.host({ type: 'JumpTo', cue: `${pour}/first/look` });
  await opening.host({ type: 'JumpTo', cue: 'flight-1/ranking' });
  berit = await Guest.arrives(browser, 'Berit');
  colm = await Guest.arrives(browser, 'Colm', 'dark', 'small');
  for (const guest of [berit, colm]) {
    await guest.person.page.goto(`${house.url}/j/${made.code}`);
    await guest.sitsDown();
    await guest.readsCautions();
  }
  host = await Person.arrives(browser, 'host', 'tablet');
  await host.page.goto(hostLink(house.url, made.tasting, made.hostKey));
  await host
    .button(hostWords.doors.toRoom)
    .or(host.page.getByRole('link', { name: hostWords.doors.toRoom }))
    .first()
    .waitFor();
  await host.page.goto(`${house.url}/host${hrefOf({ page: 'room', tasting: made.tasting })}`);
  screen = await Person.arrives(browser, 'screen', 'wide', 'dark');
  await screen.page.goto(`${house.url}/screen/${made.code}`);
  const { screensAsking } = await opening.until(
    'presence',
    (presence) => presence.screensAsking.length === 1,
  );
  await house.ask('POST', `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`, {
    key: made.hostKey,
    body: { admit: true },
  });
  await screen.heading(cueWords.ranking.verb, 1).waitFor();
  opening.close();
});
afterAll(async () => {
  await browser?.close();
  await house?.close();
});

const big = (name: string) => host.button(new RegExp(`^${name}`)).first();

describe('the room’s result', () => {
  it('is asked for on a small phone without scrolling, six glasses at once', async () => {
    const { page } = berit.person;
    await page.locator('.ranking-row').first().waitFor();
    await berit.person.look('result-ranking-360');
    await colm.person.look('result-ranking-320');
    const heights = await page
      .locator('.ranking-row')
      .evaluateAll((rows) => rows.map((row) => row.getBoundingClientRect().height));
    expect(heights).toHaveLength(6);
    expect(Math.max(...heights)).toBeLessThanOrEqual(57);
    const last = await page.locator('.ranking-row').last().boundingBox();
    const bar = await page.locator('.room-foot').boundingBox();
    expect((last?.y ?? 0) + (last?.height ?? 0)).toBeLessThanOrEqual(bar?.y ?? 640);
  });

  it('ties two glasses by dropping one on the other, and by a tap', async () => {
    const { page } = berit.person;
    const grip = page.locator('.ranking-grip');
    const [from, onto] = [await grip.nth(3).boundingBox(), await grip.nth(1).boundingBox()];
    if (from === null || onto === null) throw new Error('The rows are not on the screen.');
    await page.mouse.move(from.x + 10, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(onto.x + 10, onto.y + onto.height / 2, { steps: 6 });
    await berit.person.photograph('result-ranking-onto');
    await page.mouse.up();
    const tied = page.getByRole('button', { pressed: true });
    await expect.poll(() => tied.count()).toBe(1);
    expect(await tied.getAttribute('aria-label')).toBe(notebookWords.ranking.tied(guestWords.glass.nth(4)));
    expect(await page.evaluate(() => String(getSelection()))).toBe('');
    await berit.person.button(notebookWords.ranking.tied(guestWords.glass.nth(6))).click();
    await expect.poll(() => tied.count()).toBe(2);
    await berit.person.button(notebookWords.ranking.tied(guestWords.glass.nth(6))).click();
    await expect.poll(() => tied.count()).toBe(1);
  });

  it('is worked by keys, and the focus goes with the glass', async () => {
    const { page } = berit.person;
    const up = berit.person.button(notebookWords.ranking.up(guestWords.glass.nth(6)));
    await up.focus();
    for (let time = 0; time < 2; time += 1) await page.keyboard.press('Enter');
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    expect(await focused()).toBe(notebookWords.ranking.up(guestWords.glass.nth(6)));
  });

  it('[R1, R2] is on every screen once the host tells it, and not before', async () => {
    for (const [index, guest] of standIns.entries()) {
      const order = index < 6 ? pours : pours.toReversed();
      for (const [place, pour] of order.entries()) {
        await guest.save({ pour, field: 'place', value: place + 1 });
        await guest.save({ pour, field: 'liking', value: 9 - place });
      }
      const choice = index < 7 ? 'counts' : 'only-for-me';
      await guest.consent({ order: choice, liking: choice }, pours);
    }
    await big(hostWords.room.next).click();
    await big(hostWords.room.openTalk).click();
    await big(hostWords.room.next).click();
    await host.heading(hostWords.cue.kinds.result, 2).waitFor();
    await host.look('result-before-host');
    for (const person of everywhere()) expect(await person.page.locator('.result').count()).toBe(0);
    await big(hostWords.room.tellResult).click();
    for (const person of everywhere()) {
      await person.heading(words.titles.order).waitFor();
      await person.heading(words.titles.liking).waitFor();
      // Seven stand-ins count; of nine who gave an order the eighth and Berit keep theirs.
      await person.text(words.counted.order(7, 9)).waitFor();
      expect(await person.page.locator('.result-row').count()).toBe(12);
    }
    await host.look('result-host');
    await host.photograph('result-host-whole', true);
    for (const [guest, name] of [
      [berit, '360'],
      [colm, '320'],
    ] as const) {
      await guest.person.look(`result-${name}`);
      await guest.person.photograph(`result-${name}-whole`, true);
    }
    for (const [width, height] of [
      [1280, 720],
      [1920, 1080],
    ] as const) {
      await screen.page.setViewportSize({ width, height });
      await screen.look(`result-screen-${height}`);
      const below = await screen.page.evaluate(
        () => document.documentElement.scrollHeight - window.innerHeight,
      );
      expect(below).toBeLessThanOrEqual(0);
    }
    expect(flightsOf(plan)).toHaveLength(1);
  });

  it('[R3] comes before the names, and stays when the television is switched on again', async () => {
    await screen.page.reload();
    await screen.heading(words.titles.order).waitFor();
    await big(hostWords.room.next).click();
    await host.heading(hostWords.cue.kinds.reveal, 2).waitFor();
  });

  it('leaves nothing wrong on any screen', () => {
    expect(everywhere().flatMap(({ faults }) => faults)).toEqual([]);
  });
});
