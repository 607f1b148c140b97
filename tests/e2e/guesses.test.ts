import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import { planSchema } from '../../core/tasting.ts';
import { hostLink } from '../../host/access/key-link.ts';
import { hrefOf } from '../../host/route.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { guessWords as words } from '../../shared/language/en/guess.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { storyWords } from '../../shared/language/en/host-story.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { House, type Guest as StandIn } from '../server/support/house.ts';
import { lendBrowser } from '../support/browser.ts';
import { Guest } from './guest.ts';
import { Person } from './person.ts';

/**
 * A blind flight of wine in which all six facts are guessed: on a phone of 360 px in a light room and on one of 390 px in a
 * dark one, each of which is the second device of a seat; then told on both, on the tablet and on the television.
 */
const plan = planSchema.parse({
  title: 'Three cold cellars',
  drink: 'wine',
  blind: true,
  practice: false,
  flightSizes: [3],
  guess: { on: true, without: [] },
  pours: [
    { style: 'Riesling', country: 'Germany', region: 'Mosel', vintage: 2016, abv: 11.5, priceMinor: 1900 },
    { style: 'Chenin blanc', country: 'France', region: 'Loire', vintage: 2019, abv: 13, priceMinor: 2400 },
    {
      style: 'Albariño',
      country: 'Spain',
      region: 'Rías Baixas',
      vintage: 2021,
      abv: 12.5,
      priceMinor: 1500,
    },
  ].map((pour, at) => ({
    ...pour,
    id: `wine${at + 1}`,
    drink: 'wine',
    name: ['Plum Lane', 'Tall Gate', 'Low Wall'][at],
    story: 'It lay in the dark for a year, and nobody asked after it.',
  })),
});
const [first] = plan.pours.map(({ id }) => id);
const writing = compile(plan).find((cue) => cue.kind === 'step' && cue.step === 'write')?.id ?? '';

let browser: Browser;
let house: House;
let made: CreatedTasting;
let room: Device;
let tablet: Person;
let screen: Person;
let berit: Person;
let colm: Person;
const standIns: StandIn[] = [];
const everybody = () => [tablet, screen, berit, colm];

async function phoneOf(seat: StandIn | undefined, theme: 'light' | 'dark'): Promise<Person> {
  const guest = await Guest.arrives(browser, `phone-${theme}`, theme);
  if (theme === 'dark') await guest.person.page.setViewportSize({ width: 390, height: 844 });
  await guest.person.page.goto(`${house.url}/seat#${made.tasting}.${seat?.key}`);
  await guest.readsCautions();
  return guest.person;
}

beforeAll(async () => {
  browser = await lendBrowser();
  house = await House.open();
  made = await house.plan(plan);
  await house.labelFirst(made, plan);
  room = await house.host(made);
  await room.host({ type: 'OpenDoors' });
  for (const name of ['Berit', 'Colm', 'Dunja', 'Enno', 'Fenja', 'Gero', 'Hild', 'Ivo'])
    standIns.push(await house.guest(made, name));
  await room.host({ type: 'JumpTo', cue: writing });
  [berit, colm] = await Promise.all([phoneOf(standIns[0], 'light'), phoneOf(standIns[1], 'dark')]);
  tablet = await Person.arrives(browser, 'host', 'tablet');
  await tablet.page.goto(hostLink(house.url, made.tasting, made.hostKey));
  await tablet.page.getByRole('link', { name: hostWords.doors.toRoom }).first().waitFor();
  await tablet.page.goto(`${house.url}/host${hrefOf({ page: 'room', tasting: made.tasting })}`);
  screen = await Person.arrives(browser, 'screen', 'wide', 'dark');
  await screen.page.goto(`${house.url}/screen/${made.code}`);
  const { screensAsking } = await room.until('presence', (seen) => seen.screensAsking.length === 1);
  await house.ask('POST', `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`, {
    key: made.hostKey,
    body: { admit: true },
  });
});
afterAll(async () => {
  await browser?.close();
  await house?.close();
});

const radio = (person: Person, name: string) => person.page.getByRole('radio', { name, exact: true });
const pick = (person: Person, label: string) =>
  person.page.getByRole('combobox', { name: label, exact: true });
const standing = (seat: StandIn | undefined) =>
  seat?.last('notebook')?.consents.find(({ pour }) => pour === first)?.consents.guess;
const spread = (person: Person) => person.page.locator('.guess-room');

describe('[Q12] the guess of a blind glass', () => {
  it('is given with the thumb, folded away until somebody wants it', async () => {
    for (const person of [berit, colm]) {
      const fold = person.page.locator('.guess-fold > summary');
      await fold.waitFor();
      await person.photograph(`guess-folded-${person.name}`);
      await fold.click();
      await pick(person, words.facts.style.wine).selectOption('riesling');
      await pick(person, words.facts.origin).selectOption('germany');
      await pick(person, words.facts.region).selectOption('germany/mosel');
      await person.button(words.more(words.facts.vintage)).click();
      await person.button(words.less(words.facts.vintage)).click();
      await person.button(words.more(words.facts.abv)).click();
      await pick(person, words.sure.title.style).selectOption('75');
      // Nothing is chosen for anybody [Q10].
      for (const name of [words.counting.counts, words.counting.own])
        expect(await radio(person, name).isChecked()).toBe(false);
      await radio(person, words.counting.counts).check();
      await person.page.getByRole('switch', { name: words.counting.nearest }).check();
      await person.look(`guess-form-${person.name}`, { whole: true });
    }
    await expect.poll(() => standIns.slice(0, 2).map(standing)).toEqual(['counts', 'counts']);
  });

  it('counts as two devices of a seat last said, also where they say otherwise at the same moment', async () => {
    const [seat] = standIns;
    await seat?.consent({ guess: 'only-for-me' }, [first ?? '']);
    await expect.poll(() => radio(berit, words.counting.own).isChecked()).toBe(true);
    for (let time = 0; time < 3; time += 1) {
      await Promise.all([
        radio(berit, words.counting.counts).check(),
        seat?.consent({ guess: 'only-for-me' }, [first ?? '']),
      ]);
      await seat?.level();
      // Whichever came last: both devices say the same, and so does the server.
      const counts = () => radio(berit, words.counting.counts).isChecked();
      await expect.poll(async () => (await counts()) === (standing(seat) === 'counts')).toBe(true);
      await radio(berit, words.counting.own).check();
      await expect.poll(() => standing(seat)).toBe('only-for-me');
    }
    await radio(berit, words.counting.counts).check();
    await berit.page.getByRole('switch', { name: words.counting.nearest }).check();
    await expect.poll(() => standing(seat)).toBe('counts');
  });

  it('is told with the name on each phone, and what the room guessed on all screens', async () => {
    const styles = [
      'riesling',
      'chardonnay',
      'sauvignon-blanc',
      'riesling',
      'chenin-blanc',
      'gruener-veltliner',
    ];
    const offered = room.last('host') && standIns[2]?.last('seat')?.guess?.choices;
    for (const [at, guest] of standIns.slice(2).entries()) {
      const style = offered?.style?.includes(styles[at] ?? '') ? styles[at] : offered?.style?.[at];
      const value = {
        style,
        origin: at % 2 === 0 ? 'germany' : 'france',
        vintage: 2010 + at,
        abv: 11 + at / 2,
      };
      expect(await guest.save({ field: 'guess', pour: first, value })).toMatchObject({ ok: true });
      const prices = offered?.price ?? [];
      await guest.save({ field: 'guess', pour: first, value: { ...value, price: prices[at + 2] }, base: 1 });
      if (at < 5) await guest.consent({ guess: 'counts' }, [first ?? '']);
    }
    await room.host({ type: 'JumpTo', cue: 'flight-1/reveal' });
    for (const person of everybody()) expect(await spread(person).count()).toBe(0);
    await tablet.button(hostWords.board.showCard).click();
    await screen.heading(cueWords.reveal.verb, 1).waitFor();
    await tablet.button(new RegExp(`^${hostWords.room.tellName(hostWords.cue.glass(1))}`)).click();
    for (const person of [berit, colm, tablet]) await spread(person).waitFor();
    for (const person of [berit, colm]) {
      await person.heading(words.told.title).waitFor();
      await person.look(`guess-told-${person.name}`, { whole: true });
    }
    await spread(tablet).scrollIntoViewIfNeeded();
    await tablet.look('host-card-guesses');
    // The name and its story first; the guesses when the host turns on.
    await screen.heading('Plum Lane', 2).waitFor();
    expect(await spread(screen).count()).toBe(0);
    await tablet.button(hostWords.board.showScreen).click();
    await tablet.button(storyWords.screen.on).click();
    await spread(screen).waitFor();
    await tablet.look('host-desk-guesses');
    for (const person of [berit, colm, screen]) {
      const all = (await spread(person).textContent()) ?? '';
      expect(all).toContain(words.room.counts(7, 8));
      for (const name of ['Dunja', 'Enno', 'Ivo']) expect(all).not.toContain(name);
    }
    expect(await spread(screen).textContent()).toContain(words.room.nearest('Berit, Colm'));
  });

  it('fits the television, in the light and in the dark', async () => {
    for (const [width, height, colorScheme] of [
      [1280, 720, 'light'],
      [1280, 720, 'dark'],
      [1920, 1080, 'light'],
    ] as const) {
      await screen.page.setViewportSize({ width, height });
      await screen.page.emulateMedia({ colorScheme });
      await screen.look(`screen-guesses-${colorScheme}-${height}`);
      const cut = await screen.page.evaluate(() =>
        [...document.querySelectorAll('.scene-guesses, .guess-room, .guess-fact, .guess-fact > *')]
          .filter(
            (part) =>
              part.getBoundingClientRect().bottom > window.innerHeight ||
              part.scrollHeight > part.clientHeight + 2,
          )
          .map((part) => `${part.className} ${part.textContent?.slice(0, 40)}`),
      );
      expect(cut, `${height}`).toEqual([]);
    }
  });

  it('lets a guest take their name off it, everywhere and at once', async () => {
    await colm.button(words.counting.unname).click();
    await expect.poll(() => spread(screen).textContent()).toContain(words.room.nearest('Berit'));
    await expect.poll(() => spread(berit).textContent()).not.toContain('Colm');
    expect(await spread(screen).textContent()).toContain(words.room.counts(7, 8));
  });

  it('leaves nothing wrong on any device', () => {
    expect(everybody().flatMap(({ faults }) => faults)).toEqual([]);
  });
});
