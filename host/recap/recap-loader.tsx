import { useCallback, useState } from 'preact/hooks';
import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import type { FailureCode } from '../../shared/wire/answer.ts';
import { loadWords } from '../../shared/words/load-words.ts';
import type { TastingPageProps } from '../app-context.ts';
import { words as hostWords, sentenceFor } from '../language.ts';
import { LoadedPage } from '../loaded-page.tsx';
import { hrefOf } from '../route.ts';
import { namesOf, type Sheets } from './names.ts';
import { RecapPage } from './recap-page.tsx';

/** Where the recap stands in the host's app: fetched once, for an evening that is over does not move. */
export function RecapLoader({ tasting, app }: TastingPageProps) {
  const [gone, setGone] = useState(false);
  const ask = useCallback(async () => {
    const answer = await app.api.recap(tasting);
    if (!answer.ok) return answer;
    document.title = hostWords.page(answer.body.title);
    return { ok: true as const, body: { recap: answer.body, sheets: await sheetsFor(answer.body) } };
  }, [app, tasting]);
  if (gone) return <Gone />;
  return (
    <LoadedPage app={app} ask={ask} title={words.title} sentence={whyNot}>
      {({ recap, sheets }) => (
        <RecapPage
          tasting={tasting}
          recap={recap}
          names={namesOf(recap, sheets)}
          app={app}
          onGone={() => setGone(true)}
        />
      )}
    </LoadedPage>
  );
}

const whyNot = (code: FailureCode): string =>
  code === 'not-finished' || code === 'not-open' ? words.notYet : sentenceFor(code);

function Gone() {
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
