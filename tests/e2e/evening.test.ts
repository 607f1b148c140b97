import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import type { Cue } from '../../core/running-order/cue.ts';
import { planSchema } from '../../core/tasting.ts';
import { verbOf } from '../../host/evening/cue-words.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { boardWords } from '../../shared/language/en/board.ts';
import { guestWords as words } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { keepsakeWords } from '../../shared/language/en/keepsake.ts';
import { Guest } from './guest.ts';
import { Host } from './host.ts';
import { makeNextVersion } from './next-version.ts';
import { stopAtTheFirstFault } from './one-by-one.ts';
import { Premises } from './premises.ts';
import { readQr } from './qr.ts';

/**
 * One evening in real browsers: a host at a tablet and three guests at phones. Berit loads her page anew in the middle
 * of a note, Colm's network goes and comes back, Lark arrives when the first glass is empty. The server is killed once.
 */
const plan = planSchema.parse(demoEvening);
const cues = compile(plan);

let premises: Premises;
let host: Host;
let berit: Guest;
let colm: Guest;
let lark: Guest;
let code = '';
let at = 0;

beforeAll(async () => {
  premises = await Premises.open();
});
afterAll(async () => {
  await premises?.close();
});

stopAtTheFirstFault();

/** Leads the room on to the cue with this id; everybody named follows each single step. */
async function leadTo(id: string, ...followers: readonly Guest[]): Promise<void> {
  const way = cues.slice(at + 1, cues.findIndex((cue) => cue.id === id) + 1);
  if (way.length === 0) throw new Error(`There is no cue ${id} ahead.`);
  for (const next of way) {
    at += 1;
    await host.next(next);
    await Promise.all(followers.map((guest) => guest.isAt(next)));
    await Promise.all([followers[0]?.hears(next), host.hears(next)]);
  }
}

/** Straight to a step of a glass that the room has walked through with others; the list shows its code. */
async function jumpTo(pour: number, step: string, ...followers: readonly Guest[]): Promise<void> {
  const there = cues.find(({ id }) => id === cue(pour, step)) as Cue;
  at = cues.indexOf(there);
  await host.jumpTo(hostWords.glasses.code(plan.codes[plan.pours[pour - 1]?.id ?? ''] ?? ''), verbOf(there));
  await Promise.all(followers.map((guest) => guest.isAt(there)));
}

const cue = (pour: number, rest: string): string => `${plan.pours[pour - 1]?.id}/${rest}`;
const everybody = () => [host.person, ...[berit, colm, lark].map((guest) => guest?.person)];

/** Steps of one evening: each begins where the one before has ended. */
describe('an evening in the browser', () => {
  it('begins with the demo, open doors and a square that leads to the seats', async () => {
    host = await Host.arrives(premises.browser, premises.room.origin, premises.houseKey);
    expect(host.person.page.url()).not.toContain(premises.houseKey);
    await host.person.look('host-home');
    await host.startDemo();
    await host.person.look('host-doors-closed');
    await host.openDoors();
    const square = host.person.page.getByRole('img', { name: new RegExp(hostWords.doors.scan('.*')) });
    const address = await readQr(square);
    expect(address).toMatch(new RegExp(`^${premises.room.origin}/j/[0-9A-Z]{33}(?:[0-9A-Z]{3})?$`));
    code = address?.split('/j/')[1]?.slice(0, -27) ?? '';

    berit = await Guest.arrives(premises.browser, 'Berit');
    await berit.person.page.goto(address ?? '');
    await berit.person.heading(plan.title, 1).waitFor();
    await berit.person.look('guest-invitation');
    await berit.sitsDown();
    await berit.person.look('guest-cautions');
    await berit.readsCautions();

    colm = await Guest.arrives(premises.browser, 'Colm', 'dark');
    await colm.person.page.goto(premises.wifi.origin);
    await colm.person.look('guest-door-cellar');
    await colm.person
      .field(words.door.code)
      .fill(` ${code.slice(0, 3).toLowerCase()} ${code.slice(3).toLowerCase()} `);
    await colm.person.button(words.door.go).click();
    await colm.sitsDown({ leftHanded: true });
    await colm.readsCautions();

    for (const name of ['Berit', 'Colm']) await host.person.text(name).first().waitFor();
    await host.person.look('host-doors-open');
    await host.goAndConduct();
    await host.person.look('host-gathering');
    await berit.person.look('guest-gathering');
    await berit.person.button(words.seat.open).click();
    await berit.person.look('guest-my-seat');
    await berit.person.button(words.notes.back).click();
    await colm.person.look('guest-gathering-cellar');
  });

  it('agrees on the rules and practises the moves with water', async () => {
    await leadTo('ground-rules', berit, colm);
    await berit.person.look('guest-ground-rules');
    for (const guest of [berit, colm]) await guest.person.button(words.rules.accept).click();
    await host.person.text(hostWords.table.counts.rules(2, 2)).waitFor();
    await host.person.look('host-ground-rules');
    await leadTo('practice/sip', berit, colm);
    await berit.person.look('guest-practice');
  });

  it('follows the first glass through the senses and the pen', async () => {
    for (const step of ['swirl', 'look', 'nose', 'sip', 'spit']) {
      await leadTo(cue(1, `first/${step}`), berit, colm);
      await berit.person.look(`guest-${step}`);
      if (step === 'nose') await colm.person.look('guest-nose-left-hand');
    }
    await host.person.look('host-spit');
    await berit.person.button(words.signals.ready).click();
    await colm.person.button(words.signals.needsHost).click();
    await host.person.button(new RegExp(`Colm.*${hostWords.table.states['needs-host']}`)).waitFor();
    await host.person.look('host-table');
    await host.looksInto(hostWords.tools.remind, 'host-remind');
    await host.looksInto(hostWords.tools.pause, 'host-break-drawer');
    await host.looksInto(hostWords.tools.glasses, 'host-glasses');
    await host.looksInto(hostWords.tools.doors, 'host-doorway');
    await host.looksInto(hostWords.tools.more, 'host-more');
  });

  it('keeps a note over a page that is loaded anew in the middle of it', async () => {
    await leadTo(cue(1, 'writing/write/nose'), berit, colm);
    await berit.person.look('guest-write');
    await berit.writes('nose', 'pear skin and wet sla');
    await berit.person.page.reload();
    await berit.isAt(cues[at] as Cue);
    expect(await berit.field('nose').inputValue()).toBe('pear skin and wet sla');
    await berit.field('nose').press('End');
    await berit.writes('nose', 'te');
    await berit.seesSaved();
    await berit.putsPenDown();
  });

  it('keeps words that are written while the network is gone, and sends them when it is back', async () => {
    await leadTo(cue(1, 'writing/write/palate'), berit, colm);
    await colm.writes('palate', 'warm hay');
    await colm.seesSaved();
    await colm.mayLoseTheNetwork();
    premises.wifi.cut();
    await colm.person.text(words.link.lost).first().waitFor();
    await colm.person.page.keyboard.type(', orange pith');
    await colm.person.text(words.saved.onPhone).waitFor();
    await colm.person.look('guest-no-network');
    await leadTo(cue(1, 'writing/write/finish'), berit);
    expect(await colm.field('palate').inputValue()).toBe('warm hay, orange pith');
    await colm.opensNotesWithoutRoom();
    expect(await colm.field('palate').inputValue()).toBe('warm hay, orange pith');
    await colm.writes('palate', ', clove');
    premises.wifi.mend();
    await colm.person.text(words.saved.saved).waitFor();
    colm.person.lineMayFail = false;
    await colm.person.button(words.banner.go).click();
    await colm.isAt(cues[at] as Cue);
  });

  it('[F3] lets somebody in late, who lands where the room is and sees what they have missed', async () => {
    await leadTo(cue(2, 'first/swirl'), berit, colm);
    lark = await Guest.arrives(premises.browser, 'Lark');
    await lark.person.page.goto(`${premises.room.origin}/j/${code}`);
    await lark.sitsDown({ atHome: true });
    await lark.readsCautions();
    await lark.isAt(cues[at] as Cue);
    await lark.person.look('guest-late');
    await host.person.text('Lark').first().waitFor();
  });

  it('[F5] never takes the keyboard from a guest who is typing', async () => {
    await leadTo(cue(2, 'writing/write/look'), berit, colm, lark);
    await berit.writes('look', 'old gold');
    await host.next(cues[++at] as Cue);
    await Promise.all([colm, lark].map((guest) => guest.isAt(cues[at] as Cue)));
    await berit.person.button(words.banner.go).waitFor();
    expect(await berit.hasKeyboardIn('look')).toBe(true);
    await berit.person.page.keyboard.type(', slow legs');
    expect(await berit.field('look').inputValue()).toBe('old gold, slow legs');
    await berit.person.look('guest-still-writing');
    await berit.person.button(words.banner.go).click();
    await berit.isAt(cues[at] as Cue);
  });

  it('[Q1, Q2, Q3] opens a talk in which only what was shared is seen', async () => {
    await leadTo(cue(3, 'writing/write/nose'), berit, colm, lark);
    await lark.writes('nose', 'sea wind');
    await lark.diesAndComesBack(premises.browser, cues[at] as Cue);
    expect(await lark.field('nose').inputValue()).toBe('sea wind');
    await lark.seesSaved();
    await leadTo(cue(3, 'closing/review'), berit, colm, lark);
    await lark.person.look('guest-review');
    await leadTo(cue(3, 'water'), berit, colm, lark);
    await lark.person.look('guest-water');
    await leadTo('flight-1/discussion', berit, colm, lark);
    await berit.person.look('guest-own-words');
    await host.person.look('host-talk-closed');
    await berit.choosesToShare(words.glass.nth(1), 'named');
    await host.openTalk();
    await colm.person.text('pear skin and wet slate').waitFor();
    await host.person.text('pear skin and wet slate').waitFor();
    await colm.person.look('guest-board');
    await host.person.look('host-board');
    await berit.person.button(words.notes.open).click();
    await berit.writes('thoughts', 'an orchard wall in rain');
    await berit.person.button(words.notes.back).click();
    await colm.person.text(new RegExp(`^${boardWords.later} an orchard wall in rain$`)).waitFor();
    for (const secret of ['warm hay', 'sea wind', 'old gold'])
      expect(await host.person.text(secret).count()).toBe(0);
    for (const secret of ['warm hay', 'sea wind']) expect(await berit.person.text(secret).count()).toBe(0);
    await berit.choosesToShare(words.glass.nth(1), 'private');
    await colm.person.text('pear skin and wet slate').waitFor({ state: 'detached' });
    await leadTo('flight-1/reveal', berit, colm, lark);
    const name = berit.person.text(plan.pours[0]?.name ?? '');
    expect(await name.count()).toBe(0);
    await host.tellNames();
    await name.first().waitFor();
    await berit.person.look('guest-names');
  });

  it('[F3] lets the late guest catch up in the break', async () => {
    await leadTo('flight-1/break', berit, colm, lark);
    await lark.person.look('guest-break');
    await host.person.look('host-break');
    await lark.person.button(words.missed.tick(words.glass.nth(1))).click();
    await lark.person.button(words.missed.tick(words.glass.nth(1))).waitFor({ state: 'detached' });
  });

  it('[P7] carries on where it stood after the server was killed', async () => {
    await leadTo(cue(4, 'first/look'), berit, colm, lark);
    await jumpTo(5, 'writing/write/look', berit, colm, lark);
    await leadTo(cue(5, 'writing/write/nose'), berit, colm, lark);
    await colm.writes('nose', 'tar rope');
    await colm.seesSaved();
    for (const person of everybody()) if (person) person.lineMayFail = true;
    await premises.powerCut();
    await colm.person.page.keyboard.type(' and honeycomb');
    await colm.person.text(words.saved.onPhone).waitFor();
    await host.person.text(hostWords.link.lost).first().waitFor();
    await host.person.look('host-link-lost');
    await premises.serve(makeNextVersion());
    await colm.person.text(words.saved.saved).waitFor();
    await host.person.text(hostWords.link.live).first().waitFor();
    for (const guest of [berit, colm, lark]) {
      await guest.person.text(words.link.lost).first().waitFor({ state: 'detached' });
      await guest.isAt(cues[at] as Cue);
    }
    for (const person of everybody()) if (person) person.lineMayFail = false;
    await colm.person.button(words.notes.open).click();
    await colm.person.look('guest-my-notes');
    await colm.person.button(words.notes.back).click();
    expect(await Promise.all([colm, lark].map((guest) => guest.version()))).toEqual(['this', 'this']);
    await lark.loadsTheNextVersion(cues[at] as Cue);
  });

  it('ends with everybody’s own notes under the names of the pours', async () => {
    await jumpTo(6, 'closing/review', berit, colm, lark);
    await leadTo('flight-2/discussion', berit, colm, lark);
    await lark.versionBeside('waiting');
    await host.openTalk();
    await leadTo('flight-2/reveal', berit, colm, lark);
    await host.tellNames();
    await leadTo('farewell', berit, colm, lark);
    await berit.person.look('guest-farewell');
    await host.person.look('host-farewell');
    await host.finish();
    await host.person.look('host-finished');
    for (const guest of [berit, colm, lark]) await guest.person.heading(words.keepsake.title, 1).waitFor();
    await lark.versionBeside('none');
    for (const { name } of plan.pours) await berit.person.heading(name).first().waitFor();
    await berit.person.text('pear skin and wet slate').waitFor();
    await berit.person.text('old gold, slow legs').waitFor();
    await colm.person.text('warm hay, orange pith, clove').waitFor();
    await colm.person.text('tar rope and honeycomb').waitFor();
    await lark.person.text('sea wind').waitFor();
    await berit.person.look('guest-keepsake');
    await colm.person.look('guest-keepsake-cellar');
    await colm.person.page.emulateMedia({ media: 'print' });
    await colm.person.photograph('guest-keepsake-print', true);
    const download = berit.person.page.waitForEvent('download');
    await berit.person.button(keepsakeWords.take.download).click();
    expect((await download).suggestedFilename()).toMatch(/\.md$/);
  });

  it('had no fault on any screen, no barrier, and nothing that slid sideways', () => {
    expect(everybody().flatMap((person) => person?.faults ?? [])).toEqual([]);
  });
});
