import { useSignal } from '@preact/signals';
import { readySeatsNeeded } from '../../../core/running-order/room-share.ts';
import type { Pacing } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Choice, optionsOf } from '../../../shared/ui/choice.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import {
  applyTheme,
  readTheme,
  saveTheme,
  type ThemeChoice,
  themeChoices,
} from '../../../shared/ui/theme.ts';
import { coverNames, namesCovered } from '../../evening/names-cover.ts';
import { chooseHandedness, type Handedness, readHandedness } from '../../handedness.ts';
import { words } from '../../language.ts';
import { hrefOf } from '../../route.ts';
import type { DrawerProps } from '../drawer.ts';

const shares = ['0.5', '0.75', '1'] as const;

export function MoreDrawer({ evening, view, table, actions, onOpen, onClose }: DrawerProps) {
  return (
    <Dialog
      title={words.more.title}
      onClose={onClose}
      close={words.close}
      actions={
        <>
          <Button kind="quiet" onPress={() => onOpen({ shows: 'keys' })}>
            {words.more.keys}
          </Button>
          <Button kind="quiet" onPress={() => onOpen({ shows: 'title' })}>
            {words.more.mendTitle}
          </Button>
          <Button onPress={() => onOpen({ shows: 'finish' })}>{words.more.finish}</Button>
        </>
      }
    >
      <PacingChoice
        pacing={view.pacing}
        here={table.counts.here}
        onChoose={(pacing) => actions.just({ type: 'ChoosePacing', pacing })}
        waitForRemote={view.waitForRemote}
        onWait={(wait) => actions.just({ type: 'WaitForRemote', wait })}
      />
      {view.blind && (
        <Switch
          label={words.cover.switch}
          hint={words.cover.switchHint}
          on={namesCovered.value}
          onTurn={coverNames}
        />
      )}
      <LightAndHand />
      <nav class="row-of-links" aria-label={words.doors.elsewhere}>
        <a class="button" href={hrefOf({ page: 'doors', tasting: evening.stored.tasting })}>
          {words.doors.title}
        </a>
        <a class="button" href={hrefOf({ page: 'pouring', tasting: evening.stored.tasting })}>
          {words.more.pouring}
        </a>
        <a class="button" href={hrefOf({ page: 'print', tasting: evening.stored.tasting, kind: 'mats' })}>
          {words.more.paper}
        </a>
        <a class="button" href={hrefOf({ page: 'home' })}>
          {words.more.home}
        </a>
      </nav>
    </Dialog>
  );
}

interface PacingChoiceProps {
  readonly pacing: Pacing;
  /** Guests who are here now. */
  readonly here: number;
  readonly onChoose: (pacing: Pacing) => void;
  readonly waitForRemote: boolean;
  readonly onWait: (wait: boolean) => void;
}

function PacingChoice({ pacing, here, onChoose, waitForRemote, onWait }: PacingChoiceProps) {
  return (
    <>
      <Choice
        legend={words.more.pacing}
        across
        value={pacing.by}
        onChoose={(by) => onChoose(by === 'room' ? { by, share: 0.75 } : { by })}
        options={optionsOf(['host', 'steps', 'clock', 'room'], words.more.pacings, words.more.pacingHints)}
      />
      {pacing.by === 'room' && (
        <Choice
          legend={words.more.share}
          across
          value={shares.find((share) => Number(share) === pacing.share)}
          onChoose={(share) => onChoose({ by: 'room', share: Number(share) })}
          options={shares.map((share) => ({
            value: share,
            label:
              here === 0
                ? words.more.shares[share]
                : `${words.more.shares[share]} · ${words.readiness.shareNow(readySeatsNeeded(Number(share), here), here)}`,
          }))}
        />
      )}
      <p class="small soft">{words.more.gates}</p>
      {pacing.by !== 'host' && (
        <Switch
          label={words.more.waitForRemote}
          hint={words.more.waitForRemoteHint}
          on={waitForRemote}
          onTurn={onWait}
        />
      )}
    </>
  );
}

function LightAndHand() {
  const theme = useSignal<ThemeChoice>(readTheme());
  const hand = useSignal<Handedness>(readHandedness());
  return (
    <>
      <Choice
        legend={words.more.light}
        across
        value={theme.value}
        onChoose={(choice) => {
          theme.value = choice;
          applyTheme(choice, document.documentElement);
          saveTheme(choice);
        }}
        options={optionsOf(themeChoices, words.more.lights, words.more.lightHints)}
      />
      <Choice
        legend={words.more.hand}
        across
        value={hand.value}
        onChoose={(choice) => {
          hand.value = choice;
          chooseHandedness(choice);
        }}
        options={optionsOf(['left', 'right'], words.more.hands)}
      />
    </>
  );
}
