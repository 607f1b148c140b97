import { readFileSync, writeFileSync } from 'node:fs';
import SqliteDatabase from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostWords } from '../../shared/language/en/host.ts';
import { seatWords } from '../../shared/language/en/seat.ts';
import { setAsideWords as words } from '../../shared/language/en/set-aside.ts';
import { planOf } from '../support/plans.ts';
import { createTasting } from '../support/tasting.ts';
import { Guest } from './guest.ts';
import { like } from './like.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

let premises: Premises;
let host: Person;
let made: Awaited<ReturnType<typeof createTasting>>;
beforeAll(async () => {
  premises = await Premises.open();
  for (const title of ['The one that goes on', 'The one with another letter'])
    await createTasting(premises, planOf(3, { title }));
  made = await createTasting(premises, planOf(3, { title: 'The one that cannot be read' }));
  host = await Person.arrives(premises.browser, 'host', 'tablet');
});
afterAll(() => premises?.close());

const home = () => `${premises.room.origin}/host#key=${premises.houseKey}`;

describe('evenings of which a disk has changed something', () => {
  beforeAll(async () => {
    await premises.powerCut();
    const db = new SqliteDatabase(premises.store);
    db.prepare("UPDATE tastings SET plan = replace(plan, 'The ash', 'The ask')").run();
    db.prepare("UPDATE tastings SET plan = replace(plan, 'The ask', 'The ash') WHERE plan NOT LIKE ?").run(
      '%another letter%',
    );
    db.prepare(
      'UPDATE tastings SET plan = replace(plan, \'"pours":[\', \'"pours":[7,\') WHERE tasting = ?',
    ).run(made.tasting);
    db.close();
    await premises.serve();
    await host.page.goto(home());
  });

  it('stand on the list with what is wrong, beside those that go on', async () => {
    await host.page.getByText(like(words.why['plan-unreadable']())).waitFor();
    await host.text(words.altered([words.parts.plan])).waitFor();
    expect(await host.page.getByRole('link', { name: hostWords.home.doors }).count()).toBe(2);
    expect(await host.text(words.damaged).count()).toBe(0);
    await host.look('host-set-aside', { whole: true });
    expect(host.faults).toEqual([]);
  });

  it('are looked at on a phone too, saved as they are, and deleted only when one is sure', async () => {
    await host.page.setViewportSize({ width: 360, height: 640 });
    await host.look('host-set-aside-phone', { whole: true });
    const download = host.page.waitForEvent('download');
    await host.button(words.save).click();
    expect((await download).suggestedFilename()).toBe('The one that cannot be read.json');
    await host.button(words.remove).click();
    await host.text(words.removeSure).waitFor();
    await host.look('host-set-aside-sure');
    await host.button(words.removeGo).click();
    await host.text(words.gone).waitFor();
    expect(await host.button(words.save).count()).toBe(0);
    expect(host.faults).toEqual([]);
    await host.page.setViewportSize({ width: 1024, height: 768 });
  });
});

describe('the file of all evenings', () => {
  it('is said to be damaged where it is, and its evenings still stand on the list', async () => {
    host.lineMayFail = true;
    await premises.powerCut();
    const db = new SqliteDatabase(premises.store);
    db.pragma('wal_checkpoint(TRUNCATE)');
    const page = Number(
      db.prepare("SELECT rootpage FROM sqlite_schema WHERE name = 'summaries_of_house'").pluck().get(),
    );
    const size = Number(db.pragma('page_size', { simple: true }));
    db.close();
    const bytes = readFileSync(premises.store);
    writeFileSync(premises.store, bytes.fill(0, (page - 1) * size, page * size));
    await premises.serve();
    await host.page.reload();
    await host.text(words.damaged).waitFor();
    await host.page.getByRole('heading', { name: 'The one that goes on' }).waitFor();
    await host.look('host-store-damaged', { whole: true });
    expect(host.faults).toEqual([]);
  });
});

describe('[S4] the devices of a seat', () => {
  it('are seen, let in and removed on the guest’s phone', async () => {
    const again = await createTasting(premises, planOf(3, { title: 'An evening with two phones' }));
    await host.page.goto(`${premises.room.origin}/host#/t/${again.tasting}/doors`);
    await host.button(hostWords.doors.open).click();
    const guest = await Guest.arrives(premises.browser, 'Wren');
    await guest.person.page.goto(`${premises.room.origin}/j/${again.code}`);
    await guest.sitsDown();
    await guest.readsCautions();
    const { person } = guest;
    await person.button(seatWords.fourWords.seen).waitFor();
    await person.look('guest-four-words', { whole: true });
    await person.button(seatWords.fourWords.seen).click();
    const issued = await fetch(`${premises.room.origin}/api/tastings/${again.tasting}/keys`, {
      method: 'POST',
      headers: { Authorization: `Bearer ${premises.houseKey}`, 'Content-Type': 'application/json' },
      body: JSON.stringify({ for: 'seat', seat: await seatOf(person, again.tasting) }),
    });
    const { key } = (await issued.json()) as { key: string };
    const stranger = await Person.arrives(premises.browser, 'new phone', 'phone');
    await stranger.page.goto(`${premises.room.origin}/seat#${again.tasting}.${key}`);
    await stranger.text(seatWords.devices.waits).waitFor();
    await stranger.look('guest-asking-phone', { whole: true });
    await person.button(seatWords.devices.yes).waitFor();
    await person.look('guest-asked-phone', { whole: true });
    await person.button(seatWords.devices.yes).click();
    await stranger.text(seatWords.devices.waits).waitFor({ state: 'hidden' });
    await person.button(seatWords.title).click();
    await person.text(like(seatWords.devices.own)).waitFor();
    await person.look('guest-devices', { whole: true });
    await person.page
      .getByRole('button', { name: like(seatWords.devices.endOf('')) })
      .first()
      .click();
    await person.text(seatWords.devices.ended).waitFor();
    expect([...person.faults, ...stranger.faults.filter((fault) => !fault.includes('401'))]).toEqual([]);
  });
});

/** Asked for with the key that the phone has kept, as a phone asks that has not heard the answer the first time. */
async function seatOf(person: Person, tasting: string): Promise<string> {
  const key = await person.page.evaluate(() => {
    const [kept] = JSON.parse(localStorage.getItem('quietpour.seats') ?? '[]') as { key?: string }[];
    return kept?.key ?? '';
  });
  const answer = await fetch(`${premises.room.origin}/api/devices`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ tasting, link: key, key }),
  });
  return ((await answer.json()) as { seat: string }).seat;
}
