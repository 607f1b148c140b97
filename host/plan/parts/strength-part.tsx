import { sources } from '../../../core/planning/figures/sources.ts';
import { standingCautions } from '../../../core/planning/strength/cautions.ts';
import { isAgeCountry, legalAges } from '../../../core/planning/strength/legal-ages.ts';
import { nationalAdvice } from '../../../core/planning/strength/national-advice.ts';
import { standardDrinks } from '../../../core/planning/strength/standard-drinks.ts';
import type { Plan } from '../../../core/tasting.ts';
import { strengthWords } from '../../../shared/language/en/plan-strength.ts';
import { Notice } from '../../../shared/ui/notice.tsx';
import { locale } from '../../locale.ts';
import { number } from '../../numbers.ts';
import { Fold } from '../fields/fold.tsx';
import { ReckoningSteps, sourceSentence } from '../fields/reckoning-steps.tsx';
import { SelectField } from '../fields/select-field.tsx';
import { pourVolume, type StrengthFigures, strengthOf } from '../figures/strength.ts';
import { drinksOf } from '../part-summaries.ts';
import type { PlanEditor } from '../plan-editor.ts';
import { volume } from '../volume.ts';
import { words } from '../words.ts';
import { StrengthNotice } from './strength-notice.tsx';

export function StrengthPart({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const figures = strengthOf(plan);
  const { evening, counted, unknown } = figures;
  const said = words.figures.strength;
  return (
    <>
      {counted.length === 0 ? (
        <p class="soft">{said.none}</p>
      ) : (
        <>
          <StrengthNotice editor={editor} />
          <div class="big-figure">
            <p class="soft">{said.total}</p>
            <p class="say">{said.grams(number(evening.total.mass, 1))}</p>
            <p>{drinksOf(evening.total.drinks, evening.standard)}</p>
          </div>
          {evening.caution.level === 'quiet' && <p class="soft">{said.quiet}</p>}
        </>
      )}
      {counted.length > 0 && unknown.length > 0 && (
        <Notice kind="caution">
          <p>{said.unknown(unknown.map(({ name }) => name).join(', '), unknown.length)}</p>
        </Notice>
      )}
      <Country editor={editor} />
      {counted.length > 0 && (
        <>
          <PourByPour plan={plan} figures={figures} />
          <ReckoningSteps steps={evening.total.reckoning} plan={plan} />
        </>
      )}
      <Cautions plan={plan} />
    </>
  );
}

function PourByPour({ plan, figures }: { readonly plan: Plan; readonly figures: StrengthFigures }) {
  const said = words.figures.strength;
  return (
    <Fold title={said.eachPour} small>
      <ol class="lines">
        {figures.counted.map((pour, index) => {
          const of = figures.evening.pours[index];
          if (of === undefined) return null;
          const grams = number(of.pour.mass, 1);
          return (
            <li key={index}>
              <span>{index < figures.trialsFrom ? pour.name : said.inTrial(pour.name)}</span>
              <span class="soft figures">
                {said.pourLine(
                  volume(pourVolume(pour, plan), plan.volumeUnit),
                  grams,
                  number(of.soFar.mass, 1),
                )}
              </span>
            </li>
          );
        })}
      </ol>
    </Fold>
  );
}

function countryName(code: string): string {
  try {
    return new Intl.DisplayNames([locale], { type: 'region' }).of(code) ?? code;
  } catch {
    return code;
  }
}

function Country({ editor }: { readonly editor: PlanEditor }) {
  const { lawOf } = editor.draft.plan.value;
  const known = new Set([...Object.keys(standardDrinks), ...Object.keys(legalAges)]);
  known.delete('WHO');
  if (lawOf !== undefined) known.add(lawOf);
  const options = [...known]
    .map((value) => ({ value, label: countryName(value) }))
    .sort((a, b) => a.label.localeCompare(b.label));
  const figures = strengthOf(editor.draft.plan.value);
  return (
    <>
      <SelectField
        label={words.guests.country}
        hint={figures.standIn ? words.figures.strength.standIn : words.guests.countryHint}
        value={lawOf ?? ''}
        options={[{ value: '', label: words.guests.noCountry }, ...options]}
        onChoose={(code) =>
          editor.edit(({ lawOf: _, ...now }) => (code === '' ? now : { ...now, lawOf: code }))
        }
      />
      <OwnAdvice plan={editor.draft.plan.value} figures={figures} />
    </>
  );
}

/** What the country's own public body advises, and whether the evening, swallowed, is above it. */
function OwnAdvice({ plan: { lawOf }, figures }: { readonly plan: Plan; readonly figures: StrengthFigures }) {
  if (!isAgeCountry(lawOf)) return null;
  const said = strengthWords;
  const advice = nationalAdvice[lawOf];
  const country = countryName(lawOf);
  return (
    <div class="stack-tight">
      <p>
        {advice.per === 'none'
          ? said.adviceNone(country)
          : said.advice(
              country,
              said.adviceAmount[advice.per](number(advice.women, 1), number(advice.men, 1)),
            )}
      </p>
      {advice.per !== 'none' && figures.evening.total.mass > advice.women && <p>{said.adviceAbove}</p>}
      <p class="small soft">{sourceSentence(sources[advice.source])}</p>
    </div>
  );
}

function Cautions({ plan }: { readonly plan: Plan }) {
  const said = strengthWords;
  const cautions = standingCautions({
    country: isAgeCountry(plan.lawOf) ? plan.lawOf : undefined,
    shipsKits: plan.remoteGuests > 0,
    withoutAlcohol: plan.pours.length > 0 && plan.pours.every(({ abv }) => abv === 0),
  });
  if (cautions.length === 0) return null;
  return (
    <section class="plan-group" aria-label={said.cautions}>
      <h3>{said.cautions}</h3>
      <ul class="cautions">
        {cautions.map(({ code, figures, source }) => (
          <li key={code}>
            {code === 'no-alcohol-below-age' && figures.age !== undefined ? (
              <>
                {`${said.ageIs(figures.age.value)} ${said.ageCheck}`}
                <span class="small soft">{` ${sourceSentence(sources[source])}`}</span>
              </>
            ) : (
              said.cautionWords[code]
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
