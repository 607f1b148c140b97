import type { WebSocket } from 'ws';
import { type CueId, cueId } from '../../core/ids.ts';
import { planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import { answerParent } from './child.ts';
import { cueIn, isStage, newId, type OpenEvening, openEvening, stageIn, takeSeats } from './evening.ts';
import { inTurns, openPlain, RawSocket } from './raw-socket.ts';

/** All guests and both hosts of a run in one process, with one clock for both ends of a tap. */
let evening: OpenEvening | undefined;
let cue: CueId = cueId('gathering');
let auths: object[] = [];
let ours: RawSocket[] = [];
let floorHost: WebSocket | undefined;
let stageFrame = '';

/** Called with every stage frame that reaches a guest. */
let arrived: (text: string) => void = () => undefined;

const hear = (text: string): void => {
  if (isStage(text)) arrived(text);
};

/** Resolves with the ms from now until `count` guests have a stage frame that is not of the kind to pass over. */
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

async function connectAll(port: number, atOnce: number): Promise<void> {
  ours = [];
  await inTurns(auths, atOnce, async (auth) => {
    ours.push(await RawSocket.open(port, auth, hear));
  });
}

answerParent({
  async joinOurs({ port, houseKey, guests }: { port: number; houseKey: string; guests: number }) {
    evening = await openEvening(port, houseKey, planSchema.parse(demoEvening));
    auths = await takeSeats(port, evening, guests);
    const level = lastOf(guests);
    await connectAll(port, 200);
    await level;
    return { frame: stageFrame };
  },
  async joinFloor({ port, guests }: { port: number; guests: number }) {
    await inTurns(Array.from({ length: guests }), 200, async () => {
      await openPlain(port, '/', (text) => arrived(text));
    });
    floorHost = await openPlain(port, '/host', () => undefined);
    return {};
  },
  view: () => stageIn(stageFrame),
  async tapOurs({ guests }: { guests: number }) {
    const last = lastOf(guests);
    const answer = (await evening?.host.ask('host:ask', {
      id: newId(),
      ask: { type: 'Advance', from: cue },
    })) as {
      ok: boolean;
      code?: string;
    };
    if (!answer.ok) throw new Error(`The tap was refused: ${answer.code}`);
    const ms = await last;
    cue = cueIn(stageFrame);
    return { ms, bytes: stageFrame.length };
  },
  async toStart() {
    const last = lastOf(ours.length);
    await evening?.host.ask('host:ask', { id: newId(), ask: { type: 'JumpTo', cue: 'welcome' } });
    await last;
    cue = cueId('welcome');
    return {};
  },
  async tapFloor({ guests }: { guests: number }) {
    const last = lastOf(guests);
    floorHost?.send('tap');
    return { ms: await last, bytes: stageFrame.length };
  },
  /** All at once, until every guest is level again. */
  async reconnect({ port }: { port: number }) {
    for (const guest of ours) guest.close();
    const level = lastOf(auths.length);
    await connectAll(port, auths.length);
    return { ms: await level };
  },
  auths: () => auths,
  /** Every guest saves a note every 2 s for a while; the ms until each is acknowledged. */
  async notes({ rounds }: { rounds: number }) {
    const pour = stageIn(stageFrame).glasses.find((glass) => glass.pour !== null)?.pour?.id;
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
