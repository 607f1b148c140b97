import type { DeviceResults } from '../../shared/wire/device-check.ts';

/** How a line did: ms to the server and back, kbit/s towards it. */
export interface LineFigures {
  readonly roundTrip: number;
  readonly upward: number;
}

/**
 * Towards the server, in kbit/s: one voice with a small picture takes some 150 and goes to each of the others by itself, so
 * that four others take 600; below 150 a call goes on with voices alone.
 */
const enough = { pictures: 600, voice: 150 } as const;
/** Ms there and back beyond which two people speak into each other's words (ITU-T G.114: 400 ms one way at the most). */
const tooLate = 800;

export const judgeLine = ({ roundTrip, upward }: LineFigures): Exclude<DeviceResults['line'], undefined> => {
  if (upward < enough.voice || roundTrip > tooLate) return 'slow';
  return upward < enough.pictures ? 'voice' : 'works';
};

type Ask = (path: string, body?: Uint8Array<ArrayBuffer>) => Promise<boolean>;

/** Over the network; false where nothing came back, or after eight seconds. */
const overHttp: Ask = async (path, body) => {
  try {
    const sent = body === undefined ? {} : { method: 'POST', body: new Blob([body]) };
    const answer = await fetch(path, { cache: 'no-store', signal: AbortSignal.timeout(8000), ...sent });
    await answer.arrayBuffer();
    return answer.ok;
  } catch {
    return false;
  }
};

const roundTrips = 6;
/** Bytes. Four times as much where the first went through in a moment: short ones tell little of a fast line. */
const portion = 32 * 1024;
const aMoment = 400;

/** The fastest of some round trips, and the pace of what is sent; undefined where the server does not answer. */
export async function tryLine(
  ask: Ask = overHttp,
  now: () => number = () => performance.now(),
): Promise<LineFigures | undefined> {
  const timed = async (path: string, body?: Uint8Array<ArrayBuffer>): Promise<number | undefined> => {
    const before = now();
    return (await ask(path, body)) ? now() - before : undefined;
  };
  const times: number[] = [];
  for (let turn = 0; turn < roundTrips; turn += 1) {
    const took = await timed('/healthz');
    // The first opens the line as well.
    if (took !== undefined && turn > 0) times.push(took);
  }
  if (times.length === 0) return undefined;
  const roundTrip = Math.min(...times);
  const send = (bytes: number) => timed('/api/line', noise(bytes));
  const first = await send(portion);
  if (first === undefined) return { roundTrip, upward: 0 };
  const pace = (bytes: number, took: number) => (bytes * 8) / Math.max(1, took - roundTrip);
  if (first > aMoment) return { roundTrip, upward: pace(portion, first) };
  const second = await send(4 * portion);
  return { roundTrip, upward: second === undefined ? pace(portion, first) : pace(4 * portion, second) };
}

/** What nothing on the way can make smaller. */
function noise(bytes: number): Uint8Array<ArrayBuffer> {
  const drawn = new Uint8Array(bytes);
  // A browser gives 64 KiB at a time.
  for (let from = 0; from < bytes; from += 65_536)
    crypto.getRandomValues(drawn.subarray(from, from + 65_536));
  return drawn;
}
