import type { CueId, PourId, SeatId, TastingId } from '../../core/ids.ts';
import { type RoundAnswer, type RoundResult, roundResult, type Told } from '../../core/panel/round-result.ts';
import { guestsOf } from '../../core/recap/table-of-pages.ts';
import { inTellingOrder } from '../../core/session/serving.ts';
import type { Session } from '../../core/session/state.ts';
import type { Store, StoredEntry } from '../store/store.ts';

const fieldOf = { order: 'place', liking: 'liking' } as const;

/**
 * What the room makes of its glasses, for the cue that tells it: each ranking of pours that are all among the cue's own, and
 * how much each was liked. Reckoned at the host's tap and at no other time [R1].
 */
export function resultsOf(
  { notebooks }: Pick<Store, 'notebooks'>,
  tasting: TastingId,
  session: Session,
  id: CueId,
): RoundResult[] {
  if (session.status === 'unopened') return [];
  const cue = session.cues.find((each) => each.id === id);
  if (cue?.kind !== 'result') return [];
  const left = (pours: readonly PourId[]): PourId[] =>
    inTellingOrder(
      session.plan,
      pours.filter((pour) => !session.dropped.includes(pour)),
    );
  const orders = session.cues.flatMap((each) =>
    each.kind === 'ranking' && each.pours.every((pour) => cue.pours.includes(pour)) ? [left(each.pours)] : [],
  );
  const answersTo = (of: Told, pours: readonly PourId[]): RoundAnswer[] =>
    guestsOf(session).map(({ id: seat }) => ({
      counts: countsIn(notebooks, tasting, seat, of, pours),
      values: valuesOf(notebooks, tasting, seat, of, pours),
    }));
  return cue.tells.flatMap((of) =>
    (of === 'order' ? orders.filter((pours) => pours.length > 1) : [left(cue.pours)]).map((pours) =>
      roundResult({ of, pours, answers: answersTo(of, pours) }),
    ),
  );
}

/** Which of these answers their guest lets count in the room's result; none that was not asked about does [Q10]. */
function countsIn(
  notebooks: Store['notebooks'],
  tasting: TastingId,
  seat: SeatId,
  of: Told,
  pours: readonly PourId[],
): boolean[] {
  const given = notebooks.consents(tasting, seat);
  return pours.map((pour) => given.find((each) => each.pour === pour)?.consents[of] === 'counts');
}

function valuesOf(
  notebooks: Store['notebooks'],
  tasting: TastingId,
  seat: SeatId,
  of: Told,
  pours: readonly PourId[],
): RoundAnswer['values'] {
  const entries = pours.map((pour) => notebooks.find(tasting, seat, pour, fieldOf[of]));
  const current = entries.map((entry) => numberOf(entry?.value));
  // As it stood before anybody spoke [Q3]; what was blank then, as it stands now.
  const sealed = entries.map((entry) =>
    numberOf(entry?.sealedValue === undefined ? entry?.value : entry.sealedValue),
  );
  // Places only mean something beside each other: a row is taken whole from before the talk, or whole from now.
  if (of === 'order') return sealed.includes(null) ? current : sealed;
  return sealed.map((value, index) => value ?? current[index] ?? null);
}

const numberOf = (value: StoredEntry['value'] | undefined): number | null =>
  typeof value === 'number' ? value : null;
