import { readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { planSchema } from '../../core/tasting.ts';
import { hostLink } from '../../host/access/key-link.ts';
import { hrefOf } from '../../host/route.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { storyWords } from '../../shared/language/en/host-story.ts';
import { keepsakeWords } from '../../shared/language/en/keepsake.ts';
import { screenWords } from '../../shared/language/en/screen.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { House, type Guest as StandIn } from '../server/support/house.ts';
import { lendBrowser } from '../support/browser.ts';
import { Guest } from './guest.ts';
import { Person } from './person.ts';

/** Names told glass by glass on the tablet, a small phone and the television, and the page that a guest takes home. */
const stories = [
  'The casks slept above a bakery.',
  'A ferry brought the barley.',
  'Nobody remembers the wall.',
];
const plan = planSchema.parse({
  ...demoEvening,
  blind: true,
  practice: false,
  flightSizes: [3],
  codes: {},
  pours: demoEvening.pours?.slice(0, 3).map((pour, index) => ({ ...pour, story: stories[index] })),
});
const pours = plan.pours.map(({ id }) => id);
const [first = '', second = '', third = ''] = plan.pours.map(({ name }) => name);
const hostile = `salt</dd><script>document.title = "gone"</script><img src=x onerror='document.title = 1'> & "so"`;

let browser: Browser;
let house: House;
let made: CreatedTasting;
let room: Device;
let noor: StandIn;
let tablet: Person;
let phone: Person;
let screen: Person;

beforeAll(async () => {
  browser = await lendBrowser();
  house = await House.open();
  made = await house.plan(plan);
  await house.labelFirst(made, plan);
  room = await house.host(made);
  await room.host({ type: 'OpenDoors' });
  noor = await house.guest(made, 'Noor');
  for (const pour of pours) await room.host({ type: 'JumpTo', cue: `${pour}/first/look` });
  await noor.save({ pour: pours[0], field: 'nose', value: hostile });
  await room.host({ type: 'JumpTo', cue: 'flight-1/reveal' });
  tablet = await Person.arrives(browser, 'host', 'tablet');
  await tablet.page.goto(hostLink(house.url, made.tasting, made.hostKey));
  await tablet.page.getByRole('link', { name: hostWords.doors.toRoom }).first().waitFor();
  await tablet.page.goto(`${house.url}/host${hrefOf({ page: 'room', tasting: made.tasting })}`);
  await tablet.heading(hostWords.cue.kinds.reveal, 2).waitFor();
  const guest = await Guest.arrives(browser, 'phone', 'light', 'small');
  phone = guest.person;
  await phone.page.goto(`${house.url}/seat#${made.tasting}.${noor.key}`);
  await guest.readsCautions();
  screen = await Person.arrives(browser, 'screen', 'wide', 'dark');
  await screen.page.goto(`${house.url}/screen/${made.code}`);
  const { screensAsking } = await room.until('presence', (seen) => seen.screensAsking.length === 1);
  await house.ask('POST', `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`, {
    key: made.hostKey,
    body: { admit: true },
  });
  await screen.heading(cueWords.reveal.verb, 1).waitFor();
});
afterAll(async () => {
  await browser?.close();
  await house?.close();
});

const everything = (person: Person) => person.page.locator('body').textContent();
const tells = (glass: number) =>
  tablet.button(new RegExp(`^${hostWords.room.tellName(hostWords.cue.glass(glass))}`));

describe('names, told one by one', () => {
  it('[P21] stay covered on the tablet until they are told, but for a finger held down', async () => {
    await tablet.button(hostWords.board.showCard).click();
    const cover = tablet.button(storyWords.card.hold);
    await cover.waitFor();
    expect(await everything(tablet)).not.toContain(stories[0]);
    await tablet.look('host-card-covered');
    await cover.hover();
    await tablet.page.mouse.down();
    await tablet.text(stories[0] ?? '').waitFor();
    await tablet.page.mouse.up();
    await tablet.text(stories[0] ?? '').waitFor({ state: 'detached' });
  });

  it('[P21, Q4] turn one glass over on all screens, with label and story, and nothing else', async () => {
    await tells(1).click();
    for (const person of [tablet, phone, screen]) await person.text(stories[0] ?? '').waitFor();
    const size = await tablet.text(stories[0] ?? '').evaluate((told) => getComputedStyle(told).fontSize);
    expect(Number.parseFloat(size)).toBeGreaterThanOrEqual(20);
    for (const person of [phone, screen])
      for (const secret of [second, third, stories[1], stories[2]])
        expect(await everything(person)).not.toContain(secret);
    await screen.page.getByRole('img', { name: screenWords.reveal.photo(first) }).waitFor();
    await tablet.look('host-card-told');
    await phone.look('guest-name-told');
    await screen.look('screen-name-told');
    await tells(2).click();
    for (const person of [tablet, phone, screen]) await person.text(stories[1] ?? '').waitFor();
    expect(await everything(phone)).not.toContain(third);
  });

  it('[F8] leave the host free to turn the television back', async () => {
    await tablet.button(hostWords.board.showScreen).click();
    await tablet.button(storyWords.screen.back).click();
    await screen.heading(first, 2).waitFor();
    await tablet.look('host-desk-names');
  });
});

describe('the evening as one page', () => {
  it('opens from a file without a network, with the label, the story and the notes as they were typed', async () => {
    await tells(3).click();
    await phone.text(stories[2] ?? '').waitFor();
    await room.host({ type: 'Finish' });
    await phone.button(guestWords.keepsake.open).or(phone.button(keepsakeWords.take.page)).first().waitFor();
    if (await phone.button(guestWords.keepsake.open).isVisible())
      await phone.button(guestWords.keepsake.open).click();
    const coming = phone.page.waitForEvent('download');
    await phone.button(keepsakeWords.take.page).click();
    const download = await coming;
    expect(download.suggestedFilename()).toMatch(/\.html$/);
    const html = readFileSync(await download.path(), 'utf8');
    expect(html).not.toMatch(/https?:/);
    const file = join(tmpdir(), `quietpour-page-${process.pid}.html`);
    writeFileSync(file, html);
    const alone = await browser.newContext({ offline: true });
    const page = await alone.newPage();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(pathToFileURL(file).href);
    expect(asked.filter((url) => !url.startsWith('file:') && !url.startsWith('data:'))).toEqual([]);
    expect(await page.title()).toBe(plan.title);
    await page.getByText(hostile, { exact: true }).waitFor();
    expect(await page.locator('script').count()).toBe(0);
    const label = page.getByRole('img', { name: guestWords.pour.labels.front(first) });
    expect(await label.evaluate((photo: HTMLImageElement) => photo.naturalWidth)).toBe(300);
    await page.getByText(stories[0] ?? '').waitFor();
    await alone.close();
  });

  it('had no fault and no barrier on any screen', () => {
    expect([tablet, phone, screen].flatMap(({ faults }) => faults)).toEqual([]);
  });
});
