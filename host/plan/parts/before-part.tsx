import { useEffect, useState } from 'preact/hooks';
import { type PreparationStep, preparationSteps } from '../../../core/tasting.ts';
import { beforeEveningWords as said } from '../../../shared/language/en/before-evening.ts';
import { Switch } from '../../../shared/ui/switch.tsx';
import { DeviceReports } from '../../evening/device-reports.tsx';
import { hrefOf, type Route } from '../../route.ts';
import type { StoredPlanEditor } from '../plan-editor.ts';

/** Everything before the evening in order of time, each with its way there and whether it is done. */
export function BeforePart({ editor, stored, api }: StoredPlanEditor) {
  const { tasting } = stored;
  const plan = editor.draft.plan.value;
  // Vials are filled for guests at home only.
  const steps = preparationSteps.filter((step) => step !== 'vials' || plan.remoteGuests > 0);
  const done = new Set(plan.prepared);
  const [answered, setAnswered] = useState(0);
  useEffect(() => {
    let gone = false;
    void api.crowd(tasting).then((answer) => {
      if (!gone && answer.ok) setAnswered(answer.body.answered);
    });
    return () => {
      gone = true;
    };
  }, [api, tasting]);
  const turn = (step: PreparationStep, is: boolean): void =>
    editor.edit((now) => ({
      ...now,
      prepared: preparationSteps.filter((each) => (each === step ? is : now.prepared.includes(each))),
    }));
  const known: Partial<Record<PreparationStep, string>> = {
    ...(answered > 0 ? { survey: said.answered(answered) } : {}),
    ...(plan.startsAt === undefined ? { invitation: said.needsDate } : {}),
  };
  const pages: Readonly<Record<PreparationStep, Route>> = {
    survey: { page: 'plan', tasting, part: 'guests' },
    invitation: { page: 'invite', tasting },
    vials: { page: 'pouring', tasting },
    ahead: { page: 'ahead', tasting },
    paper: { page: 'print', tasting, kind: 'mats' },
    pouring: { page: 'pouring', tasting },
  };
  return (
    <>
      <p class="soft">{said.lead}</p>
      <p class="figures">{said.summary(steps.filter((step) => done.has(step)).length, steps.length)}</p>
      <ol class="plain-list">
        {steps.map((step) => {
          const { name, when, hint, go } = said.steps[step];
          const is = done.has(step);
          return (
            <li key={step} class="before-step">
              <Switch
                label={name}
                hint={`${when} · ${is ? said.whenDone : said.whenOpen}`}
                on={is}
                onTurn={(on) => turn(step, on)}
              />
              <p class="soft">
                {hint} {known[step]}
              </p>
              <a class="button" href={hrefOf(pages[step])}>
                {go}
              </a>
            </li>
          );
        })}
      </ol>
      {plan.remoteGuests > 0 && (
        <DeviceReports api={api} tasting={tasting} expected={plan.remoteGuests} early />
      )}
    </>
  );
}
