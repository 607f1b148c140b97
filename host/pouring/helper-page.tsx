import { nanoid } from 'nanoid';
import { useEffect, useMemo } from 'preact/hooks';
import { commandId, type PourId } from '../../core/ids.ts';
import type { GridRow } from '../../core/planning/serving/pouring-grid.ts';
import { followAsHelper, type HelperFollower } from '../../shared/follower/helper-follower.ts';
import { watchForWake } from '../../shared/follower/wake-watch.ts';
import { pouringWords } from '../../shared/language/en/pouring.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import { keepAwake } from '../../shared/ui/wake-lock.ts';
import type { Call, HelperView } from '../../shared/wire/helper.ts';
import type { AppContext, TastingPageProps } from '../app-context.ts';
import { ConnectionStatus } from '../evening/connection-status.tsx';
import { coverNames, isCovered, namesCovered } from '../evening/names-cover.ts';
import { PlaceItems } from '../evening/place-items.tsx';
import { words as hostWords, sentenceFor } from '../language.ts';
import { usePourTicks } from './pour-ticks.ts';
import { PouringFoot } from './pouring-foot.tsx';
import { PouringLead } from './pouring-lead.tsx';
import { PouringTable } from './pouring-table.tsx';

const words = pouringWords.helps;

/** A helper's phone: the calls, the glasses to pour, and what lies on each place. Nothing else is sent to it [S6]. */
export function HelperPage({ tasting, app }: TastingPageProps) {
  const key = app.keys.helperKeyFor(tasting) ?? '';
  const follower = useMemo(
    () => followAsHelper({ tasting, key, newId: () => commandId(nanoid()) }),
    [tasting, key],
  );
  useEffect(() => {
    const stop = watchForWake(follower.wake);
    return () => {
      stop();
      follower.close();
    };
  }, [follower]);
  useEffect(keepAwake, []);
  const link = follower.link.value;
  const view = follower.view.value;
  if (link.status === 'refused' || link.status === 'dismissed') {
    return (
      <main class="page page-narrow stack">
        <Notice kind="caution">
          <p>
            {link.status === 'refused' && link.code !== 'wrong-key' ? sentenceFor(link.code) : words.ended}
          </p>
        </Notice>
      </main>
    );
  }
  return (
    <main class="pouring pouring-helping">
      <header class="pouring-head">
        <h1>{view === null || view.title === '' ? words.title : view.title}</h1>
        <p class="pouring-doors">{view === null ? hostWords.loading : words.stages[view.stage]}</p>
        <ConnectionStatus link={link} hosts={0} />
      </header>
      {view !== null && <Helping view={view} follower={follower} app={app} />}
    </main>
  );
}

interface HelpingProps {
  readonly view: HelperView;
  readonly follower: HelperFollower;
  readonly app: AppContext;
}

function Helping({ view, follower, app }: HelpingProps) {
  const { columns } = view;
  const rows = useMemo(
    () => view.rows.map((row): GridRow => ({ ...row, glasses: new Map(row.glasses) })),
    [view.rows],
  );
  const ticks = usePourTicks({
    columns,
    told: follower.pouring.value?.levels ?? [],
    send: follower.sendPouringCommand,
    say: app.status.say,
  });
  const covers = (pour: PourId): boolean => isCovered({ revealed: view.named.includes(pour) }, view.blind);
  const answer = async (call: Call): Promise<void> => {
    const said = await follower.answer(call.seat);
    // Somebody else was there first: the call is gone, and that is all.
    if (!said.ok && said.code !== 'nothing-to-do') app.status.say(sentenceFor(said.code));
  };
  return (
    <>
      <PouringLead lead={words.lead} columns={columns} />
      {view.calls.length > 0 && (
        <section class="stack-tight helper-calls" aria-labelledby="calls">
          <h2 id="calls">{words.calls}</h2>
          <ul class="plain-list">
            {view.calls.map((call) => (
              <li key={call.seat} class="glass-row">
                <p class="glass-words">
                  <strong>
                    <bdi>{call.name}</bdi>
                  </strong>
                  <span class="soft">
                    {[
                      call.remote ? hostWords.table.remote : pouringWords.place(call.place),
                      hostWords.table.states[call.signal],
                    ].join(' · ')}
                  </span>
                </p>
                <Button onPress={() => void answer(call)}>{hostWords.table.answered}</Button>
              </li>
            ))}
          </ul>
        </section>
      )}
      {rows.length > 0 && columns.length > 0 && (
        <PouringTable rows={rows} columns={columns} ticks={ticks} covers={covers} />
      )}
      <section class="stack-tight helper-places">
        <PlaceItems drink={view.drink} />
        {view.blind && (
          <Switch
            label={hostWords.cover.switch}
            hint={hostWords.cover.switchHint}
            on={namesCovered.value}
            onTurn={coverNames}
          />
        )}
      </section>
      <PouringFoot ticks={ticks} rows={rows} columns={columns} />
    </>
  );
}
