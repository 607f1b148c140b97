import { useSignal } from '@preact/signals';
import { nanoid } from 'nanoid';
import { useMemo } from 'preact/hooks';
import { type CommandId, commandId, type PourId } from '../../core/ids.ts';
import { type Levels, levelOf, nextOfGroup, type Tick } from '../../core/planning/serving/pouring.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import { Button } from '../../shared/ui/button.tsx';
import { EmptyState } from '../../shared/ui/empty-state.tsx';
import { ConnectionStatus } from '../evening/connection-status.tsx';
import type { EveningContext } from '../evening/evening-context.ts';
import { isCovered } from '../evening/names-cover.ts';
import { sentenceFor } from '../language.ts';
import { hrefOf } from '../route.ts';
import { DoorsTime } from './doors-time.tsx';
import { HelperLink } from './helper-link.tsx';
import { withTicks } from './pending-ticks.ts';
import { columnsOf, type GridColumn, readyIn, rowsOf } from './pouring-grid.ts';
import { PouringTable } from './pouring-table.tsx';

interface Done {
  readonly id: CommandId;
  readonly said: string;
}

/** Filling the glasses, on the tablet and on a helper's phone at once. */
export function PouringPage({ evening }: { readonly evening: EveningContext }) {
  const { stored, follower, app } = evening;
  const { plan, tasting } = stored;
  const columns = useMemo(() => columnsOf(plan), [plan]);
  const rows = rowsOf(plan, follower.view.value);
  /** Ticks that have been tapped and not been answered: shown at once, so that a tap is felt. */
  const waiting = useSignal<readonly Tick[]>([]);
  const done = useSignal<readonly Done[]>([]);
  const helping = useSignal(false);
  const levels = withTicks(follower.pouring.value?.levels ?? [], waiting.value);
  const stepsOf = useMemo(() => stepCounts(columns), [columns]);

  const tick = async (group: { places: readonly number[]; pours: readonly PourId[] }): Promise<void> => {
    const next = nextOfGroup(levels, group, stepsOf);
    if (next === undefined) return;
    const id = commandId(nanoid());
    waiting.value = [...waiting.value, { id, ...next }];
    const answer = await follower.sendPouringCommand(id, { type: 'TickGlasses', ...next });
    waiting.value = waiting.value.filter((each) => each.id !== id);
    if (!answer.ok) return app.status.say(sentenceFor(answer.code));
    done.value = [...done.value.slice(-19), { id, said: sayOf(columns, levels, next) }];
  };
  const undo = async (): Promise<void> => {
    const last = done.value.at(-1);
    if (last === undefined) return;
    done.value = done.value.slice(0, -1);
    const answer = await follower.sendPouringCommand(commandId(nanoid()), {
      type: 'UndoTick',
      tick: last.id,
    });
    if (answer.ok) app.status.say(words.undone);
    else app.status.say(answer.code === 'nothing-to-do' ? words.tooLate : sentenceFor(answer.code));
    if (!answer.ok && answer.code !== 'nothing-to-do') done.value = [...done.value, last];
  };

  const named = new Set(
    (follower.view.value?.pours ?? []).filter(({ revealed }) => revealed).map(({ id }) => id),
  );
  const covers = (pour: PourId): boolean => isCovered({ revealed: named.has(pour) }, plan.blind);

  const last = done.value.at(-1);
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
          <p class="soft pouring-lead">{words.lead}</p>
          <PouringTable
            rows={rows}
            columns={columns}
            levels={levels}
            stepsOf={stepsOf}
            covers={covers}
            onTick={(group) => void tick(group)}
          />
          <footer class="pouring-foot">
            <p class="pouring-count">
              <strong class="figures">
                {words.count(readyIn(levels, rows, columns), rows.length * columns.length)}
              </strong>
              {last !== undefined && <span class="soft"> {last.said}</span>}
            </p>
            <div class="thumb-bar">
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
              <Button disabled={last === undefined} onPress={() => void undo()}>
                {words.undo}
              </Button>
            </div>
          </footer>
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

const stepCounts = (columns: readonly GridColumn[]) => {
  const counts = new Map(columns.map(({ id, steps }) => [id, steps.length]));
  return (pour: PourId): number => counts.get(pour) ?? 0;
};

/** What a tap did: the step and how many glasses came level with it. */
function sayOf(
  columns: readonly GridColumn[],
  levels: Levels,
  { places, pours, done }: Omit<Tick, 'id'>,
): string {
  const step = columns.find(({ id }) => pours.includes(id))?.steps[done - 1];
  const glasses = pours.flatMap((pour) =>
    places.filter((place) => levelOf(levels, pour, place) < done),
  ).length;
  return step === undefined ? '' : words.did(words.doStep[step], glasses);
}
