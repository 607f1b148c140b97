import type { Browser, Page } from 'playwright-core';
import { type PlanInput, planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { hostWords } from '../../shared/language/en/host.ts';
import { openBrowser } from '../support/browser.ts';
import { startChild } from './child.ts';
import { newId, openEvening } from './evening.ts';
import { type Figure, median, quantile } from './figures.ts';

/** How much slower than this machine a middling phone or tablet is. */
export const slower = 4;

/** In a page before its own scripts: the longest event of each interaction. */
export const noteInteractions = `
  globalThis.interactions = new Map();
  new PerformanceObserver((list) => {
    for (const { interactionId, duration } of list.getEntries()) {
      if (interactionId) interactions.set(interactionId, Math.max(duration, interactions.get(interactionId) ?? 0));
    }
  }).observe({ type: 'event', durationThreshold: 16, buffered: true });`;

/**
 * From a finger to the next picture, as Chromium's Event Timing has it (W3C, "Event Timing API", duration: to the next paint,
 * in steps of 8 ms), on slowed processors: a host and a guest through an evening, and the page of a plan under typing.
 * Needs `npm run build`.
 */
export async function measureInteraction(taps: number): Promise<Figure[]> {
  const ours = startChild('our-server');
  const browser = await openBrowser();
  try {
    const { port, houseKey } = await ours.ask<{ port: number; houseKey: string }>('listen');
    const origin = `http://127.0.0.1:${port}`;
    const evening = await openEvening(port, houseKey, planSchema.parse(demoEvening));
    const guest = await slowPage(browser, { width: 360, height: 640 }, true);
    await guest.goto(`${origin}/j/${evening.code}`);
    await guest.getByRole('textbox', { name: guestWords.invitation.name }).fill('Guest');
    await guest.getByRole('button', { name: guestWords.invitation.sit }).click();
    await guest.getByRole('button', { name: guestWords.cautions.accept }).click();
    const host = await slowPage(browser, { width: 1024, height: 768 });
    await openHost(host, origin, houseKey, `#/t/${evening.tasting}/room`);
    const next = host.getByRole('button', { name: new RegExp(`^${hostWords.room.next}`) }).first();
    await next.waitFor();
    for (let tap = 0; tap < taps; tap += 1) {
      // A gate, a talk or names have another button: the room goes on past them.
      if (!(await next.isVisible())) {
        const cue = evening.cues[Math.min(evening.cues.length - 1, tap + 2)];
        await evening.host.ask('host:ask', { id: newId(), ask: { type: 'JumpTo', cue } });
        await next.waitFor({ timeout: 3000 }).catch(() => undefined);
      }
      if (await next.isVisible()) await next.click();
      await guest.waitForTimeout(400);
      const field = guest.getByRole('textbox').first();
      if (await field.isVisible()) await field.pressSequentially('pears');
      const ready = guest.getByRole('button', { name: guestWords.signals.ready });
      if (await ready.isVisible()) await ready.click();
    }
    const [onHost, onGuest] = [await durations(host), await durations(guest)];
    const plan = await planUnderTyping(browser, origin, houseKey);
    const name = (what: string) => `${what}, ${slower}x slower`;
    return [
      {
        name: name('host through an evening: to next paint, p98'),
        value: quantile(onHost, 0.98),
        unit: 'ms',
        goal: 100,
      },
      {
        name: name('guest through an evening: to next paint, p98'),
        value: quantile(onGuest, 0.98),
        unit: 'ms',
        goal: 100,
      },
      {
        name: name('plan of 16 pours under typing: to next paint, median'),
        value: median(plan),
        unit: 'ms',
        goal: 50,
      },
      {
        name: name('plan of 16 pours under typing: to next paint, p98'),
        value: quantile(plan, 0.98),
        unit: 'ms',
      },
    ];
  } finally {
    await browser.close();
    await ours.stop();
  }
}

/** Numbers that everything on the page is reckoned from. */
async function planUnderTyping(browser: Browser, origin: string, houseKey: string): Promise<number[]> {
  const { codes: _codes, flightSizes: _sizes, ...evening } = demoEvening;
  const bottles = planSchema.parse(demoEvening).pours;
  const pours = Array.from({ length: 16 }, (_, index) => ({
    ...bottles[index % bottles.length],
    id: `glass-${index + 1}`,
    name: `Cellar cask ${index + 1}`,
  }));
  const plan = planSchema.parse({ ...evening, blind: false, pours } as PlanInput);
  const made = (await (
    await fetch(`${origin}/api/tastings`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${houseKey}` },
      body: JSON.stringify({ plan }),
    })
  ).json()) as { tasting: string };
  const page = await slowPage(browser, { width: 1024, height: 768 });
  await openHost(page, origin, houseKey, `#/t/${made.tasting}/plan/guests`);
  const field = page.locator('input[inputmode="decimal"], input[inputmode="numeric"]').first();
  await field.waitFor();
  for (let turn = 0; turn < 12; turn += 1) {
    await field.focus();
    await page.keyboard.press('End');
    await page.keyboard.press('Backspace');
    await page.waitForTimeout(250);
    await page.keyboard.type(String(2 + (turn % 7)));
    await page.waitForTimeout(250);
  }
  return durations(page);
}

/** The key comes in the address once; from then on the tablet has it. */
async function openHost(page: Page, origin: string, houseKey: string, place: string): Promise<void> {
  await page.goto(`${origin}/host#key=${houseKey}`);
  await page.getByRole('heading', { level: 1, name: hostWords.home.title }).waitFor();
  await page.goto(`${origin}/host${place}`);
}

async function slowPage(
  browser: Browser,
  viewport: { readonly width: number; readonly height: number },
  phone = false,
): Promise<Page> {
  const context = await browser.newContext({ viewport, isMobile: phone, hasTouch: phone, locale: 'en-GB' });
  await context.addInitScript({
    content: `globalThis.__name ??= (marked) => marked; ${noteInteractions}`,
  });
  const page = await context.newPage();
  const line = await context.newCDPSession(page);
  await line.send('Emulation.setCPUThrottlingRate', { rate: slower });
  return page;
}

/** Of each interaction its longest event; what took less than 16 ms is not told of, and so not counted. */
export const durations = (page: Page): Promise<number[]> =>
  page.evaluate(() => [
    ...(globalThis as unknown as { interactions: Map<number, number> }).interactions.values(),
  ]);
