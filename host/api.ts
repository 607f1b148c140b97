import type { TastingId } from '../core/ids.ts';
import type { Plan } from '../core/tasting.ts';
import type {
  CreatedTasting,
  CreateTasting,
  IssuedKey,
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
  issueKey(tasting: TastingId, wanted: NewKey): Promise<Answer<IssuedKey>>;
}

export interface HostApiOptions {
  readonly houseKey: () => string | undefined;
  readonly keyFor: (tasting: TastingId) => string | undefined;
  readonly fetch?: typeof fetch;
  /** Ms after which a server that says nothing counts as not there. */
  readonly patience?: number;
}

type Method = 'GET' | 'POST' | 'PUT';

export function createHostApi(options: HostApiOptions): HostApi {
  const send = options.fetch ?? ((input, init) => fetch(input, init));

  async function ask<Body>(
    method: Method,
    path: string,
    key: string | undefined,
    body?: unknown,
  ): Promise<Answer<Body>> {
    if (key === undefined) return { ok: false, code: 'wrong-key' };
    try {
      const response = await send(`/api/tastings${path}`, {
        method,
        headers: {
          Authorization: `Bearer ${key}`,
          ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
        },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
        signal: AbortSignal.timeout(options.patience ?? 10_000),
        cache: 'no-store',
      });
      const answer: unknown = await response.json();
      if (response.ok) return { ok: true, body: answer as Body };
      return { ok: false, code: codeIn(answer) };
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
    issueKey: (tasting, wanted) => ask('POST', `/${tasting}/keys`, keyFor(tasting), wanted),
  };
}

/** What stands between, such as a proxy, answers without a code of ours: then the server itself has not answered. */
function codeIn(answer: unknown): FailureCode {
  return typeof answer === 'object' && answer !== null && 'code' in answer && typeof answer.code === 'string'
    ? (answer.code as RefusalCode)
    : 'no-answer';
}
