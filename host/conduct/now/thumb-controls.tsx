import type { ReadonlySignal } from '@preact/signals';
import type { PourId } from '../../../core/ids.ts';
import type { Cue } from '../../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { back, clock, hold, next, plus, resume, talk } from '../../../shared/ui/strokes.ts';
import type { SentHostCommand } from '../../../shared/wire/commands.ts';
import { nameOf, shortGlassOf } from '../../evening/cue-words.ts';
import { words } from '../../language.ts';
import type { HostActions } from '../actions/host-actions.ts';
import type { PrimaryAction } from '../actions/primary-action.ts';

interface ThumbControlsProps {
  readonly view: HostUnderWay;
  readonly order: readonly Cue[];
  readonly step: PrimaryAction;
  /** What waits for its answer. */
  readonly waiting: ReadonlySignal<ReadonlySet<SentHostCommand['type']>>;
  /** Whether the cue has only just changed under the thumb. */
  readonly settling: () => boolean;
  readonly actions: HostActions;
}

/** Under the thumb: the one big button, and beside it the three small ones that are pressed without looking. */
export function ThumbControls({ view, order, step, settling, actions, ...props }: ThumbControlsProps) {
  const waiting = props.waiting.value;
  const held = view.clock.kind === 'held';
  const stepping =
    settling() ||
    (['Advance', 'OpenDiscussion', 'TellResult', 'Reveal'] as const).some((type) => waiting.has(type));
  return (
    <footer class="room-thumb thumb-bar">
      <Button
        busy={waiting.has('GoBack')}
        disabled={view.previous === null}
        onPress={() => actions.back(view.cue)}
      >
        <Icon of={back} turns />
        {words.room.back}
      </Button>
      <Button
        busy={waiting.has('Hold') || waiting.has('Resume')}
        pressed={held}
        onPress={() => actions.holdOrResume(view.clock)}
      >
        <Icon of={held ? resume : hold} turns={held} />
        {held ? words.room.resume : words.room.hold}
      </Button>
      <Button busy={waiting.has('GiveTime')} label={words.room.minuteLabel} onPress={actions.minute}>
        {words.room.minute}
      </Button>
      {(view.pacing.by === 'host' || view.pacing.by === 'steps') && (
        <Button
          busy={waiting.has('ChoosePacing')}
          pressed={view.pacing.by === 'steps'}
          label={words.room.steps.label}
          onPress={() => actions.letStepsRun(view.pacing.by === 'host')}
        >
          <Icon of={clock} />
          {words.room.steps.run}
        </Button>
      )}
      <Button kind="primary" size="big" busy={stepping} onPress={() => actions.takeStep(step)}>
        <BigWords view={view} order={order} step={step} />
        <Icon of={step.does === 'advance' ? next : step.does === 'finish' ? plus : talk} turns />
      </Button>
    </footer>
  );
}

/** What the big button does, and what comes of it. */
function BigWords({ view, order, step }: Pick<ThumbControlsProps, 'view' | 'order' | 'step'>) {
  const here = order.find(({ id }) => id === view.cue);
  const after = order.find(({ id }) => id === view.next);
  const name = after === undefined ? '' : nameOf(after, view.pours, here);
  switch (step.does) {
    case 'advance':
      return <BigLines over={words.room.next} main={name} />;
    case 'open-discussion':
      return <BigLines main={words.room.openTalk} under={name && words.room.afterwards(name)} />;
    case 'tell-result':
      return <BigLines main={words.room.tellResult} under={name && words.room.afterwards(name)} />;
    case 'reveal':
      return (
        <BigLines
          main={tells(step.pours, view)}
          under={
            view.toTell.length > step.pours.length
              ? words.room.namesLeft(view.toTell.length - step.pours.length)
              : name && words.room.afterwards(name)
          }
        />
      );
    case 'finish':
      return <BigLines main={words.room.finish} />;
    default:
      return step satisfies never;
  }
}

/** The glass and not its name: guests look over the host's shoulder. */
function tells([first, ...more]: readonly PourId[], view: HostUnderWay): string {
  return first === undefined || more.length > 0
    ? words.room.tellNames
    : words.room.tellName(shortGlassOf(view.pours, first));
}

function BigLines({ over, main, under }: { over?: string; main: string; under?: string }) {
  return (
    <span class="big-lines">
      {over && <span class="big-small">{over}</span>}
      <span class="big-main">{main}</span>
      {under && <span class="big-small">{under}</span>}
    </span>
  );
}
