import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { callWords as words } from '../../shared/language/en/call.ts';
import { consentWords } from '../../shared/language/en/consents.ts';
import { cueWords as sheet } from '../../shared/language/en/cues.ts';
import { atHome, join } from '../server/support/callers.ts';
import { CallEvening, joins, turnOn } from './call-evening.ts';
import { flowOf, flowWithin } from './call-media.ts';
import type { Guest } from './guest.ts';
import type { Person } from './person.ts';

/** The devices of the table itself: a television that shows and plays, and a camera that shows the table. */
let evening: CallEvening;
let lark: Guest;

beforeAll(async () => {
  evening = await CallEvening.open();
  lark = await evening.guest('Lark');
  await joins(lark.person);
  await turnOn(lark.person, 'camera');
  await turnOn(lark.person, 'microphone');
});
afterAll(() => evening?.close());

/** A device that opens the address of the room's screen, and that the host lets in. */
async function screen(name: string, search = ''): Promise<Person> {
  const { house, made, conductor } = evening;
  const person = await evening.device(name, 'wide');
  await person.page.goto(`${house.url}/screen/${made.code}${search}`);
  const { screensAsking } = await conductor.until('presence', (view) => view.screensAsking.length > 0);
  const path = `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`;
  await house.ask('POST', path, { key: made.hostKey, body: { admit: true } });
  return person;
}

describe('the call at the table', () => {
  it('[V7] is shown and played by a television that was let in, which sends nothing', async () => {
    const television = await screen('television');
    const { page } = television;
    // Browsers keep silent until somebody has tapped.
    const tap = television.button(words.soundOff);
    await tap.or(page.locator('.call-tile').first()).first().waitFor();
    if (await tap.isVisible()) await tap.click();
    await page.locator('.call-tile', { hasText: 'Lark' }).locator('video').waitFor();
    await expect.poll(async () => (await flowWithin(page, 500)).frames).toBeGreaterThan(0);
    await expect.poll(async () => (await flowWithin(page, 500)).energyHeard).toBeGreaterThan(0);
    expect(
      await page.locator('audio').evaluateAll((all: HTMLAudioElement[]) => all.every((each) => !each.muted)),
    ).toBe(true);
    // The picture of a lone guest leaves the square of the code free.
    const [tile, square] = await Promise.all(
      ['.call-tile', '.scene-gathering svg'].map((each) => page.locator(each).last().boundingBox()),
    );
    if (tile && square) expect(tile.x).toBeGreaterThan(square.x + square.width);
    await television.look('call-television');
    expect(await flowOf(page)).toMatchObject({ pictureBytesSent: 0, voicePacketsSent: 0 });
    // Nobody can scroll there: words and faces stand on it whole, at the long scenes too, and for five more at home.
    const below = () => page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    const { cues, house, made, conductor } = evening;
    for (const [kind, verb] of [
      ['practice', sheet.step.swirl.spirit.verb],
      ['break', sheet.break.verb],
      ['discussion', sheet.discussion.verb],
    ] as const) {
      const cue = cues.find((each) => each.kind === kind);
      if (cue === undefined) throw new Error(`There is no ${kind}.`);
      await evening.goTo(cue.id);
      await television.heading(verb, 1).waitFor();
      await television.photograph(`call-television-${kind}`);
      expect({ kind, below: await below() }).toEqual({ kind, below: 0 });
    }
    for (let count = 0; count < 5; count += 1)
      expect(
        await join(await atHome(await house.guest(made, `Guest ${count}`)), `still-${count}`),
      ).toMatchObject({
        ok: true,
      });
    await page.locator('.screen-call .call-tile').nth(5).waitFor();
    await conductor.host({ type: 'OpenDiscussion', pours: ['one'] });
    await television.photograph('call-television-many');
    expect(
      await page
        .locator('.screen-call .call-tile')
        .evaluateAll((all) =>
          all
            .map((each) => each.getBoundingClientRect())
            .filter(({ top, bottom }) => top < 0 || bottom > innerHeight),
        ),
    ).toEqual([]);
    expect(await below()).toBe(0);
    expect(television.faults).toEqual([]);
    await television.leaves();
  });

  it('[V7] is seen at home from the camera of the table, which its owner opens', async () => {
    const camera = await screen('camera of the table', '?camera');
    await joins(camera);
    expect(await flowWithin(camera.page, 500)).toMatchObject({ pictureBytesSent: 0, energySent: 0 });
    await turnOn(camera, 'camera');
    await turnOn(camera, 'microphone');
    const { person } = lark;
    await person.page.locator('.call-tile-large', { hasText: words.table }).locator('video').waitFor();
    await expect.poll(async () => (await flowWithin(person.page, 500)).frames).toBeGreaterThan(0);
    await camera.look('call-camera-of-the-table');
    await person.look('call-phone-table');
    // In silence the table is silent for those at home as well.
    const swirl = evening.cues.find(({ id }) => id.endsWith('/first/swirl'));
    if (swirl === undefined) throw new Error('There is no swirl.');
    const moment = await evening.goTo(swirl.id);
    await expect.poll(() => Date.now()).toBeGreaterThan(moment + 300);
    expect(await flowWithin(camera.page, 500)).toMatchObject({ energySent: 0, voicePacketsSent: 0 });
    expect([...camera.faults, ...person.faults]).toEqual([]);
  });

  it('shows the verb of what follows a talk first, above the question that was left unanswered in it', async () => {
    const { cues, conductor } = evening;
    const { page } = lark.person;
    await page.setViewportSize({ width: 360, height: 640 });
    const talk = cues.find((cue) => cue.kind === 'discussion');
    if (talk?.kind !== 'discussion') throw new Error('There is no talk.');
    const { pours } = talk;
    await evening.goTo(talk.id);
    await conductor.host({ type: 'OpenDiscussion', pours });
    const question = page.getByRole('region', { name: consentWords.question(pours.length) });
    await question.waitFor();
    expect(await page.locator('main > :first-child').getAttribute('class')).toBe('table-question');
    const offer = page.locator('.table-offer').first();
    for (const kind of ['reveal', 'break', 'farewell'] as const) {
      const cue = cues.slice(cues.indexOf(talk)).find((each) => each.kind === kind);
      if (cue === undefined) throw new Error(`There is no ${kind}.`);
      // A keyboard that stood on the question goes to the verb with the cue.
      await expect.poll(() => offer.isEnabled()).toBe(true);
      await offer.focus();
      await evening.goTo(cue.id);
      await lark.person.heading(sheet[kind].verb, 1).waitFor();
      await question.waitFor();
      const [strip, hint, asked, foot] = await Promise.all(
        ['.call-strip', '.hint', '.table-question', '.room-foot'].map((each) =>
          page.locator(each).boundingBox(),
        ),
      );
      if (!strip || !hint || !asked || !foot) throw new Error(`Something of ${kind} is not there.`);
      expect(hint.y).toBeGreaterThanOrEqual(strip.y + strip.height);
      expect(hint.y + hint.height).toBeLessThanOrEqual(foot.y);
      expect(asked.y).toBeGreaterThanOrEqual(hint.y + hint.height);
      expect(await page.locator('h1').evaluate((verb) => verb === document.activeElement)).toBe(true);
      const [large, other] = await Promise.all(
        ['.call-tile-large', '.call-others > .call-tile'].map((each) =>
          page.locator(each).first().boundingBox(),
        ),
      );
      expect(large?.width).toBeGreaterThan(other?.width ?? Number.NaN);
      await lark.person.look(`call-phone-asked-${kind}`);
    }
    await offer.click();
    await question.waitFor({ state: 'detached' });
    expect(lark.person.faults).toEqual([]);
  });
});
