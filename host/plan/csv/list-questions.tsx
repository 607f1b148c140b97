import { drinks } from '../../../core/drinks/drink-kinds.ts';
import type { ForeignMoney } from '../../../core/planning/pour-list/cell-reading.ts';
import type { PourList } from '../../../core/planning/pour-list/pour-list.ts';
import type { Drink, Plan } from '../../../core/tasting.ts';
import { Choice, optionsOf } from '../../../shared/ui/choice.tsx';
import { NumberField } from '../fields/number-field.tsx';
import { words } from '../words.ts';

type Money = Readonly<Record<string, ForeignMoney>>;

interface ListQuestionsProps {
  readonly list: PourList;
  readonly plan: Pick<Plan, 'currency'>;
  readonly money: Money;
  readonly onDrink: (drink: Drink) => void;
  readonly onMoney: (money: Money) => void;
}

/** What is asked of the list as a whole: what its pours are, and once for each other currency what its prices become. */
export function ListQuestions({ list, plan, money, onDrink, onMoney }: ListQuestionsProps) {
  const said = words.list;
  return (
    <>
      <Choice
        legend={said.are}
        options={optionsOf(drinks, words.drinksOf)}
        value={list.drink}
        onChoose={onDrink}
        across
      />
      {list.currencies.map((currency) => (
        <OtherCurrency
          key={currency}
          from={currency}
          to={plan.currency}
          chosen={money[currency]}
          onChoose={(chosen) => onMoney({ ...money, [currency]: chosen })}
        />
      ))}
    </>
  );
}

const ways = ['convert', 'take', 'leave'] as const;

interface OtherCurrencyProps {
  readonly from: string;
  readonly to: string;
  readonly chosen: ForeignMoney | undefined;
  readonly onChoose: (chosen: ForeignMoney) => void;
}

function OtherCurrency({ from, to, chosen, onChoose }: OtherCurrencyProps) {
  const said = words.list.money;
  return (
    <div class="plan-group">
      <Choice
        legend={said.asked(from, to)}
        options={optionsOf(ways, said.ways)}
        value={chosen?.how}
        onChoose={(how) => onChoose(how === 'convert' ? { how, rate: undefined } : { how })}
        across
      />
      {chosen?.how === 'convert' && (
        <NumberField
          label={said.rate(from, to)}
          value={chosen.rate}
          least={0.000001}
          most={1_000_000}
          optional
          wrong={said.rateWrong}
          onNumber={(rate) => onChoose({ how: 'convert', rate })}
        />
      )}
    </div>
  );
}
