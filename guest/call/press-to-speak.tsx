import { useEffect } from 'preact/hooks';
import type { Call } from '../../shared/call/call.ts';
import { callWords as words } from '../../shared/language/en/call.ts';
import { Icon } from '../../shared/ui/icon.tsx';
import { microphone } from '../../shared/ui/strokes.ts';

/** [V5] In silence, for who has called for the host: it speaks to the host alone, while a finger or a key holds it. */
export function PressToSpeak({ call }: { readonly call: Call }) {
  useEffect(() => () => call.press(false), [call]);
  const release = () => call.press(false);
  const held = call.gates.value.microphone === 'host';
  return (
    <button
      type="button"
      class="button call-press"
      aria-pressed={held}
      title={words.pressHint}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        call.press(true);
      }}
      onPointerUp={release}
      onPointerCancel={release}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if ((event.key === ' ' || event.key === 'Enter') && !event.repeat) call.press(true);
      }}
      onKeyUp={release}
      onBlur={release}
    >
      <Icon of={microphone} />
      {words.press}
    </button>
  );
}
