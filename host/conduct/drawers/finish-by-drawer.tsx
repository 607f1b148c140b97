import { useSignal } from '@preact/signals';
import { type EpochMs, epochMs } from '../../../core/units.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { useTick } from '../../../shared/ui/use-tick.ts';
import { timeOfDay, words } from '../../language.ts';
import { type DrawerProps, putAway } from '../drawer.ts';
import { endRange } from '../pace/end-range.ts';
import { aheadOf, timetableOf } from '../pace/timetable.ts';
import { nearestAt, onThisDevice, type Preview, previewOf, roundedUp } from '../pace/wished-end.ts';
import { LeftOut, Offers } from './finish-by-offers.tsx';

const step = 5 * 60_000;

/** A wished end, what would become of the evening for it, and the one tap that does it. */
export function FinishByDrawer({ evening, view, order, actions, onClose }: DrawerProps) {
  const { clock, runningOrder } = evening.follower;
  const now = epochMs(useTick(clock.now, { running: true, anchor: 0, period: 10_000 }));
  const { end } = timetableOf(order, view, now);
  const wanted = useSignal<EpochMs>(view.wishedEnd ?? roundedUp(end.likely));
  const typed = useSignal<string | null>(null);
  const unfitted = runningOrder.value?.unfitted ?? [];
  const ahead = aheadOf({ cues: order, unfitted }, view, now);
  const preview = previewOf(ahead, wanted.value);
  const said = words.pace;

  const move = (by: number): void => {
    typed.value = null;
    wanted.value = epochMs(wanted.value + by);
  };
  const type = (time: string): void => {
    const at = nearestAt(time, end.likely);
    typed.value = at === undefined ? time : null;
    if (at !== undefined) wanted.value = at;
  };
  const apply = (): void => {
    onClose();
    const time = timeOfDay(wanted.value);
    // The head of the page shows it, and that is all there is to say of it.
    if (preview.is === 'fits-already') actions.just({ type: 'WishEnd', endsAt: wanted.value });
    else
      actions.fit(wanted.value, view, preview.is === 'too-long' ? said.shortenedAll : said.shortened(time));
  };
  const primary = primaryOf(preview, wanted.value === view.wishedEnd);
  return (
    <Dialog
      title={said.title}
      onClose={onClose}
      actions={
        <>
          {view.wishedEnd !== null && (
            <Button
              kind="quiet"
              onPress={putAway(onClose, () => actions.just({ type: 'WishEnd', endsAt: null }))}
            >
              {said.forget}
            </Button>
          )}
          {view.fitted && (
            <Button onPress={putAway(onClose, () => actions.just({ type: 'UndoFit' }))}>{said.undo}</Button>
          )}
          <Button kind={primary === undefined ? 'primary' : 'plain'} onPress={onClose}>
            {words.close}
          </Button>
          {primary !== undefined && (
            <Button kind="primary" onPress={apply}>
              {primary}
            </Button>
          )}
        </>
      }
    >
      <div class="finish-time">
        <Button label={said.sooner} onPress={() => move(-step)}>
          {said.five.sooner}
        </Button>
        <TextField
          label={said.field}
          type="time"
          value={typed.value ?? onThisDevice(wanted.value)}
          onInput={type}
          error={typed.value === null ? undefined : said.notATime}
        />
        <Button label={said.later} onPress={() => move(step)}>
          {said.five.later}
        </Button>
      </div>
      <div class="stack-tight" role="status">
        <PreviewWords preview={preview} wanted={wanted.value} now={now} />
      </div>
      {preview.is === 'too-long' && (
        <Offers offers={preview.offers} over={preview.over} view={view} order={order} actions={actions} />
      )}
      <LeftOut view={view} actions={actions} />
      <p class="small soft figures">{said.sure(endRange(end))}</p>
    </Dialog>
  );
}

/** What the one tap does; nothing where the evening already stands as it would. */
function primaryOf(preview: Preview, wished: boolean): string | undefined {
  const said = words.pace;
  switch (preview.is) {
    case 'fits-already':
      return wished ? undefined : said.keep;
    case 'stands':
      return undefined;
    case 'gives-back':
      return said.giveBack;
    case 'shortens':
      return said.shorten;
    case 'too-long':
      return preview.atFloors ? undefined : said.shortenAll;
    default:
      return preview satisfies never;
  }
}

interface PreviewWordsProps {
  readonly preview: Preview;
  readonly wanted: EpochMs;
  readonly now: EpochMs;
}

function PreviewWords({ preview, wanted, now }: PreviewWordsProps) {
  const said = words.pace;
  const time = timeOfDay(wanted);
  switch (preview.is) {
    case 'fits-already':
      return <p>{said.fitsAlready(time)}</p>;
    case 'stands':
      return <p>{said.stands(time)}</p>;
    case 'gives-back':
      return <p>{said.givesBack(preview.minutes)}</p>;
    case 'shortens':
      return <Shorter preview={preview} />;
    case 'too-long':
      return (
        <>
          {wanted <= now && <p>{said.past}</p>}
          <p class="finish-over">{said.tooLong(Math.round(preview.over / 60))}</p>
          {preview.work.length > 0 && <Shorter preview={preview} />}
        </>
      );
    default:
      return preview satisfies never;
  }
}

function Shorter({ preview }: { readonly preview: Extract<Preview, { work: unknown }> }) {
  const said = words.pace;
  return (
    <>
      <h3 class="finish-would">{said.would}</h3>
      <ul class="finish-work">
        {preview.work.map(({ work, seconds }) => (
          <li key={work}>
            <span>{said.works[work]}</span>
            <span class="figures">{said.shorter(seconds)}</span>
          </li>
        ))}
      </ul>
      <p class="small soft">{said.floors}</p>
    </>
  );
}
