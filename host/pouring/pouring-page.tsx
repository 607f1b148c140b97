import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { PourId } from '../../core/ids.ts';
import { columnsOf, rowsOf } from '../../core/planning/serving/pouring-grid.ts';
import { kitRowsOf, stepsOfVial, vialColumnsOf } from '../../core/planning/serving/vial-kits.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Choice, optionsOf } from '../../shared/ui/choice.tsx';
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
  const kits = useMemo(() => kitRowsOf(plan), [plan]);
  const vialColumns = useMemo(() => vialColumnsOf(plan), [plan]);
  const chosen = useSignal<'glasses' | 'vials'>('glasses');
  const vials = kits.length > 0 && (chosen.value === 'vials' || rows.length === 0);
  const poured = vials ? { rows: kits, columns: vialColumns } : { rows, columns };
  const helping = useSignal(false);
  const ticks = usePourTicks({
    columns,
    told: follower.pouring.value?.levels ?? [],
    send: follower.sendPouringCommand,
    say: app.status.say,
  });
  const vialTicks = { ...ticks, stepsOf: (pour: PourId) => stepsOfVial(ticks.stepsOf(pour)) };
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
      {columns.length === 0 || (rows.length === 0 && kits.length === 0) ? (
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
          <PouringLead lead={vials ? words.vials.lead : words.lead} columns={poured.columns} />
          {kits.length > 0 && rows.length > 0 && (
            <div class="pouring-lead">
              <Choice
                legend={words.vials.which}
                across
                value={vials ? 'vials' : 'glasses'}
                options={optionsOf(['glasses', 'vials'], words.vials.kinds)}
                onChoose={setterOf(chosen)}
              />
            </div>
          )}
          <PouringTable vials={vials} {...poured} ticks={vials ? vialTicks : ticks} covers={covers} />
          <PouringFoot ticks={ticks} vials={vials} {...poured}>
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
