import { Button } from '../../shared/ui/button.tsx';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import type { PourId, StageView } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { PageTitle } from '../page/page-title.tsx';
import { useRoom } from '../room/room.ts';
import { RoomBanner } from '../room/room-banner.tsx';
import { PourFacts } from '../stage/pour-facts.tsx';
import { cardName, reachedGlasses } from '../stage/reached-glasses.ts';
import { NotePage } from './note-page.tsx';

/** The guest's own earlier glasses, one tap away; only what the room has come to [F1]. */
export function MyNotes({ stage, chosen }: { readonly stage: StageView; readonly chosen: PourId | null }) {
  const { page } = useRoom();
  const glasses = reachedGlasses(stage);
  const glass = glasses.find((each) => each.card.id === chosen) ?? glasses.at(-1);
  return (
    <main class="page">
      <RoomBanner />
      <header class="stack-tight">
        <PageTitle>{words.notes.title}</PageTitle>
        <p class="soft">{words.notes.private}</p>
      </header>
      {glass === undefined ? (
        <EmptyState title={words.notes.none}>
          <p>{words.notes.noneHint}</p>
        </EmptyState>
      ) : (
        <>
          <nav class="row" aria-label={words.notes.choose}>
            {glasses.map(({ position, card }) => (
              <button
                type="button"
                key={card.id}
                class="button glass-pick figures"
                aria-label={words.glass.nth(position)}
                aria-current={card.id === glass.card.id ? 'true' : undefined}
                onClick={() => {
                  page.value = { at: 'notes', pour: card.id };
                }}
              >
                {position}
              </button>
            ))}
          </nav>
          <section class="stack" aria-label={words.glass.nth(glass.position)}>
            <header>
              <h2>
                {[words.glass.nth(glass.position), cardName(words, glass.card)].filter(Boolean).join(', ')}
              </h2>
              {glass.card.kind === 'named' && <PourFacts pour={glass.card} />}
            </header>
            <NotePage stage={stage} pour={glass.card.id} />
          </section>
        </>
      )}
      <div class="foot">
        <Button
          kind="primary"
          size="big"
          onPress={() => {
            page.value = { at: 'room' };
          }}
        >
          {words.notes.back}
        </Button>
      </div>
    </main>
  );
}
