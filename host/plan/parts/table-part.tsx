import { useState } from 'preact/hooks';
import type { MatSheet } from '../../../core/planning/table/mat-layout.ts';
import { comfortablePlaceWidth, layOutPlace } from '../../../core/planning/table/place-setting.ts';
import { placesAtTable, type Table, tablesFor } from '../../../core/planning/table/table.ts';
import { glassNumbers } from '../../../core/running-order/glass-numbers.ts';
import { flightsOf } from '../../../core/tasting.ts';
import { Choice, optionsOf } from '../../../shared/ui/choice.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import { footRange, keepGlassFoot, readGlassFoot } from '../../glass-foot.ts';
import { number } from '../../numbers.ts';
import { NumberField } from '../fields/number-field.tsx';
import type { PlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';
import { PlaceDrawing } from './place-drawing.tsx';

const cm = 10;
const inch = 25.4;

export function TablePart({ editor }: { readonly editor: PlanEditor }) {
  const [computer, setComputer] = useState(false);
  return (
    <>
      <Place editor={editor} computer={computer} onComputer={setComputer} />
      <Tables editor={editor} computer={computer} />
    </>
  );
}

interface PlaceProps {
  readonly editor: PlanEditor;
  readonly computer: boolean;
  readonly onComputer: (on: boolean) => void;
}

/** One flight stands before a guest at once. */
function Place({ editor, computer, onComputer }: PlaceProps) {
  const plan = editor.draft.plan.value;
  const said = words.figures.table;
  const [hand, setHand] = useState<'right' | 'left'>('right');
  const [sheet, setSheet] = useState<MatSheet>('A4');
  const [footMm, setFoot] = useState(readGlassFoot);
  const flights = flightsOf(plan);
  const longest = flights.reduce(
    (most, flight) => (flight.pours.length > most.pours.length ? flight : most),
    flights[0] ?? { index: 0, pours: [] },
  );
  const glasses = longest.pours.length;
  if (glasses === 0) return <p class="soft">{said.noGlasses}</p>;
  const numbers = glassNumbers(plan);
  const labels = longest.pours.map(
    ({ id }) => (plan.blind ? plan.codes[id] : undefined) ?? String(numbers.get(id) ?? ''),
  );
  const placeWidthMm = comfortablePlaceWidth(computer, sheet);
  const place = layOutPlace({ placeWidthMm, computer, sheet, glasses, footMm, hand, labels });
  return (
    <section class="plan-group" aria-label={said.place}>
      <h3>{said.place}</h3>
      {place.fits ? (
        <>
          <PlaceDrawing place={place} label={said.drawing(glasses, hand)} />
          <p class="soft">
            {said.width(number(place.widthMm / cm, 0), number(place.widthMm / inch, 0))}. {said.comfortable}{' '}
            {said.reach}
          </p>
        </>
      ) : place.reason === 'place-too-narrow' ? (
        <p class="field-error">{said.narrow(number(place.needsMm / cm, 0))}</p>
      ) : (
        <p class="field-error">
          {said.tooManyGlasses(place.most)} {place.tryInstead && said.tryInstead(place.tryInstead)}
        </p>
      )}
      <p class="soft">{said.light}</p>
      <Choice
        legend={said.hand}
        options={optionsOf(['right', 'left'], said.hands)}
        value={hand}
        onChoose={setHand}
        across
      />
      <Choice
        legend={said.sheet}
        options={(['A4', 'A3', 'Letter'] as const).map((value) => ({ value, label: value }))}
        value={sheet}
        onChoose={setSheet}
        across
      />
      <NumberField
        label={said.foot}
        value={footMm}
        {...footRange}
        wrong={said.footWrong}
        onNumber={(mm) => {
          if (mm === undefined) return;
          setFoot(mm);
          keepGlassFoot(mm);
        }}
      />
      <Switch label={said.computer} on={computer} onTurn={onComputer} />
    </section>
  );
}

type Seated = Extract<Table, { shape: 'rectangle' }>['seated'];

function Tables({ editor, computer }: { readonly editor: PlanEditor; readonly computer: boolean }) {
  const said = words.figures.table;
  const { guests } = editor.draft.plan.value;
  const [shape, setShape] = useState<Table['shape']>('rectangle');
  const [seated, setSeated] = useState<Seated>('both-sides');
  const [sizes, setSizes] = useState({
    length: 240,
    breadth: 90,
    diameter: 150,
    across: 400,
    leg: 300,
    depth: 80,
  });
  const size = (of: keyof typeof sizes) => (
    <NumberField
      key={of}
      label={said[of]}
      value={sizes[of]}
      least={30}
      most={3000}
      wrong={said.sizeWrong}
      onNumber={(value) => value !== undefined && setSizes({ ...sizes, [of]: value })}
    />
  );
  const table = tableOf(shape, seated, sizes);
  const places = placesAtTable(table, computer);
  const freely = placesAtTable(table, computer, comfortablePlaceWidth(computer));
  const tables = tablesFor(guests, places);
  return (
    <section class="plan-group" aria-label={said.which}>
      <h3>{said.which}</h3>
      <Choice
        legend={said.shape}
        options={optionsOf(['rectangle', 'round', 'horseshoe'], said.shapes)}
        value={shape}
        onChoose={setShape}
        across
      />
      <div class="plan-trio">{sizesAsked[shape].map(size)}</div>
      {shape === 'rectangle' && (
        <Choice
          legend={said.seated}
          options={optionsOf(['one-side', 'both-sides', 'all-round'], said.seatings)}
          value={seated}
          onChoose={setSeated}
          across
        />
      )}
      <p class="lead">{places.places === 0 ? said.holdsNobody : said.holds(freely.places, places.places)}</p>
      {guests > 0 && tables !== undefined && (
        <p>{tables > 1 ? said.need(guests, tables) : said.enough(guests)}</p>
      )}
      <p class="small soft">{said.notKept}</p>
    </section>
  );
}

const sizesAsked = {
  rectangle: ['length', 'breadth'],
  round: ['diameter'],
  horseshoe: ['across', 'leg', 'depth'],
} as const;

function tableOf(
  shape: Table['shape'],
  seated: Seated,
  sizes: Readonly<Record<'length' | 'breadth' | 'diameter' | 'across' | 'leg' | 'depth', number>>,
): Table {
  switch (shape) {
    case 'rectangle':
      return { shape, lengthMm: sizes.length * cm, widthMm: sizes.breadth * cm, seated };
    case 'round':
      return { shape, diameterMm: sizes.diameter * cm };
    case 'horseshoe':
      return { shape, acrossMm: sizes.across * cm, legMm: sizes.leg * cm, depthMm: sizes.depth * cm };
    default:
      return shape satisfies never;
  }
}
