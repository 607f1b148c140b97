import { Button } from '../../../shared/ui/button.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import { withCodes } from '../drawn-codes.ts';
import { cryptoRandom, type PlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';
import { GuessChoice } from './guess-choice.tsx';
import { OwnOrders } from './own-orders.tsx';

export function BlindChoice({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.pours;
  return (
    <div class="plan-group">
      <Switch
        label={said.blind}
        hint={said.blindHint}
        on={plan.blind}
        onTurn={(blind) => editor.edit((now) => ({ ...now, blind, ownOrders: blind && now.ownOrders }))}
      />
      {plan.blind && (
        <>
          <Switch
            label={said.ownOrders}
            hint={said.ownOrdersHint}
            on={plan.ownOrders}
            onTurn={(ownOrders) => editor.edit((now) => ({ ...now, ownOrders }))}
          />
          {plan.ownOrders && <OwnOrders editor={editor} />}
          <GuessChoice editor={editor} />
          <div>
            <Button
              onPress={() => {
                const before = plan.codes;
                editor.change(
                  said.codesDrawn,
                  (now) => withCodes({ ...now, codes: {} }, cryptoRandom),
                  (now) => withCodes({ ...now, codes: before }, cryptoRandom),
                );
              }}
            >
              {said.drawCodes}
            </Button>
          </div>
        </>
      )}
    </div>
  );
}
