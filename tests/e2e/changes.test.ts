import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Plan, planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { changesWords as said } from '../../shared/language/en/changes.ts';
import { hostWords as words } from '../../shared/language/en/host.ts';
import { planPours } from '../../shared/language/en/plan-pours.ts';
import type { CreatedTasting, StoredPlan } from '../../shared/wire/http.ts';
import { createTasting } from '../support/tasting.ts';
import { patience } from '../support/until.ts';
import { stopAtTheFirstFault } from './one-by-one.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

/** A host changes the plan in mid-evening: what a hand does, how often it taps, and what everybody then has. */
const plan = planSchema.parse(demoEvening);

let premises: Premises;
let made: CreatedTasting;
let tablet: Person;
let phone: Person;

beforeAll(async () => {
  premises = await Premises.open();
  made = await createTasting(premises, demoEvening);
  tablet = await Person.arrives(premises.browser, 'host', 'tablet');
  await tablet.page.goto(`${premises.room.origin}/host#tasting=${made.tasting}&key=${made.hostKey}`);
  await tablet.button(words.doors.open).click();
  await tablet.page.getByRole('link', { name: words.doors.toRoom }).click();
  await tablet.heading(words.cue.kinds.gathering, 2).waitFor();
});
afterAll(async () => {
  await premises?.close();
});
stopAtTheFirstFault();

const planNow = async () => {
  const answer = await fetch(`${premises.room.origin}/api/tastings/${made.tasting}/plan`, {
    headers: { Authorization: `Bearer ${made.hostKey}` },
  });
  return ((await answer.json()) as StoredPlan).plan;
};
/** Waits for the plan to be so. */
const until = (holds: (now: Plan) => boolean) =>
  expect.poll(async () => holds(await planNow()), { timeout: patience, interval: 50 }).toBe(true);
const dialog = () => tablet.page.getByRole('dialog');
const glasses = () => tablet.button(words.tools.glasses).click();
const row = (glass: number) =>
  dialog()
    .getByRole('listitem')
    .nth(glass - 1);

describe('the plan in mid-evening', () => {
  it('swaps a bottle in three taps and a name, and says first what becomes of the numbers', async () => {
    const begun = Date.now();
    await glasses();
    await row(3).getByRole('button', { name: words.glasses.swap }).click();
    await dialog().getByText(said.swap.numbers).waitFor();
    await tablet.look('host-swap');
    await tablet.field(planPours.pour.name).fill('Ferry House Reserve');
    await tablet.button(said.swap.go).click();
    await until(({ pours }) => pours[2]?.name === 'Ferry House Reserve');
    // As a hand is slower than a test: three taps at two seconds each leave the rest for the name.
    expect(Date.now() - begun).toBeLessThan(15_000);
    const { pours, codes } = await planNow();
    expect(pours.map(({ id }) => id)).toEqual(plan.pours.map(({ id }) => id));
    expect(codes).toEqual(plan.codes);
    await tablet
      .text(said.swap.done(words.cue.glass(3)))
      .first()
      .waitFor();
  });

  it('takes the swap back to the letter', async () => {
    await tablet.button(words.undo).click();
    await until(({ pours }) => pours[2]?.name === plan.pours[2]?.name);
    expect((await planNow()).pours[2]).toEqual(plan.pours[2]);
  });

  it('mends what is written wrong, with the facts as they are now', async () => {
    await glasses();
    await row(2).getByRole('button', { name: words.glasses.mend }).click();
    const name = tablet.field(planPours.pour.name);
    expect(await name.inputValue()).toBe(plan.pours[1]?.name);
    await tablet.look('host-mend');
    await name.fill('Low Quay, mended');
    await tablet.button(said.mend.go).click();
    await until(({ pours }) => pours[1]?.name === 'Low Quay, mended');
    expect((await planNow()).pours[1]).toEqual({ ...plan.pours[1], name: 'Low Quay, mended' });
  });

  it('mends the title, in front of everybody', async () => {
    await tablet.button(words.tools.more).click();
    await tablet.button(words.more.mendTitle).click();
    await tablet.field(said.heading.label).fill('Six lanterns, mended');
    await tablet.look('host-mend-title');
    await tablet.button(said.mend.go).click();
    await tablet.text('Six lanterns, mended').first().waitFor();
  });

  it('puts the glasses to come in another order, and each keeps its number', async () => {
    await glasses();
    await dialog().getByRole('button', { name: words.glasses.order }).click();
    await dialog().getByText(said.order.numbers).waitFor();
    await dialog()
      .getByRole('button', { name: said.order.up(words.cue.glass(6)) })
      .click();
    await dialog()
      .getByRole('button', { name: said.order.up(words.cue.glass(6)) })
      .click();
    await tablet.look('host-reorder');
    await tablet.button(said.order.go).click();
    await until(({ numbers }) => numbers.length > 0);
    const ids = plan.pours.map(({ id }) => id);
    expect((await planNow()).numbers).toEqual(ids);
    expect((await planNow()).pours.map(({ id }) => ids.indexOf(id) + 1)).toEqual([1, 2, 3, 6, 4, 5]);
  });

  it('adds the spare pour with a code of its own', async () => {
    await glasses();
    await dialog().getByRole('button', { name: words.glasses.add }).click();
    await dialog()
      .getByText(said.add.numbers(words.cue.glass(7)))
      .waitFor();
    await tablet.look('host-add');
    await tablet.field(planPours.pour.name).fill('The spare');
    await tablet.button(said.add.go).click();
    await until(({ pours }) => pours.length === 7);
    const { pours, codes } = await planNow();
    const spare = pours.find(({ name }) => name === 'The spare');
    expect(codes[spare?.id ?? '']).toMatch(/^\d{3}$/);
    expect(new Set(Object.values(codes)).size).toBe(7);
  });

  it('changes the length and the words of a coming cue', async () => {
    const { page } = tablet;
    const list = page.getByRole('navigation', { name: words.room.order, exact: true });
    await list.getByRole('button', { name: new RegExp(`${words.cue.kinds.welcome}$`) }).click();
    await dialog().getByText(words.room.jump.change).click();
    await tablet.field(said.cue.minutes).fill('2.5');
    await tablet.field(said.cue.say).fill('Good evening, all of you.');
    await tablet.look('host-cue-change');
    await dialog().getByRole('button', { name: said.cue.go, exact: true }).click();
    await dialog().waitFor({ state: 'detached' });
    await tablet.button(new RegExp(`^${words.room.next}`)).click();
    await tablet.heading(words.cue.kinds.welcome, 2).waitFor();
    await tablet.text('Good evening, all of you.').waitFor();
  });

  it('[Q4] shows a passer-by no name on the tablet, and the host one under a finger held down', async () => {
    const { page } = tablet;
    const names = plan.pours.map(({ name }) => name);
    const told = async () => {
      const all = (await page.locator('body').textContent()) ?? '';
      return names.filter((name) => all.includes(name));
    };
    await tablet.button(new RegExp(`^${words.room.next}`)).waitFor();
    const list = page.getByRole('navigation', { name: words.room.order, exact: true });
    await list
      .getByRole('button', { name: /^\S+ ?1 · / })
      .first()
      .click();
    await list
      .getByRole('button', { name: new RegExp(`${words.cue.steps.nose}$`) })
      .last()
      .click();
    await tablet.button(words.room.jump.go).click();
    await tablet.heading(words.cue.steps.nose, 2).waitFor();
    expect(await told()).toEqual([]);
    const cover = page.locator('.room-now').getByRole('button', { name: new RegExp(words.cover.hold) });
    await cover.hover();
    await page.mouse.down();
    await page.getByText(names[0] ?? '').waitFor();
    expect(await told()).toEqual([names[0]]);
    await tablet.look('host-name-held');
    await page.mouse.up();
    expect(await told()).toEqual([]);
    await cover.focus();
    await page.keyboard.down('Enter');
    expect(await told()).toEqual([names[0]]);
    await page.keyboard.up('Enter');
    expect(await told()).toEqual([]);
    await tablet.button(words.tools.glasses).click();
    await page.getByRole('dialog').waitFor();
    expect(await told()).toEqual([]);
    await tablet.look('host-glasses-covered');
    await dialog().getByRole('button', { name: words.close, exact: true }).click();
  });

  it('fits a phone', async () => {
    phone = await Person.arrives(premises.browser, 'host’s phone', 'phone');
    await phone.page.setViewportSize({ width: 390, height: 844 });
    await phone.page.goto(`${premises.room.origin}/host#tasting=${made.tasting}&key=${made.hostKey}`);
    await phone.page.getByRole('link', { name: words.doors.toRoom }).click();
    await phone.heading(words.cue.steps.nose, 2).waitFor();
    await phone.look('host-room-phone');
    await phone.button(words.tools.glasses).click();
    await phone.look('host-glasses-phone');
  });

  it('had no fault on any screen', () => {
    expect([tablet, phone].flatMap((person) => person?.faults ?? [])).toEqual([]);
  });
});
