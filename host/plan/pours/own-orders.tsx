import { redrawnOrders } from '../../../core/planning/serving/drawn-orders.ts';
import { glassesAt } from '../../../core/planning/serving/pouring-order.ts';
import { balanceOfSeats } from '../../../core/planning/serving/serving-orders.ts';
import { flightsOf, type Plan } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Fold } from '../fields/fold.tsx';
import { cryptoRandom, type PlanEditor } from '../plan-editor.ts';
import { words } from '../words.ts';

const seatsOf = (plan: Plan): number => plan.guests + plan.remoteGuests;

/** The drawn orders as a host lays them: which code stands where at which place, and how level that is. */
export function OwnOrders({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.orders;
  const seats = seatsOf(plan);
  return (
    <Fold title={said.title}>
      {seats === 0 ? (
        <p class="soft">{said.nobody}</p>
      ) : (
        <>
          <Balance plan={plan} />
          <OrderTable plan={plan} />
          <p class="soft small">{said.places}</p>
        </>
      )}
      <div>
        <Button
          onPress={() => {
            const before = plan.servingOrders;
            editor.change(
              said.drawn,
              (now) => redrawnOrders(now, cryptoRandom),
              (now) => ({ ...now, servingOrders: before }),
            );
          }}
        >
          {said.draw}
        </Button>
      </div>
    </Fold>
  );
}

function Balance({ plan }: { readonly plan: Plan }) {
  const said = words.orders;
  const seats = Array.from({ length: seatsOf(plan) }, (_, seat) => seat);
  const { flights, limits } = balanceOfSeats({ flights: plan.servingOrders }, seats);
  if (limits.length === 0) return <p>{said.level}</p>;
  return (
    <ul class="hints">
      {limits.map((limit) => {
        const { positionCountMin = 0, positionCountMax = 0 } = flights[limit.flight] ?? {};
        const sentence = said.limitSentence(limit, positionCountMin, positionCountMax);
        return <li key={sentence}>{sentence}</li>;
      })}
    </ul>
  );
}

/** A row for each place, a column for each flight: the codes as they stand from the first glass on. */
function OrderTable({ plan }: { readonly plan: Plan }) {
  const said = words.orders;
  const places = Array.from({ length: seatsOf(plan) }, (_, seat) => seat + 1);
  const codesAt = (place: number): string[] =>
    glassesAt(plan, place).flatMap((set) =>
      set.kind === 'flight' ? [set.pours.map((pour) => plan.codes[pour] ?? '').join(' ')] : [],
    );
  return (
    <div class="order-table">
      <table>
        <caption class="visually-hidden">{said.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{said.place}</th>
            {flightsOf(plan).map(({ index }) => (
              <th key={index} scope="col">
                {words.pours.flight(index + 1)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {places.map((place) => (
            <tr key={place}>
              <th scope="row">{place}</th>
              {codesAt(place).map((codes, flight) => (
                <td key={flight}>{codes}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
