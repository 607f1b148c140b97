import { useSignal } from '@preact/signals';
import { placesDiffer } from '../../core/planning/serving/pouring-order.ts';
import { type MatSheet, type MatTooSmall, matSheets } from '../../core/planning/table/mat-layout.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Choice, optionsOf } from '../../shared/ui/choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import { leftHandedPlaces } from '../evening/taken-places.ts';
import { keepGlassFoot, readGlassFoot } from '../glass-foot.ts';
import { MatDrawing } from './mat-drawing.tsx';
import { type MatsToPrint, type MatToPrint, matsFor, placesIn } from './mat-sheets.ts';
import type { SheetProps } from './sheet-props.ts';

const words = paperWords.mats;

const millimetres = (typed: string): number => Number(typed.trim().replace(',', '.'));

/** Mats at true size, with what the host decides about them. */
export function PlaceMats({ evening, paper, title }: SheetProps) {
  const { plan } = evening.stored;
  const foot = useSignal(String(readGlassFoot()));
  const bowl = useSignal('');
  const set = useSignal<'evening' | 'flight'>('evening');
  const each = useSignal(true);
  const left = useSignal(leftHandedPlaces(evening.follower.view.value).join(', '));
  const larger = useSignal(false);
  const sheet: MatSheet = larger.value ? 'A3' : paper;
  const leftPlaces = placesIn(left.value, Math.max(1, plan.guests));
  const differ = placesDiffer(plan);

  let found: MatsToPrint | 'wrong-size';
  try {
    const bowlMm = bowl.value.trim() === '' ? {} : { bowlMm: millimetres(bowl.value) };
    const choice = { paper: sheet, footMm: millimetres(foot.value), ...bowlMm };
    found = matsFor(plan, { ...choice, set: set.value, leftPlaces: leftPlaces ?? [], each: each.value });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    found = 'wrong-size';
  }

  return (
    <>
      <div class="paper-settings screen-only">
        <TextField
          label={words.foot}
          hint={words.footHint}
          keys="decimal"
          value={foot.value}
          error={found === 'wrong-size' ? words.wrong : undefined}
          onInput={(typed) => {
            foot.value = typed;
            keepGlassFoot(millimetres(typed));
          }}
        />
        <TextField
          label={words.bowl}
          hint={words.bowlHint}
          keys="decimal"
          value={bowl.value}
          onInput={setterOf(bowl)}
        />
        <TextField
          label={words.left}
          hint={words.leftHint}
          value={left.value}
          error={leftPlaces === undefined ? words.leftWrong(Math.max(1, plan.guests)) : undefined}
          onInput={setterOf(left)}
        />
        <Choice
          legend={words.set}
          across
          value={set.value}
          options={optionsOf(['evening', 'flight'], words.sets)}
          onChoose={setterOf(set)}
        />
        <Switch
          label={words.each}
          hint={differ ? words.eachForced : words.eachHint}
          on={each.value || differ}
          disabled={differ}
          onTurn={setterOf(each)}
        />
        <Switch label={paperWords.sizes.A3} on={larger.value} onTurn={setterOf(larger)} />
        {found !== 'wrong-size' && !found.fits && <TooSmall found={found} sheet={sheet} />}
      </div>
      {found !== 'wrong-size' && found.fits && (
        <>
          <p class="paper-count soft screen-only">{paperWords.sheets(found.mats.length)}</p>
          {found.mats.map((mat) => (
            <section
              key={mat.key}
              class="paper-sheet"
              data-paper={`mat-${sheet}`}
              data-theme="linen"
              aria-label={captionOf(mat).join(', ')}
            >
              <div class="mat-frame">
                <MatDrawing mat={mat} caption={[title, ...captionOf(mat)].join(' · ')} />
              </div>
            </section>
          ))}
        </>
      )}
    </>
  );
}

interface TooSmallProps {
  readonly found: { readonly why: MatTooSmall; readonly flightsWouldFit: boolean };
  readonly sheet: MatSheet;
}

function TooSmall({ found, sheet }: TooSmallProps) {
  const { most, tryInstead } = found.why;
  return (
    <Notice kind="caution">
      <p>
        {words.tooMany(most, paperWords.sizes[sheet])}{' '}
        {found.flightsWouldFit
          ? words.tryFlight
          : tryInstead !== undefined && matSheets[tryInstead].widthMm > matSheets[sheet].widthMm
            ? words.tryPaper(paperWords.sizes[tryInstead])
            : words.trySmaller}
      </p>
    </Notice>
  );
}

/** Whose mat it is and for which glasses. */
function captionOf({ place, hand, of }: MatToPrint): string[] {
  const whose =
    place === null
      ? [words.copy(hand)]
      : [paperWords.place(place), ...(hand === 'left' ? [paperWords.hands.left] : [])];
  if (of === null) return whose;
  return [...whose, paperWords.flight(of.flight + 1), ...(of.kind === 'trial' ? [paperWords.oddOne] : [])];
}
