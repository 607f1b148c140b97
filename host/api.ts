import type { PhotoId, TastingId } from '../core/ids.ts';
import type { EveningRecap } from '../core/recap/evening-recap.ts';
import type { Plan } from '../core/tasting.ts';
import type {
  CreatedTasting,
  CreateTasting,
  CrowdView,
  IssuedKey,
  KeptPhoto,
  ListedTasting,
  NewKey,
  SavePlan,
  StoredPlan,
} from '../shared/wire/http.ts';
import type { RefusalCode } from '../shared/wire/protocol.ts';

/** Why something could not be had; `no-answer` is a server that is not there. Put into words by `sentenceFor`. */
export type FailureCode = RefusalCode | 'no-answer';
export type Answer<Body> =
  | { readonly ok: true; readonly body: Body }
  | { readonly ok: false; readonly code: FailureCode };

/** The host's side of what goes over HTTP. Never throws: a failure is an answer too. */
export interface HostApi {
  listTastings(): Promise<Answer<readonly ListedTasting[]>>;
  createTasting(plan: Plan): Promise<Answer<CreatedTasting>>;
  plan(tasting: TastingId): Promise<Answer<StoredPlan>>;
  savePlan(tasting: TastingId, save: SavePlan): Promise<Answer<{ readonly revision: number }>>;
  crowd(tasting: TastingId): Promise<Answer<CrowdView>>;
  keepPhoto(tasting: TastingId, photo: Blob): Promise<Answer<KeptPhoto>>;
  dropPhoto(tasting: TastingId, photo: PhotoId): Promise<Answer<null>>;
  issueKey(tasting: TastingId, wanted: NewKey): Promise<Answer<IssuedKey>>;
  recap(tasting: TastingId): Promise<Answer<EveningRecap>>;
  /** The text of the file. */
  recapFile(tasting: TastingId, kind: 'csv' | 'json'): Promise<Answer<string>>;
  deleteTasting(tasting: TastingId): Promise<Answer<null>>;
  /** Lets a room screen in, or sends it away. */
  answerScreen(tasting: TastingId, screen: string, admit: boolean): Promise<Answer<null>>;
  /** All room screens go dark. */
  dismissScreens(tasting: TastingId): Promise<Answer<null>>;
}

export interface HostApiOptions {
  readonly houseKey: () => string | undefined;
  readonly keyFor: (tasting: TastingId) => string | undefined;
  readonly fetch?: typeof fetch;
  /** Ms after which a server that says nothing counts as not there; a photo is given longer. */
  readonly patience?: number;
}

type Method = 'GET' | 'POST' | 'PUT' | 'DELETE';

/** How an answer that was granted is read. */
type Reading = 'json' | 'text' | 'nothing';

export function createHostApi(options: HostApiOptions): HostApi {
  const send = options.fetch ?? ((input, init) => fetch(input, init));

  async function ask<Body>(
    method: Method,
    path: string,
    key: string | undefined,
    body?: unknown,
    reading: Reading = 'json',
  ): Promise<Answer<Body>> {
    if (key === undefined) return { ok: false, code: 'wrong-key' };
    try {
      const response = await send(`/api/tastings${path}`, {
        method,
        headers: {
          Authorization: `Bearer ${key}`,
          ...(body === undefined
            ? {}
            : { 'Content-Type': body instanceof Blob ? body.type : 'application/json' }),
        },
        ...(body === undefined ? {} : { body: body instanceof Blob ? body : JSON.stringify(body) }),
        signal: AbortSignal.timeout(options.patience ?? (body instanceof Blob ? 60_000 : 10_000)),
        cache: 'no-store',
      });
      if (!response.ok) return { ok: false, code: codeIn(await response.json()) };
      return { ok: true, body: (await bodyOf(response, reading)) as Body };
    } catch {
      return { ok: false, code: 'no-answer' };
    }
  }

  const { houseKey, keyFor } = options;
  return {
    listTastings: () => ask('GET', '', houseKey()),
    createTasting: (plan) => ask('POST', '', houseKey(), { plan } satisfies CreateTasting),
    plan: (tasting) => ask('GET', `/${tasting}/plan`, keyFor(tasting)),
    savePlan: (tasting, save) => ask('PUT', `/${tasting}/plan`, keyFor(tasting), save),
    crowd: (tasting) => ask('GET', `/${tasting}/crowd`, keyFor(tasting)),
    keepPhoto: (tasting, photo) => ask('POST', `/${tasting}/photos`, keyFor(tasting), photo),
    dropPhoto: (tasting, photo) =>
      ask('DELETE', `/${tasting}/photos/${photo}`, keyFor(tasting), undefined, 'nothing'),
    issueKey: (tasting, wanted) => ask('POST', `/${tasting}/keys`, keyFor(tasting), wanted),
    recap: (tasting) => ask('GET', `/${tasting}/recap`, keyFor(tasting)),
    recapFile: (tasting, kind) => ask('GET', `/${tasting}/recap.${kind}`, keyFor(tasting), undefined, 'text'),
    deleteTasting: (tasting) => ask('DELETE', `/${tasting}`, keyFor(tasting), undefined, 'nothing'),
    answerScreen: (tasting, screen, admit) =>
      ask('POST', `/${tasting}/screens/${encodeURIComponent(screen)}`, keyFor(tasting), { admit }, 'nothing'),
    dismissScreens: (tasting) => ask('DELETE', `/${tasting}/screens`, keyFor(tasting), undefined, 'nothing'),
  };
}

function bodyOf(response: Response, reading: Reading): Promise<unknown> {
  switch (reading) {
    case 'json':
      return response.json();
    case 'text':
      return response.text();
    case 'nothing':
      return Promise.resolve(null);
    default:
      return reading satisfies never;
  }
}

/** What stands between, such as a proxy, answers without a code of ours: then the server itself has not answered. */
function codeIn(answer: unknown): FailureCode {
  return typeof answer === 'object' && answer !== null && 'code' in answer && typeof answer.code === 'string'
    ? (answer.code as RefusalCode)
    : 'no-answer';
}
