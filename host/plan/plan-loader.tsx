import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useCallback, useEffect, useMemo } from 'preact/hooks';
import type { TastingId } from '../../core/ids.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { createStatus, type Status } from '../../shared/ui/status.ts';
import { StatusBar } from '../../shared/ui/status-bar.tsx';
import type { StoredPlan } from '../../shared/wire/http.ts';
import { openDraft } from './draft.ts';
import { failureSentence } from './failure.ts';
import type { PlanApi, PlanFailure } from './plan-api.ts';
import { type PlanEditor, planEditorOf } from './plan-editor.ts';
import { words } from './words.ts';

export interface PlanLoaderProps {
  readonly tasting: TastingId;
  readonly api: PlanApi;
  /** The app's live region; without one the page brings its own. */
  readonly status?: Status | undefined;
  /** The key is wrong: the app asks for another. Without it the page says so. */
  readonly onWrongKey?: (() => void) | undefined;
  /** The page that works on the plan, once it is here. */
  readonly children: (opened: {
    readonly editor: PlanEditor;
    readonly stored: StoredPlan;
  }) => ComponentChildren;
}

type Loaded =
  | { readonly is: 'loading' }
  | { readonly is: 'failed'; readonly code: PlanFailure }
  | { readonly is: 'here'; readonly stored: StoredPlan };

/** The plan of one evening: loaded, edited under the finger, and kept as it changes. */
export function PlanLoader({ tasting, api, status, onWrongKey, children }: PlanLoaderProps) {
  const loaded = useSignal<Loaded>({ is: 'loading' });
  const own = useMemo(createStatus, []);
  const said = status ?? own;

  const load = useCallback(async (): Promise<void> => {
    loaded.value = { is: 'loading' };
    const answer = await api.plan(tasting);
    if (!answer.ok && answer.code === 'wrong-key' && onWrongKey !== undefined) {
      onWrongKey();
      return;
    }
    loaded.value = answer.ok ? { is: 'here', stored: answer.body } : { is: 'failed', code: answer.code };
  }, [api, tasting, onWrongKey, loaded]);
  useEffect(() => void load(), [load]);

  const now = loaded.value;
  return (
    <>
      {status === undefined && <StatusBar status={own} closeLabel={words.close} />}
      {now.is === 'loading' && <p class="soft">{words.loading}</p>}
      {now.is === 'failed' && (
        <div class="plan-group" role="alert">
          <Notice kind="caution">
            <p>{failureSentence(now.code)}</p>
          </Notice>
          <div class="plan-buttons">
            <Button kind="primary" onPress={() => void load()}>
              {words.tryAgain}
            </Button>
            <a class="button" href="#/">
              {words.home}
            </a>
          </div>
        </div>
      )}
      {now.is === 'here' && (
        <Opened stored={now.stored} api={api} status={said}>
          {children}
        </Opened>
      )}
    </>
  );
}

interface OpenedProps {
  readonly stored: StoredPlan;
  readonly api: PlanApi;
  readonly status: Status;
  readonly children: PlanLoaderProps['children'];
}

const after = (ms: number, then: () => void): (() => void) => {
  const timer = setTimeout(then, ms);
  return () => clearTimeout(timer);
};

/** How often a page that is looked at asks whether another device has changed the plan. */
const lookMs = 20_000;

function Opened({ stored, api, status, children }: OpenedProps) {
  const editor = useMemo(() => {
    const draft = openDraft({ api, tasting: stored.tasting, stored, after });
    return planEditorOf(draft, status);
  }, [stored, api, status]);

  useEffect(() => {
    const { draft } = editor;
    const look = async (): Promise<void> => {
      if (document.visibilityState === 'visible' && (await draft.look())) status.say(words.keeping.taken);
    };
    const seen = (): void => {
      // What waits for a pause must not be lost with a page that the device puts to sleep.
      if (document.visibilityState === 'hidden') draft.flush();
      else void look();
    };
    const leaving = (event: BeforeUnloadEvent): void => {
      if (draft.keeping.value.is === 'kept') return;
      draft.flush();
      event.preventDefault();
    };
    const timer = setInterval(() => void look(), lookMs);
    document.addEventListener('visibilitychange', seen);
    window.addEventListener('online', draft.flush);
    window.addEventListener('beforeunload', leaving);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', seen);
      window.removeEventListener('online', draft.flush);
      window.removeEventListener('beforeunload', leaving);
      draft.stop();
    };
  }, [editor, status]);

  return children({ editor, stored });
}
