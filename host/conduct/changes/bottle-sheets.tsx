import { useMemo, useRef } from 'preact/hooks';
import type { PourId } from '../../../core/ids.ts';
import { drawBlindCodes } from '../../../core/planning/serving/blind-codes.ts';
import { codesInUse } from '../../../core/planning/serving/trials.ts';
import { glassNumbers } from '../../../core/running-order/glass-numbers.ts';
import type { Bottle, Pour } from '../../../core/tasting.ts';
import { changesWords as said } from '../../../shared/language/en/changes.ts';
import { words } from '../../language.ts';
import { cryptoRandom } from '../../plan/plan-editor.ts';
import { anotherBottle } from '../../plan/pour-edits.ts';
import { newPourId } from '../../plan/pours/new-pour-id.ts';
import { PourSheet } from '../../plan/pours/pour-sheet.tsx';
import type { DrawerProps } from '../drawer.ts';

interface BottleSheetProps extends DrawerProps {
  readonly pour: PourId;
}

const bottleOf = ({ id: _, drink: __, ...bottle }: Pour): Bottle => bottle;

/** What a glass is called in a sentence: never by a name, which a passer-by could read. */
const glassOf = ({ view }: Pick<DrawerProps, 'view'>, pour: PourId): string =>
  words.cue.glass(view.pours.find(({ id }) => id === pour)?.position ?? 0);

/** Another bottle in the place of one that is corked or was forgotten: a name is enough. */
export function SwapSheet({ pour: id, evening, view, actions, onClose }: BottleSheetProps) {
  const { plan } = evening.stored;
  const pour = plan.pours.find((each) => each.id === id);
  if (pour === undefined) return null;
  const glass = glassOf({ view }, id);
  return (
    <PourSheet
      plan={plan}
      pour={anotherBottle(pour, '')}
      isNew
      asked={{
        title: said.swap.title(glass),
        first: [`${said.swap.numbers} ${said.swap.emptied}`],
        go: said.swap.go,
      }}
      onDone={(other) => {
        onClose();
        actions.swap(id, bottleOf(other), bottleOf(pour), said.swap.done(glass));
      }}
      onClose={onClose}
    />
  );
}

/** The facts of the same bottle, mended; sent as one change when the sheet is closed. */
export function MendSheet({ pour: id, evening, view, actions, onClose }: BottleSheetProps) {
  const { plan } = evening.stored;
  const pour = plan.pours.find((each) => each.id === id);
  const mended = useRef<Pour>(undefined);
  if (pour === undefined) return null;
  const glass = glassOf({ view }, id);
  const close = (): void => {
    onClose();
    const now = mended.current;
    if (now === undefined || JSON.stringify(now) === JSON.stringify(pour)) return;
    actions.mend(id, bottleOf(now), bottleOf(pour), said.mend.done(glass));
  };
  return (
    <PourSheet
      plan={plan}
      pour={pour}
      asked={{
        title: said.mend.title(glass),
        first: [said.mend.numbers, ...(view.blind ? [said.mend.uncovered] : [])],
        go: said.mend.go,
      }}
      onChange={(changed) => {
        mended.current = changed;
      }}
      onClose={close}
    />
  );
}

/** A pour that the plan did not have. Its code is drawn here, so that it can be said before anything is changed. */
export function AddSheet({ evening, actions, onClose }: DrawerProps) {
  const { plan } = evening.stored;
  const drawn = useMemo(() => {
    const [code = null] = plan.blind ? drawBlindCodes(1, cryptoRandom, codesInUse(plan)) : [];
    return { id: newPourId(), code };
  }, []);
  const glass = words.cue.glass(Math.max(0, ...glassNumbers(plan).values(), plan.numbers.length) + 1);
  return (
    <PourSheet
      plan={plan}
      pour={{ id: drawn.id, drink: plan.drink, name: '' }}
      isNew
      asked={{
        title: said.add.title,
        first: [
          [said.add.numbers(glass), said.add.last].join(' '),
          ...(drawn.code === null ? [] : [said.add.code(words.glasses.code(drawn.code))]),
        ],
        go: said.add.go,
      }}
      onDone={({ id, drink, ...bottle }) => {
        onClose();
        actions.addPour({ pour: id, drink, bottle, code: drawn.code }, said.add.done(glass));
      }}
      onClose={onClose}
    />
  );
}
