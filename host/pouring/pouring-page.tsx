import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { PourId } from '../../core/ids.ts';
import { columnsOf, rowsOf } from '../../core/planning/serving/pouring-grid.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import { Button } from '../../shared/ui/button.tsx';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import { ConnectionStatus } from '../evening/connection-status.tsx';
import type { EveningContext } from '../evening/evening-context.ts';
import { isCovered } from '../evening/names-cover.ts';
import { hrefOf } from '../route.ts';
import { DoorsTime } from './doors-time.tsx';
import { HelperLink } from './helper-link.tsx';
import { usePourTicks } from './pour-ticks.ts';
import { PouringFoot } from './pouring-foot.tsx';
import { PouringLead } from './pouring-lead.tsx';
import { PouringTable } from './pouring-table.tsx';

/** Filling the glasses, on the tablet and on a helper's phone at once. */
export function PouringPage({ evening }: { readonly evening: EveningContext }) {
  const { stored, follower, app } = evening;
  const { plan, tasting } = stored;
  const columns = useMemo(() => columnsOf(plan), [plan]);
  const rows = rowsOf(plan, follower.view.value?.seats ?? []);
  const helping = useSignal(false);
  const ticks = usePourTicks({
    columns,
    told: follower.pouring.value?.levels ?? [],
    send: follower.sendPouringCommand,
    say: app.status.say,
  });
  const named = new Set(
    (follower.view.value?.pours ?? []).filter(({ revealed }) => revealed).map(({ id }) => id),
  );
  const covers = (pour: PourId): boolean => isCovered({ revealed: named.has(pour) }, plan.blind);

  return (
    <main class="pouring">
      <header class="pouring-head">
        <h1>{words.title}</h1>
        <DoorsTime evening={evening} />
        <ConnectionStatus link={follower.link.value} hosts={follower.presence.value.hosts} />
        <a class="button button-quiet" href={hrefOf({ page: 'doors', tasting })}>
          {words.back}
        </a>
      </header>
      {columns.length === 0 || rows.length === 0 ? (
        <EmptyState
          title={columns.length === 0 ? words.noPours : words.noPlaces}
          action={
            <a class="button button-primary" href={hrefOf({ page: 'plan', tasting })}>
              {words.toPlan}
            </a>
          }
        >
          <p>{columns.length === 0 ? words.noPoursHint : words.noPlacesHint}</p>
        </EmptyState>
      ) : (
        <>
          <PouringLead lead={words.lead} columns={columns} />
          <PouringTable rows={rows} columns={columns} ticks={ticks} covers={covers} />
          <PouringFoot ticks={ticks} rows={rows} columns={columns}>
            <span class="pouring-helper">
              <Button
                kind="quiet"
                onPress={() => {
                  helping.value = true;
                }}
              >
                {words.helper}
              </Button>
            </span>
          </PouringFoot>
        </>
      )}
      {helping.value && (
        <HelperLink
          evening={evening}
          onClose={() => {
            helping.value = false;
          }}
        />
      )}
    </main>
  );
}
