import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { demoWords } from '../../shared/language/en/demo.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { storyWords } from '../../shared/language/en/host-story.ts';
import { screenWords as words } from '../../shared/language/en/screen.ts';
import { Guest } from './guest.ts';
import { Host } from './host.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

/** A screen for the room, from its number to the dark: a host, a guest and a television. */
const story = storyWords.screen;
const cues = compile(planSchema.parse(demoEvening));
let premises: Premises;
let host: Host;
let berit: Guest;
let screen: Person;
let code = '';
let at = 0;

beforeAll(async () => {
  premises = await Premises.open();
  host = await Host.arrives(premises.browser, premises.room.origin, premises.houseKey);
  await host.startDemo();
  await host.openDoors();
  code = ((await host.person.page.locator('.code').textContent()) ?? '').replace(/\s/g, '');
  berit = await Guest.arrives(premises.browser, 'Berit');
  await berit.person.page.goto(`${premises.room.origin}/j/${code}`);
  await berit.sitsDown();
  await berit.readsCautions();
});
afterAll(() => premises?.close());

async function leadTo(id: string): Promise<void> {
  while (cues[at]?.id !== id) {
    at += 1;
    const next = cues[at];
    if (next === undefined) throw new Error(`There is no cue ${id} ahead.`);
    await host.next(next);
  }
}

/** Straight to the first talk: the other glasses of the flight have been walked through in other evenings. */
async function jumpToTalk(): Promise<void> {
  const verb = hostWords.cue.kinds.discussion;
  await host.person.page.getByRole('button', { name: verb }).first().click();
  await host.person.button(hostWords.room.jump.go).click();
  await host.isAt(verb);
  at = cues.findIndex(({ id }) => id === 'flight-1/discussion');
}

const shows = (verb: string) => screen.heading(verb, 1).waitFor();
const everything = () => screen.page.locator('body').textContent();

/** Looks at both sizes of screens, and counts what is cut off below, for nobody can scroll there. */
async function look(name: string): Promise<void> {
  for (const [width, height] of [
    [1280, 720],
    [1920, 1080],
  ] as const) {
    await screen.page.setViewportSize({ width, height });
    await screen.look(`screen-${name}-${height}`);
    const below = await screen.page.evaluate(
      () => document.documentElement.scrollHeight - window.innerHeight,
    );
    if (below > 0) screen.faults.push(`${name} at ${height}: ${below} px are below the screen`);
  }
}

const asks = async (): Promise<string> => {
  const number = screen.page.locator('.screen-number');
  await number.waitFor();
  return (await number.textContent()) ?? '';
};
const answer = (what: string, number: string) =>
  host.person.button(hostWords.screens.named(what, Number(number))).click();

describe('a screen for the room', () => {
  it('asks with its number, and is not heard again when it is not ours', async () => {
    screen = await Person.arrives(premises.browser, 'screen', 'wide');
    await screen.page.goto(`${premises.room.origin}/screen`);
    await look('door');
    await screen.page.keyboard.type(code.toLowerCase());
    await screen.page.keyboard.press('Enter');
    const number = await asks();
    expect(number).toMatch(/^\d\d$/);
    await look('waiting');
    await host.person.look('host-screen-asks');
    screen.lineMayFail = true;
    await answer(hostWords.screens.notOurs, number);
    await screen.text(words.refused.notOurs).waitFor();
    await look('not-ours');
    screen.lineMayFail = false;
  });

  it('asks anew with one key of the remote control, and is let in', async () => {
    await screen.page.keyboard.press('Enter');
    await answer(hostWords.screens.letIn, await asks());
    await shows(demoEvening.title ?? '');
    await screen.text(words.gathering.hostedBy(demoEvening.hostName ?? '')).waitFor();
    await host.person.text(hostWords.screens.shown(1)).waitFor();
    await look('gathering');
    await host.person.look('host-screen-shown');
  });

  it('follows the room, through a reload too, and turns dark while eyes are closed', async () => {
    await host.goAndConduct();
    await leadTo('ground-rules');
    await shows(cueWords['ground-rules'].verb);
    await look('rules');
    await leadTo('practice/swirl');
    await shows(cueWords.practice.swirl.verb);
    await look('practice');
    await leadTo('kV7nQ2xd/first/look');
    await shows(cueWords.step.look.spirit.verb);
    await screen.text(words.place.glassOf(1, 6)).waitFor();
    await screen.page.reload();
    await shows(cueWords.step.look.spirit.verb);
    await look('look');
    await leadTo('kV7nQ2xd/first/nose');
    await shows(cueWords.step.nose.spirit.verb);
    await look('nose');
    await leadTo('kV7nQ2xd/first/sip');
    await shows(cueWords.step.sip.spirit.verb);
    await host.person.button(hostWords.tools.remind).click();
    await host.person.button(hostWords.remind.water).click();
    await screen.text(words.reminders.water).waitFor();
    await look('reminder');
  });

  it('never shows a note before the talk is open, nor what is not shared [Q1, Q2]', async () => {
    await leadTo('kV7nQ2xd/writing/write/nose');
    await berit.isAt(cues[at] as never);
    await berit.writes('nose', 'pear skin and wet slate');
    await berit.seesSaved();
    await berit.putsPenDown();
    await leadTo('kV7nQ2xd/writing/write/palate');
    await berit.isAt(cues[at] as never);
    await berit.writes('palate', 'warm hay');
    await berit.seesSaved();
    await berit.putsPenDown();
    await leadTo('kV7nQ2xd/water');
    await shows(cueWords.water.verb);
    await look('water');
    await jumpToTalk();
    await shows(cueWords.discussion.verb);
    await look('before-talk');
    expect(await everything()).not.toContain('wet slate');
    await host.openTalk();
    await screen.text(words.talk.none).waitFor();
    await look('board-empty');
    await berit.answersQuestion('named');
    await screen.text('pear skin and wet slate').waitFor();
    await look('board');
    await host.person.button(hostWords.board.showScreen).click();
    await host.person.button(story.on).click();
    await screen.text('warm hay').waitFor();
    await host.person.look('host-screen-desk');
    await host.person.button(story.dark).click();
    await screen.heading(words.madeDark, 1).waitFor();
    await look('made-dark');
    await screen.page.reload();
    await screen.heading(words.madeDark, 1).waitFor();
    expect(await everything()).not.toContain('warm hay');
    await host.person.button(story.follow).click();
    await screen.text('pear skin and wet slate').waitFor();
  });

  it('tells the names once the host does, and says goodbye with care', async () => {
    await leadTo('flight-1/reveal');
    await shows(cueWords.reveal.verb);
    expect(await everything()).not.toContain(demoWords.pours.orchardWall.name);
    await host.tellName();
    await screen.heading(demoWords.pours.orchardWall.name, 2).waitFor();
    await look('reveal');
    await host.tellNames();
    expect(await everything()).not.toContain(demoWords.pours.orchardWall.name);
    await look('reveal-last');
    await host.person.look('host-card-last');
    await leadTo('flight-1/break');
    await shows(cueWords.break.verb);
    await look('break');
    await host.person.button(hostWords.tools.glasses).click();
    const drawer = host.person.page.getByRole('dialog');
    const inDrawer = (name: string) => drawer.getByRole('button', { name, exact: true });
    for (const left of [2, 1]) {
      await inDrawer(hostWords.glasses.closeTalk).first().click();
      await expect.poll(() => inDrawer(hostWords.glasses.closeTalk).count()).toBe(left);
    }
    await inDrawer(hostWords.glasses.openAll).click();
    await host.person.look('host-open-all');
    await inDrawer(hostWords.glasses.openTalk).click();
    await host.person.button(hostWords.tools.glasses).click();
    await inDrawer(hostWords.glasses.closeTalk).nth(2).waitFor();
    expect(await host.person.text(hostWords.glasses.closedNow).count()).toBe(0);
    await host.person.look('host-glasses-open');
    await host.person.page.keyboard.press('Escape');
    await host.person.button(hostWords.tools.more).click();
    await host.person.button(hostWords.more.finish).click();
    await host.person.button(hostWords.finish.go).click();
    await screen.text(words.goodbye.care).waitFor();
    await look('goodbye');
  });

  it('goes dark when the host switches it off, and stays dark', async () => {
    await host.person.page.goto(`${host.person.page.url().replace(/room$/, 'doors')}`);
    await host.person.button(hostWords.screens.off).click();
    await screen.text(words.refused.dark).waitFor();
    await look('dark');
    expect(await screen.page.locator('.screen-room').count()).toBe(0);
  });

  it('and nothing went wrong on any screen', () => {
    expect([host.person, berit.person, screen].flatMap(({ faults }) => faults)).toEqual([]);
  });
});
