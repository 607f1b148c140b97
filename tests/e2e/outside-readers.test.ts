import { readFile } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compile } from '../../core/running-order/compile.ts';
import { cueWordsFor } from '../../guest/stage/cue-words.ts';
import { hostLink, seatLink } from '../../host/access/key-link.ts';
import { paperKinds } from '../../host/paper-kind.ts';
import { parts } from '../../host/plan/part-summaries.ts';
import { hrefOf, type Route } from '../../host/route.ts';
import { cueWords } from '../../shared/language/en/cues.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { keepsakeWords } from '../../shared/language/en/keepsake.ts';
import { notebookWords } from '../../shared/language/en/notebook.ts';
import { recapWords } from '../../shared/language/en/recap.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { plan, screenOf } from '../engines/evening.ts';
import { hasPoppler } from '../engines/installed.ts';
import { type Guest, House, houseKey } from '../server/support/house.ts';
import { lendBrowser } from '../support/browser.ts';
import { csvLines, htmlFaults, readByPoppler, throughPython } from '../support/outside-readers.ts';
import { readPdf } from '../support/pdf.ts';
import { Person } from './person.ts';

let browser: Browser;
let house: House;
let made: CreatedTasting;
let noor: Guest;
let host: Person;
let guest: Person;
const names = plan.pours.map(({ name }) => name);
/** Those that something was written of. */
const tasted: string[] = [];
const written = '=1+1, "wet", slate; and\nmore';

beforeAll(async () => {
  browser = await lendBrowser();
  house = await House.open();
  made = await house.plan({ ...plan, remoteGuests: 2, startsAt: '2031-05-14T19:00:00Z' });
  host = await Person.arrives(browser, 'host', 'tablet');
  guest = await Person.arrives(browser, 'guest', 'phone');
});
afterAll(async () => {
  await browser?.close();
  await house?.close();
});

const faults: string[] = [];
async function validates({ name, page }: Person, screen: string): Promise<void> {
  for (const fault of await htmlFaults(await page.content())) faults.push(`${name}, ${screen}: ${fault}`);
}
/** A page that is served, as it comes and as it is once its script has drawn it. */
async function opens(person: Person, path: string, drawn: () => Promise<unknown>): Promise<void> {
  const served = await (await fetch(house.url + path)).text();
  for (const fault of await htmlFaults(served)) faults.push(`${path}, as served: ${fault}`);
  await person.page.goto(house.url + path);
  await drawn();
  await validates(person, path);
}

describe('what leaves the house is read by what nobody here wrote', () => {
  it('finds a fault where there is one', async () => {
    const wrong =
      '<!DOCTYPE html><html lang="en"><head><title>a</title></head><body><p><div>b</div></p></body></html>';
    expect((await htmlFaults(wrong)).length).toBeGreaterThan(0);
    expect(() => csvLines('a,b\n1,2,3\n')).toThrow();
    expect(() => csvLines('a,b\n1,"2\n')).toThrow();
    expect(() => throughPython('{"a": NaN}')).toThrow();
  });

  it('every page before the evening is HTML by the standard', async () => {
    const title = () => guest.page.locator('h1').first().waitFor();
    await opens(guest, '/', title);
    await opens(guest, `/survey/${made.code}`, title);
    await opens(guest, `/kit/${made.code}`, title);
    await opens(guest, '/screen', title);
    await opens(host, `/host`, () => host.heading(hostWords.key.title, 1).waitFor());
    await host.page.goto(`${house.url}/host#key=${houseKey}`);
    await host.heading(plan.title).waitFor();
    await validates(host, 'home');
    const { tasting } = made;
    const routes: Route[] = [
      ...parts.map((part) => ({ page: 'plan', tasting, part }) as const),
      ...(['ahead', 'invite', 'pouring', 'doors'] as const).map((page) => ({ page, tasting })),
      ...paperKinds.map((kind) => ({ page: 'print', tasting, kind }) as const),
    ];
    for (const route of routes) {
      await host.page.goto(`${house.url}/host${hrefOf(route)}`);
      await host.page.locator('h1').first().waitFor();
      await host.page.waitForLoadState('networkidle');
      await validates(host, hrefOf(route));
    }
    expect(faults.splice(0)).toEqual([]);
  });

  it.skipIf(!hasPoppler())(
    'every sheet is a PDF with as many pages and the words that it should have',
    async () => {
      for (const kind of paperKinds) {
        await host.page.goto(`${house.url}/host${hrefOf({ page: 'print', tasting: made.tasting, kind })}`);
        await host.page.locator('.paper-print button').waitFor();
        const pdf = await host.page.pdf({ format: 'A4' });
        const [own, theirs] = [readPdf(pdf), readByPoppler(pdf)];
        expect({ kind, pages: theirs.pages }).toEqual({ kind, pages: own.length });
        for (const [at, mm] of [own[0]?.widthMm ?? 0, own[0]?.heightMm ?? 0].entries())
          expect(Math.abs((theirs.sizeMm[at] ?? 0) - mm)).toBeLessThan(0.2);
        expect(theirs.text.replaceAll(/\s+/g, ' ')).toContain(kind === 'shopping' ? names[0] : '418');
      }
      await host.page.goto(`${house.url}/host${hrefOf({ page: 'doors', tasting: made.tasting })}`);
      await host.button(hostWords.doors.open).waitFor();
      for (const landscape of [false, true]) {
        const door = readByPoppler(await host.page.pdf({ format: 'Letter', landscape }));
        expect(door.pages).toBe(1);
        expect(door.text.replaceAll(/\s/g, '')).toContain(made.code);
        expect(door.text).not.toContain(hostWords.doors.open);
      }
    },
  );

  it('every screen of an evening is HTML by the standard, the television’s too', async () => {
    const conductor = await house.host(made);
    await conductor.host({ type: 'OpenDoors' });
    noor = await house.guest(made, 'Noor');
    const ilse = await house.guest(made, 'Ilse');
    const screen = await Person.arrives(browser, 'screen', 'wide');
    await screen.page.goto(`${house.url}/screen`);
    await screen.page.getByRole('textbox').fill(made.code);
    await screen.page.keyboard.press('Enter');
    const { screensAsking } = await conductor.until('presence', (seen) => seen.screensAsking.length === 1);
    await house.ask('POST', `/api/tastings/${made.tasting}/screens/${screensAsking[0]?.id}`, {
      key: made.hostKey,
      body: { admit: true },
    });
    await opens(guest, `/j/${made.code}`, () => guest.field(guestWords.invitation.name).waitFor());
    await guest.page.goto(seatLink(house.url, made.tasting, noor.key));
    await guest.button(guestWords.cautions.accept).waitFor();
    await validates(guest, 'cautions');
    await guest.button(guestWords.cautions.accept).click();
    await host.page.goto(hostLink(house.url, made.tasting, made.hostKey));
    await host.page.goto(`${house.url}/host${hrefOf({ page: 'room', tasting: made.tasting })}`);
    const seen = new Set<string>();
    for (const cue of compile(plan)) {
      const name = screenOf(cue);
      if (seen.has(name)) continue;
      seen.add(name);
      await conductor.host({ type: 'JumpTo', cue: cue.id });
      const worded = {
        kind: cue.kind,
        step: 'step' in cue ? cue.step : null,
        sense: cue.kind === 'step' ? (cue.sense ?? null) : null,
      };
      await guest.heading(cueWordsFor(cueWords, worded, 'spirit').verb, 1).waitFor();
      if (cue.kind === 'step' && cue.sense === 'nose') {
        for (const each of [ilse, noor]) await each.save({ pour: cue.pour, field: 'nose', value: written });
        tasted.push(plan.pours.find(({ id }) => id === cue.pour)?.name ?? '');
      }
      if (cue.kind === 'discussion') {
        await conductor.host({ type: 'OpenDiscussion', pours: [...cue.pours] });
        await ilse.consent({ page: { sharing: 'named', parts: ['nose'] } }, [...cue.pours]);
        await guest.text(/wet/).first().waitFor();
      }
      for (const person of [guest, host, screen]) await validates(person, name);
    }
    expect(seen.size).toBeGreaterThan(12);
    await conductor.host({ type: 'Finish' });
    await guest.heading(keepsakeWords.title, 1).waitFor();
    await host.heading(hostWords.finished.title, 1).waitFor();
    for (const person of [guest, host, screen]) await validates(person, 'the end');
    expect(faults.splice(0)).toEqual([]);
  });

  const taken = async (person: Person, button: string): Promise<Buffer> => {
    const [file] = await Promise.all([person.page.waitForEvent('download'), person.button(button).click()]);
    return readFile(await file.path());
  };

  it('a keepsake is a page, a table, data and paper that others read as we meant them', async () => {
    const { take } = keepsakeWords;
    expect(await htmlFaults(String(await taken(guest, take.page)))).toEqual([]);
    await guest.text(take.other).click();
    const json = String(await taken(guest, take.json));
    expect(throughPython(json)).toEqual(JSON.parse(json));
    const csv = String(await taken(guest, take.csv));
    const [head = [], ...rows] = csvLines(csv);
    const column = (name: string) => rows.map((row) => row[head.indexOf(name)] ?? '');
    for (const name of tasted) expect(column(keepsakeWords.name)).toContain(name);
    // What a spreadsheet would reckon is marked as text [OWASP, CSV injection].
    expect(column(notebookWords.fields.nose)).toContain(`'${written}`);
    if (hasPoppler()) {
      const pdf = await guest.page.pdf({ format: 'A4' });
      const { pages, text } = readByPoppler(pdf);
      expect(pages).toBe(readPdf(pdf).length);
      expect(text).toContain('"wet", slate');
    }
  });

  it('a look back is a page, a table and data that others read as we meant them', async () => {
    await host.page.goto(`${house.url}/host${hrefOf({ page: 'recap', tasting: made.tasting })}`);
    await host.heading(recapWords.title, 1).waitFor();
    await validates(host, 'recap');
    expect(faults.splice(0)).toEqual([]);
    const json = String(await taken(host, recapWords.take.json));
    expect(throughPython(json)).toEqual(JSON.parse(json));
    const csv = String(await taken(host, recapWords.take.csv));
    const lines = csvLines(csv);
    expect(lines.flat().some((cell) => cell.includes(tasted[0] ?? '-'))).toBe(true);
  });
});
