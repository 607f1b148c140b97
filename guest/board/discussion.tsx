import type { SeatView, StageUnderWay } from '../../shared/wire/views.ts';
import { cardName, glassOf } from '../glass/glasses.ts';
import { words } from '../language.ts';
import { Board } from './board.tsx';
import { ShareSwitch } from './share-switch.tsx';

/** Before the talk opens: whose words they are. Once it is open: what people chose to put on the table. */
export function Discussion({ stage, own }: { readonly stage: StageUnderWay; readonly own: SeatView }) {
  const glasses = stage.cue.pours.flatMap((pour) => glassOf(stage, pour) ?? []);
  const open = glasses.filter(({ card }) => stage.openBoards.includes(card.id));
  if (glasses.length === 0) return null;
  return (
    <div class="stack">
      {open.length > 0 && <Board glasses={open} own={own.seat} />}
      <section class="stack-tight">
        <h2>{words.share.title}</h2>
        <p class="soft">
          {open.length === 0 && `${words.board.waiting} `}
          {words.share.lead}
        </p>
        {glasses.map(({ position, card }) => (
          <ShareSwitch
            key={card.id}
            pour={card.id}
            glass={words.glass.nth(position)}
            name={cardName(words, card)}
          />
        ))}
      </section>
    </div>
  );
}
