import { useSignal } from '@preact/signals';
import { ageToAsk, isAgeCountry } from '../../core/planning/strength/legal-ages.ts';
import type { Plan } from '../../core/tasting.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Choice, optionsOf } from '../../shared/ui/choice.tsx';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import { pourVolume } from '../plan/figures/strength.ts';
import { allergensOnVial } from './allergens-on-paper.ts';
import { type LabelGrid, type LabelSize, labelGrid } from './label-grid.ts';
import type { SheetProps } from './sheet-props.ts';
import { type VialLabel, vialLabels } from './vial-labels.ts';
import { volumeText } from './volume.ts';

const words = paperWords.labels;

type Preset = 'small' | 'middle' | 'large' | 'own';
/** Sizes in which sheets of labels are sold, in mm (common practice, no source). */
const presets: Readonly<Record<Exclude<Preset, 'own'>, LabelSize>> = {
  small: { widthMm: 38, heightMm: 21 },
  middle: { widthMm: 50, heightMm: 25 },
  large: { widthMm: 63.5, heightMm: 38.1 },
};

/** Labels for the vials of guests at home: all of one pour together, as they are filled. */
export function LabelSheets({ evening, paper, title }: SheetProps) {
  const { plan } = evening.stored;
  const preset = useSignal<Preset>('middle');
  const width = useSignal('50');
  const height = useSignal('25');
  const edges = useSignal(true);
  if (plan.remoteGuests === 0) {
    return (
      <EmptyState title={words.none}>
        <p>{words.noneHint}</p>
      </EmptyState>
    );
  }
  const size =
    preset.value === 'own'
      ? { widthMm: Number(width.value.replace(',', '.')), heightMm: Number(height.value.replace(',', '.')) }
      : presets[preset.value];
  const grid = labelGrid(paper, size);
  const labels = vialLabels(plan).flatMap((label) => Array.from({ length: plan.remoteGuests }, () => label));
  const sheets =
    grid === undefined
      ? []
      : Array.from({ length: Math.ceil(labels.length / grid.perSheet) }, (_, at) =>
          labels.slice(at * grid.perSheet, (at + 1) * grid.perSheet),
        );
  return (
    <>
      <div class="paper-settings screen-only">
        <Choice
          legend={words.presets}
          across
          value={preset.value}
          options={optionsOf(['small', 'middle', 'large', 'own'], words.sizes)}
          onChoose={setterOf(preset)}
        />
        {preset.value === 'own' && (
          <>
            <TextField
              label={words.width}
              keys="decimal"
              value={width.value}
              error={grid === undefined ? words.wrong(paperWords.sizes[paper]) : undefined}
              onInput={setterOf(width)}
            />
            <TextField label={words.height} keys="decimal" value={height.value} onInput={setterOf(height)} />
          </>
        )}
        <Switch label={words.edges} hint={words.edgesHint} on={edges.value} onTurn={setterOf(edges)} />
        <p class="soft">{words.count(labels.length, plan.remoteGuests)}</p>
        <Notice kind="caution">
          <p>{words.shipping}</p>
        </Notice>
      </div>
      {grid !== undefined &&
        sheets.map((onSheet, sheet) => (
          <section
            key={String(sheet)}
            class="paper-sheet"
            data-paper={`labels-${paper}`}
            data-theme="linen"
            aria-label={paperWords.sheet(paperWords.kinds.labels, sheet + 1)}
          >
            <div class="label-sheet" style={acrossOf(grid)}>
              {onSheet.map((label, index) => (
                <article
                  key={String(index)}
                  class={edges.value ? 'label label-edged' : 'label'}
                  style={{ width: `${grid.widthMm}mm`, height: `${size.heightMm}mm` }}
                >
                  <Label plan={plan} label={label} title={title} />
                </article>
              ))}
            </div>
          </section>
        ))}
    </>
  );
}

/** How wide the grid is on standing and on lying paper. A hair more, so that no row breaks by rounding. */
const acrossOf = ({ columns, columnsLying, widthMm, aboveMm }: LabelGrid) => ({
  '--across': `${columns * widthMm + 0.05}mm`,
  '--across-lying': `${columnsLying * widthMm + 0.05}mm`,
  '--above': `${aboveMm}mm`,
});

interface LabelProps {
  readonly plan: Plan;
  readonly label: VialLabel;
  readonly title: string;
}

/**
 * Numbers only, however open the tasting is: the name comes with the glass, on the phone. Where a pour may be known, its
 * strength and its allergens stand there all the same [C6].
 */
function Label({ plan, label: { mark, pour, tells }, title }: LabelProps) {
  const volume = volumeText(pourVolume(pour, plan), plan.volumeUnit);
  const contains = allergensOnVial(plan, pour.id, tells);
  const strength = !tells || pour.abv === undefined ? [] : [words.strength(pour.abv)];
  return (
    <>
      <p class="label-mark">{mark}</p>
      <div class="label-words">
        <p>{[volume, ...strength].join(' · ')}</p>
        {contains === '' && <p class="label-title">{title}</p>}
        {contains !== '' && <p class="label-care">{contains}</p>}
        {pour.abv !== 0 && <p class="label-care">{`${words.alcohol} · ${ageOf(plan)}`}</p>}
      </div>
    </>
  );
}

const ageOf = ({ lawOf }: Plan): string =>
  isAgeCountry(lawOf) ? words.age(ageToAsk(lawOf).age) : words.adults;
