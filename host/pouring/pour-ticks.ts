import { useSignal } from '@preact/signals';
import { nanoid } from 'nanoid';
import { useMemo } from 'preact/hooks';
import { type CommandId, commandId, type PourId } from '../../core/ids.ts';
import {
  type Levels,
  levelOf,
  nextOfGroup,
  type PouringTurn,
  type Tick,
} from '../../core/planning/serving/pouring.ts';
import type { GridColumn } from '../../core/planning/serving/pouring-grid.ts';
import { firstKitPlace, stepsOfVial } from '../../core/planning/serving/vial-kits.ts';
import type { HostFollower } from '../../shared/follower/host-follower.ts';
import { pouringWords as words } from '../../shared/language/en/pouring.ts';
import { sentenceFor } from '../language.ts';
import { withTicks } from './pending-ticks.ts';

interface Done {
  readonly id: CommandId;
  readonly said: string;
}

export interface PourTicks {
  readonly levels: Levels;
  readonly stepsOf: (pour: PourId) => readonly PouringTurn[];
  /** What the last tap of this device did, while it can be undone. */
  readonly last: string | undefined;
  tick(group: { readonly places: readonly number[]; readonly pours: readonly PourId[] }): void;
  undo(): void;
}

interface PourTicksOptions {
  readonly columns: readonly GridColumn[];
  /** As the server last told it. */
  readonly told: Levels;
  readonly send: HostFollower['sendPouringCommand'];
  readonly say: (sentence: string) => void;
}

/** Ticking glasses on one device, a host's or a helper's: shown at once, so that a tap is felt, and undone one by one. */
export function usePourTicks({ columns, told, send, say }: PourTicksOptions): PourTicks {
  const waiting = useSignal<readonly Tick[]>([]);
  const done = useSignal<readonly Done[]>([]);
  const levels = withTicks(told, waiting.value);
  const stepsOf = useMemo(() => stepsOfColumns(columns), [columns]);

  const tick = async (group: Parameters<PourTicks['tick']>[0]): Promise<void> => {
    const vials = group.places.some((place) => place >= firstKitPlace);
    const next = nextOfGroup(levels, group, (pour) => (vials ? stepsOfVial(stepsOf(pour)) : stepsOf(pour)));
    if (next === undefined) return;
    const id = commandId(nanoid());
    waiting.value = [...waiting.value, { id, ...next }];
    const answer = await send(id, { type: 'TickGlasses', ...next });
    waiting.value = waiting.value.filter((each) => each.id !== id);
    if (!answer.ok) return say(sentenceFor(answer.code));
    done.value = [...done.value.slice(-19), { id, said: sayOf(columns, levels, next) }];
  };
  const undo = async (): Promise<void> => {
    const last = done.value.at(-1);
    if (last === undefined) return;
    done.value = done.value.slice(0, -1);
    const answer = await send(commandId(nanoid()), { type: 'UndoTick', tick: last.id });
    if (answer.ok) say(words.undone);
    else say(answer.code === 'nothing-to-do' ? words.tooLate : sentenceFor(answer.code));
    if (!answer.ok && answer.code !== 'nothing-to-do') done.value = [...done.value, last];
  };
  return {
    levels,
    stepsOf,
    last: done.value.at(-1)?.said,
    tick: (group) => void tick(group),
    undo: () => void undo(),
  };
}

const stepsOfColumns = (columns: readonly GridColumn[]) => {
  const known = new Map(columns.map(({ id, steps }) => [id, steps]));
  return (pour: PourId): readonly PouringTurn[] => known.get(pour) ?? [];
};

/** What a tap did: the step and how many glasses came level with it. */
function sayOf(
  columns: readonly GridColumn[],
  levels: Levels,
  { places, pours, done }: Omit<Tick, 'id'>,
): string {
  const step = columns.find(({ id }) => pours.includes(id))?.steps.find(({ moves }) => moves === done)?.step;
  const glasses = pours.flatMap((pour) =>
    places.filter((place) => levelOf(levels, pour, place) < done),
  ).length;
  return step === undefined ? '' : words.did(words.doStep[step], glasses);
}
