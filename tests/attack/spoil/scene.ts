import { aPlan } from '../../server/support/plans.ts';
import { forgetFolder, type SpawnedServer, spawnServer, temporaryFolder } from '../../support/server.ts';
import { RawDevice } from './raw-device.ts';

export interface OpenEvening {
  readonly tasting: string;
  readonly code: string;
  readonly hostKey: string;
}

/** A server in a process of its own with two evenings: one that is attacked, and one whose host only wants to go on. */
export interface Scene {
  readonly server: SpawnedServer;
  readonly attacked: OpenEvening;
  readonly other: OpenEvening;
  /** Of the other evening. */
  readonly host: RawDevice;
  close(): Promise<void>;
}

let ids = 0;
export const anId = (): string => {
  ids += 1;
  return `spoil-${process.pid}-${String(ids).padStart(8, '0')}`;
};

export const shownBy = (role: string, tasting: string, key: string) => ({ protocol: 1, role, tasting, key });

export interface HttpAnswer {
  readonly status: number;
  readonly body: Record<string, unknown>;
}

export async function askServer(
  origin: string,
  method: string,
  path: string,
  { key, body, from }: { readonly key?: string; readonly body?: object; readonly from?: string } = {},
): Promise<HttpAnswer> {
  const answer = await fetch(origin + path, {
    method,
    headers: {
      'content-type': 'application/json',
      ...(key === undefined ? {} : { authorization: `Bearer ${key}` }),
      ...(from === undefined ? {} : { 'x-forwarded-for': from }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const text = await answer.text();
  return { status: answer.status, body: text === '' ? {} : (JSON.parse(text) as HttpAnswer['body']) };
}

/** A seat of an evening, with the key that opens it. Throws when there is none. */
export async function takeSeat(origin: string, code: string, from?: string): Promise<string> {
  const key = anId().padEnd(30, 'k');
  const body = { id: anId(), code, key, name: 'Mallory', leftHanded: false, remote: false };
  const { status } = await askServer(origin, 'POST', '/api/seats', { body, ...(from && { from }) });
  if (status !== 201) throw new Error(`No seat was given: ${status}.`);
  return key;
}

/** @param bundle made by `bundleServer` */
export async function openScene(bundle: string): Promise<Scene> {
  const folder = await temporaryFolder();
  const server = await spawnServer({ folder, bundle });
  const open = async () => {
    const made = await askServer(server.origin, 'POST', '/api/tastings', {
      key: server.houseKey,
      body: { plan: aPlan() },
    });
    const evening = made.body as unknown as OpenEvening;
    const host = await RawDevice.enter(server.origin, shownBy('host', evening.tasting, evening.hostKey));
    for (const ask of [{ type: 'OpenDoors' }, { type: 'JumpTo', cue: 'one/first/look' }]) {
      await host.ask('host:ask', { id: anId(), ask });
    }
    return { evening, host };
  };
  const [attacked, other] = [await open(), await open()];
  attacked.host.close();
  return {
    server,
    attacked: attacked.evening,
    other: other.evening,
    host: other.host,
    async close() {
      other.host.close();
      await server.stop();
      await forgetFolder(folder);
    },
  };
}

/** Ms until a tap of the other evening's host was answered, the middle one of so many, one after the other. */
export async function tap({ host }: Pick<Scene, 'host'>, times: number): Promise<number> {
  const taken: number[] = [];
  for (let time = 0; time < times; time += 1) {
    const cue = time % 2 === 0 ? 'one/first/nose' : 'one/first/look';
    const begun = performance.now();
    await host.ask('host:ask', { id: anId(), ask: { type: 'JumpTo', cue } });
    taken.push(performance.now() - begun);
    // As often as a host may ask; what is asked too fast is answered sooner.
    await new Promise((resolve) => setTimeout(resolve, 60));
  }
  return taken.sort((a, b) => a - b)[Math.floor(taken.length / 2)] ?? Number.POSITIVE_INFINITY;
}
