import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Plan } from '../../core/tasting.ts';
import { askToLast } from '../../shared/page/lasting-storage.ts';
import { lazyComponent } from '../../shared/page/lazy-part.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Button } from '../../shared/ui/button.tsx';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import type { AppContext } from '../app-context.ts';
import { ErrorNotice } from '../error-notice.tsx';
import { sentenceFor, words } from '../language.ts';
import { PastedList } from '../plan/csv/pasted-list.tsx';
import { goTo } from '../route.ts';
import { ownHousePart } from './own-house-part.ts';
import { StartChoice } from './start-choice.tsx';
import type { Beginning } from './starting-plan.ts';
import { TastingList } from './tasting-list.tsx';
import { useTastings } from './tasting-pages.ts';

const KeepLink = lazyComponent(ownHousePart, (part) => part.KeepLink);

/** So many evenings fill a screen: with more, one searches. */
const screenful = 5;

/** All evenings of this server, and the ways to begin a new one. */
export function HomePage({ app }: { readonly app: AppContext }) {
  const beginning = useSignal(false);
  /** The plan that a list is read for; it makes an evening only when something of it is kept. */
  const pasting = useSignal<Plan | undefined>(undefined);
  const wholeHouse = app.keys.house() !== undefined;
  const find = useSignal('');
  const { now, again, more } = useTastings(app, find.value);
  const house = now.is === 'here' ? now.house : undefined;
  const keepLink = house?.name === null && <KeepLink app={app} />;
  const none = now.is === 'here' && now.tastings.length === 0 && now.found === '';
  // Also while a search that found little is shown.
  const searchable =
    wholeHouse &&
    (find.value !== '' || (now.is === 'here' && (now.found !== '' || now.tastings.length > screenful)));

  useEffect(() => {
    document.title = words.page('');
    askToLast();
  }, []);

  const create = async (plan: Plan, next: 'doors' | 'plan'): Promise<void> => {
    beginning.value = true;
    const answer = await app.api.createTasting(plan);
    beginning.value = false;
    if (answer.ok) goTo({ page: next, tasting: answer.body.tasting });
    else app.status.say(sentenceFor(answer.code));
  };
  const begin = async (how: Beginning): Promise<void> => {
    if (beginning.value) return;
    beginning.value = true;
    // Apart from this page, because the schema of a plan is the heaviest thing of all.
    const part = await import('./starting-plan.ts').catch(() => undefined);
    beginning.value = false;
    if (part === undefined) return void app.status.say(sentenceFor('no-answer'));
    const plan = part.planOf(how, house?.volumeUnit ?? undefined);
    if (how.from === 'list') pasting.value = plan;
    else await create(plan, how.from === 'demo' ? 'doors' : 'plan');
  };

  return (
    <main class="page">
      <h1>{words.home.title}</h1>
      {house?.name && <p class="lead">{house.name}</p>}
      {none && keepLink}
      <div class={none ? 'home home-first' : 'home'}>
        <section class="stack" aria-labelledby="listed">
          <h2 class="visually-hidden" id="listed">
            {words.home.list}
          </h2>
          {searchable && (
            <TextField
              label={words.home.find}
              hint={words.home.findHint}
              type="search"
              value={find.value}
              maxLength={200}
              onInput={setterOf(find)}
            />
          )}
          {now.is === 'loading' && <p class="soft">{words.loading}</p>}
          {now.is === 'failed' && <ErrorNotice sentence={sentenceFor(now.code)} onRetry={again} />}
          {now.is === 'here' && none && (
            <EmptyState title={words.home.none}>
              <p>{words.home.noneHint}</p>
            </EmptyState>
          )}
          {now.is === 'here' && !none && (
            <>
              <p class="visually-hidden" role="status">
                {now.found !== '' && words.home.found(now.tastings.length, now.next !== null)}
              </p>
              {now.tastings.length === 0 && <p class="soft">{words.home.notFound}</p>}
              <TastingList tastings={now.tastings} damaged={now.damaged} app={app} onChanged={again} />
              {now.next !== null && <Button onPress={more}>{words.home.more}</Button>}
            </>
          )}
        </section>
        {/* Not before the list, which would push it down. */}
        {now.is !== 'loading' &&
          (wholeHouse ? (
            <StartChoice busy={beginning.value} onBegin={(how) => void begin(how)} />
          ) : (
            <p class="soft">{words.home.oneOnly}</p>
          ))}
      </div>
      {pasting.value && (
        <PastedList
          plan={pasting.value}
          busy={beginning.value}
          onKeep={(_, change) => void (pasting.value && create(change(pasting.value), 'plan'))}
          onClose={() => {
            pasting.value = undefined;
          }}
        />
      )}
      {keepLink ? !none && keepLink : now.is !== 'loading' && <p class="small soft">{words.home.keepLink}</p>}
      <LanguageChoice />
    </main>
  );
}
