import { callWords as words } from '../language/en/call.ts';
import { Button } from '../ui/button.tsx';
import { Icon } from '../ui/icon.tsx';
import { camera, microphone } from '../ui/strokes.ts';
import type { Call } from './call.ts';
import type { Device } from './own-media.ts';

const icons = { microphone, camera };

interface DeviceButtonProps {
  readonly call: Call;
  readonly device: Device;
  readonly kind?: 'quiet' | undefined;
}

/** Opens and closes the own camera, or the own microphone for all, where the cue lets it. */
export function DeviceButton({ call, device, kind }: DeviceButtonProps) {
  const { microphone: to, camera: films, mayOpen } = call.gates.value;
  // While a call is voices only a camera that was wished for is not open.
  const open = device === 'camera' ? films && call.voiceOnly.value === 'no' : to === 'all';
  return (
    <Button
      kind={kind}
      pressed={open}
      disabled={!open && !mayOpen[device]}
      onPress={() => void call.turnOn(device, !open)}
    >
      <Icon of={icons[device]} />
      {open ? words[device].open : words[device].closed}
    </Button>
  );
}
