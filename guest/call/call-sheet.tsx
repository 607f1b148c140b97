import type { Call } from '../../shared/call/call.ts';
import { callWords as words } from '../../shared/language/en/call.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Dialog } from '../../shared/ui/dialog.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import { useRoom } from '../room/room.ts';

interface CallSheetProps {
  readonly call: Call;
  readonly onClose: () => void;
}

/** What one sets once about the call, and the way out of it. */
export function CallSheet({ call, onClose }: CallSheetProps) {
  const link = useRoom().follower.stage.value?.callLink ?? null;
  return (
    <Dialog
      title={words.title}
      onClose={onClose}
      close={words.done}
      actions={
        <Button
          kind="danger"
          onPress={() => {
            onClose();
            call.leave();
          }}
        >
          {words.leave}
        </Button>
      }
    >
      <div class="stack">
        <Switch
          label={words.atMyTurn}
          hint={words.atMyTurnHint}
          on={call.wishes.value.atMyTurn}
          onTurn={(on) => void call.wishTurn(on)}
        />
        <Switch
          label={words.voiceOnly}
          hint={words.voiceOnlyHint}
          on={call.voiceOnly.value !== 'no'}
          onTurn={call.wishVoiceOnly}
        />
        <p class="small soft">{words.privacy}</p>
        {link !== null && (
          <a class="button button-quiet" href={link} target="_blank" rel="noreferrer noopener">
            {words.other}
          </a>
        )}
      </div>
    </Dialog>
  );
}
