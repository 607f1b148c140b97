import type { ComponentChildren } from 'preact';
import { useCallback } from 'preact/hooks';
import { type Loading, useAnswer } from '../shared/page/use-answer.ts';
import type { FailureCode, HttpAnswer } from '../shared/wire/answer.ts';
import type { AppContext } from './app-context.ts';
import { sentenceFor } from './language.ts';
import { LoadingPage } from './loading-page.tsx';

type Ask<Body> = () => Promise<HttpAnswer<Body>>;

/** What a page of the host has asked for; a key that turns out to be wrong leads to the page that asks for the link. */
function useHostAnswer<Body>(
  app: AppContext,
  ask: Ask<Body>,
): { readonly now: Loading<Body>; readonly again: () => void } {
  const guarded = useCallback(async () => {
    const answer = await ask();
    if (!answer.ok && answer.code === 'wrong-key') app.askForLink();
    return answer;
  }, [app, ask]);
  return useAnswer(guarded);
}

interface LoadedPageProps<Body> {
  readonly app: AppContext;
  readonly ask: Ask<Body>;
  readonly title?: string;
  readonly sentence?: (code: FailureCode) => string;
  readonly children: (body: Body) => ComponentChildren;
}

/** A page that is nothing without its answer: on its way, failed, or here. Keep `ask` the same between renders. */
export function LoadedPage<Body>({
  app,
  ask,
  title,
  sentence = sentenceFor,
  children,
}: LoadedPageProps<Body>) {
  const { now, again } = useHostAnswer(app, ask);
  if (now.is === 'here') return <>{children(now.body)}</>;
  return (
    <LoadingPage
      title={title}
      failed={now.is === 'failed' ? sentence(now.code) : undefined}
      onRetry={again}
    />
  );
}
