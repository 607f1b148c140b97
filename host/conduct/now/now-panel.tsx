import { type Cue, pourOf } from '../../../core/running-order/cue.ts';
import { traitsOf } from '../../../core/running-order/cue-traits.ts';
import type { HostPour, HostUnderWay } from '../../../core/session/views/host.ts';
import { say } from '../../../shared/language/en/host-script.ts';
import { sayOf } from '../../../shared/language/host-script.ts';
import { lazyComponent, useLazyPart } from '../../../shared/page/lazy-part.ts';
import { turnsClock } from '../../../shared/talk/speaking-order.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { DrainingGlass } from '../../../shared/ui/draining-glass.tsx';
import type { CueTime } from '../../../shared/ui/time-left.ts';
import { useTick } from '../../../shared/ui/use-tick.ts';
import { CoveredName } from '../../evening/covered-name.tsx';
import { verbOf, whereOf } from '../../evening/cue-words.ts';
import type { EveningContext } from '../../evening/evening-context.ts';
import { codeOf, isCovered } from '../../evening/names-cover.ts';
import type { Table } from '../../evening/table.ts';
import { words } from '../../language.ts';
import type { HostActions } from '../actions/host-actions.ts';
import { type PrimaryAction, resultAt } from '../actions/primary-action.ts';
import { storyPart } from '../story/story-part.ts';
import { BoardPanel } from './board-panel.tsx';
import { hearers } from './hearers.ts';
import { HintLine } from './hint-line.tsx';
import { NowTabs, useNowTabs } from './now-tabs.tsx';
import { NudgeLine } from './nudge-line.tsx';
import { resultPart } from './result-part.ts';
import { SayLine } from './say-line.tsx';
import { StepsOffer } from './steps-offer.tsx';

const ToldNow = lazyComponent(
  resultPart,
  ({ ToldNow: Told }) => Told,
  () => <p class="now-hint">{words.loading}</p>,
);

interface NowPanelProps {
  readonly evening: EveningContext;
  readonly view: HostUnderWay;
  readonly cue: Cue | undefined;
  readonly order: readonly Cue[];
  readonly step: PrimaryAction;
  readonly table: Table;
  readonly actions: HostActions;
}

/** What the room does now: the verb, the time, and what to say aloud; the board while a talk is open. */
export function NowPanel({ evening, view, cue, order, step, table, actions }: NowPanelProps) {
  const open = [...view.pours, ...view.trials].filter(({ discussion }) => discussion === 'open');
  const talks = open.length > 0;
  const tabs = useNowTabs(view, cue, talks, evening.follower.presence.value.screens);
  if (cue === undefined) return <section class="room-now">{words.loading}</section>;

  const pour = view.pours.find(({ id }) => id === pourOf(cue));
  const next = order.find(({ id }) => id === view.next);
  const told = resultAt(view, cue);
  const { plan } = evening.stored;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls where words are long, also by the keyboard
    <section class="room-now" aria-labelledby="now" data-shows={tabs.tab} tabIndex={0}>
      <p class="now-where">{whereOf(cue, view.pours)}</p>
      <div class="now-head">
        <div class="now-words">
          <h2 class="now-verb" id="now">
            {verbOf(cue)}
          </h2>
          {pour && <PourLine pour={pour} blind={view.blind} />}
        </div>
        <RoomTime evening={evening} view={view} cue={cue} />
      </div>
      {view.reminder && (
        <p class="now-reminder">
          {words.room.reminder(view.reminder.kind)}
          <Button kind="quiet" onPress={() => actions.just({ type: 'ClearReminder' })}>
            {words.room.clearReminder}
          </Button>
        </p>
      )}
      {tabs.tabs.length > 1 && (
        <div class="now-turn">
          <NowTabs {...tabs} />
          {talks && (
            <Button onPress={() => actions.closeTalk(open.map(({ id }) => id))}>
              {words.glasses.closeTalk}
            </Button>
          )}
        </div>
      )}
      {(tabs.tab === 'card' || tabs.tab === 'screen') && (
        <Story evening={evening} view={view} cue={cue} tab={tabs.tab} actions={actions} />
      )}
      {tabs.tab === 'board' && (
        <BoardPanel
          talk={evening.follower.talk.value}
          board={evening.follower.board.value}
          pours={view.pours}
          blind={view.blind}
          trials={view.trials}
          terms={view.terms}
          clock={turnsClock(traitsOf(cue), view.clock)}
          now={evening.follower.clock.now}
        />
      )}
      {tabs.tab === 'say' && (
        <div class="now-say">
          {told === undefined ? (
            <SayLine
              key={cue.id}
              view={view}
              now={evening.follower.clock.now}
              said={sayOf(say, cue, hearers(evening, view, cue, step.does === 'open-discussion'))}
              next={next === undefined ? null : sayOf(say, next, hearers(evening, view, next, false))}
            />
          ) : (
            <ToldNow told={told} pours={view.pours} blind={view.blind} ownOrders={plan.ownOrders} />
          )}
          <HintLine key={`hint ${cue.id}`} cue={cue} />
          {step.does === 'open-discussion' && <p class="now-hint">{words.room.openTalkHint}</p>}
          {step.does === 'tell-result' && <p class="now-hint">{words.room.tellResultHint}</p>}
          {step.does === 'reveal' && (
            <p class="now-hint">
              {step.pours.length === 1 ? words.room.tellNameHint : words.room.tellNamesHint}
            </p>
          )}
        </div>
      )}
      <StepsOffer view={view} order={order} actions={actions} />
      <NudgeLine now={evening.follower.clock.now} view={view} counts={table.counts} actions={actions} />
    </section>
  );
}

interface StoryProps {
  readonly evening: EveningContext;
  readonly view: HostUnderWay;
  readonly cue: Cue;
  readonly tab: 'card' | 'screen';
  readonly actions: HostActions;
}

/** The glasses of the cue, or of the talk that is open, by their cards; or the desk of the room's screens. */
function Story({ evening, view, cue, tab, actions }: StoryProps) {
  const pages = useLazyPart(storyPart)?.storyPages;
  if (pages === undefined) return <p class="soft">{words.loading}</p>;
  if (tab === 'screen') return <pages.ScreenDesk evening={evening} view={view} cue={cue} actions={actions} />;
  const about = 'pours' in cue ? cue.pours : [];
  const pours = view.pours.filter(
    ({ id, dropped, discussion }) =>
      !dropped && (about.length > 0 ? about.includes(id) : discussion === 'open'),
  );
  return <pages.PourCards evening={evening} view={view} pours={pours.map(({ id }) => id)} />;
}

function PourLine({ pour, blind }: { readonly pour: HostPour; readonly blind: boolean }) {
  const covered = isCovered(pour, blind);
  return (
    <p class="now-pour">
      <CoveredName
        name={[pour.producer, pour.name].filter((part) => part !== null).join(' · ')}
        instead={codeOf(pour)}
        covered={covered}
      />
      {pour.code !== null && !covered && <span class="soft figures"> · {words.glasses.code(pour.code)}</span>}
    </p>
  );
}

interface RoomTimeProps {
  readonly evening: EveningContext;
  readonly view: HostUnderWay;
  readonly cue: Cue;
}

function RoomTime({ evening: { follower }, view: { clock }, cue }: RoomTimeProps) {
  const running = clock.kind === 'running';
  const now = useTick(follower.clock.now, { running, anchor: running ? clock.endsAt : 0 });
  const time: CueTime = running
    ? { status: 'running', startsAt: clock.startsAt, endsAt: clock.endsAt }
    : { status: 'held', remaining: clock.remaining, total: Math.max(clock.remaining, cue.ideal * 1000) };
  return (
    <div class="now-time">
      <DrainingGlass
        time={time}
        now={now}
        label={words.room.time}
        words={cue.gate ? words.room.phasesAtGate : words.room.phases}
      />
    </div>
  );
}
