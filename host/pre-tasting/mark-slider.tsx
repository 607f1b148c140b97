import { useId } from 'preact/hooks';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { minus, plus } from '../../shared/ui/strokes.ts';
import { number } from '../numbers.ts';
import { words } from '../plan/words.ts';

interface MarkSliderProps {
  readonly said: { readonly name: string; readonly low: string; readonly high: string };
  /** By what the axis is measured. */
  readonly measure: string;
  /** What a mark means, in a word. */
  readonly stepOf: (mark: number) => string;
  /** From 0 to 10; undefined while it is not marked. */
  readonly mark: number | undefined;
  readonly onMark: (mark: number | undefined) => void;
}

const most = 10;
const middle = 5;

/** A mark on one axis, by thumb or by two buttons. Without a mark the knob waits in the middle and says so. */
export function MarkSlider({ said, measure, stepOf, mark, onMark }: MarkSliderProps) {
  const id = useId();
  const { noMark, mark: marked, less, more, noMarkAgain, noMarkAgainOf } = words.ahead;
  const value = mark === undefined ? noMark : marked(number(mark, 1), stepOf(mark));
  const step = (by: 1 | -1) => onMark(Math.max(0, Math.min(most, (mark ?? middle) + by)));
  return (
    <div class="mark">
      <p class="mark-head">
        <label class="field-label" for={id}>
          {said.name}
        </label>
        <span class={mark === undefined ? 'soft' : 'figures'}>{value}</span>
      </p>
      <div class="mark-row">
        <Button label={less(said.name)} disabled={mark === 0} onPress={() => step(-1)}>
          <Icon of={minus} />
        </Button>
        <input
          class={mark === undefined ? 'mark-range mark-none' : 'mark-range'}
          id={id}
          type="range"
          min={0}
          max={most}
          step={0.5}
          value={mark ?? middle}
          style={{ '--share': `${(mark ?? 0) * most}%` }}
          aria-valuetext={value}
          onInput={(event) => onMark(Number(event.currentTarget.value))}
        />
        <Button label={more(said.name)} disabled={mark === most} onPress={() => step(1)}>
          <Icon of={plus} />
        </Button>
      </div>
      <p class="mark-ends small soft" aria-hidden="true">
        <span>{said.low}</span>
        <span>{said.high}</span>
      </p>
      <p class="small soft">{measure}</p>
      {mark !== undefined && (
        <Button kind="quiet" label={noMarkAgainOf(said.name)} onPress={() => onMark(undefined)}>
          {noMarkAgain}
        </Button>
      )}
    </div>
  );
}
