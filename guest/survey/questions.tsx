import { useState } from 'preact/hooks';
import { allergenWords } from '../../shared/language/en/allergens.ts';
import { requestServer } from '../../shared/page/server-request.ts';
import { AllergenPick } from '../../shared/ui/allergen-pick.tsx';
import { Button } from '../../shared/ui/button.tsx';
import { Choice } from '../../shared/ui/choice.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { Invitation, SurveyReply } from '../../shared/wire/http.ts';
import { refusalSentence } from '../page/door-words.ts';
import { PageTitle } from '../page/page-title.tsx';
import type { Answers, KeptSurvey } from './answer-storage.ts';
import { questions, words } from './language.ts';

interface QuestionsProps {
  readonly code: string;
  readonly invitation: Invitation;
  readonly survey: KeptSurvey;
  readonly onChange: (answers: Answers) => void;
  readonly onSent: () => void;
}

const scores = ['0', '1', '2', '3'] as const;
const scoreOf = { '0': 0, '1': 1, '2': 2, '3': 3 } as const;

export function Questions({ code, invitation, survey, onChange, onSent }: QuestionsProps) {
  const { answers, respondent } = survey;
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const send = async (): Promise<void> => {
    if (Object.keys(answers).length === 0) return setProblem(words.none);
    setBusy(true);
    setProblem(undefined);
    const body: SurveyReply = { respondent, answers };
    const path = `/api/invitations/${encodeURIComponent(code)}/survey`;
    const answer = await requestServer<null>(path, { method: 'PUT', body });
    setBusy(false);
    if (answer.ok) onSent();
    else setProblem(refusalSentence(answer.code));
  };
  return (
    <main class="page survey">
      <header class="stack-tight">
        <PageTitle>{words.title(invitation.title)}</PageTitle>
        <p class="lead">{words.lead(invitation.hostName)}</p>
        <p class="soft small">{words.unnamed}</p>
      </header>
      {questions.map((question) => {
        const asked = words.questions[question];
        const given = answers[question];
        return (
          <section class="survey-question" key={question}>
            <Choice
              legend={asked.ask}
              options={scores.map((value) => ({ value, label: asked.answers[scoreOf[value]] }))}
              value={given === undefined ? undefined : scores[given]}
              onChoose={(value) => onChange({ ...answers, [question]: scoreOf[value] })}
            />
            {given !== undefined && (
              <Button
                kind="quiet"
                label={words.skipOf(asked.ask)}
                onPress={() => {
                  const { [question]: _, ...others } = answers;
                  onChange(others);
                }}
              >
                {words.skip}
              </Button>
            )}
          </section>
        );
      })}
      <section class="survey-question">
        <AllergenPick
          legend={allergenWords.avoid}
          hint={allergenWords.avoidHint}
          picked={answers.avoids ?? []}
          onPick={(picked) => {
            const { avoids: _, ...others } = answers;
            onChange(picked.length === 0 ? others : { ...others, avoids: picked });
          }}
        />
      </section>
      <div role="alert">{problem !== undefined && <Notice kind="info">{problem}</Notice>}</div>
      <Button kind="primary" size="big" busy={busy} onPress={() => void send()}>
        {survey.sent ? words.sendAgain : words.send}
      </Button>
      <LanguageChoice />
    </main>
  );
}
