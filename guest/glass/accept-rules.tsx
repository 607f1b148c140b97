import { useState } from 'preact/hooks';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { ready } from '../../shared/ui/strokes.ts';
import { words } from '../language.ts';
import { useRoom } from '../room/room.ts';

/** Under the thumb, where nothing hides it. */
export function AcceptRules() {
  const { ask } = useRoom();
  const [busy, setBusy] = useState(false);
  const accept = async (): Promise<void> => {
    setBusy(true);
    await ask({ type: 'AcceptGroundRules' });
    setBusy(false);
  };
  return (
    <Button kind="primary" busy={busy} onPress={() => void accept()}>
      <Icon of={ready} />
      {words.rules.accept}
    </Button>
  );
}
