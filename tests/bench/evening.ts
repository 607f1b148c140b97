import type { CueId, TastingId } from '../../core/ids.ts';
import type { RunningOrderView } from '../../core/session/views/host.ts';
import type { StageUnderWay, StageView } from '../../core/session/views/stage.ts';
import type { Plan } from '../../core/tasting.ts';
import { protocolVersion } from '../../shared/wire/protocol.ts';
import { type StageChange, withStageChange } from '../../shared/wire/stage-change.ts';
import { inTurns, RawSocket } from './raw-socket.ts';

export interface OpenEvening {
  readonly tasting: TastingId;
  readonly code: string;
  readonly host: RawSocket;
  /** In order, as the host was told when the doors opened. */
  readonly cues: readonly CueId[];
}

const post = async (url: string, body: object, key?: string): Promise<never> => {
  const response = await fetch(url, {
    method: 'POST',
    headers: {
      'content-type': 'application/json',
      ...(key === undefined ? {} : { authorization: `Bearer ${key}` }),
    },
    body: JSON.stringify(body),
  });
  if (!response.ok) throw new Error(`${url}: ${response.status} ${await response.text()}`);
  return (await response.json()) as never;
};

let ids = 0;
export const newId = (): string => {
  ids += 1;
  return `bench-${process.pid}-${String(ids).padStart(9, '0')}`;
};

export async function openEvening(port: number, houseKey: string, plan: Plan): Promise<OpenEvening> {
  const url = `http://127.0.0.1:${port}`;
  const made: { tasting: TastingId; code: string; hostKey: string } = await post(
    `${url}/api/tastings`,
    { plan },
    houseKey,
  );
  const auth = { protocol: protocolVersion, role: 'host', tasting: made.tasting, key: made.hostKey };
  const cues: CueId[] = [];
  const host = await RawSocket.open(port, auth, (text) => {
    if (text.startsWith('42["running-order"') && cues.length === 0) cues.push(...cuesIn(text));
  });
  await host.ask('host:ask', { id: newId(), ask: { type: 'OpenDoors' } });
  return { tasting: made.tasting, code: made.code, host, cues };
}

/** Seats are taken over HTTP, as phones do; answers with what each needs to connect. */
export async function takeSeats(port: number, evening: OpenEvening, count: number): Promise<object[]> {
  const auths: object[] = [];
  await inTurns(Array.from({ length: count }), 50, async () => {
    const key = `key-of-a-guest-${newId()}`;
    const name = `Guest ${auths.length + 1}`;
    await post(`http://127.0.0.1:${port}/api/seats`, {
      id: newId(),
      code: evening.code,
      key,
      name,
      leftHanded: false,
      remote: false,
    });
    auths.push({ protocol: protocolVersion, role: 'guest', tasting: evening.tasting, key });
  });
  return auths;
}

/** The stage as one guest is told of it: whole on coming in, then what is new. */
export const isStage = (text: string): boolean => /^42\["(stage|news)"/.test(text);
export class ToldStage {
  #view: StageView | undefined;

  hear(text: string): void {
    if (!isStage(text)) return;
    const [event, told] = JSON.parse(text.slice(2)) as ['stage', StageView] | ['news', StageChange];
    if (event === 'stage') this.#view = told;
    else if (this.#view !== undefined) this.#view = withStageChange(this.#view, told);
  }
  get view(): StageView {
    if (this.#view === undefined) throw new Error('Nobody was told of the stage.');
    return this.#view;
  }
  /** Under way. */
  get cue(): StageUnderWay['cue'] {
    return (this.view as StageUnderWay).cue;
  }
}
const cuesIn = (text: string): CueId[] =>
  (JSON.parse(text.slice(2)) as [string, RunningOrderView])[1].cues.map(({ id }) => id);
