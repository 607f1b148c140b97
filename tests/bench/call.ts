import type { Browser, Page } from 'playwright-core';
import type { StageUnderWay } from '../../core/session/views/stage.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { callWords as words } from '../../shared/language/en/call.ts';
import { guestWords } from '../../shared/language/en/guest.ts';
import { flowOf, keepConnections, readFlow } from '../e2e/call-media.ts';
import { openBrowser } from '../support/browser.ts';
import { startChild } from './child.ts';
import { isStage, newId, type OpenEvening, openEvening, ToldStage, takeSeats } from './evening.ts';
import { type Figure, median, quantile } from './figures.ts';
import { durations, noteInteractions, slower } from './interaction.ts';
import { RawSocket } from './raw-socket.ts';

/** How long a call of one size is watched, in ms. */
const watched = 8000;
/** Ms after which one step is given up: what was measured before it is still told. */
const longestStep = 150_000;

/**
 * The evening's call between phones at home: from the tap that joins to the first picture, from the moment of a silent cue to
 * the closed microphone, and what a mesh costs each of its devices. One phone has a browser of its own, with the picture that
 * the page asks for; what it sends and takes of a processor is counted. The others share a second browser and film small, for no
 * machine films for eight. Needs `npm run build`.
 */
export async function measureCall(sizes: readonly number[], rounds: number): Promise<Figure[]> {
  const ours = startChild('our-server');
  const browsers = [await openBrowser({ fakeMedia: true }), await openBrowser({ fakeMedia: true })] as const;
  const [counted, others] = browsers;
  const figures: Figure[] = [];
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
    const steps = sizes.map((size) => async () => {
      while (phones.length < size) {
        const alone = phones.length === 0;
        const phone = await arrives(alone ? counted : others, port, evening, phones.length, !alone);
        const took = await joins(phone, phones.length);
        if (took !== undefined) firstPictures.push(took);
        phones.push(phone);
      }
      figures.push(...(await cost(counted, phones)));
      if (size === 2)
        figures.push({
          name: 'microphone closed after the moment of the cue, p99',
          value: quantile(await closings(phones, evening, moments, rounds), 0.99),
          unit: 'ms',
          goal: 150,
        });
      if (size === 4) figures.push(await underFinger(phones, evening));
    });
    for (const [index, step] of steps.entries()) {
      const why = await within(longestStep, step);
      if (why === undefined) continue;
      console.warn(`  Given up at ${sizes[index]} devices, what was measured before it counts: ${why}`);
      figures.push({ name: `${sizes[index]} devices`, value: Number.NaN, unit: '' });
      break;
    }
    return [
      {
        name: 'from the tap that joins to the first picture, median',
        value: median(firstPictures),
        unit: 'ms',
        goal: 1500,
      },
      ...figures,
    ];
  } finally {
    for (const browser of browsers) await browser.close();
    await ours.stop();
  }
}

/** @returns why a step did not come to its end; undefined where it did */
async function within(ms: number, step: () => Promise<void>): Promise<string | undefined> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<string>((tell) => {
    timer = setTimeout(() => tell(`it took longer than ${ms / 1000} s.`), ms);
  });
  const done = step().then(
    () => undefined,
    (error: Error) => error.message,
  );
  const why = await Promise.race([done, late]);
  clearTimeout(timer);
  return why;
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

/** In a page before its own scripts: its camera gives a small picture, and few of them. */
function filmSmall(): void {
  const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
  navigator.mediaDevices.getUserMedia = (wanted) =>
    ask(wanted?.video ? { video: { width: 160, height: 120, frameRate: 8 } } : wanted);
}

async function arrives(
  browser: Browser,
  port: number,
  evening: OpenEvening,
  index: number,
  small: boolean,
): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 360, height: 640 }, locale: 'en-GB' });
  await context.addInitScript({ content: 'globalThis.__name ??= (marked) => marked;' });
  await context.addInitScript(keepConnections);
  await context.addInitScript(noteClosings);
  if (small) await context.addInitScript(filmSmall);
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

/** Kilobits a second upwards, the share of a processor and the frames a second that the counted phone has in a mesh of these. */
async function cost(browser: Browser, phones: readonly Page[]): Promise<Figure[]> {
  const [phone] = phones;
  if (phone === undefined) throw new Error('There is no phone in the call.');
  while ((await flowOf(phone)).connected < phones.length - 1) await phone.waitForTimeout(200);
  // A sender begins low and feels its way up to what the line takes.
  await phone.waitForTimeout(5000);
  const session = await browser.newBrowserCDPSession();
  const looks = async () => {
    const { processInfo } = await session.send('SystemInfo.getProcessInfo');
    return {
      at: performance.now(),
      processor: processInfo.reduce((sum, { cpuTime }) => sum + cpuTime, 0),
      sent: await sentBy(phone),
      frames: (await phone.evaluate(readFlow)).frames,
    };
  };
  const before = await looks();
  await phone.waitForTimeout(watched);
  const after = await looks();
  await session.detach();
  const seconds = (after.at - before.at) / 1000;
  const called = `${phones.length} devices, each`;
  return [
    {
      name: `${called}: upwards`,
      value: ((after.sent - before.sent) * 8) / 1000 / seconds,
      unit: 'kbit/s',
    },
    {
      name: `${called}: of one processor`,
      value: (after.processor - before.processor) / seconds,
      unit: '',
    },
    {
      name: `${called}: frames shown of all others`,
      value: (after.frames - before.frames) / seconds,
      unit: '/s',
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
  // Who comes in later comes to the doors.
  await jump(open);
  return late;
}
