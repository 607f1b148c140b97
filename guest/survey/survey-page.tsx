import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import { requestServer } from '../../shared/page/server-request.ts';
import { useAnswer } from '../../shared/page/use-answer.ts';
import { newRespondent } from '../../shared/seats/new-id.ts';
import { tidyCode } from '../../shared/seats/seat-link.ts';
import { Button } from '../../shared/ui/button.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { Invitation } from '../../shared/wire/http.ts';
import { PageTitle } from '../page/page-title.tsx';
import { type KeptSurvey, keepSurvey, readSurvey } from './answer-storage.ts';
import { questions, refusalSentence, words } from './language.ts';
import { Questions } from './questions.tsx';

const codeHere = (): string => tidyCode(decodeURI(window.location.pathname).split('/')[2] ?? '');

/** Who is coming: five questions without an account, before the evening. */
export function SurveyPage() {
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

  if (now.is === 'here') return <Survey code={code} invitation={now.body} />;
  if (now.is === 'loading' && code !== '')
    return (
      <main class="page">
        <h1 class="visually-hidden">{title}</h1>
        <p class="soft">{words.looking}</p>
      </main>
    );
  return (
    <main class="page">
      <PageTitle>{title}</PageTitle>
      <Notice kind="info">
        {now.is === 'failed' && code !== '' ? refusalSentence(now.code) : words.noCode}
      </Notice>
      {code !== '' && (
        <Button kind="primary" onPress={again}>
          {words.again}
        </Button>
      )}
    </main>
  );
}

interface SurveyProps {
  readonly code: string;
  readonly invitation: Invitation;
}

function Survey({ code, invitation }: SurveyProps) {
  const [survey, setSurvey] = useState<KeptSurvey>(
    () => readSurvey(code, questions) ?? { respondent: newRespondent(), answers: {}, sent: false },
  );
  const [page, setPage] = useState<'questions' | 'thanks'>(survey.sent ? 'thanks' : 'questions');
  const [kept, setKept] = useState(true);
  const door = `/j/${encodeURIComponent(code)}`;

  if (invitation.stage !== 'planned') {
    const over = invitation.stage === 'finished';
    return (
      <main class="page">
        <PageTitle>{words.title(invitation.title)}</PageTitle>
        <Notice kind="info">{over ? words.finished : words.begun}</Notice>
        {!over && (
          <a class="button button-primary" href={door}>
            {words.comeIn}
          </a>
        )}
      </main>
    );
  }
  switch (page) {
    case 'questions':
      return (
        <Questions
          code={code}
          invitation={invitation}
          survey={survey}
          onChange={(answers) => {
            const changed = { ...survey, answers };
            setSurvey(changed);
            // A page that is loaded anew, as in another language, goes on from here.
            keepSurvey(code, changed);
          }}
          onSent={() => {
            const sent = { ...survey, sent: true };
            setSurvey(sent);
            setKept(keepSurvey(code, sent));
            setPage('thanks');
          }}
        />
      );
    case 'thanks':
      return (
        <main class="page">
          <PageTitle>{words.thanksTitle}</PageTitle>
          <p class="lead">{words.thanks}</p>
          {!kept && <Notice kind="info">{words.notKept}</Notice>}
          <a class="button button-primary" href={door}>
            {words.whenAndWhere}
          </a>
          <Button onPress={() => setPage('questions')}>{words.change}</Button>
          <LanguageChoice />
        </main>
      );
    default:
      return page satisfies never;
  }
}
