import type { HttpAnswer } from '../../shared/wire/http.ts';

export type ServerAnswer<Body> = HttpAnswer<Body> | { readonly ok: false; readonly code: 'no-answer' };

export interface Asked {
  /** A seat's key. */
  readonly key?: string;
  /** Sent as JSON, with POST unless another method is named. */
  readonly body?: object;
  readonly method?: 'PUT' | 'DELETE';
}

const patience = 8000;

/** Never throws: a network that is gone and an answer that nobody understands are both `no-answer`. */
export async function requestServer<Body>(
  path: string,
  { key, body, method }: Asked = {},
): Promise<ServerAnswer<Body>> {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), patience);
  try {
    const response = await fetch(path, {
      method: method ?? (body === undefined ? 'GET' : 'POST'),
      headers: {
        ...(key === undefined ? {} : { Authorization: `Bearer ${key}` }),
        ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      cache: 'no-store',
      signal: stop.signal,
    });
    const answer: unknown = response.status === 204 ? null : await response.json();
    if (response.ok) return { ok: true, body: answer as Body };
    return isRefusal(answer) ? answer : { ok: false, code: 'no-answer' };
  } catch {
    return { ok: false, code: 'no-answer' };
  } finally {
    clearTimeout(timer);
  }
}

const isRefusal = (answer: unknown): answer is Extract<HttpAnswer<never>, { ok: false }> =>
  typeof answer === 'object' && answer !== null && 'code' in answer && typeof answer.code === 'string';
