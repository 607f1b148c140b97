import { useState } from 'preact/hooks';
import { newRespondent } from '../../shared/seats/new-id.ts';
import { Button } from '../../shared/ui/button.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { Invitation } from '../../shared/wire/http.ts';
import { InvitationLoader } from '../page/invitation-loader.tsx';
import { PageTitle } from '../page/page-title.tsx';
import { type KeptSurvey, keepSurvey, readSurvey } from './answer-storage.ts';
import { questions, words } from './language.ts';
import { Questions } from './questions.tsx';

/** Who is coming: five questions without an account, before the evening. */
export const SurveyPage = () => (
  <InvitationLoader titleOf={words.title}>
    {(code, invitation) => <Survey code={code} invitation={invitation} />}
  </InvitationLoader>
);

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
