import type { Browser, Page } from 'playwright-core';
import type { StageUnderWay } from '../../core/session/views/stage.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { callWords as words } from '../../shared/language/en/call.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { flowOf, keepConnections } from '../e2e/call-media.ts';
import { openBrowser } from '../support/browser.ts';
import { startChild } from './child.ts';
import { isStage, newId, type OpenEvening, openEvening, ToldStage, takeSeats } from './evening.ts';
import { type Figure, median, quantile } from './figures.ts';
import { durations, noteInteractions, slower } from './interaction.ts';
import { RawSocket } from './raw-socket.ts';

/** How long a call of one size is watched, in ms. */
const watched = 5000;

/**
 * The evening's call between phones at home, each a page of one Chromium with a camera and a microphone that it makes up: from
 * the tap that joins to the first picture, from the moment of a silent cue to the closed microphone, and what a mesh of so
 * many devices costs. All devices share this machine's processors, so that a real one has more to itself. Needs `npm run build`.
 */
export async function measureCall(sizes: readonly number[], rounds: number): Promise<Figure[]> {
  const ours = startChild('our-server');
  const browser = await openBrowser({ fakeMedia: true });
  try {
    const { port, houseKey } = await ours.ask<{ port: number; houseKey: string }>('listen');
    const plan = planSchema.parse({ ...demoEvening, remoteGuests: Math.max(...sizes) });
    const evening = await openEvening(port, houseKey, plan);
    const moments: number[] = [];
    const stage = new ToldStage();
    const [auth = {}] = await takeSeats(port, evening, 1);
    await RawSocket.open(port, auth, (text) => {
      stage.hear(text);
      if (isStage(text)) moments.push((stage.view as StageUnderWay).takesEffectAt);
    });
    const phones: Page[] = [];
    const firstPictures: number[] = [];
    const figures: Figure[] = [];
    for (const size of sizes) {
      while (phones.length < size) {
        const phone = await arrives(browser, port, evening, phones.length);
        const took = await joins(phone, phones.length);
        if (took !== undefined) firstPictures.push(took);
        phones.push(phone);
      }
      figures.push(...(await cost(browser, phones)));
      if (size === 4) figures.push(await underFinger(phones, evening));
    }
    const late = await closings(phones, evening, moments, rounds);
    return [
      {
        name: 'from the tap that joins to the first picture, median',
        value: median(firstPictures),
        unit: 'ms',
        goal: 1500,
      },
      {
        name: 'microphone closed after the moment of the cue, p99',
        value: quantile(late, 0.99),
        unit: 'ms',
        goal: 150,
      },
      ...figures,
    ];
  } finally {
    await browser.close();
    await ours.stop();
  }
}

/** In each page before its own scripts: when a microphone was closed, by this machine's clock. */
function noteClosings(): void {
  const closed: number[] = [];
  const own = Object.getOwnPropertyDescriptor(MediaStreamTrack.prototype, 'enabled');
  Object.defineProperty(MediaStreamTrack.prototype, 'enabled', {
    ...own,
    set(on: boolean) {
      if (this.kind === 'audio' && this.enabled && !on) closed.push(Date.now());
      own?.set?.call(this, on);
    },
  });
  Object.assign(window, { closings: closed });
}

async function arrives(browser: Browser, port: number, evening: OpenEvening, index: number): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 360, height: 640 }, locale: 'en-GB' });
  await context.addInitScript({ content: 'globalThis.__name ??= (marked) => marked;' });
  await context.addInitScript(keepConnections);
  await context.addInitScript(noteClosings);
  await context.addInitScript({ content: noteInteractions });
  const page = await context.newPage();
  await page.goto(`http://127.0.0.1:${port}/j/${evening.code}`);
  await page.getByRole('textbox', { name: guestWords.invitation.name }).fill(`Home ${index + 1}`);
  await page.getByRole('radio', { name: guestWords.invitation.atHome }).check();
  await page.getByRole('button', { name: guestWords.invitation.sit }).click();
  await page.getByRole('button', { name: guestWords.cautions.accept }).click();
  return page;
}

/** Joins and turns the camera on. @returns ms from the tap to the first frame of another; undefined where there is none */
async function joins(page: Page, others: number): Promise<number | undefined> {
  const join = page.getByRole('button', { name: words.join });
  await join.waitFor();
  const begun = performance.now();
  await join.click();
  let took: number | undefined;
  while (others > 0 && took === undefined && performance.now() - begun < 30_000)
    if ((await flowOf(page)).frames > 0) took = performance.now() - begun;
  await page.getByRole('button', { name: words.camera.closed }).click();
  await page.getByRole('button', { name: words.camera.open }).waitFor();
  return others === 0 ? undefined : (took ?? Number.NaN);
}

/** Kilobits a second upwards and the share of a processor, for each device of a mesh of these. */
async function cost(browser: Browser, phones: readonly Page[]): Promise<Figure[]> {
  await Promise.all(phones.map((phone) => phone.waitForTimeout(2000)));
  const session = await browser.newBrowserCDPSession();
  const processorSeconds = async () =>
    (await session.send('SystemInfo.getProcessInfo')).processInfo.reduce(
      (sum, { cpuTime }) => sum + cpuTime,
      0,
    );
  const [before, sent] = [await processorSeconds(), await Promise.all(phones.map(sentBy))];
  const begun = performance.now();
  await phones[0]?.waitForTimeout(watched);
  const seconds = (performance.now() - begun) / 1000;
  const [after, sentNow] = [await processorSeconds(), await Promise.all(phones.map(sentBy))];
  await session.detach();
  const upwards = sentNow.map((bytes, index) => ((bytes - (sent[index] ?? 0)) * 8) / 1000 / seconds);
  const called = `${phones.length} devices`;
  return [
    { name: `${called}: upwards, each`, value: median(upwards), unit: 'kbit/s' },
    {
      name: `${called}: of one processor, each`,
      value: (after - before) / seconds / phones.length,
      unit: '',
    },
  ];
}

/** From a finger to the next paint on a slowed phone that writes while the pictures of all run. */
async function underFinger([phone]: readonly Page[], { host, cues }: OpenEvening): Promise<Figure> {
  if (phone === undefined) throw new Error('There is no phone in the call.');
  const line = await phone.context().newCDPSession(phone);
  await line.send('Emulation.setCPUThrottlingRate', { rate: slower });
  const jump = (cue = cues[0]) => host.ask('host:ask', { id: newId(), ask: { type: 'JumpTo', cue } });
  await jump(
    cues.find((cue) => cue.endsWith('/writing/write/palate') || cue.endsWith('/writing/write/look')),
  );
  const field = phone.getByRole('textbox').first();
  await field.waitFor();
  await phone.evaluate(() =>
    (globalThis as unknown as { interactions: Map<number, number> }).interactions.clear(),
  );
  await field.pressSequentially('pears and honey, warm wood', { delay: 150 });
  const took = await durations(phone);
  await line.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  // Whoever writes on is not led away, and has a dot for the call.
  await field.blur();
  await jump();
  return {
    name: `a finger on a phone ${slower}x slower, four pictures: to next paint, p98`,
    value: took.length === 0 ? 16 : quantile(took, 0.98),
    unit: 'ms',
    goal: 100,
  };
}

/** Bytes that a page has given to its lines, with all that they are wrapped in (W3C, webrtc-stats, RTCTransportStats). */
const sentBy = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const { kept } = window as unknown as { kept: RTCPeerConnection[] };
    let bytes = 0;
    for (const connection of kept)
      for (const stats of (await connection.getStats()).values())
        if (stats.type === 'transport') bytes += stats.bytesSent ?? 0;
    return bytes;
  });

/** Ms from the moment of a silent cue to each closed microphone. */
async function closings(
  phones: readonly Page[],
  { host, cues }: OpenEvening,
  moments: readonly number[],
  rounds: number,
): Promise<number[]> {
  const [open] = cues;
  const silent = cues.find((cue) => cue.endsWith('/first/swirl'));
  const jump = (cue: typeof open) => host.ask('host:ask', { id: newId(), ask: { type: 'JumpTo', cue } });
  const late: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    if (round > 0) await jump(open);
    for (const phone of phones) {
      const closed = phone.getByRole('button', { name: words.microphone.closed });
      const opened = phone.getByRole('button', { name: words.microphone.open });
      // A tap just before the phone turns to the open cue is ended by the turn, as a person's would be: they tap again.
      while (!(await opened.isVisible())) {
        await closed.click();
        await phone.waitForTimeout(500);
      }
      await phone.evaluate(() => (window as unknown as { closings: number[] }).closings.splice(0));
    }
    await jump(silent);
    for (const phone of phones) {
      await phone.waitForFunction(() => (window as unknown as { closings: number[] }).closings.length > 0);
      const [at = Number.NaN] = await phone.evaluate(
        () => (window as unknown as { closings: number[] }).closings,
      );
      late.push(Math.max(0, at - (moments.at(-1) ?? Number.NaN)));
    }
  }
  return late;
}
