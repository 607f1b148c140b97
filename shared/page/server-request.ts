import type { FailureCode, HttpAnswer } from '../wire/answer.ts';

export interface ServerRequest {
  /** Of a seat, a tasting or the house. */
  readonly key?: string | undefined;
  /** Sent as JSON, a photo as it is; with POST unless another method is named. */
  readonly body?: object | undefined;
  readonly method?: 'GET' | 'POST' | 'PUT' | 'DELETE';
  readonly read?: 'json' | 'text';
}

/** Ms after which a server that says nothing counts as not there; a photo is given longer. */
const patience = { usual: 10_000, photo: 60_000 };

/** How often it is asked again where a server has done nothing and is to be asked in 1 s, as while an evening changes hands. */
const askedAgain = 4;

/** Never throws: a network that is gone and an answer that nobody understands are both `no-answer`. */
export async function requestServer<Body>(
  path: string,
  { key, body, method = body === undefined ? 'GET' : 'POST', read = 'json' }: ServerRequest = {},
): Promise<HttpAnswer<Body>> {
  const photo = body instanceof Blob ? body : undefined;
  try {
    for (let again = askedAgain; ; again -= 1) {
      const response = await fetch(path, {
        method,
        headers: {
          ...(key === undefined ? {} : { Authorization: `Bearer ${key}` }),
          ...(body === undefined ? {} : { 'Content-Type': photo?.type ?? 'application/json' }),
        },
        ...(body === undefined ? {} : { body: photo ?? JSON.stringify(body) }),
        cache: 'no-store',
        signal: AbortSignal.timeout(photo ? patience.photo : patience.usual),
      });
      if (response.ok)
        return { ok: true, body: (response.status === 204 ? null : await response[read]()) as Body };
      if (response.headers.get('Retry-After') !== '1' || again === 0)
        return { ok: false, code: codeIn(await response.json()) };
      await new Promise((resolve) => setTimeout(resolve, 1000));
    }
  } catch {
    return { ok: false, code: 'no-answer' };
  }
}

/** What stands between, such as a proxy, answers without a code of ours: then the server itself has not answered. */
function codeIn(answer: unknown): FailureCode {
  return typeof answer === 'object' && answer !== null && 'code' in answer && typeof answer.code === 'string'
    ? (answer.code as FailureCode)
    : 'no-answer';
}
