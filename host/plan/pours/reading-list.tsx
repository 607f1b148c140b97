import { useState } from 'preact/hooks';
import { limits } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { LinkField } from '../fields/link-field.tsx';
import { words } from '../words.ts';
import type { PourFields } from './drink-facts.tsx';

interface Row {
  /** Counts the rows as they were added, so that each keeps its fields. */
  readonly id: number;
  readonly title: string;
  readonly link: string | undefined;
}

const mostRows = 5;

/** What guests may read at home about a pour. A row reaches the plan once it has both its halves. */
export function ReadingList({ pour, set }: PourFields) {
  const [rows, setRows] = useState<readonly Row[]>(() =>
    (pour.reading ?? []).map(({ title, link }, id) => ({ id, title, link })),
  );
  const said = words.pour.reading;
  const keep = (next: readonly Row[]): void => {
    setRows(next);
    const whole = next.flatMap(({ title, link }) =>
      title.trim() === '' || link === undefined ? [] : [{ title: title.trim(), link }],
    );
    set('reading', whole.length === 0 ? undefined : whole);
  };
  const change = (id: number, changes: Partial<Row>): void =>
    keep(rows.map((row) => (row.id === id ? { ...row, ...changes } : row)));
  return (
    <fieldset class="stack">
      <legend class="field-label">{said.title}</legend>
      <p class="field-hint">{said.hint}</p>
      {rows.map(({ id, title, link }, index) => (
        <div class="plan-pair" key={id}>
          <TextField
            label={said.of(index + 1)}
            value={title}
            maxLength={limits.line}
            hint={(title.trim() === '') !== (link === undefined) ? said.half : undefined}
            onInput={(typed) => change(id, { title: typed })}
          />
          <LinkField
            label={said.link(index + 1)}
            value={link}
            onLink={(address) => change(id, { link: address })}
          />
          <Button kind="quiet" onPress={() => keep(rows.filter((row) => row.id !== id))}>
            {said.remove(index + 1)}
          </Button>
        </div>
      ))}
      {rows.length < mostRows && (
        <Button
          onPress={() => {
            const id = Math.max(-1, ...rows.map((row) => row.id)) + 1;
            setRows([...rows, { id, title: '', link: undefined }]);
          }}
        >
          {said.add}
        </Button>
      )}
    </fieldset>
  );
}
