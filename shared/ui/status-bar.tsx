import { Button } from './button.tsx';
import { Icon } from './icon.tsx';
import { close } from './notice-strokes.ts';
import type { Status } from './status.ts';

interface StatusBarProps {
  readonly status: Status;
  /** Name of the button that puts the message away. */
  readonly closeLabel: string;
}

/**
 * The page's only live region. It is always there, because screen readers speak only of changes inside a region
 * that they already know; its buttons stand outside, so that they are not read out with it.
 */
export function StatusBar({ status, closeLabel }: StatusBarProps) {
  const message = status.message.value;
  const shown = message !== undefined && !message.unseen;
  const action = message?.action;
  return (
    <div class={shown ? 'status status-shown' : 'status visually-hidden'}>
      <output class="status-text" aria-live="polite">
        {message && <span key={message.id}>{message.text}</span>}
      </output>
      {shown && action && (
        <Button
          kind="quiet"
          onPress={() => {
            status.clear();
            action.onPress();
          }}
        >
          {action.label}
        </Button>
      )}
      {shown && (
        <Button kind="quiet" label={closeLabel} onPress={status.clear}>
          <Icon of={close} />
        </Button>
      )}
    </div>
  );
}
