import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type ForeignMoney, saidOf } from '../../../core/planning/pour-list/cell-reading.ts';
import type { Meaning } from '../../../core/planning/pour-list/meanings.ts';
import { pourFromRow, readPourList, rowIsTotal } from '../../../core/planning/pour-list/pour-list.ts';
import { type Drink, limits, type Plan, type Pour } from '../../../core/tasting.ts';
import { listVocabulary } from '../../../shared/list-words/vocabulary.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { Switch } from '../../../shared/ui/switch.tsx';
import { TextArea } from '../../../shared/ui/text-area.tsx';
import { minorDigits } from '../../numbers.ts';
import { addPours } from '../pour-edits.ts';
import { newPourId } from '../pours/new-pour-id.ts';
import { words } from '../words.ts';
import { ColumnMeanings } from './column-meanings.tsx';
import { decodeFile } from './decode-file.ts';
import { ListQuestions } from './list-questions.tsx';
import { ListRows } from './list-rows.tsx';
import { mostLines, parseList } from './parse-list.ts';
import { leftOverNote, rowIsNamed } from './row-words.ts';

export interface ListSheetProps {
  readonly plan: Plan;
  /** The host wants them kept: `said` tells how many, `change` puts them into the plan. */
  readonly onKeep: (said: string, change: (plan: Plan) => Plan) => void;
  /** What is kept is on its way. */
  readonly busy?: boolean | undefined;
  readonly onClose: () => void;
}

/** Pours from a pasted list or a file: read, shown, corrected, and only then kept. */
export function ListSheet({ plan, onKeep, busy = false, onClose }: ListSheetProps) {
  const said = words.list;
  const [text, setText] = useState('');
  const [reading, setReading] = useState(false);
  const [refusal, setRefusal] = useState<string | undefined>();
  const [headed, setHeaded] = useState<boolean | undefined>();
  const [columns, setColumns] = useState<Readonly<Record<number, Meaning | 'skip'>>>({});
  /** By line and column, the cells that the host has corrected. */
  const [corrected, setCorrected] = useState<ReadonlyMap<string, string>>(new Map());
  /** Lines left out; until the host has chosen, those for which there is no room. */
  const [chosenLeft, setLeft] = useState<ReadonlySet<number> | undefined>();
  const [replace, setReplace] = useState(false);
  const [drink, setDrink] = useState<Drink | undefined>();
  const [money, setMoney] = useState<Readonly<Record<string, ForeignMoney>>>({});
  const file = useRef<HTMLInputElement>(null);
  const preview = useRef<HTMLDivElement>(null);
  // What was read begins at the top, wherever the pasted text had been scrolled to.
  useLayoutEffect(() => {
    if (reading) preview.current?.closest('dialog')?.scrollTo(0, 0);
  }, [reading]);

  const parsed = useMemo(() => parseList(text), [text]);
  const list = useMemo(() => {
    const lines = parsed.lines.map(({ line, cells }) => {
      const last = Math.max(
        cells.length - 1,
        ...[...corrected.keys()]
          .filter((key) => key.startsWith(`${line}:`))
          .map((key) => Number(key.split(':')[1])),
      );
      return {
        line,
        cells: Array.from(
          { length: last + 1 },
          (_, column) => corrected.get(`${line}:${column}`) ?? cells[column] ?? '',
        ),
      };
    });
    return readPourList(lines, {
      words: listVocabulary,
      drink: plan.drink,
      currency: plan.currency,
      digits: minorDigits(plan.currency),
      ounce: plan.volumeUnit === 'fl-oz-imperial' ? 'imperial' : 'us',
      headed,
      columns,
      pours: drink,
      money,
    });
  }, [parsed, corrected, headed, columns, drink, money, plan.drink, plan.currency, plan.volumeUnit]);

  const room = limits.pours - (replace ? 0 : plan.pours.length);
  const named = list.rows.filter(rowIsNamed);
  const totals = list.rows.filter(rowIsTotal);
  const tooMany = named.filter((row) => !rowIsTotal(row)).slice(Math.max(0, room));
  const left = chosenLeft ?? new Set([...totals, ...tooMany].map(({ line }) => line));
  const taken = named.filter((row) => !left.has(row.line));
  const unasked = list.currencies.filter((currency) => saidOf(money[currency]) === undefined);
  const fits = taken.length > 0 && taken.length <= room && unasked.length === 0;

  const take = (chosen: string): void => {
    setText(chosen);
    setRefusal(undefined);
    setHeaded(undefined);
    setColumns({});
    setCorrected(new Map());
    setLeft(undefined);
    setDrink(undefined);
    setMoney({});
    setReading(true);
  };
  const open = async (chosen: File | undefined): Promise<void> => {
    if (chosen === undefined) return;
    const decoded = decodeFile(new Uint8Array(await chosen.arrayBuffer()));
    switch (decoded.is) {
      case 'text':
        return take(decoded.text);
      case 'workbook':
        return setRefusal(said.workbook);
      case 'not-text':
        return setRefusal(said.notText);
      case 'too-large':
        return setRefusal(said.tooLarge);
      default:
        return decoded satisfies never;
    }
  };
  const keep = (): void => {
    const used = new Set(replace ? [] : plan.pours.map(({ id }) => String(id)));
    const pours = taken.flatMap((row): Pour[] => {
      const own = row.facts.get('id');
      const id = plan.pours.find((pour) => pour.id === own && !used.has(pour.id))?.id ?? newPourId();
      used.add(id);
      const pour = pourFromRow(row, id, list.drink, leftOverNote(row, list.columns));
      return pour === undefined ? [] : [pour];
    });
    const alike = pours.every((pour) => pour.drink === pours[0]?.drink) ? pours[0]?.drink : undefined;
    onKeep(said.kept(pours.length), (now) => {
      const base = replace ? { ...now, pours: [], flightSizes: [] } : now;
      const added = addPours(base, pours);
      return base.pours.length === 0 && alike !== undefined ? { ...added, drink: alike } : added;
    });
  };
  const bad = list.rows.filter(({ problems }) => problems.length > 0).length;

  const actions = (
    <>
      <Button kind="quiet" onPress={onClose}>
        {words.notNow}
      </Button>
      {reading ? (
        <>
          <Button onPress={() => setReading(false)}>{said.again}</Button>
          <Button kind="primary" disabled={!fits} busy={busy} onPress={keep}>
            {said.keep(taken.length)}
          </Button>
        </>
      ) : (
        <Button kind="primary" disabled={text.trim() === ''} onPress={() => take(text)}>
          {said.read}
        </Button>
      )}
    </>
  );
  return (
    <Dialog title={said.title} onClose={onClose} actions={actions}>
      {!reading && (
        <>
          <p class="soft">{said.lead}</p>
          <div class="list-paste">
            <TextArea label={said.paste} hint={said.pasteHint} value={text} rows={6} onInput={setText} />
          </div>
          <div>
            <input
              ref={file}
              class="visually-hidden"
              type="file"
              accept=".csv,.tsv,.txt,text/csv,text/plain"
              aria-label={said.file}
              tabIndex={-1}
              onChange={(event) => {
                void open(event.currentTarget.files?.[0]);
                event.currentTarget.value = '';
              }}
            />
            <Button onPress={() => file.current?.click()}>{said.file}</Button>
          </div>
          {refusal && (
            <p class="field-error" role="alert">
              {refusal}
            </p>
          )}
        </>
      )}
      {reading && list.rows.length === 0 && <p>{said.nothing}</p>}
      {reading && list.rows.length > 0 && (
        <div class="list-preview" ref={preview}>
          <p class="lead">{said.found(list.rows.length - totals.length, bad)}</p>
          {parsed.cut && <p class="field-error">{said.cut(mostLines)}</p>}
          {!list.columns.some(({ meaning }) => meaning === 'name') && (
            <p class="field-error">{said.noName}</p>
          )}
          <ColumnMeanings
            list={list}
            open={!list.columns.some(({ meaning }) => meaning === 'name')}
            onHeaded={setHeaded}
            onMeaning={(column, meaning) => setColumns({ ...columns, [column]: meaning })}
          />
          <ListQuestions list={list} plan={plan} money={money} onDrink={setDrink} onMoney={setMoney} />
          {(taken.length > room || list.rows.length > room) && (
            <p class={taken.length > room ? 'field-error' : 'soft'}>
              {said.room(taken.length, Math.max(0, room))}
            </p>
          )}
          <ListRows
            list={list}
            currency={plan.currency}
            left={left}
            onLeave={(line, leave) => {
              const next = new Set(left);
              if (leave) next.add(line);
              else next.delete(line);
              setLeft(next);
            }}
            onCorrect={(line, column, cell) =>
              setCorrected(new Map(corrected).set(`${line}:${column}`, cell))
            }
            original={parsed.lines}
          />
          {list.rows.some((row) => leftOverNote(row, list.columns) !== '') && (
            <p class="small soft">{said.asides}</p>
          )}
          {plan.pours.length > 0 && <Switch label={said.replace} on={replace} onTurn={setReplace} />}
        </div>
      )}
    </Dialog>
  );
}
