import type { ComponentChild } from 'preact';
import { useRef } from 'preact/hooks';
import type { ToldGuesses } from '../../shared/follower/guesses.ts';
import { pageByItself, pageShown, type ScreenPage, screenPages } from '../../shared/talk/screen-pages.ts';
import { turnNow, turnsClock } from '../../shared/talk/speaking-order.ts';
import { useTick } from '../../shared/ui/use-tick.ts';
import type { BoardView } from '../../shared/wire/board.ts';
import type { StageUnderWay } from '../../shared/wire/views.ts';
import { BoardOnScreen } from './board/board-scene.tsx';
import { PersonOnScreen } from './board/person-scene.tsx';
import { words } from './language.ts';
import { namedPours } from './revealed-glasses.ts';
import { GuessesOnScreen } from './scenes/guesses-scene.tsx';
import { ResultScene } from './scenes/result-scene.tsx';
import { NamesOnScreen, NamesToCome, PourOnScreen } from './scenes/reveal-scene.tsx';

interface PagesSceneProps {
  readonly stage: StageUnderWay;
  readonly board: BoardView | null;
  /** The page that the host has chosen; null while the screen follows the room. */
  readonly chosen: string | null;
  readonly guesses: ToldGuesses;
  readonly now: () => number;
}

/** The names and the talk: one page at a time, the host's, or whoever speaks. */
export function PagesScene({ stage, board, chosen, guesses, now }: PagesSceneProps) {
  const pages = screenPages({
    cue: stage.cue,
    named: namedPours(stage),
    board,
    results: stage.results,
    guesses,
  });
  const clock = turnsClock(stage.cue, stage.clock);
  const anchor = clock?.kind === 'running' ? clock.endsAt : null;
  const moment = useTick(now, { running: anchor !== null, anchor: anchor ?? 0, period: 5000 });
  const turn = turnNow(board, clock, moment);
  const last = useRef<string | null>(null);
  const itself = pageByItself(pages, { ...stage, turn });
  // Nobody's turn goes on while the clock is held: whoever spoke is still speaking.
  const held = stage.clock.kind === 'held' ? (pages.find(({ id }) => id === last.current) ?? itself) : itself;
  last.current = held?.id ?? null;
  const page = pageShown(pages, chosen, held);
  // As on everybody's phone; nothing rings, and nobody is cut off.
  const speaker = turn && (
    <p class="board-speaker" dir="auto">
      {words.talk.turn(turn.speaking.name, turn.next.name)}
    </p>
  );
  if (page !== null) return <Page stage={stage} page={page} turn={speaker} />;
  return stage.cue.kind === 'reveal' ? (
    <NamesToCome stage={stage} />
  ) : (
    <div class="scene scene-word">
      <h1 class="scene-verb">{words.talk.title}</h1>
      <p class="scene-hint">{words.talk.none}</p>
      {speaker}
    </div>
  );
}

interface PageProps {
  readonly stage: StageUnderWay;
  readonly page: ScreenPage;
  readonly turn: ComponentChild;
}

function Page({ stage, page: { shows }, turn }: PageProps) {
  switch (shows.is) {
    case 'card':
      return <PourOnScreen stage={stage} pour={shows.pour} />;
    case 'names':
      return <NamesOnScreen stage={stage} />;
    case 'result':
      return <ResultScene stage={stage} told={shows.told} />;
    case 'guesses':
      return <GuessesOnScreen stage={stage} guesses={shows.guesses} />;
    case 'board':
      return <BoardOnScreen stage={stage} page={shows.page} turn={turn} />;
    case 'person':
      return <PersonOnScreen stage={stage} pour={shows.pour} note={shows.note} turn={turn} />;
    default:
      return shows satisfies never;
  }
}
