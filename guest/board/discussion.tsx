import { useState } from 'preact/hooks';
import { PourBoard } from '../../shared/talk/pour-board.tsx';
import { turnsClock } from '../../shared/talk/speaking-order.ts';
import { WhoSpeaks } from '../../shared/talk/speaking-turns.tsx';
import type { BoardPour } from '../../shared/wire/board.ts';
import type { PourId, SeatedViews, SeatView } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';
import { type BoardItem, boardItems } from './board-items.ts';
import { CountedAnswers } from './counted-answers.tsx';
import { words } from './language.ts';
import { ShareChoice } from './share-choice.tsx';
import { useHeldInPlace } from './use-held-in-place.ts';
import { useVocabulary } from './use-vocabulary.ts';

/**
 * Before the talk opens: whose page it is. Once it is open: who speaks, and what people chose to put on the table. At
 * the end of the evening the same for all that was tasted.
 */
export function Discussion({ stage, own }: SeatedViews) {
  const { follower, asked } = useRoom();
  const choices = useHeldInPlace(asked.value.length === 0);
  const all = boardItems(stage, own.trials);
  const last = stage.cue.pours.length === 0;
  const items = last ? all : all.filter(({ id }) => stage.cue.pours.includes(id));
  const view = follower.board.value;
  const open = items.flatMap((item) => {
    const pour = view?.pours.find((each) => each.pour === item.id);
    return pour !== undefined && stage.openBoards.includes(item.id) ? [{ item, pour }] : [];
  });
  if (items.length === 0) return null;
  const earlier = all.filter((item) => !items.includes(item));
  const choicesOf = (some: readonly BoardItem[]) =>
    // What is asked at the top of the screen is not asked again below.
    some
      .filter(({ id }) => !asked.value.includes(id))
      .map((item) => <ShareChoice key={item.id} item={item} drink={item.drink ?? stage.drink} />);
  return (
    <div class="stack talk">
      {open.length > 0 && !last && (
        <WhoSpeaks
          table={view?.table ?? []}
          open={view?.pours ?? []}
          clock={turnsClock(stage.cue, stage.clock)}
          now={follower.clock.now}
          own={own.seat}
          words={words}
          level={2}
        />
      )}
      {open.length > 0 && <Table open={open} own={own} />}
      <section class="stack-tight">
        <h2>{words.share.title}</h2>
        <p class="soft">
          {open.length === 0 && !last && `${words.waiting} `}
          {words.share.lead} {last && words.share.leadLast}
        </p>
        <p class="soft small">{words.share.unnamed}</p>
        <div class="stack-tight share-choices" ref={choices}>
          {choicesOf(items)}
          {earlier.length > 0 && (
            <details>
              <summary>{words.share.earlier}</summary>
              {choicesOf(earlier)}
            </details>
          )}
          <CountedAnswers items={all} />
        </div>
      </section>
    </div>
  );
}

interface TableProps {
  readonly open: readonly { readonly item: BoardItem; readonly pour: BoardPour }[];
  readonly own: SeatView;
}

/** One glass, or all of them below each other. */
function Table({ open, own }: TableProps) {
  const [chosen, setChosen] = useState<PourId | null>(null);
  const shown = open.filter(({ item }) => chosen === null || item.id === chosen);
  return (
    <section class="stack" aria-label={words.title}>
      {open.length > 1 && (
        <fieldset class="row" aria-label={words.choose}>
          {[{ id: null, title: words.all }, ...open.map(({ item }) => item)].map(({ id, title }) => (
            <button
              type="button"
              key={id ?? ''}
              class="button glass-pick"
              aria-pressed={id === chosen}
              onClick={() => setChosen(id)}
            >
              {title}
            </button>
          ))}
        </fieldset>
      )}
      {(shown.length > 0 ? shown : open).map(({ item, pour }) => (
        <OnTable key={item.id} item={item} pour={pour} own={own} />
      ))}
    </section>
  );
}

interface OnTableProps {
  readonly item: BoardItem;
  readonly pour: BoardPour;
  readonly own: SeatView;
}

function OnTable({ item, pour, own }: OnTableProps) {
  const vocabulary = useVocabulary(pour.drink ?? 'spirit');
  return (
    <section class="board-pour">
      <h2>
        {item.title}
        {item.name !== null && <span class="soft board-name"> {item.name}</span>}
      </h2>
      <PourBoard pour={pour} vocabulary={vocabulary} words={words} own={own.seat} />
    </section>
  );
}
