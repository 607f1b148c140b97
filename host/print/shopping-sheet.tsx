import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Plan } from '../../core/tasting.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { PrintPage } from '../../shared/ui/print-page.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import { locale } from '../locale.ts';
import { type BottleLine, type ShoppingFigures, shoppingFor } from '../plan/figures/shopping.ts';
import { pourVolume } from '../plan/figures/strength.ts';
import { runningHead } from './running-head.ts';
import type { SheetProps } from './sheet-props.ts';
import { volumeText } from './volume.ts';

const words = paperWords.shopping;

/** Everything to get, with a box to tick. */
export function ShoppingSheet({ evening }: SheetProps) {
  const { plan } = evening.stored;
  const washed = useSignal(false);
  const list = shoppingFor(plan, washed.value);
  return (
    <>
      <div class="paper-settings screen-only">
        <Switch label={words.washed} hint={words.washedHint} on={washed.value} onTurn={setterOf(washed)} />
      </div>
      <div class="paper-flow">
        <PrintPage title={paperWords.kinds.shopping} running={runningHead(plan)} foot={words.care}>
          <h3>{words.drinks}</h3>
          <ul class="to-get">
            {list.bottles.map((line) => (
              <ToGet key={line.pour.id}>
                <Bottles plan={plan} line={line} />
              </ToGet>
            ))}
          </ul>
          <p class="small soft">
            {words.reckoned}
            {costOf(plan, list)}
          </p>
          <h3>{words.table}</h3>
          <ul class="to-get to-get-across">
            {tableItems(plan, list).map((item) => (
              <ToGet key={item}>{item}</ToGet>
            ))}
          </ul>
          {plan.remoteGuests > 0 && (
            <>
              <h3>{words.home}</h3>
              <ul class="to-get to-get-across">
                {homeItems(plan, list).map((item) => (
                  <ToGet key={item}>{item}</ToGet>
                ))}
              </ul>
              <p class="small">{paperWords.labels.shipping}</p>
            </>
          )}
          <h3>{words.paper}</h3>
          <ul class="to-get to-get-across">
            <ToGet>{words.mats(plan.guests)}</ToGet>
            <ToGet>{words.noteSheets(plan.guests * Math.ceil(plan.pours.length / 3))}</ToGet>
            {list.kit.total > 0 && <ToGet>{words.labels(list.kit.total)}</ToGet>}
          </ul>
        </PrintPage>
      </div>
    </>
  );
}

function ToGet({ children }: { readonly children: ComponentChildren }) {
  return (
    <li>
      <span class="to-get-box" aria-hidden="true" />
      <div>{children}</div>
    </li>
  );
}

function Bottles({ plan, line }: { readonly plan: Plan; readonly line: BottleLine }) {
  const { pour, bottle, assumed, order } = line;
  const size = volumeText(bottle, plan.volumeUnit);
  const each = volumeText(pourVolume(pour, plan), plan.volumeUnit);
  return (
    <>
      <strong>{pour.name}</strong>
      {pour.producer !== undefined && `, ${pour.producer}`}
      <br />
      {order.kind === 'bottles' ? (
        <>
          {words.bottles(order.bottles)} {words.ofSize(size)}
          {assumed && ` (${words.assumed})`}
          <span class="soft"> · {words.pours(order.poursNeeded, each)}</span>
        </>
      ) : (
        words.tooSmall(size, each)
      )}
    </>
  );
}

function tableItems(plan: Plan, { supplies }: ShoppingFigures): string[] {
  const { items } = words;
  return [
    items.tastingGlasses(supplies.tastingGlasses),
    ...(supplies.lids > 0 ? [items.lids(supplies.lids)] : []),
    items.waterGlasses(supplies.waterGlasses),
    items.water(volumeText(supplies.water, plan.volumeUnit)),
    items.spitCups(supplies.spitCups),
    items.napkins(supplies.napkins),
    ...(supplies.droppers > 0 ? [items.droppers(supplies.droppers)] : []),
    items.food,
  ];
}

/** Vials by size, and each pour that no usual vial holds. */
function homeItems(plan: Plan, { kit, vialsOf }: ShoppingFigures): string[] {
  const bySize = new Map<string, number>();
  for (const vial of kit.vials) {
    if (vial.kind !== 'vial') continue;
    const size = volumeText(vial.size, plan.volumeUnit);
    bySize.set(size, (bySize.get(size) ?? 0) + vial.count);
  }
  const tooLarge = kit.vials.flatMap((vial, index) =>
    vial.kind === 'no-vial-large-enough' ? words.noVial(vialsOf[index]?.name ?? '') : [],
  );
  return [...[...bySize].map(([size, count]) => words.vials(count, size)), ...tooLarge];
}

function costOf(plan: Plan, { cost, unpriced, uncounted }: ShoppingFigures): string {
  if (cost.kind !== 'seat-cost' || cost.total === 0) return '';
  const format = new Intl.NumberFormat(locale, {
    style: 'currency',
    currency: plan.currency,
  });
  const major = 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2);
  const sum = words.cost(format.format(cost.total / major), format.format(cost.perSeat / major));
  const without = [
    ...(unpriced.length > 0 ? [words.unpriced(unpriced.length)] : []),
    ...(uncounted.length > 0 ? [words.uncounted(uncounted.length)] : []),
  ];
  return ` ${[sum, ...without].join(', ')}.`;
}
