import { nanoid } from 'nanoid';
import type { ComponentChildren } from 'preact';
import { useCallback, useEffect, useMemo } from 'preact/hooks';
import { commandId, type TastingId } from '../core/ids.ts';
import { followAsHost } from '../shared/follower/host-follower.ts';
import { watchForWake } from '../shared/follower/wake-watch.ts';
import { Notice } from '../shared/ui/notice.tsx';
import type { StoredPlan } from '../shared/wire/http.ts';
import type { AppContext } from './app-context.ts';
import { createCommandsUnderWay } from './evening/commands-under-way.ts';
import type { EveningContext } from './evening/evening-context.ts';
import { sentenceFor, words } from './language.ts';
import { LoadedPage } from './loaded-page.tsx';
import { hrefOf } from './route.ts';

interface EveningPagesProps {
  readonly tasting: TastingId;
  readonly app: AppContext;
  readonly children: (evening: EveningContext) => ComponentChildren;
}

/** What the pages of one evening stand in: its plan, fetched once, and the link to its room. */
export function EveningPages({ tasting, app, children }: EveningPagesProps) {
  const ask = useCallback(() => app.api.plan(tasting), [app, tasting]);
  return (
    <LoadedPage app={app} ask={ask}>
      {(stored) => (
        <Followed stored={stored} app={app}>
          {children}
        </Followed>
      )}
    </LoadedPage>
  );
}

interface FollowedProps extends Pick<EveningPagesProps, 'app' | 'children'> {
  readonly stored: StoredPlan;
}

/** Holds the link to the room for as long as any page of this tasting is open. */
function Followed({ stored, app, children }: FollowedProps) {
  const key = app.keys.keyFor(stored.tasting) ?? '';
  const evening = useMemo((): EveningContext => {
    const follower = followAsHost({ tasting: stored.tasting, key, newId: () => commandId(nanoid()) });
    const commands = createCommandsUnderWay({
      send: follower.send,
      onRefusal: (code) => app.status.say(code === 'no-answer' ? words.noAnswerToAsk : sentenceFor(code)),
    });
    return { app, stored, follower, commands };
  }, [app, stored, key]);
  useEffect(() => {
    const stop = watchForWake(evening.follower.wake);
    return () => {
      stop();
      evening.follower.close();
    };
  }, [evening]);
  useEffect(() => {
    document.title = words.page(stored.plan.title);
  }, [stored]);

  const link = evening.follower.link.value;
  useEffect(() => {
    if (link.status === 'refused' && link.code === 'wrong-key') app.askForLink();
  }, [link, app]);
  if (link.status === 'refused' || link.status === 'dismissed') {
    return (
      <main class="page page-narrow stack">
        <Notice kind="caution">
          <p>{link.status === 'refused' ? sentenceFor(link.code) : words.link.dismissed[link.why]}</p>
        </Notice>
        <a class="button" href={hrefOf({ page: 'home' })}>
          {words.doors.toHome}
        </a>
      </main>
    );
  }
  return <>{children(evening)}</>;
}
