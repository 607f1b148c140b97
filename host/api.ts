import type { PhotoId, TastingId } from '../core/ids.ts';
import type { EveningRecap } from '../core/recap/evening-recap.ts';
import type { Plan } from '../core/tasting.ts';
import { requestServer, type ServerRequest } from '../shared/page/server-request.ts';
import type { HttpAnswer } from '../shared/wire/answer.ts';
import type { DeviceReports } from '../shared/wire/device-check.ts';
import type {
  CreatedTasting,
  CreateTasting,
  CrowdView,
  HouseOffer,
  IssuedKey,
  KeptPhoto,
  NewKey,
  OpenedHouse,
  Opening,
  SavePlan,
  StoredPlan,
  TastingPage,
} from '../shared/wire/http.ts';
import type { HostKeys } from './access/host-keys.ts';

/** The host's side of what goes over HTTP. Never throws: a failure is an answer too. */
export type HostApi = ReturnType<typeof createHostApi>;

export function createHostApi(keys: Pick<HostKeys, 'house' | 'keyFor'>) {
  const send = <Body>(
    key: string | undefined,
    path: string,
    more?: ServerRequest,
  ): Promise<HttpAnswer<Body>> =>
    key === undefined
      ? Promise.resolve({ ok: false, code: 'wrong-key' })
      : requestServer<Body>(`/api/tastings${path}`, { ...more, key });
  const ask = <Body>(tasting: TastingId, path: string, more?: ServerRequest): Promise<HttpAnswer<Body>> =>
    send<Body>(keys.keyFor(tasting), `/${tasting}${path}`, more);
  return {
    /** @param after `next` of the page before; null for the first */
    listTastings: (find: string, after: string | null) =>
      send<TastingPage>(
        keys.house(),
        `/list?${new URLSearchParams({ find, ...(after === null ? {} : { after }) })}`,
      ),
    houseOffer: () => requestServer<HouseOffer | null>('/api/houses'),
    makeHouse: (language: string) => requestServer<OpenedHouse>('/api/houses', { body: { language } }),
    createTasting: (plan: Plan) =>
      send<CreatedTasting>(keys.house(), '', { body: { plan } satisfies CreateTasting }),
    plan: (tasting: TastingId) => ask<StoredPlan>(tasting, '/plan'),
    opening: (tasting: TastingId) => ask<Opening>(tasting, '/opening'),
    savePlan: (tasting: TastingId, body: SavePlan) =>
      ask<{ readonly revision: number }>(tasting, '/plan', { method: 'PUT', body }),
    crowd: (tasting: TastingId) => ask<CrowdView>(tasting, '/crowd'),
    deviceReports: (tasting: TastingId) => ask<DeviceReports>(tasting, '/kits'),
    keepPhoto: (tasting: TastingId, body: Blob) => ask<KeptPhoto>(tasting, '/photos', { body }),
    dropPhoto: (tasting: TastingId, photo: PhotoId) =>
      ask<null>(tasting, `/photos/${photo}`, { method: 'DELETE' }),
    withdrawHelpers: (tasting: TastingId) => ask<undefined>(tasting, '/keys/helper', { method: 'DELETE' }),
    issueKey: (tasting: TastingId, body: NewKey) => ask<IssuedKey>(tasting, '/keys', { body }),
    recap: (tasting: TastingId) => ask<EveningRecap>(tasting, '/recap'),
    /** The text of the file. */
    recapFile: (tasting: TastingId, kind: 'csv' | 'json') =>
      ask<string>(tasting, `/recap.${kind}`, { read: 'text' }),
    deleteTasting: (tasting: TastingId) => ask<null>(tasting, '', { method: 'DELETE' }),
    /** What is stored of an evening that cannot be read: the text of a file. */
    asItLies: (tasting: TastingId) => ask<string>(tasting, '/as-it-lies', { read: 'text' }),
    /** An evening that rests after a fault tries again. */
    wake: (tasting: TastingId) => ask<null>(tasting, '/wake', { method: 'POST' }),
    /** Lets a room screen in, or sends it away. */
    answerScreen: (tasting: TastingId, screen: string, admit: boolean) =>
      ask<null>(tasting, `/screens/${encodeURIComponent(screen)}`, { body: { admit } }),
    /** All room screens go dark. */
    dismissScreens: (tasting: TastingId) => ask<null>(tasting, '/screens', { method: 'DELETE' }),
  };
}
