import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Plan } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { beforeWords } from '../../shared/language/en/before.ts';
import { demoWords } from '../../shared/language/en/demo.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { planWords as words } from '../../shared/language/en/plan.ts';
import { surveyWords as survey } from '../../shared/language/en/survey.ts';
import type { CreatedTasting, StoredPlan } from '../../shared/wire/http.ts';
import { createTasting } from '../support/tasting.ts';
import { patience } from '../support/until.ts';
import { like, writtenDay } from './like.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

let premises: Premises;
let made: CreatedTasting;
const here: Person[] = [];

beforeAll(async () => {
  premises = await Premises.open();
  made = await createTasting(premises, {
    ...demoEvening,
    blind: false,
    guests: 8,
    remoteGuests: 2,
    startsAt: '2031-03-28T19:30:00+01:00',
    timeZone: 'Europe/Vienna',
    callLink: 'https://call.example/six-lanterns',
  });
});
afterAll(() => premises?.close());

async function arrives(name: string, size: 'tablet' | 'phone', path: string): Promise<Person> {
  const person = await Person.arrives(premises.browser, name, size);
  here.push(person);
  await person.page.goto(`${premises.room.origin}${path}`);
  return person;
}

/** A host's device with the key, at a page of the tasting. */
async function host(name: string, size: 'tablet' | 'phone', page: string): Promise<Person> {
  const person = await arrives(name, size, `/host#tasting=${made.tasting}&key=${made.hostKey}`);
  await person.page.getByRole('heading', { level: 1 }).waitFor();
  await person.page.goto(`${premises.room.origin}/host#/t/${made.tasting}/${page}`);
  return person;
}

async function storedPlan(): Promise<Plan> {
  const response = await fetch(`${premises.room.origin}/api/tastings/${made.tasting}/plan`, {
    headers: { Authorization: `Bearer ${made.hostKey}` },
  });
  return ((await response.json()) as StoredPlan).plan;
}

const wait = { timeout: patience, interval: 50 };

/** The plan as soon as the server has one of which this is so. */
const kept = (is: (plan: Plan) => boolean): Promise<Plan> =>
  vi.waitUntil(async () => {
    const plan = await storedPlan();
    return is(plan) ? plan : undefined;
  }, wait);

const openPart = (person: Person, part: string) =>
  person
    .button(new RegExp(`^${part}`))
    .first()
    .click();

describe('who is coming', () => {
  let tablet: Person;
  let phone: Person;
  const questions = Object.values(survey.questions);
  const answer = (person: Person, question: number, score: number) =>
    person.page
      .getByRole('group', { name: questions[question]?.ask ?? '' })
      .getByRole('radio', { name: questions[question]?.answers[score] ?? '', exact: true })
      .check();
  const look = async (): Promise<void> => {
    await openPart(tablet, words.parts.evening);
    await openPart(tablet, words.parts.guests);
  };

  it('is answered on a phone without an account, any question skipped', async () => {
    tablet = await host('planner', 'tablet', 'plan');
    await openPart(tablet, words.parts.guests);
    const link = await tablet.field(words.survey.link).inputValue();
    expect(link).toContain(`/survey/${made.code}`);
    phone = await arrives('newcomer', 'phone', new URL(link).pathname);
    await phone.button(survey.send).click();
    await phone.text(survey.none).waitFor();
    for (const [question, score] of [0, 0, 1, 3].entries()) await answer(phone, question, score);
    await phone.button(survey.skipOf(questions[3]?.ask ?? '')).click();
    await phone.look('survey', { whole: true });
    await phone.button(survey.send).click();
    await phone.heading(survey.thanksTitle, 1).waitFor();
    await phone.look('survey-thanks');
  });

  it('is seen by the host as a spread, and the recommendation taken over with one tap and back', async () => {
    await look();
    await tablet.text(words.survey.answered(1, 10)).waitFor();
    await tablet.text(words.guests.advised(words.levels.newcomers, 3, 1)).waitFor();
    await tablet.look('plan-crowd', { whole: true });
    await tablet.button(words.guests.takeAdvice).click();
    await kept(({ level }) => level === 'newcomers');
    await tablet.button(words.undo).click();
    await kept(({ level }) => level === 'regulars');
  });

  it('can be answered anew, and counts once', async () => {
    await phone.page.reload();
    await phone.button(survey.change).click();
    for (const question of [0, 1, 2]) await answer(phone, question, 3);
    await phone.button(survey.sendAgain).click();
    await phone.heading(survey.thanksTitle, 1).waitFor();
    await look();
    await tablet.text(words.guests.advised(words.levels.devotees, 9, 3)).waitFor();
    await tablet.text(words.survey.answered(1, 10)).waitFor();
  });
});

describe('tasting ahead', () => {
  let phone: Person;
  const said = words.ahead;
  const file = (name: string, mimeType: string, buffer: Buffer) => ({ name, mimeType, buffer });
  const camera = (side: number) => phone.page.locator('input[type=file][capture]').nth(side);
  /** Larger than a label needs, as a camera makes it. */
  const photo = async (colour: string) =>
    sharp({ create: { width: 2400, height: 3200, channels: 3, background: colour } })
      .png()
      .toBuffer();

  it('keeps label photos, smaller than they were taken', async () => {
    phone = await host('taster', 'phone', 'ahead');
    await phone.heading(said.title, 1).waitFor();
    await camera(0).setInputFiles(file('front.png', 'image/png', await photo('#3a2117')));
    await phone.page.getByAltText(said.photoOf(said.sides.front, demoWords.pours.orchardWall.name)).waitFor();
    await camera(1).setInputFiles(file('back.png', 'image/png', await photo('#1d6b62')));
    await phone.page.getByAltText(said.photoOf(said.sides.back, demoWords.pours.orchardWall.name)).waitFor();
    const { pours } = await kept(
      (plan) => plan.pours[0]?.photos?.front !== undefined && plan.pours[0].photos.back !== undefined,
    );
    const served = await fetch(`${premises.room.origin}/photos/${pours[0]?.photos?.front}`);
    expect(await sharp(Buffer.from(await served.arrayBuffer())).metadata()).toMatchObject({
      format: 'jpeg',
      width: 1200,
      height: 1600,
    });
  });

  it('refuses what is no photo with a sentence', async () => {
    await camera(0).setInputFiles(file('label.jpg', 'image/jpeg', Buffer.from('this is no picture')));
    await phone.text(said.noPhoto).waitFor();
    await phone.page.getByAltText(said.photoOf(said.sides.front, demoWords.pours.orchardWall.name)).waitFor();
  });

  it('fills the facts that the order needs, pour by pour', async () => {
    await phone.button(said.next).click();
    await phone.heading(demoWords.pours.slowCandle.name, 2).waitFor();
    await phone.button(said.more(said.pungency.name)).click();
    await phone.page.getByRole('slider', { name: said.dryness.name }).fill('7.5');
    await phone.field(words.pour.abv).fill('46,8');
    await phone.field(said.line).fill('pear and chalk');
    await phone.look('taste-ahead', { whole: true });
    const { pours } = await kept(({ pours: [, now] }) => now?.hostNote !== undefined);
    expect(pours[1]).toMatchObject({
      marks: { pungency: 4, dryness: 7.5 },
      abv: 46.8,
      hostNote: 'pear and chalk',
    });
  });

  it('shows the label in the plan', async () => {
    const tablet = await host('reader', 'tablet', 'plan');
    await openPart(tablet, words.parts.pours);
    await tablet.button(new RegExp(`^${words.pours.edit} ${demoWords.pours.orchardWall.name}`)).click();
    await tablet.page.getByAltText(said.photoOf(said.sides.back, demoWords.pours.orchardWall.name)).waitFor();
    await tablet.look('plan-pour-photos');
    await tablet.page.keyboard.press('Escape');
    for (const [part, title] of Object.entries(words.parts)) {
      await openPart(tablet, title);
      await tablet.heading(title).first().waitFor();
      await tablet.look(`plan-${part}`, { whole: true });
    }
  });

  it('is open to nobody without the key, and says how to get it', async () => {
    const stranger = await arrives('stranger', 'phone', '/host');
    await stranger.heading(hostWords.key.title, 1).waitFor();
    await stranger.look('host-no-key');
  });
});

describe('the days before, on a guest’s phone', () => {
  let phone: Person;
  const front = () => phone.page.getByAltText(guestWords.pour.labels.front(demoWords.pours.orchardWall.name));

  it('say when and where, the rules, the pours with their labels, and what to have ready at home', async () => {
    phone = await arrives('guest', 'phone', `/j/${made.code}`);
    await phone.heading(beforeWords.pours, 2).waitFor();
    await phone
      .text(like(writtenDay('2031-03-28')))
      .first()
      .waitFor();
    await phone.heading(guestWords.rules.title, 2).waitFor();
    await phone.heading(demoWords.pours.charcoalBurnersCoat.name, 3).waitFor();
    await phone.text(guestWords.kit.items['spit-cup']).waitFor();
    await phone.page.getByRole('link', { name: guestWords.glass.callLink }).waitFor();
    await front().scrollIntoViewIfNeeded();
    const drawn = () =>
      front().evaluate((picture) => picture instanceof HTMLImageElement && picture.naturalWidth > 0);
    await vi.waitUntil(drawn, wait);
    await phone.look('before-open', { whole: true });
  });

  it('[Q4] name nothing once it is blind', async () => {
    const tablet = await host('blinder', 'tablet', 'plan');
    await openPart(tablet, words.parts.pours);
    await tablet.page.getByRole('switch', { name: new RegExp(`^${words.pours.blind}`) }).check();
    await kept(({ blind }) => blind);
    await phone.page.reload();
    await phone.text(beforeWords.blind).waitFor();
    expect(await phone.page.content()).not.toMatch(
      new RegExp(`${demoWords.pours.orchardWall.name}|/photos/`),
    );
    await phone.look('before-blind', { whole: true });
  });

  it('are when the host draws each seat’s order and an odd one out', async () => {
    const tablet = here.find(({ name }) => name === 'blinder');
    if (tablet === undefined) throw new Error('The host who made it blind is not here.');
    await tablet.page.getByRole('switch', { name: new RegExp(`^${words.pours.ownOrders}`) }).check();
    await tablet.text(words.orders.title).click();
    await tablet.page.getByRole('rowheader', { name: '10', exact: true }).waitFor();
    await tablet.text(words.trials.title).click();
    await tablet.button(words.trials.add).click();
    await tablet.heading(words.trials.number(1), 3).waitFor();
    const plan = await kept(({ servingOrders, trials }) => {
      return servingOrders.length === 2 && trials.length === 1;
    });
    const firstPlace = plan.servingOrders[0]?.rows[0]?.map((pour) => plan.codes[pour]).join(' ') ?? '';
    await tablet.page.getByRole('cell', { name: firstPlace, exact: true }).first().waitFor();
    expect(plan.trials[0]?.orders).toHaveLength(12);
    await tablet.look('plan-orders', { whole: true });
  });

  it('and nothing went wrong on any of the pages', () => {
    expect(here.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
