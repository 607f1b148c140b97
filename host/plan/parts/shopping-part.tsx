import { useState } from 'preact/hooks';
import type { KitVial } from '../../../core/planning/shopping/remote-kit.ts';
import type { TableSupplies } from '../../../core/planning/shopping/table-supplies.ts';
import type { Plan, Pour } from '../../../core/tasting.ts';
import { volumeUnits } from '../../../shared/language/en/volumes.ts';
import { Choice, optionsOf } from '../../../shared/ui/choice.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { money } from '../../numbers.ts';
import { Fold } from '../fields/fold.tsx';
import { ReckoningSteps } from '../fields/reckoning-steps.tsx';
import { type BottleLine, type ShoppingFigures, shoppingFor } from '../figures/shopping.ts';
import type { PlanEditor } from '../plan-editor.ts';
import { volume } from '../volume.ts';
import { words } from '../words.ts';

const supplyNames: readonly Exclude<keyof TableSupplies, 'reckoning'>[] = [
  'tastingGlasses',
  'lids',
  'waterGlasses',
  'water',
  'spitCups',
  'napkins',
  'droppers',
  'noteSheets',
];

export function ShoppingPart({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.figures.shopping;
  const [washed, setWashed] = useState(false);
  const figures = shoppingFor(plan, washed);
  const guests = plan.guests + plan.remoteGuests;
  if (plan.pours.length === 0) {
    return (
      <>
        <p class="soft">{said.none}</p>
        <Units editor={editor} />
      </>
    );
  }
  return (
    <>
      <section class="plan-group" aria-label={said.bottles}>
        <h3>{said.bottles}</h3>
        <p class="soft">{guests === 0 ? said.nobody : said.people(guests)}</p>
        <ul class="shopping">
          {figures.bottles.map((line) => (
            <Bottles key={line.pour.id} line={line} plan={plan} />
          ))}
        </ul>
      </section>
      <Cost plan={plan} figures={figures} />
      <section class="plan-group" aria-label={said.table}>
        <h3>{said.table}</h3>
        <Switch label={said.washed} on={washed} onTurn={setWashed} />
        <ul class="shopping">
          {supplyNames
            .filter((name) => figures.supplies[name] > 0)
            .map((name) => (
              <li key={name}>
                <p class="shopping-line">
                  <span>{said.supplies[name]}</span>
                  <strong class="figures">
                    {name === 'water'
                      ? volume(figures.supplies[name], plan.volumeUnit)
                      : figures.supplies[name]}
                  </strong>
                </p>
                <ReckoningSteps
                  of={said.supplies[name]}
                  steps={figures.supplies.reckoning[name]}
                  plan={plan}
                />
              </li>
            ))}
        </ul>
      </section>
      {plan.remoteGuests > 0 && <Kits plan={plan} figures={figures} />}
      <Units editor={editor} />
    </>
  );
}

interface OfPlan {
  readonly plan: Plan;
  readonly figures: ShoppingFigures;
}

function Bottles({ line, plan }: { readonly line: BottleLine; readonly plan: Plan }) {
  const { pour, bottle, assumed, order } = line;
  const said = words.figures.shopping;
  const size = volume(bottle, plan.volumeUnit);
  if (order.kind === 'bottle-below-pour') {
    return (
      <li>
        <p>{pour.name}</p>
        <p class="field-error">{said.tooSmall(size, volume(order.pour, plan.volumeUnit))}</p>
      </li>
    );
  }
  return (
    <li>
      <p class="shopping-line">
        <span>{pour.name}</span>
        <strong class="figures">{said.bottleLine(order.bottles, size)}</strong>
      </p>
      <p class="small soft">
        {said.perBottle(order.fullPoursPerBottle, volume(order.leftOver, plan.volumeUnit))}
        {assumed && ` · ${said.assumed}`}
      </p>
      <ReckoningSteps of={pour.name} steps={order.reckoning} plan={plan} />
    </li>
  );
}

function Cost({ plan, figures }: OfPlan) {
  const { cost, unpriced, uncounted } = figures;
  const said = words.figures.shopping;
  const names = (pours: readonly Pour[]): string => pours.map(({ name }) => name).join(', ');
  return (
    <section class="plan-group" aria-label={said.cost}>
      <h3>{said.cost}</h3>
      {cost.total === 0 && unpriced.length > 0 ? (
        <p class="soft">{said.noPrices}</p>
      ) : (
        <>
          <p class="lead figures">
            {cost.kind === 'seat-cost'
              ? `${said.perSeat(money(cost.perSeat, plan.currency))}, ${said.total(money(cost.total, plan.currency))}`
              : said.total(money(cost.total, plan.currency))}
          </p>
          {cost.kind === 'no-seats' && <p class="soft">{said.noSeats}</p>}
          {unpriced.length > 0 && <p class="soft">{said.unpriced(names(unpriced))}</p>}
          {cost.kind === 'seat-cost' && <ReckoningSteps of={said.cost} steps={cost.reckoning} plan={plan} />}
        </>
      )}
      {uncounted.length > 0 && <p class="field-error">{said.uncounted(names(uncounted))}</p>}
    </section>
  );
}

function Kits({ plan, figures: { kit, vialsOf } }: OfPlan) {
  const said = words.figures.shopping;
  return (
    <section class="plan-group" aria-label={said.kits}>
      <h3>{said.kits}</h3>
      <p>{said.vials(kit.total)}</p>
      <ul class="lines">
        {kit.vials.map((vial, index) => (
          <li key={index}>
            <span>
              {index < plan.pours.length
                ? vialsOf[index]?.name
                : words.figures.strength.inTrial(vialsOf[index]?.name ?? '')}
            </span>
            <span class="soft figures">{vialWords(vial, plan)}</span>
          </li>
        ))}
      </ul>
      <ReckoningSteps of={said.kits} steps={kit.reckoning} plan={plan} />
    </section>
  );
}

function vialWords(vial: KitVial, plan: Plan): string {
  const said = words.figures.shopping;
  switch (vial.kind) {
    case 'vial':
      return said.vialLine(vial.count, volume(vial.size, plan.volumeUnit));
    case 'no-vial-large-enough':
      return said.noVial(volume(vial.pour, plan.volumeUnit));
    default:
      return vial satisfies never;
  }
}

const units = ['ml', 'fl-oz-us', 'fl-oz-imperial'] as const;

function Units({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.figures.shopping;
  const [currency, setCurrency] = useState(plan.currency);
  const right = /^[A-Za-z]{3}$/.test(currency.trim());
  return (
    <Fold title={said.units} summary={`${volumeUnits[plan.volumeUnit]} · ${plan.currency}`} small>
      <Choice
        legend={said.units}
        options={optionsOf(units, said.unitChoices)}
        value={plan.volumeUnit}
        onChoose={(volumeUnit) => editor.edit((now) => ({ ...now, volumeUnit }))}
        across
      />
      <TextField
        label={said.currency}
        hint={said.currencyHint}
        value={currency}
        maxLength={3}
        autocomplete="off"
        error={right ? undefined : said.currencyWrong}
        onInput={(typed) => {
          setCurrency(typed);
          const code = typed.trim().toUpperCase();
          if (/^[A-Z]{3}$/.test(code)) editor.edit((now) => ({ ...now, currency: code }));
        }}
      />
    </Fold>
  );
}
