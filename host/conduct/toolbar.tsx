import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { info, water } from '../../shared/ui/notice-strokes.ts';
import { breadBreak, glass, screen, unlock } from '../../shared/ui/strokes.ts';
import { words } from '../language.ts';
import type { OpenDrawer } from './drawer.ts';

/** What a host reaches for now and then; each opens a drawer. */
export function Toolbar({
  screenAsks,
  onOpen,
}: {
  readonly screenAsks: boolean;
  readonly onOpen: OpenDrawer;
}) {
  return (
    <div class="room-tools">
      <Tool of={water} name={words.tools.remind} onPress={() => onOpen({ shows: 'remind' })} />
      <Tool of={breadBreak} name={words.tools.pause} onPress={() => onOpen({ shows: 'pause' })} />
      <Tool of={glass} name={words.tools.glasses} onPress={() => onOpen({ shows: 'glasses' })} />
      <Tool
        of={screenAsks ? screen : unlock}
        name={screenAsks ? words.tools.screenAsks : words.tools.doors}
        onPress={() => onOpen({ shows: 'doorway' })}
      />
      <Tool of={info} name={words.tools.more} onPress={() => onOpen({ shows: 'more' })} />
    </div>
  );
}

function Tool({
  of,
  name,
  onPress,
}: {
  readonly of: string;
  readonly name: string;
  readonly onPress: () => void;
}) {
  return (
    <Button onPress={onPress}>
      <Icon of={of} />
      {name}
    </Button>
  );
}
