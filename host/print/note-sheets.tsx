import { useSignal } from '@preact/signals';
import { glassesAt, numberAt, placesDiffer } from '../../core/planning/serving/pouring-order.ts';
import type { Plan, Pour } from '../../core/tasting.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { waterWords } from '../../shared/language/en/plan-water.ts';
import { type TextField, textFields } from '../../shared/notes/entry.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Switch } from '../../shared/ui/switch.tsx';
import { number } from '../numbers.ts';
import { waterInPour } from '../plan/figures/water-in-pour.ts';
import { volume } from '../plan/volume.ts';
import { allergensOnPaper } from './allergens-on-paper.ts';
import { labelOf } from './mat-sheets.ts';
import type { SheetProps } from './sheet-props.ts';

const words = paperWords.notes;

/** Ruled lines for each sense; three glasses then stand on one sheet. */
const linesFor: Readonly<Record<TextField, number>> = { look: 1, nose: 2, palate: 2, finish: 1, thoughts: 1 };
const glassesOnSheet = 3;

/** Sheets for whoever writes with a pen: by pour and sense, ruled. */
export function NoteSheets({ evening, paper, title }: SheetProps) {
  const { plan } = evening.stored;
  const each = useSignal(false);
  const differ = placesDiffer(plan);
  const places =
    each.value || differ ? Array.from({ length: Math.max(1, plan.guests) }, (_, at) => at + 1) : [null];
  const sheets = places.flatMap((place) =>
    sheetsOf(glassesOf(plan, place ?? 1)).map((glasses) => ({ place, glasses })),
  );
  return (
    <>
      <div class="paper-settings screen-only">
        <Switch
          label={words.each}
          hint={differ ? paperWords.mats.eachForced : words.eachHint}
          on={each.value || differ}
          disabled={differ}
          onTurn={setterOf(each)}
        />
      </div>
      <p class="paper-count soft screen-only">{paperWords.sheets(sheets.length)}</p>
      {sheets.map(({ place, glasses }, index) => (
        <section
          key={`${place}/${glasses[0]?.position}`}
          class="paper-sheet"
          data-paper={`upright-${paper}`}
          data-theme="linen"
          aria-label={paperWords.sheet(paperWords.kinds.notes, index + 1)}
        >
          <div class="note-sheet">
            <header class="note-head">
              <p class="note-title">{place === null ? title : `${title} · ${paperWords.place(place)}`}</p>
              <p class="note-blank note-name">{words.name}</p>
              <p class="note-blank">{words.date}</p>
            </header>
            {glasses.map((glass) => (
              <Glass key={glass.position} plan={plan} glass={glass} />
            ))}
            <footer class="note-foot">{words.quiet}</footer>
          </div>
        </section>
      ))}
    </>
  );
}

interface NoteGlass {
  readonly position: number;
  readonly pour: Pour;
}

const glassesOf = (plan: Plan, place: number): NoteGlass[] =>
  glassesAt(plan, place)
    .flatMap((set) => (set.kind === 'flight' ? set.pours : []))
    .flatMap((id) => plan.pours.find((pour) => pour.id === id) ?? [])
    .map((pour, index) => ({ position: numberAt(plan, pour.id, index), pour }));

const sheetsOf = (glasses: readonly NoteGlass[]): NoteGlass[][] =>
  Array.from({ length: Math.ceil(glasses.length / glassesOnSheet) }, (_, at) =>
    glasses.slice(at * glassesOnSheet, (at + 1) * glassesOnSheet),
  );

function Glass({ plan, glass: { position, pour } }: { readonly plan: Plan; readonly glass: NoteGlass }) {
  const label = labelOf(plan, pour);
  const facts = plan.blind
    ? label === String(position)
      ? ''
      : label
    : [pour.name, pour.producer, pour.abv === undefined ? undefined : paperWords.labels.strength(pour.abv)]
        .filter((fact) => fact !== undefined)
        .join(' · ');
  const water = waterLine(plan, pour);
  const contains = allergensOnPaper(plan, pour.id, !plan.blind);
  return (
    <article class="note-glass">
      <h2>
        {paperWords.glass(position)}
        {facts !== '' && <span class="note-facts">{facts}</span>}
      </h2>
      {contains !== '' && <p class="note-water">{contains}</p>}
      {water !== '' && <p class="note-water">{water}</p>}
      {textFields.map((field) =>
        Array.from({ length: linesFor[field] }, (_, line) => (
          <p key={`${field}/${line}`} class="note-line">
            {line === 0 && words.fields[field]}
          </p>
        )),
      )}
      {plan.liking && <Liking />}
    </article>
  );
}

/** What water does to this glass; of a blind one no strength, which would tell it [Q4]. */
function waterLine(plan: Plan, pour: Pour): string {
  const water = waterInPour(pour, plan);
  if (water === null || plan.drops === 'none') return '';
  const { drops, dropped, reached } = water;
  const later = plan.drops === 'after-nose' ? [waterWords.sheetLater] : [];
  if (plan.blind) return later.join('');
  return [
    ...later,
    waterWords.sheet(drops, number(dropped.strength, 1)),
    ...(reached
      ? [waterWords.sheetReach(volume(reached.water, plan.volumeUnit, 1), number(reached.strength, 1))]
      : []),
  ].join(' · ');
}

function Liking() {
  return (
    <p class="note-liking">
      <span>{words.liking}</span>
      {words.likingScale.map((label, index) => (
        <span key={String(index)} class="note-mark">
          {label === '' ? String(index + 1) : label}
        </span>
      ))}
    </p>
  );
}
