import { useEffect, useState } from 'preact/hooks';
import { drinks } from '../../../core/drinks/drink-kinds.ts';
import type { TastingId } from '../../../core/ids.ts';
import { limits, type Pour } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Choice, optionsOf } from '../../../shared/ui/choice.tsx';
import { EmptyState } from '../../../shared/ui/empty-state.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { Notice } from '../../../shared/ui/notice.tsx';
import { plus, review, sip } from '../../../shared/ui/strokes.ts';
import { hrefOf } from '../../route.ts';
import { PastedList } from '../csv/pasted-list.tsx';
import { Fold } from '../fields/fold.tsx';
import { orderOf } from '../figures/order.ts';
import type { PlanEditor } from '../plan-editor.ts';
import {
  addPours,
  allOf,
  drinksAsBefore,
  insertPour,
  placeOf,
  removePour,
  replacePour,
} from '../pour-edits.ts';
import { BlindChoice } from '../pours/blind-choice.tsx';
import { PourSheet, pourSheetPart } from '../pours/later-pour-sheet.tsx';
import { Lineup } from '../pours/lineup.tsx';
import { newPourId } from '../pours/new-pour-id.ts';
import { OrderBar, OrderDetails } from '../pours/order-advice.tsx';
import { ThemeChoice } from '../pours/theme-choice.tsx';
import { TrialFold } from '../pours/trial-choice.tsx';
import { words } from '../words.ts';
import { StrengthNotice } from './strength-notice.tsx';

type Sheet =
  | { readonly is: 'closed' }
  | { readonly is: 'list' }
  | { readonly is: 'new'; readonly count: number }
  | { readonly is: 'pour'; readonly id: string };

interface PoursPartProps {
  readonly editor: PlanEditor;
  readonly tasting: TastingId;
}

export function PoursPart({ editor, tasting }: PoursPartProps) {
  const plan = editor.draft.plan.value;
  const said = words.pours;
  const [sheet, setSheet] = useState<Sheet>({ is: 'closed' });
  useEffect(pourSheetPart.fetch, []);
  const close = () => setSheet({ is: 'closed' });
  const full = plan.pours.length >= limits.pours;
  const opened = sheet.is === 'pour' ? plan.pours.find(({ id }) => id === sheet.id) : undefined;
  const figures = orderOf(plan);

  const buttons = (
    <div class="plan-buttons">
      <Button kind="primary" disabled={full} onPress={() => setSheet({ is: 'new', count: 0 })}>
        <Icon of={plus} />
        {said.add}
      </Button>
      <Button onPress={() => setSheet({ is: 'list' })}>
        <Icon of={review} />
        {said.list}
      </Button>
      {plan.pours.length > 0 && (
        <a class="button" href={hrefOf({ page: 'ahead', tasting })}>
          <Icon of={sip} />
          {words.ahead.open}
        </a>
      )}
    </div>
  );
  return (
    <>
      {plan.pours.length === 0 ? (
        <>
          <Choice
            legend={said.drink}
            options={optionsOf(drinks, words.drinksOf)}
            value={plan.drink}
            onChoose={(drink) => editor.edit((now) => ({ ...now, drink }))}
            across
          />
          <EmptyState title={said.emptyTitle} action={buttons}>
            <p>{said.empty}</p>
          </EmptyState>
        </>
      ) : (
        <>
          {buttons}
          {full && <p class="soft">{said.full}</p>}
          <StrengthNotice editor={editor} />
          {plan.numbers.length > 0 && (
            <Notice kind="info">
              <p>{said.numbersKept}</p>
              <Button
                onPress={() =>
                  editor.change(
                    said.numberedAnew,
                    (now) => ({ ...now, numbers: [] }),
                    (now) => ({
                      ...now,
                      numbers: plan.numbers,
                    }),
                  )
                }
              >
                {said.numberAnew}
              </Button>
            </Notice>
          )}
          <OrderBar editor={editor} figures={figures} />
          <Lineup editor={editor} figures={figures} onOpen={(id) => setSheet({ is: 'pour', id })} />
          <OrderDetails editor={editor} figures={figures} />
          <ThemeChoice editor={editor} checks={figures.checks} />
          <BlindChoice editor={editor} />
          <DrinkOfAll editor={editor} />
          <TrialFold editor={editor} />
        </>
      )}
      {sheet.is === 'list' && (
        <PastedList
          plan={plan}
          onKeep={(kept, change) => {
            editor.change(kept, change);
            close();
          }}
          onClose={close}
        />
      )}
      {sheet.is === 'new' && (
        <PourSheet
          key={sheet.count}
          plan={plan}
          pour={{ id: newPourId(), drink: plan.drink, name: '' }}
          isNew
          onDone={(pour, another) => {
            editor.edit((now) => addPours(now, [pour]));
            setSheet(
              another && plan.pours.length + 1 < limits.pours
                ? { is: 'new', count: sheet.count + 1 }
                : { is: 'closed' },
            );
          }}
          onClose={close}
        />
      )}
      {opened !== undefined && <OpenedPour key={opened.id} editor={editor} pour={opened} onClose={close} />}
    </>
  );
}

/** What all pours are, at once: a list that was read for another drink is set right with one tap. */
function DrinkOfAll({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.pours;
  const [first, ...others] = new Set(plan.pours.map(({ drink }) => drink));
  const drink = others.length === 0 ? first : undefined;
  return (
    <Fold title={said.drink} summary={drink === undefined ? said.mixed : words.drinksOf[drink]}>
      <Choice
        legend={said.drinkOfAll}
        options={optionsOf(drinks, words.drinksOf)}
        value={drink}
        onChoose={(chosen) =>
          editor.change(
            said.allAre(words.drinksOf[chosen]),
            (now) => allOf(now, chosen),
            (now) => drinksAsBefore(now, plan),
          )
        }
        across
      />
    </Fold>
  );
}

interface OpenedPourProps {
  readonly editor: PlanEditor;
  readonly pour: Pour;
  readonly onClose: () => void;
}

function OpenedPour({ editor, pour, onClose }: OpenedPourProps) {
  const plan = editor.draft.plan.value;
  const said = words.pours;
  return (
    <PourSheet
      plan={plan}
      pour={pour}
      onChange={(changed) => editor.edit((now) => replacePour(now, changed))}
      onRemove={() => {
        const place = placeOf(plan, pour.id);
        editor.change(
          said.removed(pour.name),
          (now) => removePour(now, pour.id),
          // An odd-one-out of this pour went with it and comes back with it.
          (now) => ({ ...insertPour(now, pour, place), trials: plan.trials }),
        );
        onClose();
      }}
      onDuplicate={
        plan.pours.length >= limits.pours
          ? undefined
          : () => {
              const copy = { ...pour, id: newPourId() };
              const place = placeOf(plan, pour.id);
              editor.change(
                said.duplicated(pour.name),
                (now) => insertPour(now, copy, { ...place, position: place.position + 1, alone: false }),
                (now) => removePour(now, copy.id),
              );
              onClose();
            }
      }
      onSwapped={(swapped) =>
        editor.change(
          said.swapped(pour.name),
          (now) => replacePour(now, swapped),
          (now) => replacePour(now, pour),
        )
      }
      onClose={onClose}
    />
  );
}
