import { useMemo, useState } from 'preact/hooks';
import { levels, vocabularies } from '../../../core/drinks/drink-kinds.ts';
import { adviseCrowd, crowdQuestions, type SurveyAnswers } from '../../../core/planning/theme/crowd.ts';
import { type Level, limits, termsOf, usualFlights } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Choice, optionsOf } from '../../../shared/ui/choice.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import { AdviceWords } from '../crowd/advice-words.tsx';
import { CrowdSurvey } from '../crowd/crowd-survey.tsx';
import { Fold } from '../fields/fold.tsx';
import { NumberField } from '../fields/number-field.tsx';
import type { PlanEditor, StoredPlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';

export function GuestsPart({ editor, stored, api }: StoredPlanEditor) {
  const plan = editor.draft.plan.value;
  const said = words.guests;
  // It shows nothing of the plan: what is typed above does not concern it.
  const mixed = useMemo(() => <MixedCrowd editor={editor} />, [editor]);
  const usual = usualFlights[plan.level].reduce((sum, size) => sum + size, 0);
  const head = { least: 0, most: limits.guests, whole: true, wrong: said.tooMany } as const;
  return (
    <>
      <div class="plan-pair">
        <NumberField
          {...head}
          label={said.guests}
          value={plan.guests}
          onNumber={(guests) => guests !== undefined && editor.edit((now) => ({ ...now, guests }))}
        />
        <NumberField
          {...head}
          label={said.remote}
          value={plan.remoteGuests}
          onNumber={(remoteGuests) =>
            remoteGuests !== undefined && editor.edit((now) => ({ ...now, remoteGuests }))
          }
        />
      </div>
      {plan.guests + plan.remoteGuests === 0 && <p class="soft">{said.nobody}</p>}
      <Choice
        legend={said.level}
        options={optionsOf(levels, said.levels, said.levelHints)}
        value={plan.level}
        onChoose={(level) =>
          editor.edit((now) => ({ ...now, level, practice: level === 'newcomers' || now.practice }))
        }
        across
      />
      <Choice
        legend={said.terms}
        options={optionsOf(vocabularies, said.termsOf, said.termsHints)}
        value={termsOf(plan)}
        onChoose={(terms) => editor.edit((now) => ({ ...now, terms }))}
        across
      />
      {plan.pours.length > 0 && (
        <p class="soft">{said.advice(words.levels[plan.level], plan.pours.length, usual)}</p>
      )}
      <Switch
        label={words.course.practice}
        hint={words.course.practiceHint}
        on={plan.practice}
        onTurn={(practice) => editor.edit((now) => ({ ...now, practice }))}
      />
      <CrowdSurvey editor={editor} stored={stored} api={api} />
      {mixed}
    </>
  );
}

/** A guest whom the host knows by level answers as the middle of that level would. */
const typical: Readonly<Record<Level, 0 | 2 | 3>> = { newcomers: 0, regulars: 2, devotees: 3 };

function answersOf(level: Level): SurveyAnswers {
  return Object.fromEntries(crowdQuestions.map((question) => [question, typical[level]]));
}

function MixedCrowd({ editor }: { readonly editor: PlanEditor }) {
  const said = words.guests;
  const [counts, setCounts] = useState<Readonly<Record<Level, number>>>({
    newcomers: 0,
    regulars: 0,
    devotees: 0,
  });
  const surveys = levels.flatMap((level) => Array.from({ length: counts[level] }, () => answersOf(level)));
  const advice = adviseCrowd(surveys);
  return (
    <Fold title={said.spread}>
      <p class="soft">{said.spreadLead}</p>
      <div class="plan-pair">
        {levels.map((level) => (
          <NumberField
            key={level}
            label={said.count[level]}
            value={counts[level]}
            least={0}
            most={limits.guests}
            whole
            wrong={said.tooMany}
            onNumber={(count) => count !== undefined && setCounts({ ...counts, [level]: count })}
          />
        ))}
      </div>
      {advice.status === 'unknown' ? (
        <p class="soft">{said.noAdvice}</p>
      ) : (
        <>
          <AdviceWords advice={advice} />
          <div>
            <Button
              onPress={() =>
                editor.change(said.adviceTaken, (now) => ({
                  ...now,
                  level: advice.level,
                  practice: advice.practiceRound,
                  guests: Math.max(0, Math.min(limits.guests, surveys.length) - now.remoteGuests),
                }))
              }
            >
              {said.takeAdvice}
            </Button>
          </div>
        </>
      )}
    </Fold>
  );
}
