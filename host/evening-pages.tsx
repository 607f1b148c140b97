import { signal } from '@preact/signals';
import { nanoid } from 'nanoid';
import type { ComponentChildren } from 'preact';
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { commandId, type TastingId } from '../core/ids.ts';
import { followAsHost, type HostFollower } from '../shared/follower/host-follower.ts';
import { watchForWake } from '../shared/follower/wake-watch.ts';
import { Notice } from '../shared/ui/notice.tsx';
import type { StoredPlan } from '../shared/wire/http.ts';
import type { AppContext } from './app-context.ts';
import { callPart } from './conduct/call/call-part.ts';
import { createCommandsUnderWay } from './evening/commands-under-way.ts';
import type { EveningContext } from './evening/evening-context.ts';
import { sentenceFor, words } from './language.ts';
import { LoadedPage } from './loaded-page.tsx';
import { hrefOf } from './route.ts';

interface EveningPagesProps {
  readonly tasting: TastingId;
  readonly app: AppContext;
  /** The room's own page is the one that shows. */
  readonly inRoom: boolean;
  readonly children: (evening: EveningContext) => ComponentChildren;
}

/** What the pages of one evening stand in: its plan, fetched once, and the link to its room. */
export function EveningPages({ tasting, app, inRoom, children }: EveningPagesProps) {
  const ask = useCallback(() => app.api.plan(tasting), [app, tasting]);
  return (
    <LoadedPage app={app} ask={ask}>
      {(stored) => (
        <Followed stored={stored} app={app} inRoom={inRoom}>
          {children}
        </Followed>
      )}
    </LoadedPage>
  );
}

interface FollowedProps extends Pick<EveningPagesProps, 'app' | 'inRoom' | 'children'> {
  readonly stored: StoredPlan;
}

/** Holds the link to the room for as long as any page of this tasting is open. */
function Followed({ stored: fetched, app, inRoom, children }: FollowedProps) {
  const { tasting } = fetched;
  const key = app.keys.keyFor(tasting) ?? '';
  const link = useMemo((): Omit<EveningContext, 'stored'> => {
    const follower = followAsHost({ tasting, key, newId: () => commandId(nanoid()) });
    const commands = createCommandsUnderWay({
      send: follower.send,
      onRefusal: (code) => app.status.say(code === 'no-answer' ? words.noAnswerToAsk : sentenceFor(code)),
    });
    return { app, follower, commands, call: signal(null) };
  }, [app, tasting, key]);
  const stored = usePlanOfNow(fetched, link.follower, app);
  const evening: EveningContext = { ...link, stored };
  useEffect(() => {
    const stop = watchForWake(link.follower.wake);
    return () => {
      stop();
      link.call.peek()?.close();
      link.follower.close();
      app.calling.value = null;
    };
  }, [link, app]);
  useEffect(() => {
    document.title = words.page(stored.plan.title);
  }, [stored]);

  const line = link.follower.link.value;
  useEffect(() => {
    if (line.status === 'refused' && line.code === 'wrong-key') app.askForLink();
  }, [line, app]);
  if (line.status === 'refused' || line.status === 'dismissed') {
    return (
      <main class="page page-narrow stack">
        <Notice kind="caution">
          <p>{line.status === 'refused' ? sentenceFor(line.code) : words.link.dismissed[line.why]}</p>
        </Notice>
        <a class="button" href={hrefOf({ page: 'home' })}>
          {words.doors.toHome}
        </a>
      </main>
    );
  }
  const call = link.call.value?.call;
  const Above = callPart.now.value?.CallAbove;
  const conducting = link.follower.view.value?.status === 'under-way';
  return (
    <>
      {call && Above && (
        <Above
          call={call}
          seen={inRoom && conducting}
          room={inRoom ? undefined : hrefOf({ page: 'room', tasting })}
          onBegun={() => {
            app.calling.value = tasting;
          }}
        />
      )}
      {children(evening)}
    </>
  );
}

/** The plan as it was fetched, and again whenever it has changed while the evening runs. */
function usePlanOfNow(fetched: StoredPlan, follower: HostFollower, app: AppContext): StoredPlan {
  const [stored, setStored] = useState(fetched);
  const known = useRef<number>(undefined);
  const changes = follower.view.value?.planChanges;
  useEffect(() => {
    if (changes === undefined || changes === known.current) return;
    // What came with the page may be older than the first view.
    if (known.current === undefined && changes === 0) {
      known.current = changes;
      return;
    }
    let gone = false;
    void app.api.plan(fetched.tasting).then((answer) => {
      if (gone || !answer.ok) return;
      known.current = changes;
      setStored(answer.body);
    });
    return () => {
      gone = true;
    };
  }, [changes, fetched, app]);
  return stored;
}
