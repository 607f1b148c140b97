import { useSignal } from '@preact/signals';
import { useCallback, useEffect } from 'preact/hooks';
import type { TastingId } from '../../core/ids.ts';
import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import { loadWords } from '../../shared/words/load-words.ts';
import type { AppContext } from '../app-context.ts';
import { ErrorNotice } from '../error-notice.tsx';
import { words as hostWords, sentenceFor } from '../language.ts';
import { hrefOf } from '../route.ts';
import { recapWords as words } from './language.ts';
import { namesOf, type Sheets } from './names.ts';
import { RecapPage } from './recap-page.tsx';

interface RecapLoaderProps {
  readonly tasting: TastingId;
  readonly app: AppContext;
}

type Loaded =
  | { readonly is: 'loading' }
  | { readonly is: 'failed'; readonly sentence: string }
  | { readonly is: 'here'; readonly recap: EveningRecap; readonly sheets: Sheets }
  | { readonly is: 'gone' };

/** Where the recap stands in the host's app: fetched once, for an evening that is over does not move. */
export function RecapLoader({ tasting, app }: RecapLoaderProps) {
  const loaded = useSignal<Loaded>({ is: 'loading' });
  const load = useCallback(async (): Promise<void> => {
    const answer = await app.api.recap(tasting);
    if (!answer.ok && answer.code === 'wrong-key') return app.askForLink();
    if (!answer.ok) {
      const early = answer.code === 'not-finished' || answer.code === 'not-open';
      loaded.value = { is: 'failed', sentence: early ? words.notYet : sentenceFor(answer.code) };
      return;
    }
    loaded.value = { is: 'here', recap: answer.body, sheets: await sheetsFor(answer.body) };
    document.title = hostWords.page(answer.body.title);
  }, [app, tasting, loaded]);
  useEffect(() => void load(), [load]);

  const now = loaded.value;
  switch (now.is) {
    case 'loading':
      return (
        <main class="page">
          <p class="soft">{words.loading}</p>
        </main>
      );
    case 'failed':
      return (
        <main class="page page-narrow stack">
          <h1>{words.title}</h1>
          <ErrorNotice sentence={now.sentence} onRetry={() => void load()} />
          <a href={hrefOf({ page: 'home' })}>{words.toHome}</a>
        </main>
      );
    case 'gone':
      return (
        <main class="page page-narrow stack">
          <EmptyState
            title={words.remove.gone}
            action={
              <a class="button button-primary" href={hrefOf({ page: 'home' })}>
                {words.toHome}
              </a>
            }
          >
            <p role="status">{words.remove.goneBody}</p>
          </EmptyState>
        </main>
      );
    case 'here':
      return (
        <RecapPage
          tasting={tasting}
          recap={now.recap}
          names={namesOf(now.recap, now.sheets)}
          app={app}
          onGone={() => {
            loaded.value = { is: 'gone' };
          }}
        />
      );
    default:
      return now satisfies never;
  }
}

/** Words for the drinks of this evening. Where they cannot be fetched, codes stand in their place. */
async function sheetsFor({ pours }: EveningRecap): Promise<Sheets> {
  const drinks = [...new Set(pours.map(({ drink }) => drink))];
  const sheets = await Promise.all(
    drinks.map(async (drink) => {
      try {
        return [[drink, await loadWords(drink)]] as const;
      } catch {
        return [];
      }
    }),
  );
  return Object.fromEntries(sheets.flat());
}
