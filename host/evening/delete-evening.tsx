import { useSignal } from '@preact/signals';
import type { TastingId } from '../../core/ids.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Dialog } from '../../shared/ui/dialog.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import type { Status } from '../../shared/ui/status.ts';
import { bin } from '../../shared/ui/strokes.ts';
import { Switch } from '../../shared/ui/switch.tsx';
import type { HostApi } from '../api.ts';
import { sentenceFor } from '../language.ts';

interface DeleteEveningProps {
  readonly tasting: TastingId;
  readonly title: string;
  readonly api: Pick<HostApi, 'plan' | 'deleteTasting'>;
  readonly status: Status;
  /** What there is to lose; of an evening that was had where absent. */
  readonly lead?: string | undefined;
  readonly goes?: readonly string[] | undefined;
  /** Once the server has nothing left of it. */
  readonly onGone: () => void;
}

/** The one thing without an undo: said plainly, then asked twice. */
export function DeleteEvening({
  tasting,
  title,
  api,
  status,
  lead = words.remove.lead,
  goes = words.remove.goes,
  onGone,
}: DeleteEveningProps) {
  const asking = useSignal(false);
  const understood = useSignal(false);
  const busy = useSignal(false);
  const close = (): void => {
    asking.value = false;
    understood.value = false;
  };
  const remove = async (): Promise<void> => {
    busy.value = true;
    const answer = await api.deleteTasting(tasting);
    // Asked again, so that "deleted" is what the server says and not what this page hopes.
    const again = await api.plan(tasting);
    busy.value = false;
    close();
    if (isGone(again)) return onGone();
    status.say(answer.ok || again.ok ? words.remove.notSure : sentenceFor(answer.code));
  };
  return (
    <section class="recap-delete stack screen-only" aria-labelledby="delete-evening">
      <h2 id="delete-evening">{words.remove.title}</h2>
      <p>{lead}</p>
      <div>
        <Button
          kind="danger"
          onPress={() => {
            asking.value = true;
          }}
        >
          <Icon of={bin} />
          {words.remove.begin}
        </Button>
      </div>
      {asking.value && (
        <Dialog
          title={words.remove.sure(title)}
          onClose={close}
          close={words.remove.keep}
          actions={
            <Button
              kind="danger"
              disabled={!understood.value}
              busy={busy.value}
              onPress={() => void remove()}
            >
              {words.remove.go}
            </Button>
          }
        >
          <ul class="marks">
            {goes.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <Switch label={words.remove.understood} on={understood.value} onTurn={setterOf(understood)} />
        </Dialog>
      )}
    </section>
  );
}

/** With the house's key the tasting is unknown; a key of its own went with it and opens nothing any more. */
const isGone = (again: Awaited<ReturnType<HostApi['plan']>>): boolean =>
  !again.ok && (again.code === 'no-such-tasting' || again.code === 'wrong-key');
