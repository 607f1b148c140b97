import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pourId } from '../../core/ids.ts';
import { layOutMat, matSheets } from '../../core/planning/table/mat-layout.ts';
import { glassNumbers } from '../../core/running-order/glass-numbers.ts';
import type { Plan, Pour } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { demoWords } from '../../shared/language/en/demo.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { paperWords as words } from '../../shared/language/en/paper.ts';
import { planPours } from '../../shared/language/en/plan-pours.ts';
import { waterWords } from '../../shared/language/en/plan-water.ts';
import { serveAt } from '../../shared/language/en/temperature.ts';
import { volumeUnits } from '../../shared/language/en/volumes.ts';
import type { CreatedTasting, StoredPlan } from '../../shared/wire/http.ts';
import { momentNow } from '../support/moment.ts';
import { type DrawnPage, type DrawnPath, readPdf } from '../support/pdf.ts';
import { createTasting } from '../support/tasting.ts';
import { Person } from './person.ts';
import { Premises } from './premises.ts';

/** A circle that is off by more than this shows beside a glass. */
const toleranceMm = 0.5;

let premises: Premises;
let made: CreatedTasting;
let host: Person;
let page: Page;

beforeAll(async () => {
  premises = await Premises.open();
  made = await createTasting(premises, { ...demoEvening, guests: 2, remoteGuests: 3, lawOf: 'AT' });
  host = await Person.arrives(premises.browser, 'host', 'tablet');
  page = host.page;
});
afterAll(() => premises?.close());

/** How a print window may be set: the sheet's direction, its margins, and whether the page may have a say in its size. */
interface Way {
  readonly lying: boolean;
  readonly marginMm: number;
  readonly asked: boolean;
}
const ways: readonly Way[] = [false, true].flatMap((lying) => [
  { lying, marginMm: 0, asked: false },
  { lying, marginMm: 10, asked: true },
]);

async function printed(
  paper: 'A4' | 'Letter' = 'A4',
  { lying, marginMm, asked }: Way = { lying: false, marginMm: 10, asked: false },
): Promise<DrawnPage[]> {
  const edge = `${marginMm}mm`;
  return readPdf(
    await page.pdf({
      format: paper,
      landscape: lying,
      preferCSSPageSize: asked,
      printBackground: true,
      margin: { top: edge, bottom: edge, left: edge, right: edge },
    }),
  );
}

const printing = () => page.getByRole('button', { name: words.print, exact: true });
async function open(kind: keyof typeof words.kinds, { tasting, hostKey } = made): Promise<void> {
  await page.goto(`${premises.room.origin}/host#tasting=${tasting}&key=${hostKey}`);
  await page.goto(`${premises.room.origin}/host#/t/${tasting}/print/${kind}`);
  await printing().waitFor();
}

async function choosePaper(size: 'A4' | 'Letter'): Promise<void> {
  await page.getByRole('radio', { name: words.sizes[size], exact: true }).check();
}

const roundOnes = (drawn: DrawnPage): DrawnPath[] =>
  drawn.stroked.filter(({ curves, closed }) => curves > 0 && closed);
const near = (found: number, wanted: number): boolean => Math.abs(found - wanted) <= toleranceMm;

describe('mats from the printer', () => {
  it.each([
    ['A4', 60],
    ['A4', 47.5],
    ['Letter', 60],
    ['Letter', 67],
  ] as const)('on %s have circles of %d mm where the layout has them', async (paper, footMm) => {
    await open('mats');
    await choosePaper(paper);
    await page.getByLabel(words.mats.foot).fill(String(footMm));
    await page.getByLabel(words.mats.left).fill('2');
    for (const way of ways) {
      const pages = await printed(paper, way);
      expect(pages).toHaveLength(2);
      for (const [index, hand] of (['right', 'left'] as const).entries()) {
        const drawn = pages[index];
        const layout = layOutMat({ sheet: paper, glasses: 6, footMm, hand });
        if (drawn === undefined || !layout.fits) throw new Error('There is no mat to measure.');
        const { widthMm, heightMm } = matSheets[paper];
        expect(near(drawn.widthMm, way.lying ? widthMm : heightMm)).toBe(true);
        expect(near(drawn.heightMm, way.lying ? heightMm : widthMm)).toBe(true);
        const circles = roundOnes(drawn);
        expect(circles).toHaveLength(6);
        for (const [glass, circle] of circles.entries()) {
          const wanted = layout.circles[glass];
          if (wanted === undefined) throw new Error('There is a circle too many.');
          const middle = { x: circle.leftMm + circle.widthMm / 2, y: circle.topMm + circle.heightMm / 2 };
          // On standing paper the mat is turned to the right.
          const at = way.lying
            ? { x: wanted.xMm, y: wanted.yMm }
            : { x: heightMm - wanted.yMm, y: wanted.xMm };
          const measured = `${circle.widthMm} x ${circle.heightMm} at ${middle.x}, ${middle.y}, not ${at.x}, ${at.y}`;
          expect(near(circle.widthMm, footMm), measured).toBe(true);
          expect(near(circle.heightMm, footMm), measured).toBe(true);
          expect(near(middle.x, at.x) && near(middle.y, at.y), measured).toBe(true);
        }
        // The line to lay a ruler on.
        const [ruler, ...more] = drawn.stroked.filter(
          (path) => path.lines === 1 && (way.lying ? path.heightMm : path.widthMm) < 0.1,
        );
        expect(more.filter((path) => Math.max(path.widthMm, path.heightMm) > 3)).toEqual([]);
        expect(near((way.lying ? ruler?.widthMm : ruler?.heightMm) ?? 0, 100)).toBe(true);
        for (const path of drawn.stroked) {
          expect(Math.min(path.leftMm, path.topMm)).toBeGreaterThan(9.5);
          expect(path.leftMm + path.widthMm).toBeLessThan(drawn.widthMm - 9.5);
          expect(path.topMm + path.heightMm).toBeLessThan(drawn.heightMm - 9.5);
        }
      }
    }
  });

  it('are not printed while the glasses do not fit, and the page says what to do', async () => {
    await open('mats');
    await choosePaper('A4');
    await page.getByLabel(words.mats.foot).fill('120');
    await page.getByText(words.mats.tryPaper(words.sizes.A3)).waitFor();
    await page.getByLabel(words.mats.foot).fill('150');
    await page.getByText(words.mats.trySmaller).waitFor();
    await page.getByLabel(words.mats.foot).fill('7');
    await page.getByText(words.mats.wrong).waitFor();
    await page.getByLabel(words.mats.foot).fill('60');
  });
});

describe('the other sheets', () => {
  it.each([
    ['notes', 'A4', 2],
    ['notes', 'Letter', 2],
    ['labels', 'A4', 1],
    ['labels', 'Letter', 1],
  ] as const)(
    '%s on %s take %d pages, however the paper lies and with wider letters',
    async (kind, paper, count) => {
      await open(kind);
      await choosePaper(paper);
      for (const wide of [false, true]) {
        if (wide) await host.widensLetters();
        for (const way of ways) expect(await printed(paper, way), JSON.stringify(way)).toHaveLength(count);
      }
      await page.reload();
    },
  );

  it.each(['run-sheet', 'shopping'] as const)('%s flows over sheets of which none is empty', async (kind) => {
    await open(kind);
    for (const paper of ['A4', 'Letter'] as const)
      for (const way of ways)
        for (const { texts } of await printed(paper, way)) expect(texts).toBeGreaterThan(3);
  });

  it('the run sheet has the whole evening, with what to say', async () => {
    await open('run-sheet');
    await page.getByRole('columnheader', { name: words.runSheet.columns.say }).waitFor();
    const rows = await page.getByRole('row').count();
    const pages = await printed();
    expect(rows).toBeGreaterThan(60);
    expect(pages.length).toBeGreaterThan(1);
  });

  it('note sheets say what water does, and keep three glasses to a sheet with it', async () => {
    const allergens: Pour['allergens'] = ['gluten', 'milk', 'nuts', 'sulphites'];
    const pours = (demoEvening.pours ?? []).map((pour) => ({
      ...pour,
      dilutedAbv: 40,
      allergens,
    }));
    const open = { ...demoEvening, pours, blind: false, liking: true, drops: 'after-nose' } as const;
    const wet = await createTasting(premises, open);
    await page.goto(`${premises.room.origin}/host#tasting=${wet.tasting}&key=${wet.hostKey}`);
    await page.goto(`${premises.room.origin}/host#/t/${wet.tasting}/print/notes`);
    // 43 % in 11 ml.
    const number = (value: number) => new Intl.NumberFormat(momentNow()?.locale).format(value);
    await page.getByText(waterWords.sheet(3, number(42.4))).waitFor();
    const water = `${number(0.8)}\u00a0${volumeUnits.ml}`;
    await page.getByText(waterWords.sheetReach(water, number(40))).waitFor();
    for (const paper of ['A4', 'Letter'] as const) {
      await choosePaper(paper);
      for (const way of ways) expect(await printed(paper, way)).toHaveLength(2);
    }
    await host.widensLetters();
    for (const way of ways) expect(await printed('Letter', way)).toHaveLength(2);
    await page.reload();
    await page.goto(`${premises.room.origin}/host#/t/${wet.tasting}/print/run-sheet`);
    await page
      .getByText(serveAt({ minC: 18, maxC: 22 }))
      .first()
      .waitFor();
    await page.getByRole('cell', { name: hostWords.cue.drops }).first().waitFor();
  });

  it('blind labels tell the code and no name', async () => {
    await open('labels');
    await page.getByText('418').first().waitFor();
    expect(await page.getByText('418').count()).toBe(3);
    expect(await page.getByText(demoWords.pours.orchardWall.name).count()).toBe(0);
  });

  it.each(['mats', 'notes', 'labels', 'run-sheet', 'shopping'] as const)(
    '%s can be used by everybody',
    async (kind) => {
      await open(kind);
      await host.look(`host-paper-${kind}`);
    },
  );

  it('[P23] keep their numbers once something with numbers was printed, until the host numbers anew', async () => {
    const evening = await createTasting(premises, { ...demoEvening, blind: false });
    const { tasting, hostKey } = evening;
    const ask = (more: RequestInit = {}) =>
      fetch(`${premises.room.origin}/api/tastings/${tasting}/plan`, {
        ...more,
        headers: { authorization: `Bearer ${hostKey}`, 'content-type': 'application/json' },
      });
    const stored = async () => (await (await ask()).json()) as StoredPlan;
    const numbers = async () => (await stored()).plan.numbers;
    const save = async (change: (plan: Plan) => Plan) => {
      const { plan, revision } = await stored();
      const body = JSON.stringify({ plan: change(plan), base: revision });
      expect((await ask({ method: 'PUT', body })).status).toBe(200);
    };
    await open('shopping', evening);
    await page.pdf();
    expect(await numbers()).toEqual([]);

    // The button opens the browser's own window; a key or the menu does so without the page being asked.
    await open('notes', evening);
    await page.evaluate(() => {
      window.print = () => window.dispatchEvent(new Event('beforeprint'));
    });
    await printing().click();
    await expect.poll(numbers).toHaveLength(6);
    await page.pdf();

    // What came after the first print is numbered by the next one, and keeps it when others move.
    const late: Pour = { id: pourId('late'), drink: 'spirit', name: 'Late Lantern' };
    await save((plan) => ({ ...plan, pours: [...plan.pours, late] }));
    await open('mats', evening);
    await page.route(`**/api/tastings/${tasting}/plan`, (route) =>
      route.request().method() === 'PUT' ? route.abort() : route.continue(),
    );
    await page.pdf();
    await page.getByText(words.numbersNotKept).waitFor();
    await host.look('host-paper-numbers-not-kept');
    await page.unroute(`**/api/tastings/${tasting}/plan`);
    await page.getByRole('button', { name: hostWords.tryAgain }).click();
    await expect.poll(numbers).toHaveLength(7);
    await page.getByText(words.numbersNotKept).waitFor({ state: 'detached' });
    await save((plan) => ({ ...plan, pours: [late, ...plan.pours.slice(1, -1)] }));
    expect(glassNumbers((await stored()).plan).get(late.id)).toBe(7);

    // Printed from a plan that has changed on another device: said, and what is printed again is kept.
    const later: Pour = { ...late, id: pourId('later') };
    await save((plan) => ({ ...plan, pours: [...plan.pours, later] }));
    await open('notes', evening);
    await save((plan) => ({ ...plan, title: 'Lanterns again' }));
    await page.pdf();
    await page.getByText(words.planChanged).waitFor();
    await page.getByRole('button', { name: hostWords.tryAgain }).click();
    await page.getByText(words.planChanged).waitFor({ state: 'detached' });
    await printing().waitFor();
    await page.pdf();
    await expect.poll(numbers).toHaveLength(8);

    await page.goto(`${premises.room.origin}/host#/t/${tasting}/plan/pours`);
    await page.getByText(planPours.pours.numbersKept).waitFor();
    await host.look('host-plan-numbers-kept');
    await page.getByRole('button', { name: planPours.pours.numberAnew }).click();
    await expect.poll(numbers).toEqual([]);
  });

  it('nothing went wrong on any of the pages', () => {
    // The one request that the test itself kept from the server, and the one that came too late.
    expect(host.faults.filter((fault) => !/(net::ERR_FAILED|409).*\/plan\)$/.test(fault))).toEqual([]);
  });
});
