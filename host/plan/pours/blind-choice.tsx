import { Button } from '../../../shared/ui/button.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import { cryptoRandom, type Desk } from '../plan-editor.ts';
import { words } from '../words.ts';
import { withCodes } from './drawn-codes.ts';
import { OwnOrders } from './own-orders.tsx';

export function BlindChoice({ desk }: { readonly desk: Desk }) {
  const plan = desk.draft.plan.value;
  const said = words.pours;
  return (
    <div class="plan-group">
      <Switch
        label={said.blind}
        hint={said.blindHint}
        on={plan.blind}
        onTurn={(blind) => desk.edit((now) => ({ ...now, blind, ownOrders: blind && now.ownOrders }))}
      />
      {plan.blind && (
        <>
          <Switch
            label={said.ownOrders}
            hint={said.ownOrdersHint}
            on={plan.ownOrders}
            onTurn={(ownOrders) => desk.edit((now) => ({ ...now, ownOrders }))}
          />
          {plan.ownOrders && <OwnOrders desk={desk} />}
          <div>
            <Button
              onPress={() => {
                const before = plan.codes;
                desk.change(
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
