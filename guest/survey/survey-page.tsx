import { useEffect, useMemo, useState } from 'preact/hooks';
import { requestServer } from '../../shared/page/server-request.ts';
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

type Looking =
  | { readonly is: 'looking' }
  | { readonly is: 'refused'; readonly sentence: string }
  | { readonly is: 'found'; readonly invitation: Invitation };

const codeHere = (): string => tidyCode(decodeURI(window.location.pathname).split('/')[2] ?? '');

/** Who is coming: five questions without an account, before the evening. */
export function SurveyPage() {
  const code = useMemo(codeHere, []);
  const [looking, setLooking] = useState<Looking>({ is: 'looking' });
  const look = async (): Promise<void> => {
    setLooking({ is: 'looking' });
    if (code === '') return setLooking({ is: 'refused', sentence: words.noCode });
    const answer = await requestServer<Invitation>(`/api/invitations/${encodeURIComponent(code)}`);
    setLooking(
      answer.ok
        ? { is: 'found', invitation: answer.body }
        : { is: 'refused', sentence: refusalSentence(answer.code) },
    );
  };
  useEffect(() => void look(), [code]);
  const title = words.title(looking.is === 'found' ? looking.invitation.title : '');
  useEffect(() => {
    document.title = title;
  }, [title]);

  switch (looking.is) {
    case 'looking':
      return (
        <main class="page">
          <h1 class="visually-hidden">{title}</h1>
          <p class="soft">{words.looking}</p>
        </main>
      );
    case 'refused':
      return (
        <main class="page">
          <PageTitle>{title}</PageTitle>
          <Notice kind="info">{looking.sentence}</Notice>
          {code !== '' && (
            <Button kind="primary" onPress={() => void look()}>
              {words.again}
            </Button>
          )}
        </main>
      );
    case 'found':
      return <Survey code={code} invitation={looking.invitation} />;
    default:
      return looking satisfies never;
  }
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
