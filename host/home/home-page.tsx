import { useSignal } from '@preact/signals';
import { useCallback, useEffect } from 'preact/hooks';
import { epochMs } from '../../core/units.ts';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import type { HttpAnswer } from '../../shared/wire/answer.ts';
import type { ListedTasting } from '../../shared/wire/http.ts';
import type { AppContext } from '../app-context.ts';
import { ErrorNotice } from '../error-notice.tsx';
import { sentenceFor, words } from '../language.ts';
import { useHostAnswer } from '../loaded-page.tsx';
import { goTo } from '../route.ts';
import { StartChoice } from './start-choice.tsx';
import type { Beginning } from './starting-plan.ts';
import { TastingList } from './tasting-list.tsx';

const noAnswer = { ok: false, code: 'no-answer' } as const;

/** All evenings of this server, and the ways to begin a new one. */
export function HomePage({ app }: { readonly app: AppContext }) {
  const beginning = useSignal(false);
  const wholeHouse = app.keys.house() !== undefined;
  const ask = useCallback(
    () => (wholeHouse ? app.api.listTastings() : knownTastings(app)),
    [app, wholeHouse],
  );
  const { now, again } = useHostAnswer(app, ask);

  useEffect(() => {
    document.title = words.page('');
  }, []);

  const begin = async (how: Beginning): Promise<void> => {
    if (beginning.value) return;
    beginning.value = true;
    // Apart from this page, because the schema of a plan is the heaviest thing of all.
    const part = await import('./starting-plan.ts').catch(() => undefined);
    const answer = part ? await app.api.createTasting(part.planOf(how)) : noAnswer;
    beginning.value = false;
    if (!answer.ok) return void app.status.say(sentenceFor(answer.code));
    const { tasting } = answer.body;
    goTo(
      how.from === 'demo'
        ? { page: 'doors', tasting }
        : { page: 'plan', tasting, paste: how.from === 'list' },
    );
  };

  return (
    <main class="page">
      <h1>{words.home.title}</h1>
      <div class={now.is === 'here' && now.body.length === 0 ? 'home home-first' : 'home'}>
        <section class="stack" aria-labelledby="listed">
          <h2 class="visually-hidden" id="listed">
            {words.home.list}
          </h2>
          {now.is === 'loading' && <p class="soft">{words.loading}</p>}
          {now.is === 'failed' && <ErrorNotice sentence={sentenceFor(now.code)} onRetry={again} />}
          {now.is === 'here' &&
            (now.body.length === 0 ? (
              <EmptyState title={words.home.none}>
                <p>{words.home.noneHint}</p>
              </EmptyState>
            ) : (
              <TastingList tastings={now.body} app={app} onChanged={again} />
            ))}
        </section>
        {/* Not before the list, which would push it down. */}
        {now.is !== 'loading' &&
          (wholeHouse ? (
            <StartChoice busy={beginning.value} onBegin={(how) => void begin(how)} />
          ) : (
            <p class="soft">{words.home.oneOnly}</p>
          ))}
      </div>
      <LanguageChoice />
    </main>
  );
}

/** A helper's device lists the evenings that it has a key of their own for. */
async function knownTastings({ keys, api }: AppContext): Promise<HttpAnswer<readonly ListedTasting[]>> {
  const stored = await Promise.all(keys.tastings().map((tasting) => api.plan(tasting)));
  const failed = stored.find((answer) => !answer.ok && answer.code === 'no-answer');
  if (failed !== undefined && !failed.ok) return failed;
  const body = stored.flatMap((answer): ListedTasting[] => {
    if (!answer.ok) return [];
    const { tasting, code, plan, stage } = answer.body;
    return [
      { tasting, code, title: plan.title, startsAt: plan.startsAt ?? null, stage, createdAt: epochMs(0) },
    ];
  });
  return { ok: true, body };
}
