import { POINT } from '../../../core/planning/order/carry-over.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { review } from '../../../shared/ui/strokes.ts';
import { number } from '../../numbers.ts';
import { Fold } from '../fields/fold.tsx';
import { missingOf, type OrderFigures, putInOrder } from '../figures/order.ts';
import type { PlanEditor } from '../plan-editor.ts';
import { orderBy } from '../pour-edits.ts';
import { words } from '../words.ts';

interface OrderWordsProps {
  readonly editor: PlanEditor;
  readonly figures: OrderFigures;
}

/** What the order costs beside the best one, and the way there. */
export function OrderBar({ editor, figures }: OrderWordsProps) {
  const plan = editor.draft.plan.value;
  const { now, best } = figures;
  if (plan.pours.length < 2) return <p class="soft">{words.cost.none}</p>;
  const isBest = now.cost === best.cost;
  const points = (cost: number) => number(cost / POINT, 1);

  const order = (): void => {
    const before = plan;
    const ordered = putInOrder(plan);
    const same = ordered.pours.every((pour, index) => pour.id === plan.pours[index]?.id);
    if (same) {
      editor.status.say(words.cost.already);
      return;
    }
    editor.change(words.cost.inOrder, putInOrder, (later) => ({
      ...orderBy(
        later,
        before.pours.map(({ id }) => id),
      ),
      flightSizes: before.flightSizes,
    }));
  };
  return (
    <div class="order-bar">
      <p>
        {isBest
          ? `${words.cost.best} ${words.cost.bestCost(points(now.cost))}`
          : words.cost.more(points(now.cost), points(best.cost))}
      </p>
      <Button kind={isBest ? 'plain' : 'primary'} onPress={order}>
        <Icon of={review} />
        {words.cost.putInOrder}
      </Button>
    </div>
  );
}

/** What the order leaves to bear, and which facts would make it surer. */
export function OrderDetails({ editor, figures }: OrderWordsProps) {
  const plan = editor.draft.plan.value;
  const { now } = figures;
  if (plan.pours.length < 2) return null;
  const name = (id: string) => plan.pours.find((pour) => pour.id === id)?.name ?? id;
  return (
    <div class="plan-group">
      {now.risks.length > 0 && (
        <Fold title={words.risks.title} summary={String(now.risks.length)} small>
          <ul class="lines">
            {now.risks.map((risk) => (
              <li key={`${risk.code} ${risk.earlier} ${risk.later}`}>
                <span>
                  {words.risks.risk(risk.axis, name(risk.earlier), name(risk.later))}
                  {risk.assumed && ` (${words.risks.assumed})`}
                </span>
                <span class="soft">{words.risks.remedies[risk.remedy]}</span>
              </li>
            ))}
          </ul>
        </Fold>
      )}
      {now.missing.length > 0 && (
        <Fold
          title={words.missing.title}
          summary={String(new Set(now.missing.map(({ pour }) => pour)).size)}
          small
        >
          <ul class="lines">
            {[...new Set(now.missing.map(({ pour }) => pour))].map((id) => (
              <li key={id}>
                <span>{name(id)}</span>
                <span class="soft">{missingOf(now, id)}</span>
              </li>
            ))}
          </ul>
        </Fold>
      )}
      <Fold title={words.cost.explain} small>
        <p class="small">{words.cost.explained}</p>
      </Fold>
    </div>
  );
}
