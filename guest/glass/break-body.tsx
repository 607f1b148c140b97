import { timeOfDay } from '../../shared/language/wall-clock.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { ready } from '../../shared/ui/strokes.ts';
import type { SeatedViews } from '../../shared/wire/views.ts';
import { locale, words } from '../language.ts';
import { useRoom } from '../room/room.ts';
import { cardName, glassOf, type ReachedGlass } from '../stage/reached-glasses.ts';

const missedGlasses = ({ stage, own }: SeatedViews): ReachedGlass[] =>
  own.missed.flatMap((pour) => glassOf(stage, pour) ?? []);

export function BreakBody({ stage, own }: SeatedViews) {
  const { clock } = stage;
  return (
    <div class="stack">
      {clock.kind === 'running' && (
        <p class="lead">{words.glass.breakUntil(timeOfDay(clock.endsAt, locale))}</p>
      )}
      <CatchUp stage={stage} own={own} />
    </div>
  );
}

/** [F3] What a late guest has missed, with room to write, and a tick for each that has been caught up with. */
function CatchUp({ stage, own }: SeatedViews) {
  const { ask, page } = useRoom();
  const missed = missedGlasses({ stage, own });
  if (missed.length === 0) return null;
  return (
    <section class="stack-tight">
      <h2>{words.missed.title}</h2>
      <p>{words.missed.inBreak}</p>
      {missed.map(({ position, card }) => {
        const name = cardName(words, card);
        const glass = words.glass.nth(position);
        return (
          <div class="missed" key={card.id}>
            <p>
              <strong>{glass}</strong>
              {name !== null && <span class="soft"> {name}</span>}
            </p>
            <div class="thumb-bar">
              <Button
                onPress={() => {
                  page.value = { at: 'notes', pour: card.id };
                }}
              >
                {words.missed.write}
                <span class="visually-hidden"> {glass}</span>
              </Button>
              <Button onPress={() => void ask({ type: 'CatchUp', pour: card.id })}>
                <Icon of={ready} />
                {words.missed.tick(glass)}
              </Button>
            </div>
          </div>
        );
      })}
    </section>
  );
}

/** Outside the breaks a late guest is only told that nothing is lost. */
export function MissedNotice({ stage, own }: SeatedViews) {
  const missed = missedGlasses({ stage, own });
  if (missed.length === 0) return null;
  return <p class="soft">{words.missed.notice(missed.map(({ position }) => words.glass.nth(position)))}</p>;
}
