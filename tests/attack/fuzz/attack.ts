import { credentials, type Device } from '../../server/support/device.ts';
import { aPlan } from '../../server/support/plans.ts';
import { seededRandom } from '../../support/seeded-random.ts';
import { mark, Nasty } from './nasty.ts';
import { openScene, outsideThePages, type Scene } from './scene.ts';
import { message, request, type Targets } from './templates.ts';
import { type HttpAnswer, send, sendFrames, sendGarbled } from './wire.ts';

export interface FuzzReport {
  readonly messages: number;
  readonly requests: number;
  readonly refused: number;
  readonly hungUp: number;
  readonly faults: readonly string[];
}

/** Refusals are a code and a sentence. */
const longest = 300;
const perBatch = 40;

/** Throws `count` messages and requests, seven to three, at a house, and watches what must not move. */
export async function fuzz(count: number, seed: number): Promise<FuzzReport> {
  const nasty = new Nasty(seededRandom(seed));
  const scene = await openScene();
  const tally = { messages: 0, requests: 0, refused: 0, hungUp: 0, faults: [] as string[] };
  const fell = (error: unknown) => void tally.faults.push(`The server fell: ${String(error)}`);
  process.on('uncaughtException', fell).on('unhandledRejection', fell);
  const { quiet, joined, own } = scene;
  const attacker = await scene.attacker();
  const targets: Targets = {
    tastings: [quiet.tasting, joined.tasting],
    keys: [own.hostKey, String('key' in attacker ? attacker.key : ''), scene.removedKey, 'x'.repeat(128)],
    plan: aPlan(),
  };
  const before = await scene.untouchable();
  try {
    let devices = [attacker, await scene.hostOfOwn()];
    while (tally.messages + tally.requests < count) {
      if (nasty.chance(0.02)) {
        for (const device of devices) device.close();
        devices = [await scene.attacker(), await scene.hostOfOwn()];
      }
      devices = await throwMessages(scene, nasty, devices, tally);
      await throwRequests(scene, nasty, targets, tally);
      await throwRubbish(scene, nasty, tally);
      if ((await scene.untouchable()) !== before) {
        tally.faults.push(`Something changed that must not, before message ${tally.messages}.`);
        break;
      }
      await scene.clock.advance(3000);
    }
    const lines = scene.house.log.lines;
    for (const line of lines.slice(0, 5)) tally.faults.push(`Logged: ${line.slice(0, 200)}`);
    const health = await scene.house.ask('GET', '/healthz');
    if (health.status !== 200) tally.faults.push(`The house is not well: ${health.status}.`);
  } finally {
    process.off('uncaughtException', fell).off('unhandledRejection', fell);
    await scene.close();
  }
  return tally;
}

type Tally = { messages: number; requests: number; refused: number; hungUp: number; faults: string[] };

async function throwMessages(
  scene: Scene,
  nasty: Nasty,
  devices: readonly Device[],
  tally: Tally,
): Promise<Device[]> {
  const all = await Promise.all(
    devices.map(async (device, which) => {
      const thrown = Array.from({ length: perBatch }, () => message(nasty, scene.seats));
      const large = nasty.chance(0.02);
      if (large) thrown.push({ event: 'note:save', payload: { value: 'x'.repeat(2 ** 20) } });
      const answers = thrown.map(({ event, payload }) =>
        answerTo(device, event, payload).then((answer) => judge(event, payload, answer, tally)),
      );
      tally.messages += thrown.length;
      await Promise.all(answers);
      if (!device.closed) return device;
      // Hung up on for a frame too large, or because it has lost its seat.
      tally.hungUp += 1;
      return which === 0 ? scene.attacker() : scene.hostOfOwn();
    }),
  );
  return all;
}

const gone = Symbol('gone');

function answerTo(device: Device, event: string, payload: unknown): Promise<unknown> {
  // What was asked when the server hung up is answered by that.
  return device.raw(event, payload).catch(() => gone);
}

function judge(event: string, payload: unknown, answer: unknown, tally: Tally): void {
  if (answer === gone) return;
  const text = JSON.stringify(answer) ?? '';
  const { ok, message } = (answer ?? {}) as { ok?: unknown; message?: unknown };
  if (ok === true || (event === 'probe' && /^(\{"received"|\d)/.test(text))) return;
  tally.refused += 1;
  const sentence = typeof message === 'string' && /^[A-Z].*[.;]$/.test(message);
  if (ok !== false || !sentence || text.length > longest || text.includes(mark)) {
    const asked = (JSON.stringify(payload) ?? '').slice(0, 200);
    tally.faults.push(`${event} ${asked} was answered ${text.slice(0, 200)}`);
  }
}

async function throwRequests(scene: Scene, nasty: Nasty, targets: Targets, tally: Tally): Promise<void> {
  const thrown = Array.from({ length: perBatch }, () => request(nasty, targets));
  tally.requests += thrown.length;
  await Promise.all(
    thrown.map(async (asked) => {
      const answer = await send(scene.house.url, asked);
      const fault = faultIn(asked.path, asked.method, answer);
      if (answer.status >= 400) tally.refused += 1;
      if (answer.status === 0) tally.hungUp += 1;
      if (fault !== undefined) {
        tally.faults.push(`${asked.method} ${asked.path} ${asked.body?.slice(0, 200)}: ${fault}`);
      }
    }),
  );
}

function faultIn(path: string, method: string, { status, type, text }: HttpAnswer): string | undefined {
  if (text.includes(outsideThePages)) return 'a file outside of the pages was served';
  // Which methods there are may be asked, and one's own notes: Noor and Tomas are others.
  if (method === 'OPTIONS' || /"guest":"(?!Noor|Tomas)/.test(text)) return undefined;
  if (text.includes(mark)) return `an echo: ${text.slice(0, 200)}`;
  if (status >= 500) return `${status} ${text.slice(0, 200)}`;
  if (status === 0) return undefined;
  // Anybody may try their line, and learns nothing by it.
  if (path === '/api/line' && status === 204) return text === '' ? undefined : 'an answer with words';
  if (path.startsWith('/api') && method !== 'HEAD' && status < 400) return `was done: ${text.slice(0, 200)}`;
  if (status >= 400 && text.length > longest) return `a long answer: ${text.length} characters`;
  if (path.startsWith('/api') && status >= 400 && method !== 'HEAD' && !type.startsWith('application/json')) {
    return `${status} ${type}`;
  }
  return undefined;
}

async function throwRubbish(scene: Scene, nasty: Nasty, tally: Tally): Promise<void> {
  const { url } = scene.house;
  const heard = await sendGarbled(url, nasty);
  tally.requests += 1;
  if (heard.includes(mark)) tally.faults.push(`An echo of rubbish: ${heard.slice(0, 200)}`);
  await sendFrames(url, nasty);
  tally.messages += 1;
  const shown = nasty.spoiled(credentials('guest', scene.joined.tasting, scene.removedKey));
  tally.messages += 1;
  // A number goes over the wire as it is, but the client looks into what it is given.
  const refusal = await scene.house.enter(Object(shown) as object).then(
    () => 'It was let in.',
    (error: unknown) => JSON.stringify(error),
  );
  if (refusal.includes('let in') || refusal.includes(mark) || refusal.length > longest) {
    tally.faults.push(`At the door: ${JSON.stringify(shown)?.slice(0, 200)} was answered ${refusal}`);
  }
}
