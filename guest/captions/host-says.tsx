import { signal } from '@preact/signals';
import { captionWords as words } from '../../shared/language/en/captions.ts';
import { say } from '../../shared/language/en/host-script.ts';
import { sayOf } from '../../shared/language/host-script.ts';
import { Button } from '../../shared/ui/button.tsx';
import type { SeatedViews, SeatView, StageUnderWay } from '../../shared/wire/views.ts';
import { deviceFlag } from '../page/device-storage.ts';
import { drinkOf } from '../stage/cue-words.ts';

const off = deviceFlag('quietpour.captions-hidden');
const hidden = signal(off.isSet());

const turn = (to: boolean): void => {
  hidden.value = to;
  off.set(to);
};

/** What stands on the host's tablet to be said, at the same cue: a bad line or a bad ear loses nothing. */
export function HostSays({ stage, own }: SeatedViews) {
  if (hidden.value)
    return (
      <Button kind="quiet" onPress={() => turn(false)}>
        {words.show}
      </Button>
    );
  return (
    <figure class="captions">
      <figcaption>
        {words.title}
        <Button kind="quiet" label={`${words.hide}: ${words.title}`} onPress={() => turn(true)}>
          {words.hide}
        </Button>
      </figcaption>
      <blockquote class="say">{captionOf(stage, own)}</blockquote>
    </figure>
  );
}

/** In this device's own language, unless the host wrote words of their own. */
export function captionOf(stage: StageUnderWay, { crowd = 'regulars' }: Pick<SeatView, 'crowd'>): string {
  const { cue, openBoards } = stage;
  // A break that the host calls is no part of the plan, and is named so.
  const called = cue.id.startsWith('called-break');
  return sayOf(
    say,
    { ...cue, called },
    {
      drink: drinkOf(stage),
      level: crowd,
      glass: cue.position ?? 1,
      // The host says another thing before the talk than in it.
      silent: cue.kind === 'discussion' && !cue.pours.every((pour) => openBoards.includes(pour)),
      named: cue.named,
    },
  );
}
