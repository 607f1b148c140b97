import type { ComponentChildren } from 'preact';
import { useCallback, useEffect, useMemo } from 'preact/hooks';
import type { TastingId } from '../../core/ids.ts';
import { after } from '../../shared/follower/timer.ts';
import type { StoredPlan } from '../../shared/wire/http.ts';
import type { AppContext } from '../app-context.ts';
import { LoadedPage } from '../loaded-page.tsx';
import { openDraft } from './draft.ts';
import { type PlanEditor, planEditorOf } from './plan-editor.ts';
import { words } from './words.ts';

interface PlanLoaderProps {
  readonly tasting: TastingId;
  readonly app: AppContext;
  /** The page that works on the plan, once it is here. */
  readonly children: (opened: {
    readonly editor: PlanEditor;
    readonly stored: StoredPlan;
  }) => ComponentChildren;
}

/** The plan of one evening: loaded, edited under the finger, and kept as it changes. */
export function PlanLoader({ tasting, app, children }: PlanLoaderProps) {
  const ask = useCallback(() => app.api.plan(tasting), [app, tasting]);
  return (
    <LoadedPage app={app} ask={ask}>
      {(stored) => (
        <Opened stored={stored} app={app}>
          {children}
        </Opened>
      )}
    </LoadedPage>
  );
}

interface OpenedProps {
  readonly stored: StoredPlan;
  readonly app: AppContext;
  readonly children: PlanLoaderProps['children'];
}

/** How often a page that is looked at asks whether another device has changed the plan. */
const lookMs = 20_000;

function Opened({ stored, app: { api, status }, children }: OpenedProps) {
  const editor = useMemo(() => {
    const draft = openDraft({ api, tasting: stored.tasting, stored, after });
    return planEditorOf(draft, status, () => api.opening(stored.tasting));
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
