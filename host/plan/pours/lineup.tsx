import { useRef } from 'preact/hooks';
import type { LineupStep } from '../../../core/planning/order/lineup.ts';
import { glassNumbers } from '../../../core/running-order/glass-numbers.ts';
import { flightsOf, type Pour } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { close } from '../../../shared/ui/notice-strokes.ts';
import { breadBreak, down, plus, up } from '../../../shared/ui/strokes.ts';
import { type Dragged, placeOfDrop, useRowDrag } from '../../../shared/ui/use-row-drag.ts';
import { number } from '../../numbers.ts';
import type { OrderFigures } from '../figures/order.ts';
import type { PlanEditor } from '../plan-editor.ts';
import { addBreak, moveBreak, moveTo, orderBy, removeBreak } from '../pour-edits.ts';
import { words } from '../words.ts';
import { LabelThumb } from './label-thumb.tsx';

interface LineupProps {
  readonly editor: PlanEditor;
  readonly figures: OrderFigures;
  readonly onOpen: (id: string) => void;
}

/** The pours in their flights, with why each follows the one before it; everything movable by buttons and by finger. */
export function Lineup({ editor, figures, onOpen }: LineupProps) {
  const plan = editor.draft.plan.value;
  const said = words.pours;
  const rows = useRef(new Map<string, HTMLElement>());
  const ids = plan.pours.map(({ id }) => id);
  const flights = flightsOf(plan);
  const isBest = figures.now.cost === figures.best.cost;

  const move = (id: string, to: number): void => {
    const pour = plan.pours.find((each) => each.id === id);
    if (pour === undefined || to < 0 || to >= ids.length) return;
    editor.change(
      said.moved(pour.name, to + 1),
      (now) => moveTo(now, id, to),
      (now) => orderBy(now, ids),
    );
  };
  const { dragged, handle } = useRowDrag(
    () => ids.flatMap((id) => rows.current.get(id) ?? []),
    (drop) => move(ids[drop.row] ?? '', placeOfDrop(drop)),
  );

  const numbers = glassNumbers(plan);
  return (
    <div class="stack-tight lineup">
      {flights.map((flight) => (
        <section key={flight.index} aria-label={said.flight(flight.index + 1)}>
          {flights.length > 1 && <h3>{said.flight(flight.index + 1)}</h3>}
          <ol class="pours">
            {flight.pours.map((pour) => {
              const position = ids.indexOf(pour.id);
              return (
                <PourRow
                  key={pour.id}
                  pour={pour}
                  position={position}
                  numbered={numbers.get(pour.id) ?? position + 1}
                  last={position === ids.length - 1}
                  code={plan.blind ? plan.codes[pour.id] : undefined}
                  step={figures.now.steps[position]}
                  isBest={isBest}
                  dragged={dragged}
                  handle={handle(position)}
                  hold={(element) => {
                    if (element) rows.current.set(pour.id, element);
                    else rows.current.delete(pour.id);
                  }}
                  onOpen={() => onOpen(pour.id)}
                  onMove={(by) => move(pour.id, position + by)}
                />
              );
            })}
          </ol>
          {flight.index < flights.length - 1 && <Pause editor={editor} after={flight.index} />}
        </section>
      ))}
      {flights.some(({ pours }) => pours.length > 1) && (
        <div>
          <Button kind="quiet" onPress={() => editor.edit(addBreak)}>
            <Icon of={plus} />
            {said.addPause}
          </Button>
        </div>
      )}
    </div>
  );
}

function Pause({ editor, after }: { readonly editor: PlanEditor; readonly after: number }) {
  const plan = editor.draft.plan.value;
  const said = words.pours;
  const [earlier, later] = [moveBreak(plan, after, -1), moveBreak(plan, after, 1)];
  return (
    <div class="pause">
      <Icon of={breadBreak} />
      <span class="pause-words">{said.pause(plan.breakMinutes)}</span>
      <Button
        kind="quiet"
        label={said.pauseUp(after + 1)}
        disabled={earlier === plan}
        onPress={() => editor.edit((now) => moveBreak(now, after, -1))}
      >
        <Icon of={up} />
      </Button>
      <Button
        kind="quiet"
        label={said.pauseDown(after + 1)}
        disabled={later === plan}
        onPress={() => editor.edit((now) => moveBreak(now, after, 1))}
      >
        <Icon of={down} />
      </Button>
      <Button
        kind="quiet"
        label={said.pauseAway(after + 1)}
        onPress={() => editor.edit((now) => removeBreak(now, after))}
      >
        <Icon of={close} />
      </Button>
    </div>
  );
}

interface PourRowProps {
  readonly pour: Pour;
  readonly position: number;
  /** As it stands on paper. */
  readonly numbered: number;
  readonly last: boolean;
  readonly code: string | undefined;
  readonly step: LineupStep | undefined;
  readonly isBest: boolean;
  readonly dragged: Dragged | undefined;
  readonly handle: ReturnType<ReturnType<typeof useRowDrag>['handle']>;
  readonly hold: (element: HTMLElement | null) => void;
  readonly onOpen: () => void;
  readonly onMove: (by: 1 | -1) => void;
}

function PourRow(props: PourRowProps) {
  const { pour, position, numbered, last, code, step, isBest, dragged, handle, hold, onOpen, onMove } = props;
  const said = words.pours;
  const carried = dragged?.row === position;
  const target = dragged !== undefined && !carried && placeOfDrop(dragged) === position;
  const reason = step && reasonWords(step, isBest);
  const photo = pour.photos?.front ?? pour.photos?.back;
  return (
    <li
      class={`pour-row${carried ? ' pour-carried' : ''}${target ? ' pour-target' : ''}`}
      ref={hold}
      style={carried ? { transform: `translateY(${dragged.by}px)` } : undefined}
    >
      {reason && position > 0 && <p class="pour-reason">{reason}</p>}
      <div class="pour-line">
        <span class="pour-grip figures" title={said.drag(pour.name)} {...handle}>
          {numbered}
        </span>
        <button type="button" class="pour-words" onClick={onOpen}>
          <span class="visually-hidden">{said.edit}</span>
          <span class="pour-name">{pour.name}</span>
          <span class="pour-facts">{factsOf(pour, code)}</span>
        </button>
        {photo === undefined ? null : <LabelThumb key={photo} photo={photo} />}
        <span class="pour-moves">
          <Button
            kind="quiet"
            label={said.up(pour.name)}
            disabled={position === 0}
            onPress={() => onMove(-1)}
          >
            <Icon of={up} />
          </Button>
          <Button kind="quiet" label={said.down(pour.name)} disabled={last} onPress={() => onMove(1)}>
            <Icon of={down} />
          </Button>
        </span>
      </div>
    </li>
  );
}

function factsOf(pour: Pour, code: string | undefined): string {
  const said = words.pours;
  return [
    ...(code === undefined ? [] : [said.code(code)]),
    ...(pour.producer === undefined ? [] : [pour.producer]),
    ...(pour.ageYears === undefined ? [] : [said.ageYears(number(pour.ageYears, 1))]),
    ...(pour.vintage === undefined ? [] : [String(pour.vintage)]),
    pour.abv === undefined ? said.noStrength : said.strength(number(pour.abv, 1)),
  ].join(' · ');
}

function reasonWords({ reason }: LineupStep, isBest: boolean): string {
  const said = words.reason;
  switch (reason.code) {
    case 'opens':
      return said.opens;
    case 'rises':
      return said.rises(reason.axis);
    case 'rises-if-assumed':
      return said.assumed(reason.axis);
    case 'starts-again':
      return said.again(reason.axis);
    case 'gives-way':
      return isBest ? said.gives(reason.axis) : said.givesByHand(reason.axis);
    case 'equal':
      return said.equal;
    default:
      return reason satisfies never;
  }
}
