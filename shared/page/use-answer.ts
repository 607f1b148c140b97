import { useCallback, useEffect, useState } from 'preact/hooks';
import type { FailureCode, HttpAnswer } from '../wire/answer.ts';

/** What a page has asked the server for. */
export type Loading<Body> =
  | { readonly is: 'loading' }
  | { readonly is: 'failed'; readonly code: FailureCode }
  | { readonly is: 'here'; readonly body: Body };

/** Asks when the page comes, and once more whenever `again` is called. Keep `ask` the same function between renders. */
export function useAnswer<Body>(ask: () => Promise<HttpAnswer<Body>>): {
  readonly now: Loading<Body>;
  readonly again: () => void;
} {
  const [now, setNow] = useState<Loading<Body>>({ is: 'loading' });
  const again = useCallback((): void => {
    void ask().then((answer) =>
      setNow(answer.ok ? { is: 'here', body: answer.body } : { is: 'failed', code: answer.code }),
    );
  }, [ask]);
  useEffect(again, [again]);
  return { now, again };
}
