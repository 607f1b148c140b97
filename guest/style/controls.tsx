import { useSignal } from '@preact/signals';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Choice } from '../../shared/ui/choice.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import type { Status } from '../../shared/ui/status.ts';
import { bin, hand, hold, next } from '../../shared/ui/strokes.ts';
import { Swatch, SwatchDisc } from '../../shared/ui/swatch.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import { TextArea } from '../../shared/ui/text-area.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import { BothThemes } from './both-themes.tsx';

export function Controls({ status }: { readonly status: Status }) {
  return (
    <>
      <BothThemes title="Buttons" show={() => <Buttons status={status} />} />
      <BothThemes title="Fields" show={() => <Fields />} />
      <BothThemes title="Choices" show={() => <Choices />} />
    </>
  );
}

function Buttons({ status }: { readonly status: Status }) {
  const up = useSignal(false);
  const pressed = (): void =>
    status.say('Dropped glass four.', { action: { label: 'Undo', onPress: () => {} } });
  return (
    <>
      <div class="style-row">
        <Button kind="primary" onPress={() => status.say('Saved on this phone.')}>
          Begin
        </Button>
        <Button onPress={() => status.say('The room waits.')}>
          <Icon of={hold} />
          Hold
        </Button>
        <Button
          pressed={up.value}
          onPress={() => {
            up.value = !up.value;
          }}
        >
          <Icon of={hand} />
          More time
        </Button>
        <Button kind="quiet" onPress={() => status.clear()}>
          Not now
        </Button>
        <Button kind="danger" onPress={pressed}>
          <Icon of={bin} />
          Drop this glass
        </Button>
        <Button busy onPress={() => {}}>
          Opening the room
        </Button>
        <Button disabled onPress={() => {}}>
          Ready
        </Button>
      </div>
      <div class="thumb-bar">
        <Button onPress={() => {}}>
          <Icon of={hold} />
          Hold
        </Button>
        <Button kind="primary" size="big" onPress={() => {}}>
          Next: sip
          <Icon of={next} turns />
        </Button>
      </div>
    </>
  );
}

function Fields() {
  const name = useSignal('Ines from the ferry');
  const seats = useSignal('140');
  const note = useSignal('Wet slate, then pear skin.\nSmoke only at the very end.');
  return (
    <>
      <TextField
        label="What shall we call you?"
        hint="Only this room sees it."
        value={name.value}
        onInput={setterOf(name)}
        maxLength={60}
      />
      <TextField
        label="Seats"
        keys="numeric"
        value={seats.value}
        error="Up to 40 seats fit one evening. Enter a number from 1 to 40."
        onInput={setterOf(seats)}
      />
      <TextArea label="In your own words" value={note.value} onInput={setterOf(note)} />
    </>
  );
}

function Choices() {
  const pace = useSignal<'host' | 'clock' | 'room'>('host');
  const tint = useSignal<'straw' | 'amber' | 'brown'>('amber');
  const share = useSignal(false);
  const tone = useSignal(true);
  return (
    <>
      <Choice
        legend="Who turns the page"
        value={pace.value}
        onChoose={setterOf(pace)}
        options={[
          { value: 'host', label: 'The host', hint: 'Each step waits for your tap' },
          { value: 'clock', label: 'The clock', hint: 'Steps end at their time' },
          { value: 'room', label: 'The room', hint: 'When most are ready, never too soon' },
        ]}
      />
      <Choice
        legend="Colour against the card"
        across
        value={tint.value}
        onChoose={setterOf(tint)}
        options={[
          { value: 'straw', label: 'Straw', mark: <SwatchDisc colour="#e6d690" /> },
          { value: 'amber', label: 'Amber', mark: <SwatchDisc colour="#b8752a" /> },
          { value: 'brown', label: 'Brown', mark: <SwatchDisc colour="#5a3418" /> },
        ]}
      />
      <p>
        <Swatch colour="#e6d690" word="Straw, as you saw it" />
      </p>
      <Switch
        label="Share this note when we talk"
        hint="Off until you say so; you can take it back."
        on={share.value}
        onTurn={setterOf(share)}
      />
      <Switch label="A soft tone when the room moves on" on={tone.value} onTurn={setterOf(tone)} />
    </>
  );
}
