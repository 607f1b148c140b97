import type { WebSocket } from 'ws';
import { type CueId, cueId } from '../../core/ids.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { answerParent } from './child.ts';
import { isStage, newId, type OpenEvening, openEvening, ToldStage, takeSeats } from './evening.ts';
import { inTurns, openPlain, RawSocket } from './raw-socket.ts';

/** All guests and all hosts of a run in one process, with one clock for both ends of a tap. */
let evening: OpenEvening | undefined;
let cue: CueId = cueId('gathering');
let auths: object[] = [];
let ours: RawSocket[] = [];
let bare: RawSocket[] = [];
let bareHost: RawSocket | undefined;
let floorHost: WebSocket | undefined;
let stageFrame = '';
/** As the first guest is told of it. */
const stage = new ToldStage();

/** Called with every stage frame that reaches a guest. */
let arrived: (text: string) => void = () => undefined;

const hear = (text: string): void => {
  if (isStage(text)) arrived(text);
};

/** Resolves with the ms from now until `count` guests have a stage frame. */
function lastOf(count: number): Promise<number> {
  const began = performance.now();
  let left = count;
  return new Promise((done) => {
    arrived = (text) => {
      left -= 1;
      if (left > 0) return;
      arrived = () => undefined;
      stageFrame = text;
      done(performance.now() - began);
    };
  });
}

/** @param told what the first of them is told */
async function connectAll(
  port: number,
  those: readonly object[],
  atOnce: number,
  told?: ToldStage,
): Promise<RawSocket[]> {
  const sockets: RawSocket[] = [];
  const [first] = those;
  await inTurns(those, atOnce, async (auth) => {
    sockets.push(
      await RawSocket.open(port, auth, (text) => {
        if (auth === first) told?.hear(text);
        hear(text);
      }),
    );
  });
  return sockets;
}

async function tapOurs(): Promise<{ ms: number; bytes: number }> {
  const last = lastOf(ours.length);
  const answer = (await evening?.host.ask('host:ask', {
    id: newId(),
    ask: { type: 'Advance', from: cue },
  })) as { ok: boolean; code?: string };
  if (!answer.ok) throw new Error(`The tap was refused: ${answer.code}`);
  const ms = await last;
  cue = stage.cue.id;
  return { ms, bytes: stageFrame.length };
}

const demo = planSchema.parse(demoEvening);
const nobody = (count: number): object[] => Array.from({ length: count }, () => ({}));

answerParent({
  /** An evening that comes and goes before anything is measured, so that no code is new to the server. */
  async warmOurs({ port, houseKey, guests }: { port: number; houseKey: string; guests: number }) {
    const before = await openEvening(port, houseKey, demo);
    const sockets = await connectAll(port, await takeSeats(port, before, guests), 50);
    for (const type of ['Hold', 'Resume', 'Hold', 'Resume', 'Finish']) {
      await before.host.ask('host:ask', { id: newId(), ask: { type } });
    }
    for (const each of [...sockets, before.host]) each.close();
    return {};
  },
  async warmFloor({ port, guests }: { port: number; guests: number }) {
    for (const each of await Promise.all(nobody(guests).map(() => openPlain(port, '/', hear))))
      each.terminate();
    return {};
  },
  async warmBare({ port, guests }: { port: number; guests: number }) {
    for (const each of await connectAll(port, nobody(guests), 50)) each.close();
    return {};
  },
  /** @param owner the port of the process that conducts it, where guests come to another */
  async joinOurs({
    port,
    owner = port,
    houseKey,
    guests,
  }: Record<'port' | 'guests', number> & { owner?: number; houseKey: string }) {
    evening = await openEvening(owner, houseKey, demo);
    auths = await takeSeats(port, evening, guests);
    const level = lastOf(guests);
    ours = await connectAll(port, auths, 200, stage);
    await level;
    return {};
  },
  async joinFloor({ port, guests }: { port: number; guests: number }) {
    await inTurns(nobody(guests), 200, async () => {
      await openPlain(port, '/', (text) => arrived(text));
    });
    floorHost = await openPlain(port, '/host', () => undefined);
    return {};
  },
  async joinBare({ port, guests }: { port: number; guests: number }) {
    bare = await connectAll(port, nobody(guests), 200);
    bareHost = await RawSocket.open(port, {});
    return {};
  },
  /** Event and body of what each guest was sent last. */
  view: () => JSON.parse(stageFrame.slice(2)) as [event: string, body: unknown],
  tapOurs,
  async toStart() {
    const last = lastOf(ours.length);
    await evening?.host.ask('host:ask', { id: newId(), ask: { type: 'JumpTo', cue: 'welcome' } });
    await last;
    cue = cueId('welcome');
    return {};
  },
  /** As far as the first glass, so that there is something to write about. */
  async toFirstGlass() {
    cue = stage.cue.id;
    for (let tap = 0; tap < 30 && stage.view.glasses.every(({ pour }) => pour === null); tap += 1) {
      await tapOurs();
    }
    return {};
  },
  async tapFloor({ guests }: { guests: number }) {
    const last = lastOf(guests);
    floorHost?.send('tap');
    return { ms: await last, bytes: stageFrame.length };
  },
  async tapBare() {
    const last = lastOf(bare.length);
    bareHost?.send('tap');
    return { ms: await last, bytes: stageFrame.length };
  },
  /** What one guest is sent on coming in. */
  async greeting({ port }: { port: number }) {
    const texts: string[] = [];
    const [auth = {}] = auths;
    await new Promise<void>((done, fail) => {
      RawSocket.open(port, auth, (text) => {
        texts.push(text);
        if (/^42\["board(-change)?"/.test(text)) done();
      }).then((socket) => ours.push(socket), fail);
    });
    ours.pop()?.close();
    return { frames: texts.map((text) => JSON.parse(text.slice(2)) as [string, unknown]) };
  },
  /** All leave, and all come at once: the ms until every guest is level. */
  async stormOurs({ port }: { port: number }) {
    for (const guest of ours) guest.close();
    const level = lastOf(auths.length);
    ours = await connectAll(port, auths, auths.length, stage);
    return { ms: await level };
  },
  async stormBare({ port }: { port: number }) {
    for (const guest of bare) guest.close();
    const level = lastOf(auths.length);
    bare = await connectAll(port, auths, auths.length);
    return { ms: await level };
  },
  /** Every guest saves a note every 2 s; the ms until each is acknowledged. */
  async notes({ rounds }: { rounds: number }) {
    const pour = stage.view.glasses.find((glass) => glass.pour !== null)?.pour?.id;
    const waits: number[] = [];
    const revisions = ours.map(() => 0);
    const saveOne = async (index: number, round: number): Promise<void> => {
      const began = performance.now();
      const save = {
        id: newId(),
        pour,
        field: 'nose',
        value: `pears and hay, look ${round}`,
        base: revisions[index],
      };
      const answer = (await ours[index]?.ask('note:save', save)) as {
        ok: boolean;
        revision: number;
        code?: string;
      };
      if (!answer.ok) throw new Error(`A note was refused: ${answer.code}`);
      revisions[index] = answer.revision;
      waits.push(performance.now() - began);
    };
    for (let round = 0; round < rounds; round += 1) {
      const saves = ours.map(
        (_, index) =>
          new Promise<void>((done, fail) => {
            // Phones do not keep step: each begins at a moment of its own within the two seconds.
            setTimeout(() => saveOne(index, round).then(done, fail), (index * 2000) / ours.length);
          }),
      );
      await Promise.all(saves);
    }
    return { waits };
  },
});
