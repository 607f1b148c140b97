import { drinks } from '../../../core/drinks/drink-kinds.ts';
import { limits, type Plan } from '../../../core/tasting.ts';
import { volumeUnits } from '../../../shared/language/en/volumes.ts';
import { Choice, optionsOf } from '../../../shared/ui/choice.tsx';
import { TextArea } from '../../../shared/ui/text-area.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { minorDigits } from '../../numbers.ts';
import { LinkField } from '../fields/link-field.tsx';
import { NumberField } from '../fields/number-field.tsx';
import { suggestionOf } from '../figures/strength.ts';
import { inMl, inUnit, volume } from '../volume.ts';
import { words } from '../words.ts';
import { DrinkFacts, type PourFields } from './drink-facts.tsx';
import { ReadingList } from './reading-list.tsx';

interface FurtherFactsProps extends PourFields {
  readonly plan: Plan;
}

/** The facts beyond the label's first line; only those that the drink can have. */
export function FurtherFacts({ plan, pour, set }: FurtherFactsProps) {
  const said = words.pour;
  return (
    <>
      <Choice
        legend={said.drink}
        options={optionsOf(drinks, words.drinks)}
        value={pour.drink}
        onChoose={(drink) => set('drink', drink)}
        across
      />
      <div class="plan-pair">
        <Line pour={pour} set={set} of="region" label={said.region} />
        <Line pour={pour} set={set} of="country" label={said.country} />
        <Line pour={pour} set={set} of="style" label={said.style} />
        {pour.drink !== 'beer' && (
          <Line
            pour={pour}
            set={set}
            of="cask"
            label={said.cask}
            hint={pour.drink === 'spirit' ? said.caskHint : undefined}
          />
        )}
      </div>
      <DrinkFacts pour={pour} set={set} />
      <Marks pour={pour} set={set} />
      <Amounts plan={plan} pour={pour} set={set} />
      <LinkField label={said.link} value={pour.link} onLink={(link) => set('link', link)} />
      <TextArea
        label={said.story}
        hint={said.storyHint}
        value={pour.story ?? ''}
        maxLength={limits.text}
        onInput={(story) => set('story', story === '' ? undefined : story)}
      />
      <ReadingList key={pour.id} pour={pour} set={set} />
      <TextArea
        label={said.note}
        hint={said.noteHint}
        value={pour.hostNote ?? ''}
        maxLength={1000}
        rows={2}
        onInput={(note) => set('hostNote', note === '' ? undefined : note)}
      />
    </>
  );
}

interface LineProps extends PourFields {
  readonly of: 'region' | 'country' | 'style' | 'cask';
  readonly label: string;
  readonly hint?: string | undefined;
}

function Line({ pour, set, of, label, hint }: LineProps) {
  return (
    <TextField
      label={label}
      hint={hint}
      value={pour[of] ?? ''}
      maxLength={limits.line}
      autocomplete="off"
      onInput={(value) => set(of, value === '' ? undefined : value)}
    />
  );
}

function Marks({ pour, set }: PourFields) {
  const mark = (of: 'pungency' | 'dryness', value: number | undefined): void => {
    const { [of]: _, ...others } = pour.marks ?? {};
    const marks = value === undefined ? others : { ...others, [of]: value };
    set('marks', Object.keys(marks).length === 0 ? undefined : marks);
  };
  return (
    <div class="plan-pair">
      {(['pungency', 'dryness'] as const).map((of) => (
        <NumberField
          key={of}
          label={words.pour[of]}
          value={pour.marks?.[of]}
          least={0}
          most={10}
          optional
          wrong={words.pour.markWrong}
          onNumber={(value) => mark(of, value)}
        />
      ))}
    </div>
  );
}

function Amounts({ plan, pour, set }: FurtherFactsProps) {
  const said = words.pour;
  const unit = plan.volumeUnit;
  const symbol = volumeUnits[unit];
  const digits = minorDigits(plan.currency);
  const shown = (ml: number | undefined) => (ml === undefined ? undefined : inUnit(ml, unit));
  const suggested = suggestionOf(pour, plan);
  const size = volume(suggested.volume, unit);
  const least = inUnit(unit === 'ml' ? 0.1 : 0.3, unit);
  return (
    <div class="plan-trio">
      <NumberField
        label={said.bottle(symbol)}
        value={shown(pour.bottleMl)}
        least={least}
        most={inUnit(20_000, unit)}
        optional
        wrong={said.bottleWrong(volume(20_000, unit))}
        onNumber={(value) => set('bottleMl', value === undefined ? undefined : inMl(value, unit))}
      />
      <NumberField
        label={said.pourSize(symbol)}
        hint={suggested.less ? said.pourHintLess(size) : said.pourHint(size)}
        value={shown(pour.pourMl)}
        least={least}
        most={inUnit(500, unit)}
        optional
        wrong={said.pourWrong(volume(500, unit))}
        onNumber={(value) => set('pourMl', value === undefined ? undefined : inMl(value, unit))}
      />
      <NumberField
        label={said.price(plan.currency)}
        value={pour.priceMinor === undefined ? undefined : pour.priceMinor / 10 ** digits}
        least={0}
        most={100_000_000 / 10 ** digits}
        optional
        wrong={said.priceWrong}
        onNumber={(value) =>
          set(
            'priceMinor',
            value === undefined ? undefined : Math.round(Number((value * 10 ** digits).toFixed(6))),
          )
        }
      />
    </div>
  );
}
