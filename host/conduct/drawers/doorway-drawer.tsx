import { useLazyPart } from '../../../shared/page/lazy-part.ts';
import { Choice } from '../../../shared/ui/choice.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { hostLink } from '../../access/key-link.ts';
import { guestAddresses } from '../../evening/guest-addresses.ts';
import { IssuedLink } from '../../evening/issued-link.tsx';
import { JoinCode } from '../../evening/join-code.tsx';
import { RoomScreens } from '../../evening/room-screens.tsx';
import { words } from '../../language.ts';
import type { DrawerProps } from '../drawer.ts';
import { storyPart } from '../story/story-part.ts';

const hints = { open: 'openHint', ask: 'askHint', closed: 'closedHint' } as const;

/** The doors, and the square again for whoever comes late. */
export function DoorwayDrawer({ evening, view, order, actions, onClose }: DrawerProps) {
  const { stored, app } = evening;
  const cue = order.find(({ id }) => id === view.cue);
  const desk = useLazyPart(storyPart)?.storyPages;
  return (
    <Dialog title={words.doorway.title} onClose={onClose} close={words.close}>
      <JoinCode stored={stored} />
      <Choice
        legend={words.doorway.legend}
        across
        value={view.doors}
        onChoose={(doors) => actions.just({ type: 'SetDoors', doors })}
        options={(['open', 'ask', 'closed'] as const).map((doors) => ({
          value: doors,
          label: words.doorway[doors],
          hint: words.doorway[hints[doors]],
        }))}
      />
      <RoomScreens evening={evening} />
      {evening.follower.presence.value.screens > 0 && cue && desk && (
        <desk.ScreenDesk evening={evening} view={view} cue={cue} actions={actions} />
      )}
      <IssuedLink
        name={words.doorway.secondHost}
        hint={words.doorway.secondHostHint}
        label={words.doorway.secondHostLabel}
        issue={() => app.api.issueKey(stored.tasting, { for: 'host' })}
        linkOf={(key) => hostLink(reachableOrigin(evening), stored.tasting, key)}
      />
    </Dialog>
  );
}

/** A second device cannot reach a server by this tablet's own name for it, such as localhost. */
export function reachableOrigin({ stored }: DrawerProps['evening']): string {
  const own = window.location.origin;
  const first = guestAddresses(stored, own)[0];
  return first === undefined ? own : new URL(first.link).origin;
}
