import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { choosingWords } from '../../shared/language/en/choosing.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { demoWords } from '../../shared/language/en/demo.ts';
import { guestWords as words } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { recapWords } from '../../shared/language/en/recap.ts';
import { seatWords } from '../../shared/language/en/seat.ts';
import { createTasting } from '../support/tasting.ts';
import { until } from '../support/until.ts';
import { Guest } from './guest.ts';
import { Host } from './host.ts';
import { anything, like } from './like.ts';
import { otherLanguage } from './other-language.ts';
import { Person, sizes } from './person.ts';
import { Premises } from './premises.ts';
import { readQr } from './qr.ts';

/** One guest at home beside a video call, who leaves early, is let back in, and moves to another phone. */
const plan = planSchema.parse({ ...demoEvening, callLink: 'https://call.example/six-lanterns' });
const cues = compile(plan);
let premises: Premises;
let host: Host;
let lark: Guest;
let phone: Person;
let at = 0;
const other = await otherLanguage();

beforeAll(async () => {
  premises = await Premises.open();
  const { tasting, code, hostKey } = await createTasting(premises, plan);
  host = await Host.arrives(premises.browser, premises.room.origin, premises.houseKey);
  const { page } = host.person;
  await page.goto(`${premises.room.origin}/host#tasting=${tasting}&key=${hostKey}`);
  await page.goto(`${premises.room.origin}/host#/t/${tasting}/doors`);
  await host.openDoors();
  lark = await Guest.arrives(premises.browser, 'Lark');
  // What would be spoken is written down: a test has no ears.
  await lark.person.page.addInitScript(() => {
    const said: string[] = [];
    const buzzed: unknown[] = [];
    Object.assign(window, { said, buzzed });
    navigator.vibrate = (pattern) => buzzed.push(pattern) > 0;
    SpeechSynthesis.prototype.speak = ({ text }: SpeechSynthesisUtterance) => void said.push(text);
  });
  await lark.person.page.goto(`${premises.room.origin}/j/${code}`);
  await lark.sitsDown({ atHome: true });
  await lark.readsCautions();
  await host.goAndConduct();
});
afterAll(() => premises?.close());

const spoken = () => lark.person.page.evaluate(() => (window as unknown as { said: string[] }).said);
const buzzes = () =>
  lark.person.page.evaluate(() => (window as unknown as { buzzed: unknown[] }).buzzed.length);
const home = hostWords.table.home;

async function leadTo(id: string): Promise<void> {
  while (cues[at]?.id !== id) {
    at += 1;
    const next = cues[at];
    if (next === undefined) throw new Error(`There is no cue ${id} ahead.`);
    await host.next(next);
  }
}

/** Half a laptop's screen, and a phone that shows the call in its other half. */
async function lookBesideCall(name: string): Promise<void> {
  for (const [width, height] of [
    [640, 720],
    [360, 320],
    [360, 640],
  ] as const) {
    await lark.person.page.setViewportSize({ width, height });
    await lark.person.look(`home-${name}-${width}x${height}`);
  }
}

describe('a guest at home', () => {
  it('lays the kit out, and the host sees at a glance what is missing', async () => {
    await host.person.text(new RegExp(home.kits(0, 1))).waitFor();
    await lookBesideCall('gathering');
    const { vials, lids, water, ...rest } = words.kit.items;
    for (const item of [vials, lids, water])
      await lark.person.page.getByRole('switch', { name: item }).click();
    await host.person
      .text(new RegExp(home.kitMisses([home.items['spit-cup'], home.items['white-paper']])))
      .waitFor();
    await host.person.look('host-kits');
    for (const item of Object.values(rest))
      await lark.person.page.getByRole('switch', { name: item }).click();
    await host.person.text(new RegExp(home.kits(1, 1))).waitFor();
  });

  it('has the call one tap away at every cue, and hears the steps if they want to', async () => {
    await lark.person.button(words.seat.open).click();
    const prompts = lark.person.page.getByRole('switch', { name: words.seat.spoken });
    expect(await prompts.isChecked()).toBe(false);
    await leadTo('ground-rules');
    expect(await spoken()).toEqual([]);
    await lark.person.button(words.seat.open).click();
    await prompts.click();
    expect(await spoken()).toEqual([words.seat.spoken]);
    await lark.person.look('home-my-seat');
    await lark.person.button(words.notes.back).click();
    await leadTo('kV7nQ2xd/first/nose');
    await lark.isAt(cues[at] as never);
    expect((await spoken()).at(-1)).toMatch(
      like(`${words.glass.of(1, 6)}. ${cueWords.step.nose.spirit.verb}. ${cueWords.step.nose.spirit.hint}`),
    );
    const call = lark.person.page.getByRole('link', { name: words.glass.callLink });
    expect(await call.getAttribute('href')).toBe(plan.callLink);
    await lookBesideCall('nose');
    // Practised once with water before, and begun now.
    expect(await buzzes()).toBe(3);
    // Looked up in the middle, and not while it is only just beginning.
    await lark.person.text(/^00:(3[0-5]|[012]\d)$/).waitFor();
    await lark.person.button(words.notes.open).click();
    await lark.person.button(words.notes.back).click();
    await lark.isAt(cues[at] as never);
    expect(await buzzes()).toBe(3);
    await leadTo('kV7nQ2xd/first/sip');
    await lark.isAt(cues[at] as never);
    expect(await buzzes()).toBe(4);
  });

  it('is waited for with one switch that the host can read on the page', async () => {
    await host.person.button(hostWords.tools.more).click();
    await host.person.page
      .getByRole('radio', { name: new RegExp(`^${hostWords.more.pacings.clock}`) })
      .click();
    await host.person.page.getByRole('switch', { name: hostWords.more.waitForRemote }).click();
    await host.person.page.keyboard.press('Escape');
    await host.person.text(home.waits).waitFor();
    await host.person.look('host-waits-for-home');
    await host.person.button(hostWords.tools.more).click();
    await host.person.page
      .getByRole('radio', { name: new RegExp(`^${hostWords.more.pacings.host} `) })
      .click();
    await host.person.page.keyboard.press('Escape');
    await leadTo('kV7nQ2xd/writing/write/nose');
    await lark.isAt(cues[at] as never);
    await lark.writes('nose', 'cold apple cellar');
    await lark.seesSaved();
    await lookBesideCall('write');
    await lark.putsPenDown();
  });

  it('is nudged without a word of blame, and not once they are ready', async () => {
    await host.person.button(hostWords.tools.remind).click();
    await host.person.button(hostWords.remind.nudge).click();
    await lark.person.text(words.glass.reminder.nudge).waitFor();
    await lark.person.button(words.signals.ready).click();
    await lark.person.text(words.glass.reminder.nudge).waitFor({ state: 'detached' });
  });

  it('who leaves early has the keepsake at once, and nothing more of the room', async () => {
    await lark.person.button(words.seat.open).click();
    await lark.person.button(seatWords.leave).click();
    await lark.person.look('home-leave');
    await lark.person.page.getByRole('dialog').getByRole('button', { name: seatWords.leave }).click();
    await lark.person.text(new RegExp(words.glass.left)).waitFor();
    await lark.person.text('cold apple cellar').first().waitFor();
    await lark.person.look('home-left-early', { whole: true });
    expect(await lark.person.text(demoWords.pours.orchardWall.name).count()).toBe(0);
    expect(await lark.person.button(words.notes.back).count()).toBe(0);
  });

  it('[S1] is let back in by the host, and lands where the room is', async () => {
    await leadTo('kV7nQ2xd/writing/write/palate');
    await host.person.button(hostWords.table.everybody).click();
    await host.person.button(hostWords.table.restore).click();
    await host.person.page.keyboard.press('Escape');
    await lark.isAt(cues[at] as never);
  });

  it('[S1] [S4] moves to another phone by the square that the host shows, with every word once the old one says yes', async () => {
    await host.person.button(/^Lark/).click();
    await host.person.button(hostWords.table.newPhone).click();
    const square = host.person.page.getByRole('img', { name: hostWords.table.newPhoneLabel('Lark') });
    const link = await readQr(square);
    expect(link).toContain('/seat#');
    await host.person.look('host-seat-of-lark');
    await host.person.page.keyboard.press('Escape');
    phone = await Person.arrives(premises.browser, 'Lark-anew', 'phone');
    await phone.page.goto(link ?? '');
    await phone.button(words.cautions.accept).click();
    await phone.field(words.fields.palate).waitFor();
    expect(phone.page.url()).not.toContain('#');
    const { devices } = seatWords;
    await phone.text(devices.waits).waitFor();
    await phone.look('seat-asks-for-notes', { whole: true });
    await phone.button(words.notes.open).click();
    // Whoever made the link could be holding this phone.
    expect(await phone.field(words.fields.nose).inputValue()).toBe('');
    await lark.person.text(devices.asks).waitFor();
    await lark.person.look('seat-asked-for-notes', { whole: true });
    await lark.person.button(devices.yes).click();
    await until('the notes are there', async () => {
      return (await phone.field(words.fields.nose).inputValue()) === 'cold apple cellar';
    });
  });

  it('reads on in another language in the same seat, with the word that was just being written', async () => {
    await phone.page.setViewportSize(sizes.small);
    await phone.button(words.notes.back).click();
    await phone.field(words.fields.palate).fill('warm slate, half a wor');
    await phone.button(words.seat.open).click();
    const choice = phone.page.getByRole('navigation', { name: choosingWords.choose, exact: true });
    await choice.getByRole('link', { name: other.name, exact: true }).click();
    await phone.field(other.guest.fields.palate).waitFor();
    expect(await phone.field(other.guest.fields.palate).inputValue()).toBe('warm slate, half a wor');
    expect(await phone.page.locator('html').getAttribute('lang')).toBe(other.language);
    expect(new URL(phone.page.url()).search).toBe('');
    await phone.look(`small-${other.language}-write`, { whole: true });
    await phone.button(other.guest.notes.open).click();
    await phone.field(other.guest.fields.nose).waitFor();
    await phone.look(`small-${other.language}-notes`, { whole: true });
    await phone.button(other.guest.notes.back).click();
    await phone.button(other.guest.seat.open).click();
    await phone.heading(other.seat.title, 1).waitFor();
    await phone.look(`small-${other.language}-seat`, { whole: true });
    await phone.button(other.guest.notes.back).click();
  });

  it('has room for long words on a small phone, all evening', async () => {
    const { kinds } = hostWords.cue;
    for (const [kind, name] of [
      ['ground-rules', kinds['ground-rules']],
      ['discussion', kinds.discussion],
      ['reveal', kinds.reveal],
      ['break', kinds.break],
      ['farewell', kinds.farewell],
    ] as const) {
      await host.jumpTo(name);
      await phone.heading(other.cues[kind].verb, 1).waitFor();
      await phone.look(`small-${other.language}-${kind}`, { whole: true });
    }
    await phone.button(other.guest.keepsake.open).click();
    await phone.heading(other.guest.keepsake.title, 1).waitFor();
    await phone.look(`small-${other.language}-keepsake`, { whole: true });
  });

  it('comes into the summary when the host says at the end what the table talked about', async () => {
    const { page } = host.person;
    await host.person.button(hostWords.tools.more).click();
    await page.getByRole('dialog').getByRole('button', { name: hostWords.more.finish }).click();
    const talked = page.getByRole('group', { name: hostWords.finish.talked });
    const glass = talked.getByRole('switch', { name: new RegExp(`^${hostWords.cue.glass(1)} · `) });
    // The room has been at its discussion, so that it was probably talked about.
    expect(await glass.isChecked()).toBe(true);
    await glass.click();
    expect(await glass.isChecked()).toBe(false);
    await glass.click();
    await host.person.look('host-finish-talked');
    await host.person.button(hostWords.finish.go).click();
    await host.person.heading(hostWords.finished.title, 1).waitFor();
    await page.getByRole('link', { name: recapWords.open }).click();
    await host.person.heading(recapWords.title, 1).waitFor();
    expect(await host.person.text(like(recapWords.silent([anything]))).count()).toBe(0);
  });

  it('is asked one thing at the door, in the language that the phone prefers', async () => {
    await phone.page.goto(`${premises.room.origin}/`);
    await phone.button(other.guest.door.evenings).waitFor();
    await phone.look(`small-${other.language}-door`);
  });

  it('leaves the host’s own page in the language that the host chose', async () => {
    const { page } = host.person;
    await page.goto(`${premises.room.origin}/host#/`);
    await page.getByRole('link', { name: other.name, exact: true }).click();
    await host.person.heading(other.host.home.title, 1).waitFor();
    await host.person.look(`host-home-${other.language}`);
  });

  it('and nothing went wrong on any page', () => {
    expect([host.person, lark.person, phone].flatMap(({ faults }) => faults)).toEqual([]);
  });
});
