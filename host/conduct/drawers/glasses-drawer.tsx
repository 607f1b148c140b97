import { useSignal } from '@preact/signals';
import type { PourId } from '../../../core/ids.ts';
import type { HostPour } from '../../../core/session/views/host.ts';
import { limits } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { CoveredName } from '../../evening/covered-name.tsx';
import { placesOf } from '../../evening/cue-words.ts';
import { codeOf, isCovered, shownName } from '../../evening/names-cover.ts';
import { words } from '../../language.ts';
import type { HostActions } from '../actions/host-actions.ts';
import { type DrawerProps, putAway } from '../drawer.ts';

/** What cannot be taken back is asked twice: sealing the notes of a glass, telling its name. */
interface Sure {
  readonly about: 'open' | 'open-all' | 'tell' | 'tell-all';
  readonly title: string;
  readonly pours: readonly PourId[];
}

/** Every glass of the evening: talk, names, dropping and putting back, out of the usual order. */
export function GlassesDrawer({ view, order, actions, onOpen, onClose }: DrawerProps) {
  const sure = useSignal<Sure | null>(null);
  const places = placesOf(view.pours);
  const asked = sure.value;
  if (asked !== null) {
    const back = (): void => {
      sure.value = null;
    };
    return (
      <Dialog
        title={asked.title}
        onClose={back}
        close={words.cancel}
        actions={<Button onPress={putAway(onClose, () => confirmed(asked, actions))}>{doesOf(asked)}</Button>}
      >
        <p>{words.glasses.sure[asked.about]}</p>
      </Dialog>
    );
  }
  const at = order.find(({ id }) => id === view.cue);
  const shut = [...view.pours.filter(({ dropped }) => !dropped), ...view.trials]
    .filter(({ reached, discussion }) => reached && discussion !== 'open')
    .map(({ id }) => id);
  return (
    <Dialog
      title={words.glasses.title}
      onClose={onClose}
      close={words.close}
      actions={
        <>
          {view.toTell.length > 1 && view.naming === 'one-by-one' && (
            <Button
              onPress={() => {
                sure.value = { about: 'tell-all', title: words.glasses.tellAll, pours: view.toTell };
              }}
            >
              {words.glasses.tellAll}
            </Button>
          )}
          {shut.length > 1 && (
            <Button
              onPress={() => {
                sure.value = { about: 'open-all', title: words.glasses.openAll, pours: shut };
              }}
            >
              {words.glasses.openAll}
            </Button>
          )}
          {view.pours.filter(({ movable }) => movable).length > 1 && (
            <Button onPress={() => onOpen({ shows: 'reorder' })}>{words.glasses.order}</Button>
          )}
          {view.pours.length < limits.pours && (
            <Button onPress={() => onOpen({ shows: 'add-pour' })}>{words.glasses.add}</Button>
          )}
        </>
      }
    >
      <ul class="plain-list">
        {view.pours.map((pour) => (
          <li key={pour.id} class={pour.dropped ? 'glass-row glass-dropped' : 'glass-row'}>
            <p class="glass-words">
              <span class="glass-name">
                {places.has(pour.id) && `${places.get(pour.id)} · `}
                <CoveredName name={pour.name} instead={codeOf(pour)} covered={isCovered(pour, view.blind)} />
              </span>
              <span class="soft small">{stateOf(pour, view.blind)}</span>
            </p>
            <div class="row">
              <GlassAsks
                pour={pour}
                blind={view.blind}
                actions={actions}
                onSure={(about) => {
                  // Opening again seals nothing anew, so it needs no second question.
                  if (about === 'open' && pour.discussion === 'closed') actions.openTalk([pour.id]);
                  else sure.value = { about, title: shownName(pour, view.blind), pours: [pour.id] };
                }}
                onChange={(shows) => onOpen({ shows, pour: pour.id })}
                onDrop={putAway(onClose, () => actions.drop(pour, shownName(pour, view.blind), at))}
              />
            </div>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}

interface GlassAsksProps {
  readonly pour: HostPour;
  readonly blind: boolean;
  readonly actions: HostActions;
  readonly onSure: (about: 'open' | 'tell') => void;
  readonly onChange: (how: 'swap' | 'mend') => void;
  readonly onDrop: () => void;
}

function GlassAsks({ pour, blind, actions, onSure, onChange, onDrop }: GlassAsksProps) {
  if (pour.dropped) {
    return (
      <Button onPress={() => actions.just({ type: 'RestorePour', pour: pour.id })}>
        {words.glasses.restore}
      </Button>
    );
  }
  return (
    <>
      {pour.reached && pour.discussion !== 'open' && (
        <Button onPress={() => onSure('open')}>{words.glasses.openTalk}</Button>
      )}
      {pour.discussion === 'open' && (
        <Button onPress={() => actions.closeTalk([pour.id])}>{words.glasses.closeTalk}</Button>
      )}
      {blind && pour.reached && !pour.revealed && (
        <Button onPress={() => onSure('tell')}>{words.glasses.tellName}</Button>
      )}
      <Button kind="quiet" onPress={() => onChange('swap')}>
        {words.glasses.swap}
      </Button>
      <Button kind="quiet" onPress={() => onChange('mend')}>
        {words.glasses.mend}
      </Button>
      <Button kind="quiet" onPress={onDrop}>
        {words.glasses.drop}
      </Button>
    </>
  );
}

function confirmed({ about, pours }: Sure, actions: HostActions): void {
  if (about === 'tell' || about === 'tell-all') actions.just({ type: 'Reveal', pours });
  else actions.openTalk(pours);
}

function doesOf({ about }: Sure): string {
  if (about === 'tell-all') return words.glasses.tellAll;
  return about === 'tell' ? words.glasses.tellName : words.glasses.openTalk;
}

function stateOf(pour: HostPour, blind: boolean): string {
  if (pour.dropped) return words.glasses.dropped;
  return [
    ...(pour.code === null || isCovered(pour, blind) ? [] : [words.glasses.code(pour.code)]),
    pour.reached ? words.glasses.tasted : words.glasses.notYet,
    ...(pour.discussion === 'open' ? [words.glasses.talkOpen] : []),
    ...(pour.discussion === 'closed' ? [words.glasses.talkClosed] : []),
    ...(blind && pour.reached ? [pour.revealed ? words.glasses.named : words.glasses.unnamed] : []),
  ].join(' · ');
}
