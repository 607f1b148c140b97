import { useState } from 'preact/hooks';
import { serviceTemperatureOf } from '../../../core/drinks/service-temperature.ts';
import { clashesOf } from '../../../core/planning/order/fact-clashes.ts';
import { labelClashesOf } from '../../../core/planning/order/label-clashes.ts';
import { limits, type Plan, type Pour } from '../../../core/tasting.ts';
import { serveAt, temperatureSource } from '../../../shared/language/en/temperature.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { Notice } from '../../../shared/ui/notice.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { locale } from '../../locale.ts';
import { number } from '../../numbers.ts';
import { Fold } from '../fields/fold.tsx';
import { PourNumber } from '../fields/pour-number.tsx';
import { StrengthField } from '../fields/strength-field.tsx';
import { anotherBottle, labelSides } from '../pour-edits.ts';
import { words } from '../words.ts';
import { AllergensFold } from './allergens-fold.tsx';
import { FurtherFacts } from './further-facts.tsx';
import { LabelThumb } from './label-thumb.tsx';
import { WaterFold } from './water-fold.tsx';

interface PourSheetProps {
  readonly plan: Plan;
  readonly pour: Pour;
  /** Every change as it is made; a pour without a name waits until it has one. */
  readonly onChange?: ((pour: Pour) => void) | undefined;
  readonly onRemove?: (() => void) | undefined;
  readonly onDuplicate?: (() => void) | undefined;
  readonly onSwapped?: ((pour: Pour) => void) | undefined;
  /** A new pour is added only when it is done. */
  readonly isNew?: boolean | undefined;
  readonly onDone?: ((pour: Pour, another: boolean) => void) | undefined;
  readonly onClose: () => void;
  /** In place of the usual words: its title, what is said first, and what its one button does. */
  readonly asked?:
    | { readonly title: string; readonly first: readonly string[]; readonly go: string }
    | undefined;
}

/** The facts of one pour: what the label says first, and the rest folded. */
export function PourSheet(props: PourSheetProps) {
  const { plan, onChange, onRemove, onDuplicate, onSwapped, isNew, onDone, onClose, asked } = props;
  const said = words.pour;
  const [pour, setPour] = useState(props.pour);
  const [tried, setTried] = useState(false);
  /** Counts the swaps, so that the fields begin anew with the other bottle. */
  const [swaps, setSwaps] = useState(0);
  const nameless = pour.name.trim() === '';

  const set = <Key extends keyof Pour>(key: Key, value: Pour[Key] | undefined): void => {
    const { [key]: _, ...rest } = pour;
    const changed = (value === undefined ? rest : { ...pour, [key]: value }) as Pour;
    setPour(changed);
    if (changed.name.trim() !== '') onChange?.(changed);
  };
  const text = (key: 'producer', value: string): void => set(key, value === '' ? undefined : value);
  const done = (another: boolean): void => {
    setTried(true);
    if (nameless) return;
    if (isNew) onDone?.(pour, another);
    else onClose();
  };
  const hints = [
    ...labelClashesOf(pour, new Date().getFullYear()).map((clash) => words.labelClashes[clash]),
    ...clashesOf(pour).map((clash) => words.clashSentence(clash, pour.drink, number)),
  ];
  const moreFacts = told.flatMap((key) => (pour[key] === undefined ? [] : [words.factNames[key]]));

  const actions = isNew ? (
    <>
      <Button kind="quiet" onPress={onClose}>
        {words.notNow}
      </Button>
      {asked === undefined && <Button onPress={() => done(true)}>{said.addNext}</Button>}
      <Button kind="primary" onPress={() => done(false)}>
        {asked?.go ?? said.add}
      </Button>
    </>
  ) : (
    <Button kind="primary" onPress={() => done(false)}>
      {asked?.go ?? words.done}
    </Button>
  );
  return (
    <Dialog title={asked?.title ?? (isNew ? said.newTitle : said.title)} onClose={onClose} actions={actions}>
      <div class="pour-sheet" key={swaps}>
        {asked?.first.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <TextField
          label={said.name}
          value={pour.name}
          maxLength={limits.line}
          autocomplete="off"
          error={nameless && (tried || !isNew) ? said.nameMissing : undefined}
          onInput={(name) => set('name', name)}
        />
        <TextField
          label={said.producer}
          value={pour.producer ?? ''}
          maxLength={limits.line}
          autocomplete="off"
          onInput={(value) => text('producer', value)}
        />
        <div class="plan-trio">
          <StrengthField abv={pour.abv} onAbv={(abv) => set('abv', abv)} />
          <PourNumber pour={pour} set={set} of="ageYears" />
          <PourNumber pour={pour} set={set} of="vintage" />
        </div>
        <Temperature pour={pour} />
        {pour.photos && (
          <div class="pour-photos">
            {labelSides.map((side) => {
              const photo = pour.photos?.[side];
              const shows = words.ahead.photoOf(words.ahead.sides[side], pour.name);
              return photo && <LabelThumb key={photo} photo={photo} words={shows} large />;
            })}
          </div>
        )}
        {hints.length > 0 && (
          <Notice kind="info">
            {hints.map((hint) => (
              <p key={hint}>{hint}</p>
            ))}
          </Notice>
        )}
        <WaterFold plan={plan} pour={pour} set={set} />
        <AllergensFold pour={pour} set={set} />
        <Fold title={said.more} summary={moreFacts.join(', ')}>
          <FurtherFacts plan={plan} pour={pour} set={set} />
        </Fold>
        {!isNew && (
          <div class="plan-buttons">
            <Button
              onPress={() => {
                // The old name stands until a new one is typed, so that the place in the order is never nameless.
                const swapped = anotherBottle(pour, pour.name);
                onSwapped?.(swapped);
                setPour({ ...swapped, name: '' });
                setSwaps(swaps + 1);
              }}
            >
              {said.swap}
            </Button>
            {onDuplicate && <Button onPress={onDuplicate}>{said.duplicate}</Button>}
            {onRemove && (
              <Button kind="danger" onPress={onRemove}>
                {said.remove}
              </Button>
            )}
          </div>
        )}
      </div>
    </Dialog>
  );
}

/** At what temperature it is served, where its facts tell. */
function Temperature({ pour }: { readonly pour: Pour }) {
  const range = serviceTemperatureOf(pour);
  if (range === null) return null;
  return (
    <p class="small soft">
      {said(serveAt(range))} {temperatureSource[range.authority]}
    </p>
  );
}

const said = (text: string): string => `${text.charAt(0).toLocaleUpperCase(locale)}${text.slice(1)}.`;

/** The facts that the fold holds, named in its summary. */
const told = ['region', 'country', 'style', 'cask', 'peat', 'colour', 'marks', 'priceMinor'] as const;
