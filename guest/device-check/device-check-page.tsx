import { useCallback, useEffect, useMemo } from 'preact/hooks';
import { requestServer } from '../../shared/page/server-request.ts';
import { useAnswer } from '../../shared/page/use-answer.ts';
import { tidyCode } from '../../shared/seats/seat-link.ts';
import { Button } from '../../shared/ui/button.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { Invitation } from '../../shared/wire/http.ts';
import { PageTitle } from '../page/page-title.tsx';
import { DeviceCheck } from './device-check.tsx';
import { doorWords, refusalSentence, words } from './language.ts';
import { TellHost } from './tell-host.tsx';

const codeHere = (): string => tidyCode(decodeURI(window.location.pathname).split('/')[2] ?? '');

/** Before the evening, for whoever joins from home: does what the call needs work on this device? */
export function DeviceCheckPage() {
  const code = useMemo(codeHere, []);
  const ask = useCallback(
    () =>
      code === ''
        ? Promise.resolve({ ok: false, code: 'malformed' } as const)
        : requestServer<Invitation>(`/api/invitations/${encodeURIComponent(code)}`),
    [code],
  );
  const { now, again } = useAnswer(ask);
  const title = words.title(now.is === 'here' ? now.body.title : '');
  useEffect(() => {
    document.title = title;
  }, [title]);

  if (now.is === 'here')
    return now.body.stage === 'finished' ? (
      <main class="page">
        <PageTitle>{title}</PageTitle>
        <Notice kind="info">{words.finished}</Notice>
      </main>
    ) : (
      <Check code={code} invitation={now.body} />
    );
  return (
    <main class="page">
      <PageTitle>{title}</PageTitle>
      {now.is === 'loading' && code !== '' ? (
        <p class="soft">{doorWords.looking}</p>
      ) : (
        <Notice kind="info">
          {now.is === 'failed' && code !== '' ? refusalSentence(now.code) : doorWords.noCode}
        </Notice>
      )}
      {now.is === 'failed' && code !== '' && (
        <Button kind="primary" onPress={again}>
          {doorWords.again}
        </Button>
      )}
    </main>
  );
}

function Check({ code, invitation }: { readonly code: string; readonly invitation: Invitation }) {
  return (
    <main class="page">
      <header class="stack-tight">
        <PageTitle>{words.title(invitation.title)}</PageTitle>
        <p class="lead">{words.lead}</p>
        <p class="soft small">{words.private}</p>
      </header>
      <DeviceCheck callLink={invitation.callLink}>
        {(tried) => <TellHost code={code} tried={tried} />}
      </DeviceCheck>
      <p class="soft small">{words.reach[invitation.callReach]}</p>
      <a class="button button-quiet" href={`/j/${encodeURIComponent(code)}`}>
        {words.whenAndWhere}
      </a>
      <LanguageChoice />
    </main>
  );
}
