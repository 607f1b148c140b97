import { useId } from 'preact/hooks';
import { choiceText, factName } from '../../shared/guess/guess-texts.ts';
import { countryName, regionName, styleName } from '../../shared/guess/trade-names.ts';
import { guessWords as words } from '../../shared/language/en/guess.ts';
import type { NoteValues } from '../../shared/notes/entry.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Choice } from '../../shared/ui/choice.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { minus, plus } from '../../shared/ui/strokes.ts';
import { Switch } from '../../shared/ui/switch.tsx';
import type { Drink, PourId, SeatView } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';

interface GuessFormProps {
  readonly pour: PourId;
  readonly drink: Drink;
  readonly asked: NonNullable<SeatView['guess']>;
}

const numberFacts = ['vintage', 'age', 'abv', 'price'] as const;
const surenesses = [25, 50, 75, 95] as const;

/** Every question may stay open, and every answer may be taken back. */
export function GuessForm({ pour, drink, asked }: GuessFormProps) {
  const { notebook } = useRoom().follower;
  const guess = notebook.read(pour, 'guess');
  const { choices, currency } = asked;
  const set = (fact: keyof NoteValues['guess'], value: string | number | undefined): void => {
    const { [fact]: _, ...others } = guess;
    notebook.write(pour, 'guess', value === undefined ? others : { ...others, [fact]: value });
  };
  const about = choices.style ? ('style' as const) : choices.origin ? ('origin' as const) : undefined;
  return (
    <div class="stack guess-form">
      <p class="soft small">{words.lead}</p>
      {choices.style && (
        <Pick
          label={factName('style', drink)}
          value={text(guess.style)}
          options={choices.style.map(String)}
          nameOf={styleName}
          onPick={(value) => set('style', value)}
        />
      )}
      {choices.origin && (
        <Origin
          paths={choices.origin.map(String)}
          value={text(guess.origin)}
          onPick={(path) => set('origin', path)}
        />
      )}
      {numberFacts.map((fact) => {
        const values = choices[fact]?.map(Number);
        if (values === undefined) return null;
        const value = guess[fact];
        return (
          <Slider
            key={fact}
            label={factName(fact, drink)}
            values={values}
            value={value === undefined ? undefined : Number(value)}
            textOf={(each) => choiceText(fact, each, values, currency)}
            onMove={(moved) => set(fact, moved)}
          />
        );
      })}
      {about !== undefined && guess[about] !== undefined && (
        <Pick
          label={words.sure.title[about]}
          value={text(guess.sure)}
          options={surenesses.map(String)}
          nameOf={(each) => words.sure.steps[Number(each) as (typeof surenesses)[number]]}
          onPick={(value) => set('sure', value === undefined ? undefined : Number(value))}
        />
      )}
      {Object.keys(guess).length > 0 && <Counting pour={pour} />}
    </div>
  );
}

const text = (value: string | number | undefined): string | undefined =>
  value === undefined ? undefined : String(value);

interface PickProps {
  readonly label: string;
  readonly value: string | undefined;
  readonly options: readonly string[];
  readonly nameOf: (option: string) => string;
  readonly none?: string;
  readonly onPick: (value: string | undefined) => void;
}

/** One of many by the phone's own list, in the order that was drawn for this seat. */
function Pick({ label, value = '', options, nameOf, none = words.none, onPick }: PickProps) {
  const id = useId();
  return (
    <div class="field">
      <label class="field-label" for={id}>
        {label}
      </label>
      <select
        class="field-input"
        id={id}
        value={value}
        onChange={({ currentTarget }) => onPick(currentTarget.value === '' ? undefined : currentTarget.value)}
      >
        <option value="" selected={value === ''}>
          {none}
        </option>
        {options.map((option) => (
          <option key={option} value={option} selected={option === value}>
            {nameOf(option)}
          </option>
        ))}
      </select>
    </div>
  );
}

interface OriginProps {
  readonly paths: readonly string[];
  readonly value: string | undefined;
  readonly onPick: (path: string | undefined) => void;
}

/** The country first; then, for who dares, a region in it. */
function Origin({ paths, value, onPick }: OriginProps) {
  const country = value?.split('/')[0];
  const countries = [...new Set(paths.map((path) => path.split('/')[0] ?? ''))];
  const regions = paths.filter((path) => country !== undefined && path.startsWith(`${country}/`));
  return (
    <>
      <Pick
        label={words.facts.origin}
        value={country}
        options={countries}
        nameOf={countryName}
        onPick={onPick}
      />
      {country !== undefined && regions.length > 0 && (
        <Pick
          key={country}
          label={words.facts.region}
          value={value === country ? undefined : value}
          options={regions}
          nameOf={(path) => regionName(path.split('/')[1] ?? '')}
          none={words.noRegion}
          onPick={(path) => onPick(path ?? country)}
        />
      )}
    </>
  );
}

interface SliderProps {
  readonly label: string;
  /** From the least. */
  readonly values: readonly number[];
  readonly value: number | undefined;
  readonly textOf: (value: number) => string;
  readonly onMove: (value: number | undefined) => void;
}

/** By thumb or by two buttons; without an answer the knob waits in the middle and says so. */
function Slider({ label, values, value, textOf, onMove }: SliderProps) {
  const id = useId();
  const middle = Math.floor(values.length / 2);
  const at = value === undefined ? middle : Math.max(0, values.indexOf(value));
  const said = value === undefined ? words.none : textOf(value);
  const go = (to: number): void => onMove(values[Math.max(0, Math.min(values.length - 1, to))]);
  return (
    <div class="stack-close">
      <p class="guess-slider-head">
        <label class="field-label" for={id}>
          {label}
        </label>
        <span class={value === undefined ? 'soft' : 'figures'}>{said}</span>
      </p>
      <div class="guess-slider-row">
        <Button label={words.less(label)} onPress={() => go(value === undefined ? middle : at - 1)}>
          <Icon of={minus} />
        </Button>
        <input
          class={value === undefined ? 'guess-range guess-range-none' : 'guess-range'}
          id={id}
          type="range"
          min={0}
          max={values.length - 1}
          step={1}
          value={at}
          aria-valuetext={said}
          onInput={({ currentTarget }) => go(Number(currentTarget.value))}
        />
        <Button label={words.more(label)} onPress={() => go(value === undefined ? middle : at + 1)}>
          <Icon of={plus} />
        </Button>
      </div>
      {value !== undefined && (
        <Button kind="quiet" label={words.takeBack(label)} onPress={() => onMove(undefined)}>
          {words.none}
        </Button>
      )}
    </div>
  );
}

/** Two consents of their own, asked where the guess is given, and off until somebody taps [Q10]. */
function Counting({ pour }: { readonly pour: PourId }) {
  const { follower, consent } = useRoom();
  const given = follower.consents.value.get(pour);
  return (
    <>
      <Choice
        legend={words.counting.title}
        across
        options={[
          { value: 'counts', label: words.counting.counts },
          { value: 'only-for-me', label: words.counting.own },
        ]}
        value={given?.guess}
        onChoose={(guess) =>
          void consent([pour], guess === 'counts' ? { guess } : { guess, nearest: 'unnamed' })
        }
      />
      {given?.guess === 'counts' && (
        <>
          <Switch
            label={words.counting.nearest}
            on={given.nearest === 'may-be-named'}
            onTurn={(on) => void consent([pour], { nearest: on ? 'may-be-named' : 'unnamed' })}
          />
          <p class="soft small">{words.counting.stays}</p>
        </>
      )}
    </>
  );
}
