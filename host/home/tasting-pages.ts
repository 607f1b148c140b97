import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { epochMs } from '../../core/units.ts';
import type { FailureCode, HttpAnswer } from '../../shared/wire/answer.ts';
import type { ListedHouse, ListedTasting, TastingPage } from '../../shared/wire/http.ts';
import type { AppContext } from '../app-context.ts';
import { sentenceFor } from '../language.ts';

/** Ms without a key pressed before what was typed is looked for. */
const typingPause = 250;

type Tastings =
  | { readonly is: 'loading' }
  | { readonly is: 'failed'; readonly code: FailureCode }
  | {
      readonly is: 'here';
      readonly tastings: readonly ListedTasting[];
      /** What they were found by; empty for all. */
      readonly found: string;
      readonly next: string | null;
      readonly damaged: boolean;
      readonly house: ListedHouse | undefined;
    };

/** The evenings that this device may conduct, page after page, and those that a search finds. */
export function useTastings(
  app: AppContext,
  find: string,
): { readonly now: Tastings; readonly again: () => void; readonly more: () => void } {
  const [now, setNow] = useState<Tastings>({ is: 'loading' });
  const asked = useRef(0);

  const ask = useCallback(
    async (after: string | null, before: readonly ListedTasting[]): Promise<void> => {
      asked.current += 1;
      const mine = asked.current;
      const answer = await pageOf(app, find, after);
      // Something else was looked for meanwhile.
      if (mine !== asked.current) return;
      if (answer.ok) {
        const { tastings, next, damaged = false, house } = answer.body;
        const all = [...before, ...newTo(before, tastings)];
        setNow({ is: 'here', tastings: all, found: find, next, damaged, house });
        return;
      }
      if (answer.code === 'wrong-key') app.askForLink();
      if (after === null) setNow({ is: 'failed', code: answer.code });
      else app.status.say(sentenceFor(answer.code));
    },
    [app, find],
  );
  const again = useCallback(() => void ask(null, []), [ask]);
  useEffect(() => {
    // Nobody typed for the first page.
    const waiting = setTimeout(again, asked.current === 0 ? 0 : typingPause);
    return () => clearTimeout(waiting);
  }, [again]);

  const more = (): void => {
    if (now.is === 'here' && now.next !== null && now.found === find) void ask(now.next, now.tastings);
  };
  return { now, again, more };
}

/** Those that cannot be read come twice: before the first page, and in their place. */
function newTo(before: readonly ListedTasting[], tastings: readonly ListedTasting[]): ListedTasting[] {
  const known = new Set(before.map(({ tasting }) => tasting));
  return tastings.filter(({ tasting }) => !known.has(tasting));
}

async function pageOf(app: AppContext, find: string, after: string | null): Promise<HttpAnswer<TastingPage>> {
  return app.keys.house() === undefined ? knownTastings(app) : app.api.listTastings(find, after);
}

/** A helper's device lists the evenings that it has a key of their own for. */
async function knownTastings({ keys, api }: AppContext): Promise<HttpAnswer<TastingPage>> {
  const stored = await Promise.all(keys.tastings().map((tasting) => api.plan(tasting)));
  const failed = stored.find((answer) => !answer.ok && answer.code === 'no-answer');
  if (failed !== undefined && !failed.ok) return failed;
  const tastings = stored.flatMap((answer): ListedTasting[] => {
    if (!answer.ok) return [];
    const { tasting, code, plan, stage } = answer.body;
    const { title, startsAt = null, guests } = plan;
    const figures = { pours: plan.pours.length, guests };
    return [{ tasting, code, title, startsAt, stage, ...figures, createdAt: epochMs(0), finishedAt: null }];
  });
  return { ok: true, body: { tastings, next: null } };
}
