import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import { planSchema } from '../../core/tasting.ts';
import { verbOf } from '../../host/evening/cue-words.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { boardWords } from '../../shared/language/en/board.ts';
import { demoWords } from '../../shared/language/en/demo.ts';
import { guestWords as words } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { keepsakeWords } from '../../shared/language/en/keepsake.ts';
import { notebookWords } from '../../shared/language/en/notebook.ts';
import { seatWords } from '../../shared/language/en/seat.ts';
import { spiritText } from '../../shared/words/en/spirit.ts';
import { createTasting } from '../support/tasting.ts';
import { Guest } from './guest.ts';
import { Host } from './host.ts';
import { Keyboard } from './keyboard.ts';
import { Premises } from './premises.ts';

/**
 * A short evening in which nobody has anything but a keyboard, the host included. Nothing is tapped: a test of the
 * house forbids this file every way to point.
 */
const plan = planSchema.parse({
  ...demoEvening,
  title: 'Three lanterns',
  level: 'newcomers',
  practice: false,
  flightSizes: [3],
  codes: {},
  pours: demoEvening.pours?.slice(0, 3),
});
const cues = compile(plan);
const [first, second, third] = plan.pours.map(({ id }) => id);

let premises: Premises;
let host: Host;
let berit: Guest;
let hostKeys: Keyboard;
let guestKeys: Keyboard;
let code = '';
let at = 0;

beforeAll(async () => {
  premises = await Premises.open();
  code = (await createTasting(premises, plan)).code;
  host = await Host.arrives(premises.browser, premises.room.origin, premises.houseKey);
  hostKeys = new Keyboard(host.person);
  berit = await Guest.arrives(premises.browser, 'Berit');
  guestKeys = new Keyboard(berit.person);
  await berit.person.page.addInitScript(listen);
});
afterAll(() => premises?.close());

const hostButton = (name: string | RegExp): Locator => host.person.button(name);
const button = (name: string | RegExp): Locator => berit.person.button(name);
const group = (name: string | RegExp): Locator => berit.person.page.getByRole('group', { name });
const dialog = (): Locator => host.person.page.getByRole('dialog');

interface Sounded {
  readonly tones: number;
  readonly shakes: number;
}
/** What would be heard and felt is counted: a test has neither ears nor a hand. */
const listen = (): void => {
  const counts = { tones: 0, shakes: 0 };
  Object.assign(window, { sounded: counts });
  const { start } = OscillatorNode.prototype;
  OscillatorNode.prototype.start = function (when) {
    counts.tones += 1;
    start.call(this, when);
  };
  Navigator.prototype.vibrate = () => {
    counts.shakes += 1;
    return true;
  };
};
const sounded = (): Sounded => ({ ...(window as unknown as { sounded: Sounded }).sounded });

/** What lies under a thumb on a keyboard, and what a presentation remote sends. */
const onwards = ['Space', 'ArrowRight', 'PageDown'] as const;

/** The big step rests for a moment after each change, so that no leant-on key runs through the evening. */
const bigStepIsReady = (name: string): Promise<void> =>
  host.person.page.getByRole('button', { name: new RegExp(`^${name}`), disabled: false }).waitFor();

/** On by one cue with the next of these keys; on a button that somebody has walked to the space bar presses that. */
async function on(): Promise<void> {
  await bigStepIsReady(hostWords.room.next);
  const walked = await host.person.page.evaluate(() => document.activeElement?.matches('button, a'));
  await hostKeys.press((walked ? undefined : onwards[at % onwards.length]) ?? 'PageDown');
  at += 1;
  await arrived();
}

async function arrived(): Promise<void> {
  const cue = cues[at];
  if (cue === undefined) throw new Error('There is no such cue.');
  await host.isAt(verbOf(cue));
  await berit.isAt(cue);
  await hostKeys.keepsPlace(cue.id);
  await guestKeys.keepsPlace(cue.id);
}

async function onTo(id: string): Promise<void> {
  while (cues[at]?.id !== id) await on();
}

/** Over many cues at once, by the list of the evening. */
async function jumpsTo(id: string, glass: RegExp): Promise<void> {
  at = cues.findIndex((cue) => cue.id === id);
  const list = host.person.page.getByRole('navigation', { name: hostWords.room.order });
  await hostKeys.presses(list.getByRole('button', { name: glass }));
  const verb = verbOf(cues[at] as Cue);
  await hostKeys.presses(list.getByRole('button', { name: verb }).last());
  await hostKeys.presses(dialog().getByRole('button', { name: hostWords.room.jump.go }));
  await arrived();
}

/** Writes into the open field and goes on with Tab, as one does. */
async function writes(sense: 'look' | 'nose' | 'palate' | 'finish', text: string): Promise<void> {
  await guestKeys.types(berit.field(sense), text);
  await berit.seesSaved();
  await guestKeys.press('Tab');
}

describe('an evening with nothing but keys', () => {
  it('opens the doors', async () => {
    await hostKeys.presses(host.person.page.getByRole('link', { name: hostWords.home.doors }));
    await hostKeys.presses(hostButton(hostWords.doors.open));
    const onward = host.person.page.getByRole('link', { name: hostWords.doors.toRoom });
    await onward.waitFor();
    await hostKeys.keepsPlace('the doors were opened');
  });

  it('lets a guest in, who writes with the left hand', async () => {
    await berit.person.page.goto(premises.room.origin);
    await guestKeys.types(berit.person.field(words.door.code), code.toLowerCase());
    await guestKeys.press('Enter');
    await guestKeys.types(berit.person.field(words.invitation.name), 'Berit');
    await guestKeys.chooses(group(words.invitation.hand), words.invitation.left);
    await guestKeys.presses(button(words.invitation.sit));
    await guestKeys.presses(button(words.cautions.accept));
    await guestKeys.presses(button(words.seat.open), 'Space');
    await guestKeys.presses(berit.person.page.getByRole('switch', { name: seatWords.leftHanded }), 'Space');
    await guestKeys.presses(button(seatWords.tryIt));
    await guestKeys.presses(button(words.notes.back));
    await berit.isAt(cues[0] as Cue);
    const before = await berit.person.page.evaluate(sounded);
    await guestKeys.presses(button(seatWords.tryTone), 'Space');
    await expect
      .poll(() => berit.person.page.evaluate(sounded))
      .toEqual({ tones: before.tones + 2, shakes: before.shakes + 1 });
    await guestKeys.keepsPlace('the way back from my seat');
  });

  it('gathers the room, holds the time and looks at the list of keys', async () => {
    await hostKeys.presses(host.person.page.getByRole('link', { name: hostWords.doors.toRoom }));
    await arrived();
    await hostKeys.press('?');
    await dialog().getByRole('heading', { name: hostWords.keys.title }).waitFor();
    await host.person.look('host-keys');
    await hostKeys.press('Escape');
    await dialog().waitFor({ state: 'hidden' });
    await hostKeys.press('h');
    await hostButton(hostWords.room.resume).waitFor();
    await hostKeys.press('h');
    await hostButton(hostWords.room.hold).waitFor();
    const hint = host.person.text(hostWords.room.firstHints.next);
    await hint.waitFor();
    await on();
    await bigStepIsReady(hostWords.room.next);
    await hostKeys.press('PageUp');
    at -= 1;
    await arrived();
    expect(await hint.count()).toBe(0);
    await onTo('ground-rules');
    await guestKeys.presses(button(words.rules.accept));
    await host.person.text(hostWords.table.counts.rules(1, 1)).waitFor();
  });

  it('leads through the first glass, and a guest asks, answers, writes and marks', async () => {
    await onTo(`${first}/first/sip`);
    await guestKeys.presses(button(words.signals.needsHost));
    await hostKeys.presses(hostButton(hostWords.table.answered));
    await hostButton(hostWords.table.answered).waitFor({ state: 'detached' });
    await hostKeys.keepsPlace('the answer to who asks');
    await guestKeys.presses(button(words.signals.ready), 'Space');
    await host.person.text(hostWords.readiness.of(1, 1)).waitFor();
    await hostKeys.presses(hostButton(hostWords.tools.remind));
    await hostKeys.presses(dialog().getByRole('button', { name: hostWords.remind.water }));
    await berit.person.text(words.glass.reminder.water).waitFor();
    await onTo(`${first}/writing/write/look`);
    await writes('look', 'old gold');
    await guestKeys.presses(button(spiritText.colours.honey), 'Space');
    await berit.person.page
      .getByRole('button', { name: spiritText.colours.honey, exact: true, pressed: true })
      .waitFor();
    await on();
    await writes('nose', 'pear skin');
    await guestKeys.presses(button(spiritText.families.orchard));
    await guestKeys.presses(button(spiritText.words.pear));
    await berit.person.page
      .getByRole('group', { name: notebookWords.board.yours })
      .getByRole('button', { name: new RegExp(`^${spiritText.words.pear}`) })
      .waitFor();
    await guestKeys.keepsPlace('a word was picked');
    await onTo(`${first}/writing/write/palate`);
    await writes('palate', 'warm hay');
    await onTo(`${first}/water`);
  });

  it('goes on to the other glasses by the list of the evening, and reads its own notes', async () => {
    await jumpsTo(`${second}/first/spit`, /2 · /);
    await guestKeys.presses(button(words.notes.open));
    await guestKeys.keepsPlace('my notes were opened');
    await guestKeys.presses(button(words.notes.back));
    await arrived();
    await jumpsTo(`${third}/water`, /3 · /);
  });

  it('talks about what was shared, tells the names and finishes', async () => {
    await on();
    await guestKeys.chooses(
      group(new RegExp(`^${words.glass.nth(1)}\\b.*\\?$`)),
      boardWords.share.choices.named,
    );
    await bigStepIsReady(hostWords.room.openTalk);
    await hostKeys.press('PageDown');
    await host.person.text('pear skin').waitFor();
    await hostKeys.keepsPlace('the talk was opened');
    await on();
    for (let glass = 1; glass <= plan.pours.length; glass += 1) {
      await bigStepIsReady(hostWords.room.tellName(hostWords.cue.glass(glass)));
      await hostKeys.press('ArrowRight');
    }
    await berit.person.heading(demoWords.pours.orchardWall.name).first().waitFor();
    await on();
    await bigStepIsReady(hostWords.room.finish);
    await hostKeys.press('PageDown');
    await hostKeys.presses(dialog().getByRole('button', { name: hostWords.finish.go }));
    await host.person.heading(hostWords.finished.title, 1).waitFor();
    await hostKeys.keepsPlace('the evening was finished');
  });

  it('takes the notes home', async () => {
    await berit.person.heading(keepsakeWords.title, 1).waitFor();
    await guestKeys.keepsPlace('the evening was finished');
    const download = berit.person.page.waitForEvent('download');
    await guestKeys.presses(button(keepsakeWords.take.download));
    expect((await download).suggestedFilename()).toMatch(/\.md$/);
  });

  it('shows where the focus is, hides it nowhere and loses it never', () => {
    expect([host.person, berit.person].flatMap(({ faults }) => faults)).toEqual([]);
  });
});
