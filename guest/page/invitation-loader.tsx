import type { ComponentChild } from 'preact';
import { useCallback, useEffect, useMemo } from 'preact/hooks';
import { requestServer } from '../../shared/page/server-request.ts';
import { useAnswer } from '../../shared/page/use-answer.ts';
import { tidyCode } from '../../shared/seats/seat-link.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { Invitation } from '../../shared/wire/http.ts';
import { doorWords, refusalSentence } from './door-words.ts';
import { PageTitle } from './page-title.tsx';

const codeHere = (): string => tidyCode(decodeURI(window.location.pathname).split('/')[2] ?? '');

interface InvitationLoaderProps {
  /** Of the page, by that of the tasting, which is empty until it is known. */
  readonly titleOf: (tasting: string) => string;
  readonly children: (code: string, invitation: Invitation) => ComponentChild;
}

/** A page before the evening that begins with the code in its link: it looks for that tasting, or says why there is none. */
export function InvitationLoader({ titleOf, children }: InvitationLoaderProps) {
  const code = useMemo(codeHere, []);
  const ask = useCallback(
    () =>
      code === ''
        ? Promise.resolve({ ok: false, code: 'malformed' } as const)
        : requestServer<Invitation>(`/api/invitations/${encodeURIComponent(code)}`),
    [code],
  );
  const { now, again } = useAnswer(ask);
  const title = titleOf(now.is === 'here' ? now.body.title : '');
  useEffect(() => {
    document.title = title;
  }, [title]);

  if (now.is === 'here') return <>{children(code, now.body)}</>;
  if (now.is === 'loading' && code !== '')
    return (
      <main class="page">
        <h1 class="visually-hidden">{title}</h1>
        <p class="soft">{doorWords.looking}</p>
      </main>
    );
  return (
    <main class="page">
      <PageTitle>{title}</PageTitle>
      <Notice kind="info">
        {now.is === 'failed' && code !== '' ? refusalSentence(now.code) : doorWords.noCode}
      </Notice>
      {code !== '' && (
        <Button kind="primary" onPress={again}>
          {doorWords.again}
        </Button>
      )}
    </main>
  );
}
