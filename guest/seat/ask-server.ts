import { refusals } from '../../shared/language/en/refusals.ts';
import type { HttpAnswer } from '../../shared/wire/http.ts';
import type { RefusalCode } from '../../shared/wire/protocol.ts';
import { words } from '../language.ts';

export type ServerAnswer<Body> = HttpAnswer<Body> | { readonly ok: false; readonly code: 'no-answer' };

export interface Asked {
  /** A seat's key. */
  readonly key?: string;
  /** Sent as JSON with POST. */
  readonly body?: object;
}

const patience = 8000;

/** Never throws: a network that is gone and an answer that nobody understands are both `no-answer`. */
export async function askServer<Body>(path: string, { key, body }: Asked = {}): Promise<ServerAnswer<Body>> {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), patience);
  try {
    const response = await fetch(path, {
      method: body === undefined ? 'GET' : 'POST',
      headers: {
        ...(key === undefined ? {} : { Authorization: `Bearer ${key}` }),
        ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      cache: 'no-store',
      signal: stop.signal,
    });
    const answer: unknown = await response.json();
    if (response.ok) return { ok: true, body: answer as Body };
    return isRefusal(answer) ? answer : { ok: false, code: 'no-answer' };
  } catch {
    return { ok: false, code: 'no-answer' };
  } finally {
    clearTimeout(timer);
  }
}

/** What to do about it, in the language of the page. A code that this page does not know yet asks for patience. */
export function refusalSentence(code: string): string {
  return refusals[code as RefusalCode] ?? words.link.noAnswer;
}

const isRefusal = (answer: unknown): answer is Extract<HttpAnswer<never>, { ok: false }> =>
  typeof answer === 'object' && answer !== null && 'code' in answer && typeof answer.code === 'string';
