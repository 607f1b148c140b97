import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import {
  inserted,
  isTiedToAbove,
  joined,
  lowered,
  placesOf,
  raised,
  type Tiers,
  tiersFrom,
  tieTurned,
} from '../../shared/notes/tiers.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Icon } from '../../shared/ui/icon.tsx';
import { down, grip, up } from '../../shared/ui/strokes.ts';
import { useRowDrag } from '../../shared/ui/use-row-drag.ts';
import type { PourId, StageUnderWay } from '../../shared/wire/views.ts';
import { CountChoice } from '../consent/count-choice.tsx';
import { words as pageWords } from '../language.ts';
import { useRoom } from '../room/room.ts';
import { cardName, glassOf } from '../stage/reached-glasses.ts';

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
  const { dragged, handle } = useRowDrag(
    rows,
    ({ row, gap, onto }) => {
      const moved = places[row]?.pour;
      const other = onto === null ? undefined : places[onto]?.pour;
      if (moved === undefined) return;
      keep(other === undefined ? droppedInto(tiers, moved, gap) : joined(tiers, moved, other), moved);
    },
    { ontoRows: true },
  );
  if (glasses.length < 2) return <p class="soft">{words.ranking.few}</p>;
  const last = places.length - 1;
  return (
    <section class="stack-tight" aria-label={words.ranking.title}>
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
              data-onto={dragged?.onto === row ? 'true' : undefined}
              data-gap={dragged?.onto === null && dragged.gap === row ? 'true' : undefined}
            >
              <span class="ranking-grip" title={words.ranking.drag} aria-hidden="true" {...handle(row)}>
                <Icon of={grip} />
              </span>
              <span class="ranking-name">
                <span class="ranking-place figures">{place}.</span> {nameOf(pour)}
                {name !== null && <span class="soft small"> {name}</span>}
              </span>
              <RowButton
                label={words.ranking.tied(nameOf(pour))}
                off={row === 0}
                pressed={tied}
                onPress={() => keep(tieTurned(tiers, pour), pour)}
              >
                =
              </RowButton>
              <RowButton
                label={words.ranking.up(nameOf(pour))}
                off={row === 0 && !tied}
                onPress={() => keep(raised(tiers, pour), pour)}
              >
                <Icon of={up} />
              </RowButton>
              <RowButton
                label={words.ranking.down(nameOf(pour))}
                off={row === last}
                onPress={() => keep(lowered(tiers, pour), pour)}
              >
                <Icon of={down} />
              </RowButton>
            </li>
          );
        })}
      </ol>
      <p class="soft small">{words.ranking.hint}</p>
      <CountChoice about="order" pours={glasses.map(({ card }) => card.id)} />
      {kept ? (
        <p class="note-state">{words.ranking.kept}</p>
      ) : (
        <div class="ranking-keep">
          <Button kind="primary" onPress={() => keep(tiers)}>
            {words.ranking.keep}
          </Button>
          <p class="soft small">{words.ranking.notKept}</p>
        </div>
      )}
    </section>
  );
}

interface RowButtonProps {
  readonly label: string;
  /** Nothing to do for it here. It stays in its place and keeps the focus: a row may come to an end under the finger. */
  readonly off: boolean;
  readonly pressed?: boolean;
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

/** The row is another one after each press and its button with it: the focus goes along. */
function RowButton({ label, off, pressed, onPress, children }: RowButtonProps) {
  const button = useRef<HTMLButtonElement>(null);
  const pressedNow = useRef(false);
  useLayoutEffect(() => {
    if (pressedNow.current) button.current?.focus({ preventScroll: true });
    pressedNow.current = false;
  });
  return (
    <button
      ref={button}
      type="button"
      class="ranking-button"
      aria-label={label}
      aria-disabled={off ? true : undefined}
      aria-pressed={pressed}
      onClick={() => {
        if (off) return;
        pressedNow.current = true;
        onPress();
      }}
    >
      {children}
    </button>
  );
}

/** A row let go in the gap above the row with this index: between two tied ones there is no gap, so in front of them. */
function droppedInto(tiers: Tiers, moved: PourId, gap: number): Tiers {
  const rows = tiers.flat();
  const below = rows[gap];
  const tier = below === undefined ? tiers.length : tiers.findIndex((each) => each.includes(below));
  return inserted(tiers, moved, tier);
}
