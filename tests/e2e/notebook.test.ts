import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { boardWords } from '../../shared/language/en/board.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { keepsakeWords } from '../../shared/language/en/keepsake.ts';
import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { House } from '../server/support/house.ts';
import { lendBrowser } from '../support/browser.ts';
import { Guest } from './guest.ts';
import { aNumber, like } from './like.ts';
import { plan, tapped } from './notebook-plan.ts';

/**
 * The notebook, the table and the way home on two phones: Berit's of 360 px in a light room, Colm's of 320 px in a
 * dark one. The host is a stand-in, for this is about what the guests see.
 */
const [first, second, third] = plan.pours.map(({ id }) => id);

let browser: Browser;
let house: House;
let made: CreatedTasting;
let host: Device;
let berit: Guest;
let colm: Guest;
const both = () => [berit, colm];

beforeAll(async () => {
  browser = await lendBrowser();
  house = await House.open();
  made = await house.plan(plan);
  await house.labelFirst(made, plan);
  host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  berit = await Guest.arrives(browser, 'Berit');
  colm = await Guest.arrives(browser, 'Colm', 'dark', 'small');
  // A phone's share sheet; the browser of the tests has none.
  await berit.person.page.addInitScript(() => {
    const share = async ({ text }: ShareData) => void Object.assign(window, { passedOn: text });
    Object.defineProperty(navigator, 'share', { value: share });
  });
  for (const guest of both()) {
    await guest.person.page.goto(`${house.url}/j/${made.code}`);
    await guest.sitsDown({ leftHanded: guest === colm });
    await guest.readsCautions();
  }
});
afterAll(async () => {
  await browser?.close();
  await house?.close();
});

/** Leads both to a cue; what it shows is there before anything else is done. */
async function goTo(cue: string, shows: string): Promise<void> {
  expect(await host.host({ type: 'JumpTo', cue })).toMatchObject({ ok: true });
  for (const guest of both()) await guest.person.text(shows).first().waitFor();
}
async function look(name: string): Promise<void> {
  for (const guest of both()) {
    const { person } = guest;
    const screen = `notebook-${name}-${guest === berit ? '360-light' : '320-dark'}`;
    await person.look(screen);
    await person.photograph(`${screen}-whole`, true);
  }
}
const tap = (guest: Guest, name: string | RegExp) => guest.person.button(name).first().click();
const strengthOf = (guest: Guest, word: string) =>
  guest.person.page
    .getByRole('group', { name: words.board.yours })
    .getByRole('button', { name: new RegExp(`^${word}`) })
    .getAttribute('aria-label');

describe('a guest’s notebook in the browser', () => {
  it('has on the phone before the first glass whatever the evening needs', async () => {
    for (const guest of both()) {
      for (const part of ['notebook-part', 'spirit', 'closing', 'board-part', 'keepsake-part', 'seat-part'])
        await expect.poll(() => guest.fetched()).toContain(`/${part}-`);
      expect(await guest.fetched()).not.toContain('/wine-');
    }
  });

  it('takes a colour by its word, and takes it back', async () => {
    await goTo(`${first}/writing/write/look`, words.colour.title);
    for (const guest of both()) {
      await tap(guest, tapped.honey);
      await guest.person.page
        .getByRole('button', { name: tapped.honey, exact: true, pressed: true })
        .waitFor();
    }
    await look('look');
    await tap(berit, tapped.honey);
    await berit.person.page
      .getByRole('button', { name: tapped.honey, exact: true, pressed: false })
      .waitFor();
    await tap(berit, tapped.amber);
  });

  it('unfolds a place into words, makes a word stronger with each tap, and lays it down', async () => {
    await goTo(`${first}/writing/write/nose`, words.board.titles['nose-words']);
    await berit.person.text(words.board.titles['nose-words']).waitFor();
    await look('nose');
    for (const guest of both()) {
      await tap(guest, tapped.orchard);
      await tap(guest, tapped.pear);
      await tap(guest, new RegExp(`^${tapped.pear}`));
      expect(await strengthOf(guest, tapped.pear)).toBe(words.board.marked(tapped.pear, tapped.clear));
    }
    await look('nose-open');
    await tap(berit, new RegExp(`^${tapped.quince}`));
    for (let time = 0; time < 3; time += 1) await tap(berit, new RegExp(`^${tapped.quince}, `));
    expect(await berit.person.button(new RegExp(`^${tapped.quince}, `)).count()).toBe(0);
    await tap(berit, new RegExp(`^‹?\\s*${tapped.orchard}`));
    await tap(berit, words.board.fromHost);
    await tap(berit, 'ferry rope');
  });

  it('finds words whatever the spelling, and takes own ones, with a slash or from right to left', async () => {
    for (const [guest, own] of [
      [berit, 'sweet/sour'],
      [colm, 'שלום'],
    ] as const) {
      const field = guest.person.field(words.board.find);
      await field.fill(tapped.vanilla.replace('ll', 'l'));
      await guest.person.button(tapped.vanilla).first().waitFor();
      await field.fill(own);
      await field.press('Enter');
      expect(await strengthOf(guest, own)).toBe(words.board.marked(own, tapped.hint));
      expect(await field.inputValue()).toBe('');
    }
    await berit.person.field(words.board.find).fill('x'.repeat(41));
    await berit.person.field(words.board.find).press('Enter');
    await berit.person.text(words.board.tooLong).waitFor();
    await berit.person.field(words.board.find).fill('');
    await look('nose-own');
    for (const guest of both()) await guest.putsPenDown();
  });

  it('keeps 20,000 pasted characters on the phone and says so, and shows pasted HTML as text', async () => {
    const long = `<img src=x onerror=alert(1)> ${'malt '.repeat(4000)}`;
    await berit.field('nose').fill(long);
    await berit.person.text(like(guestWords.saved.tooLong(aNumber))).waitFor();
    await berit.person.page.reload();
    expect(await berit.field('nose').inputValue()).toBe(long);
    await berit.field('nose').fill('<b>malt</b> 🌾');
    await berit.person.text(guestWords.saved.saved).first().waitFor();
    expect(await berit.person.page.locator('b').count()).toBe(0);
    await berit.putsPenDown();
  });

  it('marks how much of each, and how much it is liked', async () => {
    await goTo(`${first}/writing/write/palate`, words.structure.title);
    for (const guest of both()) {
      const sweet = guest.person.page.getByRole('group', { name: tapped.sweet });
      await sweet.getByRole('button', { name: tapped.touchSweet }).click();
      await sweet.getByRole('button', { name: tapped.touchSweet, pressed: true }).waitFor();
    }
    await look('palate');
    await goTo(`${first}/writing/write/finish`, words.liking.title);
    for (const guest of both()) await tap(guest, new RegExp(`${words.liking.steps[2]}$`));
    await look('finish');
  });

  it('asks of each word whether it is still in the glass', async () => {
    await goTo(`${first}/closing/review`, words.review.page);
    await berit.person.text(words.review.where(1, 3)).waitFor();
    await look('review');
    for (const guest of both()) await tap(guest, tapped.stillThere);
    await tap(berit, tapped.gone);
    await tap(berit, tapped.weaker);
  });

  it('collects feelings, and begins a sentence that the guest ends', async () => {
    await goTo(`${first}/closing/reflect`, words.reflect.feelings);
    for (const guest of both()) await tap(guest, tapped.curious);
    await tap(berit, tapped.prompt);
    await berit.person.page.keyboard.type('my aunt’s orchard');
    const begun = like(tapped.prompt.replace('…', 'my aunt’s orchard'));
    expect(await berit.field('thoughts').inputValue()).toMatch(begun);
    await berit.putsPenDown();
    await look('reflect');
    await tap(colm, guestWords.notes.open);
    await tap(berit, guestWords.notes.open);
    await berit.person.text(new RegExp(`${tapped.pear} \\(${tapped.clear}\\)`)).waitFor();
    await look('my-notes');
    for (const guest of both()) await tap(guest, guestWords.notes.back);
  });

  it('takes a pick of three glasses, and that it was a guess', async () => {
    for (const pour of [second, third]) await goTo(`${pour}/first/look`, cueWords.step.look.spirit.verb);
    await goTo('lastlamp/odd-one-out', words.trial.pick);
    await look('trial');
    for (const guest of both()) {
      await guest.person.page.getByRole('radio', { name: '642' }).check();
      await guest.person.page.getByRole('switch', { name: words.trial.guessed }).click();
    }
    await look('trial-picked');
  });

  it('ranks by buttons and by hand, with ties', async () => {
    await goTo('flight-1/ranking', cueWords.ranking.verb);
    const glass = (position: number) => guestWords.glass.nth(position);
    await tap(berit, words.ranking.up(glass(3)));
    await tap(berit, words.ranking.tied(glass(2)));
    await tap(colm, words.ranking.keep);
    await look('ranking');
    const row = (position: number) =>
      berit.person.page.getByRole('listitem').filter({ hasText: glass(position) });
    await berit.person.page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
    const from = await row(3).locator('.ranking-grip').boundingBox();
    const to = await row(1).locator('.ranking-grip').boundingBox();
    if (from === null || to === null) throw new Error('The rows are not on the screen.');
    await berit.person.page.mouse.move(from.x + 10, from.y + 20);
    await berit.person.page.mouse.down();
    await berit.person.page.mouse.move(to.x + 10, to.y + 2, { steps: 5 });
    await berit.person.page.mouse.up();
    await expect.poll(() => row(3).textContent()).toMatch(/^1/);
  });

  it('[Q1, Q2] puts on the table what is shared, and takes it down at once', async () => {
    await goTo('flight-1/discussion', boardWords.share.title);
    await look('own-words');
    for (const guest of both()) {
      await guest.choosesToShare(guestWords.glass.nth(1), 'named');
      await guest.choosesToShare(boardWords.trial, 'named');
    }
    await host.host({ type: 'OpenDiscussion', pours: [first, second, third, 'lastlamp'] });
    for (const guest of both()) await guest.person.text(boardWords.words.title).waitFor();
    await colm.person
      .text(/sweet\/sour/)
      .first()
      .waitFor({ state: 'attached' });
    await look('table');
    await tap(colm, boardWords.trial);
    await look('table-trial');
    await tap(colm, boardWords.all);
    await berit.choosesToShare(guestWords.glass.nth(1), 'private');
    await colm.person
      .text(/sweet\/sour/)
      .first()
      .waitFor({ state: 'detached' });
    await host.host({ type: 'Reveal', pours: [first, second, third] });
    await goTo('flight-1/reveal', cueWords.reveal.verb);
    for (const { person } of both()) {
      await person.text(tapped.firstName).first().waitFor();
      const label = person.page.getByAltText(guestWords.pour.labels.front(tapped.firstName));
      await expect.poll(() => label.evaluate((photo: HTMLImageElement) => photo.naturalWidth)).toBe(300);
    }
    await look('names');
  });

  it('comes home with everything in words, in three kinds of file', async () => {
    await host.host({ type: 'Finish' });
    for (const guest of both()) {
      await guest.person.heading(keepsakeWords.title, 1).waitFor();
      await guest.person.text(tapped.touchSweet).first().waitFor();
    }
    await look('keepsake');
    await berit.person.text(keepsakeWords.take.other).click();
    for (const [name, ending] of [
      [keepsakeWords.take.download, /\.md$/],
      [keepsakeWords.take.csv, /\.csv$/],
      [keepsakeWords.take.json, /\.json$/],
    ] as const) {
      const download = berit.person.page.waitForEvent('download');
      await tap(berit, name);
      expect((await download).suggestedFilename()).toMatch(ending);
    }
    const passedOn = () => berit.person.page.evaluate(() => (window as { passedOn?: string }).passedOn);
    await tap(berit, keepsakeWords.take.share);
    await expect.poll(passedOn).toContain('my aunt’s orchard');
    await tap(colm, keepsakeWords.evenings.open);
    await tap(berit, keepsakeWords.evenings.open);
    await colm.person
      .text(like(keepsakeWords.evenings.words(aNumber)))
      .first()
      .waitFor();
    await look('evenings');
    for (const guest of both()) await tap(guest, new RegExp(`^${keepsakeWords.evenings.goTo} `));
  });

  it('deletes everything when the guest asks for it twice', async () => {
    await tap(berit, keepsakeWords.link.remove);
    await berit.person.look('notebook-delete');
    await berit.person.page
      .getByRole('dialog')
      .getByRole('button', { name: keepsakeWords.link.remove })
      .click();
    await berit.person.text(keepsakeWords.link.gone).waitFor();
    const kept = await berit.person.page.evaluate(() => JSON.stringify(localStorage));
    expect(kept).not.toContain('aunt');
    expect(kept).not.toContain(made.tasting);
  });

  it('had no fault on any screen, no barrier, and nothing that slid sideways', () => {
    expect(both().flatMap(({ person }) => person.faults)).toEqual([]);
  });
});
