import { useEffect, useState } from 'preact/hooks';
import type { HostPour, HostTrial, HostView } from '../../../core/session/views/host.ts';
import type { ClockView } from '../../../core/session/views/stage.ts';
import type { Drink } from '../../../core/tasting.ts';
import { boardWords } from '../../../shared/language/en/board.ts';
import { notebookWords } from '../../../shared/language/en/notebook.ts';
import type { Vocabulary } from '../../../shared/notes/in-words.ts';
import { PourBoard } from '../../../shared/talk/pour-board.tsx';
import '../../../shared/talk/talk.css';
import { WhoSpeaks } from '../../../shared/talk/speaking-turns.tsx';
import type { BoardPour, BoardView } from '../../../shared/wire/board.ts';
import type { TalkView } from '../../../shared/wire/protocol.ts';
import { loadClosingText, loadWords } from '../../../shared/words/load-words.ts';
import { inTerms } from '../../../shared/words/word-sheet.ts';
import { placesOf } from '../../evening/cue-words.ts';
import { shownName } from '../../evening/names-cover.ts';
import { words } from '../../language.ts';

interface BoardPanelProps {
  readonly board: BoardView | null;
  readonly talk: TalkView | null;
  readonly pours: readonly HostPour[];
  readonly blind: boolean;
  readonly trials: readonly HostTrial[];
  readonly terms: HostView['terms'];
  /** Of the cue, where that is a discussion. */
  readonly clock: ClockView | null;
  /** The server's time. */
  readonly now: () => number;
}

/** What guests chose to share, glass by glass, for that is what the talk is about; then who speaks when. */
export function BoardPanel({ board, talk, pours, blind, trials, terms, clock, now }: BoardPanelProps) {
  const places = placesOf(pours);
  const open = board?.pours ?? [];
  const shared = open.filter(({ notes }) => notes.length > 0);
  return (
    <section class="board" aria-label={words.board.title}>
      {talk !== null && <p class="soft">{words.board.chosen(talk.chosen, talk.of)}</p>}
      {shared.length === 0 && <p class="board-empty soft">{words.board.empty}</p>}
      {shared.map((each) => (
        <Shared
          key={each.pour}
          shared={each}
          terms={terms}
          name={
            trials.some(({ id }) => id === each.pour)
              ? words.cue.kinds['odd-one-out']
              : nameFor(each, pours, blind, places.get(each.pour))
          }
        />
      ))}
      <WhoSpeaks
        table={board?.table ?? []}
        open={open}
        clock={clock}
        now={now}
        own={null}
        words={boardWords}
        level={3}
      />
    </section>
  );
}

function nameFor(
  { pour }: BoardPour,
  pours: readonly HostPour[],
  blind: boolean,
  place: number | undefined,
): string {
  const found = pours.find(({ id }) => id === pour);
  return [
    ...(place === undefined ? [] : [words.cue.glass(place)]),
    ...(found ? [shownName(found, blind)] : []),
  ].join(' · ');
}

interface SharedProps {
  readonly shared: BoardPour;
  readonly name: string;
  readonly terms: HostView['terms'];
}

function Shared({ shared, name, terms }: SharedProps) {
  const vocabulary = useVocabulary(shared.drink ?? 'spirit', terms);
  return (
    <section class="board-glass">
      <h3>
        <bdi>{name}</bdi>
      </h3>
      <PourBoard pour={shared} vocabulary={vocabulary} words={boardWords} own={null} />
    </section>
  );
}

/** What turns the codes of a page into words; undefined until it has been fetched. */
function useVocabulary(drink: Drink, terms: HostView['terms']): Vocabulary | undefined {
  const [vocabulary, setVocabulary] = useState<Vocabulary>();
  useEffect(() => {
    let gone = false;
    Promise.all([loadWords(drink), loadClosingText()]).then(
      ([sheet, closing]) => {
        if (!gone)
          setVocabulary({ sheet: inTerms(sheet, terms), closing, liking: notebookWords.liking.steps });
      },
      // Without a network what was written shows, and the next talk asks again.
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, [drink, terms]);
  return vocabulary;
}
