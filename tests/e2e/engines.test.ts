import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import { boardWords } from '../../shared/language/en/board.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { notebookWords } from '../../shared/language/en/notebook.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { barriers } from '../engines/barriers.ts';
import { widestCode } from '../engines/cut-off.ts';
import { inPage } from '../engines/in-page.ts';
import { hasEngine } from '../engines/installed.ts';
import { openFirefox } from '../engines/puppeteer.ts';
import { Visitor } from '../engines/visitor.ts';
import { openWebKit } from '../engines/webkit.ts';
import type { Device as PlayedDevice } from '../server/support/device.ts';
import { House } from '../server/support/house.ts';
import { aPlan } from '../server/support/plans.ts';
import { momentNow } from '../support/moment.ts';

const plan = aPlan({ ranking: 'at-the-end' });
/** WebKit takes its language from locales that a bare machine does not have; an address may ask for one. */
const inWords = `?language=${(momentNow()?.locale ?? 'en').split('-')[0]}`;
const pictures = new URL('../screenshots', import.meta.url).pathname;
const tablet = { width: 1024, height: 768 };
const phone = { width: 390, height: 844 };
const small = { width: 360, height: 640 };
const open = { firefox: openFirefox, webkit: openWebKit };
const here = { firefox: hasEngine('firefox'), webkit: hasEngine('webkit') };

/** The moments of an evening that must not fail, in the engines of half of all phones and of most tablets. */
describe.each([
  { host: 'firefox', guests: ['webkit', 'firefox'] },
  { host: 'webkit', guests: ['firefox'] },
] as const)('an evening with a host in $host and guests in $guests', (engines) => {
  const all = [engines.host, ...engines.guests];
  const test = it.skipIf(!all.every((engine) => here[engine]));
  let house: House;
  let made: CreatedTasting;
  let host: Visitor;
  let played: PlayedDevice;
  let conductor: PlayedDevice;
  let guests: Visitor[] = [];
  const faults: string[] = [];
  const everybody = () => [host, ...guests];

  beforeAll(async () => {
    if (!all.every((engine) => here[engine])) return;
    mkdirSync(pictures, { recursive: true });
    house = await House.open();
    made = await house.plan(plan);
    host = new Visitor(await open[engines.host](tablet));
    guests = [];
    for (const [index, engine] of engines.guests.entries())
      guests.push(new Visitor(await open[engine](index === 0 ? phone : small)));
  }, 120_000);
  afterAll(async () => {
    for (const each of everybody()) await each?.device.close();
    await house?.close();
  });

  const look = async (screen: string) => {
    for (const [index, each] of everybody().entries()) {
      const who = index === 0 ? 'host' : `guest-${index}`;
      const name = `engine-${engines.host}-${screen}-${who}-in-${each.device.engine}.png`;
      writeFileSync(join(pictures, name), await each.device.picture());
      for (const found of [...(await each.cutOff()), ...(await barriers(each.device, { contrast: false }))])
        faults.push(`${who} at ${screen}: ${found}`);
    }
  };
  const next = () => host.presses('button', hostWords.room.next);
  const allSee = async (verb: string) => {
    for (const guest of guests) await guest.sees('heading', verb);
  };

  test('lets what was as wide as the screen become narrow with a phone that is turned', async () => {
    for (const [index, guest] of guests.entries()) {
      await guest.device.open(`${house.url}/survey/${made.code}${inWords}`);
      await guest.sees('radio', /./);
      const upright = index === 0 ? phone : small;
      await guest.device.resize({ width: 480, height: upright.height });
      await guest.device.resize(upright);
      expect(await guest.cutOff()).toEqual([]);
    }
  });

  test('opens the doors, and lets guests sit down and read the cautions', async () => {
    await host.device.open(`${house.url}/host${inWords}#tasting=${made.tasting}&key=${made.hostKey}`);
    await host.presses('button', hostWords.doors.open);
    for (const [index, guest] of guests.entries()) {
      await guest.device.open(`${house.url}/j/${made.code}${inWords}`);
      await guest.types(guestWords.invitation.name, ['Noor', 'Tomás'][index] ?? '');
      await guest.presses('button', guestWords.invitation.sit);
      await guest.presses('button', guestWords.cautions.accept);
    }
    await allSee(cueWords.gathering.verb);
    for (const letter of ['W', 'M']) expect(await host.device.read(inPage(widestCode, letter))).toEqual([]);
    await host.presses('link', hostWords.doors.toRoom);
    await host.sees('heading', hostWords.cue.kinds.gathering);
    played = await house.guest(made, 'Ilse');
    conductor = await house.host(made);
    await look('gathering');
  });

  test('leads every screen from step to step', async () => {
    await next();
    await allSee(cueWords.welcome.verb);
    await next();
    await allSee(cueWords['ground-rules'].verb);
    for (const guest of guests) await guest.presses('button', guestWords.rules.accept);
    await next();
    await allSee(cueWords.step.swirl.spirit.verb);
    await next();
    await allSee(cueWords.step.look.spirit.verb);
    await look('look');
    await next();
    await allSee(cueWords.step.nose.spirit.verb);
    await look('nose');
  });

  test('has colours to press as large as a finger, whichever engine draws them', async () => {
    await conductor.host({ type: 'JumpTo', cue: 'one/writing/write/look' });
    for (const guest of guests) {
      await guest.sees('heading', notebookWords.colour.title);
      const smallest = await guest.device.read<number>(
        '[...document.querySelectorAll(".swatch-pick")].map((each) => each.getBoundingClientRect()).reduce((least, { width, height }) => Math.min(least, width, height), 1000)',
      );
      // Our own measure for guests, above the 24 px of WCAG 2.2 (2.5.8).
      expect(smallest).toBeGreaterThanOrEqual(44);
      expect(smallest).toBeLessThan(1000);
    }
  });

  test('saves a note as it is written', async () => {
    await conductor.host({ type: 'JumpTo', cue: 'one/writing/write/nose' });
    for (const [index, guest] of guests.entries()) {
      await guest.types(guestWords.fields.nose, `Grüne Birne ${index}`);
      await guest.sees('text', guestWords.saved.saved);
      // Who still types stays there for a while [F5].
      await guest.device.read('document.activeElement.blur()');
    }
    await played.save({ pour: 'one', field: 'nose', value: 'wet slate' });
    await look('write');
  });

  test('asks once what goes to the table, and the question stays where it is while others share', async () => {
    const talk = compile(plan).find(({ kind }) => kind === 'discussion');
    await conductor.host({ type: 'JumpTo', cue: talk?.id });
    await conductor.host({ type: 'OpenDiscussion', pours: ['one'] });
    const stands = async (guest: Visitor) => (await guest.sees('button', boardWords.share.choices.named)).y;
    const before = await Promise.all(guests.map(stands));
    await played.consent({ page: { sharing: 'named', parts: ['nose'] } });
    for (const guest of guests) await guest.sees('text', /wet slate/);
    expect(await Promise.all(guests.map(stands))).toEqual(before);
    await look('question');
    for (const guest of guests) await guest.presses('button', boardWords.share.choices.named);
    await host.sees('text', /Grüne Birne 0/);
    await look('talk');
  });

  test('holds a choice where it is when the talk opens, and for each page that others share', async () => {
    await conductor.host({ type: 'JumpTo', cue: 'two/first/nose' });
    await allSee(cueWords.step.nose.spirit.verb);
    await played.save({ pour: 'two', field: 'nose', value: 'warm hay' });
    const other = await house.guest(made, 'Berit');
    await other.save({ pour: 'two', field: 'nose', value: 'sea wind' });
    const second = compile(plan).filter(({ kind }) => kind === 'discussion')[1];
    await conductor.host({ type: 'JumpTo', cue: second?.id });
    // “Nose” is a heading of the first talk's board as well: a press before this cue has come would answer for that glass.
    const glass = guestWords.glass.nth(2);
    for (const guest of guests) await guest.sees('choice', new RegExp(`^${glass}`));
    for (const guest of guests) await guest.presses('radio', boardWords.share.choices.unnamed);
    for (const guest of guests) await guest.sees('text', boardWords.share.done.unnamed(glass));
    const stands = async (guest: Visitor) => {
      // Between a change and the next picture the page may stand where nobody sees it.
      await guest.device.read(
        'new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(() => drawn(true))))',
      );
      return (await guest.sees('radio', boardWords.share.choices.private)).y;
    };
    const before = await Promise.all(guests.map(stands));
    const staysWhen = async (what: string, shown: string) => {
      for (const guest of guests) await guest.sees('text', shown);
      const after = await Promise.all(guests.map(stands));
      // A page is scrolled by whole pixels, each time a part of one off.
      const moved = after.filter((y, index) => Math.abs(y - (before[index] ?? 0)) > 2);
      expect({ what, moved }).toEqual({ what, moved: [] });
    };
    await conductor.host({ type: 'OpenDiscussion', pours: ['two'] });
    await staysWhen('the talk opens', boardWords.empty);
    await played.consent({ page: { sharing: 'named', parts: ['nose'] } }, ['two']);
    await staysWhen('somebody shares', 'warm hay');
    await other.consent({ page: { sharing: 'named', parts: ['nose'] } }, ['two']);
    await staysWhen('one more shares', 'sea wind');
    await look('choice');
  });

  test('carries a glass to its place in the order, and selects no text on the way', async () => {
    await conductor.host({ type: 'JumpTo', cue: 'evening/ranking' });
    await allSee(cueWords.ranking.verb);
    const rows = '[...document.querySelectorAll(".ranking-row")]';
    for (const { device } of guests) {
      const named = () =>
        device.read<string[]>(`${rows}.map((row) => row.innerText.replace(/^[0-9.]+\\s*/, ""))`);
      const [first = '', ...others] = await named();
      const middles = await device.read<{ x: number; y: number }[]>(
        `${rows}.map((row) => row.querySelector(".ranking-grip").getBoundingClientRect()).map((box) => ({ x: box.left + box.width / 2, y: box.top + box.height / 2 }))`,
      );
      const last = middles.at(-1) ?? { x: 0, y: 0 };
      // A finger does not stay above the handle; it lets go below the last row.
      await device.drag([
        ...middles.map(({ x, y }) => ({ x: x + 60, y })).with(0, middles[0] ?? last),
        { x: last.x + 120, y: last.y + 25 },
      ]);
      expect(await device.read('String(getSelection())')).toBe('');
      expect(await named()).toEqual([...others, first]);
    }
    await look('ranking');
  });

  test('tells the names, and says goodbye with everybody’s own notes', async () => {
    await conductor.host({ type: 'Finish' });
    for (const [index, guest] of guests.entries())
      await guest.sees('text', new RegExp(`Grüne Birne ${index}`));
    await host.sees('heading', hostWords.finished.title);
    await look('end');
  });

  test('had no barrier on any screen, and was told to assistive technology as it stands there', () => {
    expect(faults).toEqual([]);
  });
});
