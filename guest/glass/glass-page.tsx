import { useLayoutEffect, useRef } from 'preact/hooks';
import { lazyComponent } from '../../shared/page/lazy-part.ts';
import { GlassArc } from '../../shared/ui/glass-arc.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { useTick } from '../../shared/ui/use-tick.ts';
import { wakeLockWorks } from '../../shared/ui/wake-lock.ts';
import type { CueKind, SeatedViews, StageUnderWay } from '../../shared/wire/views.ts';
import { captionsPart } from '../captions/captions-part.ts';
import { useGuessing } from '../guess/guess-place.tsx';
import { sheet, words } from '../language.ts';
import { useDarkFrame } from '../page/dark-frame.ts';
import { boardPart, FirstWords, partsSettled } from '../parts/lazy-parts.ts';
import { LinkLine } from '../room/link-page.tsx';
import { useRoom } from '../room/room.ts';
import { RoomBanner } from '../room/room-banner.tsx';
import { cueIcon } from '../stage/cue-icon.ts';
import { cueWordsFor, drinkOf } from '../stage/cue-words.ts';
import { arcOf, cardName, glassInHand, lastGlass } from '../stage/reached-glasses.ts';
import { waterIsDue } from '../stage/water-reminder.ts';
import { CueBody } from './cue-body.tsx';
import { SignalBar } from './signal-bar.tsx';
import { StageTime } from './stage-time.tsx';
import { useAnnouncedCue } from './use-announced-cue.ts';

/** The screen that is locked to the room: one glass, one verb, one line, the time, and a field when there is one. */
export function GlassPage({ stage, own }: SeatedViews) {
  const { lock, asked } = useRoom();
  const { cue } = stage;
  const said = cueWordsFor(sheet, cue, drinkOf(stage));
  const heading = useFocusAfter(cue.id);
  const guesses = useGuessing();
  if (own.remote) captionsPart.fetch();
  useAnnouncedCue(stage, said);
  const scene = sceneOf(stage);
  useDarkFrame(scene === 'nose');
  // Left unanswered in the talk, it stands before no verb that comes after it.
  const questionFirst = cue.kind === 'discussion';
  const question = stage.openBoards.length > 0 && <TableQuestion stage={stage} own={own} />;
  return (
    <div
      class={`room scene-${scene}`}
      data-hand={own.leftHanded ? 'left' : 'right'}
      data-writing={lock.writing.value ? 'true' : undefined}
      data-asked={asked.value.length > 0 ? 'true' : undefined}
      data-theme={scene === 'nose' ? 'cellar' : undefined}
    >
      <RoomBanner />
      <header class="room-head">
        <LinkLine />
        <Place stage={stage} mirrored={own.leftHanded} drawn={scene === 'plain' && !lock.writing.value} />
      </header>
      <main class="room-main" key={cue.id}>
        {questionFirst && question}
        <div class="moment">
          <h1 class="verb" tabIndex={-1} ref={heading}>
            <Icon of={cueIcon(cue)} />
            {said.verb}
          </h1>
          <StageTime stage={stage} />
          <p class="hint">{said.hint}</p>
        </div>
        {!questionFirst && question}
        {mayRead.includes(cue.kind) && <FirstWords />}
        <Said stage={stage} own={own} />
        <CueBody stage={stage} own={own} />
        {own.remote && partsSettled(stage.drink, guesses) && <HostSays stage={stage} own={own} />}
      </main>
      <SignalBar stage={stage} own={own} />
    </div>
  );
}

/** What fits into the hollow of the arc in one line; longer names stand below it. */
const longestInHollow = 12;

interface PlaceProps {
  readonly stage: StageUnderWay;
  readonly mirrored: boolean;
  /** The arc is drawn, where there is height for it. */
  readonly drawn: boolean;
}

function Place({ stage, mirrored, drawn }: PlaceProps) {
  if (stage.glasses.length === 0) return null;
  const hand = glassInHand(stage);
  const total = lastGlass(stage);
  const name = hand === null ? null : cardName(words, hand.card);
  const caption = hand === null ? stage.title : (name ?? words.glass.of(hand.position, total));
  const inHollow = caption.length <= longestInHollow;
  return (
    <>
      <div class="room-arc">
        <GlassArc
          glasses={arcOf(stage)}
          mirrored={mirrored}
          label={words.glass.arc(hand?.position ?? null, total)}
          caption={inHollow ? caption : undefined}
        />
        {!inHollow && <p class="room-glass">{caption}</p>}
      </div>
      {hand !== null && (
        <p class="room-bare" aria-hidden={drawn ? 'true' : undefined}>
          <bdi>{[words.glass.of(hand.position, total), ...(name === null ? [] : [name])].join(' · ')}</bdi>
        </p>
      )}
    </>
  );
}

/** What the host has written for this moment, and what there is to be reminded of. */
function Said({ stage, own }: SeatedViews) {
  const { follower } = useRoom();
  const now = useTick(follower.clock.now, { running: true, anchor: 0, period: 10_000 });
  const { cue, reminder } = stage;
  // A nudge is for those who are not ready.
  const meant = reminder !== null && (reminder.kind !== 'nudge' || own.signal !== 'ready');
  return (
    <>
      {!own.remote && cue.say !== null && <p class="say host-says">{cue.say}</p>}
      {meant && <p class="reminder">{words.glass.reminder[reminder.kind]}</p>}
      {reminder?.kind !== 'water' && waterIsDue(stage, now) && <p class="reminder">{words.glass.waterDue}</p>}
      {cue.kind === 'gathering' && !wakeLockWorks() && <p class="soft">{words.glass.staysOn}</p>}
    </>
  );
}

type Scene = 'plain' | 'look' | 'nose' | 'list';

/** Look wants a white card; nose wants the dark; a list of glasses all the height there is. With a field to write in, none would serve. */
function sceneOf({ cue }: StageUnderWay): Scene {
  if (cue.kind === 'ranking') return 'list';
  return cue.step === 'look' || cue.step === 'nose' ? cue.step : 'plain';
}

/**
 * Where the focus went down with the old cue or the old page, it goes to the verb; a focus that still stands stays.
 */
function useFocusAfter(cue: string) {
  const heading = useRef<HTMLHeadingElement>(null);
  const inside = useRef(true);
  const first = useRef(true);
  // The page before has already been taken down when this one is first drawn.
  inside.current = first.current || document.activeElement !== document.body;
  useLayoutEffect(() => {
    first.current = false;
    const lost = inside.current && document.activeElement === document.body;
    if (lost) heading.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [cue]);
  return heading;
}

/**
 * While nobody tastes: eyes that are closed for the nose, or on a word, are not called to a notice. It stands in what a cue
 * brings and takes with it, so that no turn of the room moves anything else.
 */
const mayRead: readonly CueKind[] = ['gathering', 'welcome', 'ground-rules', 'break', 'farewell'];

const HostSays = lazyComponent(captionsPart, (part) => part.HostSays);

const TableQuestion = lazyComponent(boardPart, ({ boardPages }) => boardPages.TableQuestion);
