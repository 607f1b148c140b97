import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Cue } from '../../../core/running-order/cue.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { words } from '../../language.ts';

/** What stands under the verb: what to say, what is on the table, the card of a glass, the room's screen. */
type NowTab = 'say' | 'board' | 'card' | 'screen';

const names = { board: 'show', say: 'showSay', card: 'showCard', screen: 'showScreen' } as const;

interface Tabs {
  readonly tab: NowTab;
  /** Only the words to say, when it is one. */
  readonly tabs: readonly NowTab[];
  choose(tab: NowTab): void;
}

/**
 * Which of them shows. A talk that opens brings the table, a name that is told its card; a talk that is left open goes on
 * in the background, for what the room does now comes first.
 */
export function useNowTabs(view: HostUnderWay, cue: Cue | undefined, talks: boolean, screens: number): Tabs {
  const names = cue?.kind === 'reveal';
  const [told] = names ? view.justTold.filter((pour) => cue.pours.includes(pour)) : [];
  const chosen = useSignal<NowTab>(talks ? 'board' : 'say');
  useEffect(() => {
    chosen.value = talks ? 'board' : 'say';
  }, [talks, chosen]);
  useEffect(() => {
    if (cue) chosen.value = talks && cue.kind === 'discussion' ? 'board' : 'say';
  }, [cue?.id, chosen]);
  useEffect(() => {
    if (told !== undefined) chosen.value = 'card';
  }, [told, cue?.id, chosen]);
  const about = talks || names || cue?.kind === 'discussion' || cue?.kind === 'result';
  const tabs: NowTab[] = [
    ...(talks ? (['board'] as const) : []),
    'say',
    ...(about ? (['card'] as const) : []),
    ...(about && screens > 0 ? (['screen'] as const) : []),
  ];
  const tab = tabs.includes(chosen.value) ? chosen.value : 'say';
  const choose = (next: NowTab): void => {
    chosen.value = next;
  };
  return { tab, tabs, choose };
}

export function NowTabs({ tab: now, tabs, choose }: Tabs) {
  return (
    <>
      {tabs.map((tab) => (
        <Button key={tab} pressed={tab === now} onPress={() => choose(tab)}>
          {words.board[names[tab]]}
        </Button>
      ))}
    </>
  );
}
