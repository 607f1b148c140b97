import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pourId } from '../../core/ids.ts';
import { designServingOrders } from '../../core/planning/serving/serving-orders.ts';
import { flightsOf, planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { boardWords } from '../../shared/language/en/board.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { screenWords as words } from '../../shared/language/en/screen.ts';
import { screenPages } from '../../shared/talk/screen-pages.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { type Guest, House } from '../server/support/house.ts';
import { lendBrowser } from '../support/browser.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { anything, like } from './like.ts';
import { Person } from './person.ts';

/**
 * A full table on the room screen: seven guests who share all that a notebook holds, with an order of their own for
 * each. Host and guests are stand-ins, for this is about what the room sees.
 */
const names = ['Aino', 'Bram', 'Chiara', 'Dagny', 'Emre', 'Fenna', 'Ingrid-Maximiliane'];
const codes = ['731', '402', '566', '118', '290', '845'];

function planWithOwnOrders() {
  const plan = planSchema.parse({ ...demoEvening, blind: true, ownOrders: true, ranking: 'each-flight' });
  const flights = flightsOf(plan).map(({ pours }) => pours.map(({ id }) => id));
  const drawn = designServingOrders(flights, seededRandom(7)).flights;
  return planSchema.parse({
    ...plan,
    codes: Object.fromEntries(plan.pours.map(({ id }, index) => [id, codes[index]])),
    servingOrders: drawn.map(({ rows }) => ({ rows: rows.map((row) => row.map(pourId)) })),
  });
}
const plan = planWithOwnOrders();
const flight = flightsOf(plan)[0]?.pours.map(({ id }) => id) ?? [];
const [first] = flight;

const later = 'pear skin and wet slate, and what the others said of it was heard with pleasure: apple peel';

let browser: Browser;
let house: House;
let made: CreatedTasting;
let host: Device;
let screen: Person;
const guests: Guest[] = [];

beforeAll(async () => {
  browser = await lendBrowser();
  house = await House.open();
  made = await house.plan(plan);
  await house.labelFirst(made, plan);
  host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  for (const name of names) guests.push(await house.guest(made, name));
  for (const pour of flight) await host.host({ type: 'JumpTo', cue: `${pour}/first/look` });
  for (const [row, guest] of guests.entries()) await fillPages(guest, row);
  await host.host({ type: 'JumpTo', cue: 'flight-1/discussion' });
  screen = await Person.arrives(browser, 'screen', 'wide');
  await screen.page.goto(`${house.url}/screen/${made.code}`);
  const { screensAsking } = await host.until('presence', (presence) => presence.screensAsking.length === 1);
  await house.ask('POST', `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`, {
    key: made.hostKey,
    body: { admit: true },
  });
  await screen.heading(cueWords.discussion.verb, 1).waitFor();
});
afterAll(async () => {
  await browser?.close();
  await house?.close();
});

async function fillPages(guest: Guest, row: number): Promise<void> {
  const save = (pour: string, field: string, value: unknown) => guest.save({ pour, field, value });
  for (const [index, pour] of flight.entries()) await save(pour, 'place', ((row + index) % 3) + 1);
  const pour = first ?? '';
  await save(pour, 'colour', ['hay', 'honey', 'honey', 'amber'][row % 4]);
  await save(pour, 'nose-words', {
    pear: 'clear',
    [['vanilla', 'smoke', 'own:wet rope'][row % 3] ?? '']: 'hint',
  });
  await save(pour, 'nose', `pear skin and wet slate ${'and a long walk home '.repeat(row)}`);
  await save(pour, 'structure', { sweet: 1 + (row % 3), smoke: 5, body: 3 });
  for (const each of flight) await guest.share({ pour: each, sharing: 'shared' });
}

/** Nobody can scroll there: what is below the screen is lost. */
async function look(name: string): Promise<void> {
  for (const [width, height] of [
    [1280, 720],
    [1920, 1080],
  ] as const) {
    await screen.page.setViewportSize({ width, height });
    await screen.look(`screen-table-${name}-${height}`);
    const cut = await screen.page.evaluate(() =>
      [...document.querySelectorAll('.board-page > *')]
        .filter(
          (part) =>
            part.getBoundingClientRect().bottom > window.innerHeight ||
            part.scrollHeight > part.clientHeight + 2,
        )
        .map((part) => part.className),
    );
    if (cut.length > 0) screen.faults.push(`${name} at ${height}: cut off in ${cut.join()}`);
  }
}

/** Gives the screen to a page of the first glass, or to the places, as the host's tablet does. */
async function give(part: string, at = 0): Promise<void> {
  const pages = screenPages({
    cue: { kind: 'discussion', pours: flight },
    named: [],
    board: host.last('board') ?? null,
    results: [],
    guesses: new Map(),
  });
  const wanted = pages.filter(
    ({ pour, shows }) =>
      shows.is === 'board' && shows.page.shows.part === part && (pour === null || pour === first),
  );
  const page = wanted.at(at)?.id;
  if (page === undefined) throw new Error(`There is no page “${part}”.`);
  await host.host({ type: 'SteerScreen', shows: { is: 'page', page } });
}
const turnTo = async (title: string, part: string, at = 0): Promise<void> => {
  await give(part, at);
  await screen.page.getByRole('heading', { level: 1, name: new RegExp(`^${title}`) }).waitFor();
};

describe('the board on the room screen, with own orders', () => {
  it('[F6] calls each glass by its code, with its words, colours and marks, and whose turn it is', async () => {
    await host.host({ type: 'OpenDiscussion', pours: flight });
    await screen.text(like(words.talk.turn(anything, anything))).waitFor();
    await look('speaker');
    await turnTo(boardWords.fields.look, 'look');
    await screen.text(words.place.coded(codes[0] ?? '')).waitFor();
    await look('look');
    await turnTo(boardWords.fields.nose, 'nose');
    await look('nose-words');
    await give('nose', 1);
    for (const guest of guests.slice(0, 5))
      await guest.save({ pour: first, field: 'nose', value: later, base: 1 });
    await screen.text(new RegExp(words.talk.later)).nth(4).waitFor();
    await look('nose-notes');
    await turnTo(words.talk.structure, 'structure');
    await look('structure');
  });

  it('ends with the places that the glasses were given', async () => {
    await turnTo(words.talk.places, 'places');
    for (const code of codes.slice(0, flight.length)) await screen.text(words.place.coded(code)).waitFor();
    await look('places');
  });

  it('[Q2] drops from every page what is taken back', async () => {
    for (const guest of guests) await guest.share({ pour: first, sharing: 'private' });
    await screen.text(words.place.coded(codes[0] ?? '')).waitFor({ state: 'detached' });
  });

  it('[F6, Q4] tells the names by their codes once the host does', async () => {
    await host.host({ type: 'JumpTo', cue: 'flight-1/reveal' });
    await screen.text(words.reveal.soon).waitFor();
    await host.host({ type: 'Reveal', pours: flight });
    await screen.heading(plan.pours[0]?.name ?? '', 2).waitFor();
    await screen.text(words.place.coded(codes[0] ?? '')).waitFor();
    const label = screen.page.getByRole('img', { name: words.reveal.photo(plan.pours[0]?.name ?? '') });
    await expect.poll(() => label.evaluate((photo: HTMLImageElement) => photo.naturalWidth)).toBe(300);
    await look('names');
  });

  it('had no fault, no barrier, and nothing cut off', () => {
    expect(screen.faults).toEqual([]);
  });
});
