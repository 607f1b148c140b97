import type { Plan } from '../../../core/tasting.ts';
import { waterWords } from '../../../shared/language/en/plan-water.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Choice, optionsOf } from '../../../shared/ui/choice.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { minus, plus } from '../../../shared/ui/strokes.ts';
import { Switch } from '../../../shared/ui/switch.tsx';
import { number } from '../../numbers.ts';
import { Fold } from '../fields/fold.tsx';
import { NumberField } from '../fields/number-field.tsx';
import type { PlanEditor } from '../plan-editor.ts';
import { Rehearsal } from '../rehearsal/rehearsal.tsx';
import { words } from '../words.ts';
import { Schedule } from './schedule.tsx';

export function CoursePart({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.course;
  return (
    <>
      <Schedule editor={editor} />
      <Rehearsal editor={editor} />
      <Choice
        legend={said.talk}
        options={optionsOf(['each-pour', 'each-flight', 'at-the-end'], said.talks)}
        value={plan.discussion}
        onChoose={(discussion) => editor.edit((now) => ({ ...now, discussion }))}
        across
      />
      {plan.blind && (
        <Choice
          legend={said.naming}
          options={optionsOf(['one-by-one', 'all-at-once'], said.namings, said.namingHints)}
          value={plan.naming}
          onChoose={(naming) => editor.edit((now) => ({ ...now, naming }))}
          across
        />
      )}
      <Fold title={said.pace} summary={paceSummary(plan)}>
        <Pace editor={editor} />
        <NumberField
          label={said.breaks}
          value={plan.breakMinutes}
          least={5}
          most={60}
          wrong={said.breaksWrong}
          onNumber={(breakMinutes) =>
            breakMinutes !== undefined && editor.edit((now) => ({ ...now, breakMinutes }))
          }
        />
      </Fold>
      {[plan.drink, ...plan.pours.map(({ drink }) => drink)].includes('spirit') && (
        <Fold title={waterWords.when} summary={waterWords.whens[plan.drops]}>
          <Choice
            legend={waterWords.when}
            options={optionsOf(['poured', 'after-nose', 'none'], waterWords.whens, waterWords.hints)}
            value={plan.drops}
            onChoose={(drops) => editor.edit((now) => ({ ...now, drops }))}
          />
        </Fold>
      )}
      <Fold title={said.pacing} summary={said.pacings[plan.pacing.by]}>
        <Choice
          legend={said.pacing}
          options={optionsOf(['host', 'steps', 'clock', 'room'], said.pacings, said.pacingHints)}
          value={plan.pacing.by}
          onChoose={(by) =>
            editor.edit((now) => ({ ...now, pacing: by === 'room' ? { by, share: 0.75 } : { by } }))
          }
        />
        {plan.pacing.by === 'room' && (
          <Choice
            legend={said.share}
            options={optionsOf(['0.5', '0.75', '1'], said.shares)}
            value={shareOf(plan.pacing.share)}
            onChoose={(share) =>
              editor.edit((now) => ({ ...now, pacing: { by: 'room', share: Number(share) } }))
            }
            across
          />
        )}
      </Fold>
      <Fold title={said.ranking} summary={said.rankings[plan.ranking]}>
        <Choice
          legend={said.ranking}
          options={optionsOf(['none', 'each-flight', 'at-the-end'], said.rankings)}
          value={plan.ranking}
          onChoose={(ranking) => editor.edit((now) => ({ ...now, ranking }))}
          across
        />
        {plan.blind && plan.ranking !== 'none' && (
          <Switch
            label={said.rankNamed}
            hint={said.rankNamedHint}
            on={plan.rankNamed}
            onTurn={(rankNamed) => editor.edit((now) => ({ ...now, rankNamed }))}
          />
        )}
        <Switch
          label={said.liking}
          on={plan.liking}
          onTurn={(liking) => editor.edit((now) => ({ ...now, liking }))}
        />
      </Fold>
      <Switch
        label={said.practice}
        hint={said.practiceHint}
        on={plan.practice}
        onTurn={(practice) => editor.edit((now) => ({ ...now, practice }))}
      />
      {plan.level !== 'newcomers' && (
        <Switch
          label={said.closing}
          hint={said.closingHint}
          on={plan.closingPass}
          onTurn={(closingPass) => editor.edit((now) => ({ ...now, closingPass }))}
        />
      )}
      {Object.keys(plan.cueEdits).length > 0 && (
        <div class="plan-group">
          <p class="soft">{said.edited(Object.keys(plan.cueEdits).length)}</p>
          <div>
            <Button onPress={() => editor.change(said.editsForgotten, (now) => ({ ...now, cueEdits: {} }))}>
              {said.forgetEdits}
            </Button>
          </div>
        </div>
      )}
    </>
  );
}

const shareOf = (share: number): '0.5' | '0.75' | '1' => (share < 0.63 ? '0.5' : share < 0.9 ? '0.75' : '1');

const paced = ['look', 'nose', 'sip', 'write', 'discussion'] as const;

function paceSummary(plan: Plan): string | undefined {
  const changed = paced.filter((what) => plan.pace[what] !== 1);
  if (changed.length === 0) return undefined;
  return changed
    .map((what) => `${words.course.paces[what]} ${words.course.times(number(plan.pace[what]))}`)
    .join(', ');
}

/** By quarters: finer than that nobody feels. */
const quarter = 0.25;

function Pace({ editor }: { readonly editor: PlanEditor }) {
  const { pace } = editor.draft.plan.value;
  const said = words.course;
  const set = (what: (typeof paced)[number], by: number): void =>
    editor.edit((now) => {
      const factor = Math.min(3, Math.max(0.5, now.pace[what] + by));
      return { ...now, pace: { ...now.pace, [what]: factor } };
    });
  return (
    <ul class="pace">
      {paced.map((what) => (
        <li key={what}>
          <span>{said.paces[what]}</span>
          <Button
            label={said.shorter(said.paces[what])}
            disabled={pace[what] <= 0.5}
            onPress={() => set(what, -quarter)}
          >
            <Icon of={minus} />
          </Button>
          <output class="figures">{said.times(number(pace[what]))}</output>
          <Button
            label={said.longer(said.paces[what])}
            disabled={pace[what] >= 3}
            onPress={() => set(what, quarter)}
          >
            <Icon of={plus} />
          </Button>
        </li>
      ))}
    </ul>
  );
}
