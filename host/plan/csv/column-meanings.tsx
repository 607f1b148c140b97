import { type Meaning, meanings } from '../../../core/planning/pour-list/meanings.ts';
import type { PourList } from '../../../core/planning/pour-list/pour-list.ts';
import { Switch } from '../../../shared/ui/switch.tsx';
import { Fold } from '../fields/fold.tsx';
import { SelectField } from '../fields/select-field.tsx';
import { words } from '../words.ts';
import { columnName } from './row-words.ts';

interface ColumnMeaningsProps {
  readonly list: PourList;
  readonly open: boolean;
  readonly onHeaded: (headed: boolean) => void;
  readonly onMeaning: (column: number, meaning: Meaning | 'skip') => void;
}

const hidden: readonly Meaning[] = ['front-photo', 'back-photo', 'id'];

/** What each column is taken for; any of it can be set right. */
export function ColumnMeanings({ list, open, onHeaded, onMeaning }: ColumnMeaningsProps) {
  const said = words.list;
  const options = [
    { value: 'skip', label: said.skip },
    ...meanings
      .filter((meaning) => !hidden.includes(meaning))
      .map((meaning) => ({ value: meaning, label: said.meanings[meaning] })),
  ];
  return (
    <Fold title={said.columns} open={open} small>
      <Switch label={said.headed} on={list.headed} onTurn={onHeaded} />
      <div class="plan-pair">
        {list.columns
          .filter(({ meaning }) => meaning === undefined || !hidden.includes(meaning))
          .map((column) => (
            <SelectField
              key={column.index}
              label={list.headed ? columnName(column, column.index) : said.column(column.index + 1)}
              hint={column.doubled ? said.doubled : undefined}
              value={column.meaning ?? 'skip'}
              options={options}
              onChoose={(value) => onMeaning(column.index, meanings.find((each) => each === value) ?? 'skip')}
            />
          ))}
      </div>
    </Fold>
  );
}
