import { useRef } from 'preact/hooks';
import {
  inserted,
  isTiedToAbove,
  lowered,
  placesOf,
  raised,
  type Tiers,
  tiersFrom,
  tieTurned,
} from '../../shared/notes/tiers.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { down, up } from '../../shared/ui/strokes.ts';
import { useRowDrag } from '../../shared/ui/use-row-drag.ts';
import type { PourId, StageUnderWay } from '../../shared/wire/views.ts';
import { CountChoice } from '../consent/count-choice.tsx';
import { words as pageWords } from '../language.ts';
import { useRoom } from '../room/room.ts';
import { cardName, glassOf } from '../stage/reached-glasses.ts';
import { words } from './language.ts';

/** The pours of this cue in the order of liking, moved by buttons or by hand; two may be equally good. */
export function RankingBody({ stage }: { readonly stage: StageUnderWay }) {
  const { follower, status } = useRoom();
  const list = useRef<HTMLOListElement>(null);
  const glasses = stage.cue.pours.flatMap((pour) => glassOf(stage, pour) ?? []);
  const placeOf = (pour: PourId) => follower.notebook.read(pour, 'place');
  const tiers = tiersFrom(
    glasses.map(({ card }) => card.id),
    placeOf,
  );
  const places = placesOf(tiers);
  const kept = places.every(({ pour }) => placeOf(pour) !== null);

  const keep = (next: Tiers, moved?: PourId): void => {
    for (const { pour, place } of placesOf(next)) follower.notebook.write(pour, 'place', place);
    const to = placesOf(next).find(({ pour }) => pour === moved);
    if (to !== undefined) status.say(words.ranking.moved(nameOf(to.pour), to.place), { unseen: true });
  };
  const nameOf = (pour: PourId): string => {
    const glass = glasses.find(({ card }) => card.id === pour);
    return glass === undefined ? '' : pageWords.glass.nth(glass.position);
  };
  const rows = () => [...(list.current?.children ?? [])];
  const { dragged, handle } = useRowDrag(rows, ({ row, gap }) => {
    const moved = places[row]?.pour;
    if (moved !== undefined) keep(droppedInto(tiers, moved, gap), moved);
  });
  if (glasses.length < 2) return <p class="soft">{words.ranking.few}</p>;
  return (
    <section class="stack-tight" aria-label={words.ranking.title}>
      <h2>{words.ranking.title}</h2>
      <p class="soft small">{words.ranking.hint}</p>
      <ol class="ranking" ref={list}>
        {places.map(({ pour, place }, row) => {
          const card = glasses.find((glass) => glass.card.id === pour)?.card;
          const name = card === undefined ? null : cardName(pageWords, card);
          const tied = isTiedToAbove(tiers, pour);
          return (
            <li
              key={pour}
              class="ranking-row"
              data-tied={tied ? 'true' : undefined}
              data-dragged={dragged?.row === row ? 'true' : undefined}
              data-gap={dragged?.gap === row ? 'true' : undefined}
            >
              <span class="ranking-place figures" aria-hidden="true">
                {place}
              </span>
              <span class="ranking-name" title={words.ranking.drag} {...handle(row)}>
                <span class="visually-hidden">{place}. </span>
                {nameOf(pour)}
                {name !== null && <span class="soft small"> {name}</span>}
              </span>
              <Button
                kind="quiet"
                label={words.ranking.up(nameOf(pour))}
                disabled={row === 0}
                onPress={() => keep(raised(tiers, pour), pour)}
              >
                <Icon of={up} />
              </Button>
              <Button
                kind="quiet"
                label={words.ranking.down(nameOf(pour))}
                disabled={row === places.length - 1}
                onPress={() => keep(lowered(tiers, pour), pour)}
              >
                <Icon of={down} />
              </Button>
              {row > 0 && (
                <button
                  type="button"
                  class="chip ranking-tie"
                  aria-pressed={tied}
                  aria-label={words.ranking.tied(nameOf(pour))}
                  onClick={() => keep(tieTurned(tiers, pour), pour)}
                >
                  {words.ranking.tie}
                </button>
              )}
            </li>
          );
        })}
      </ol>
      <CountChoice about="order" pours={glasses.map(({ card }) => card.id)} />
      {kept ? (
        <p class="note-state">{words.ranking.kept}</p>
      ) : (
        <>
          <p class="soft small">{words.ranking.notKept}</p>
          <Button kind="primary" onPress={() => keep(tiers)}>
            {words.ranking.keep}
          </Button>
        </>
      )}
    </section>
  );
}

/** A row let go in the gap above the row with this index: between two tied ones there is no gap, so in front of them. */
function droppedInto(tiers: Tiers, moved: PourId, gap: number): Tiers {
  const rows = tiers.flat();
  const below = rows[gap];
  const tier = below === undefined ? tiers.length : tiers.findIndex((each) => each.includes(below));
  return inserted(tiers, moved, tier);
}
