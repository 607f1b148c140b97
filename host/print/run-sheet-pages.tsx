import { useSignal } from '@preact/signals';
import { Fragment } from 'preact';
import { useMemo } from 'preact/hooks';
import { serviceTemperatureOf } from '../../core/drinks/service-temperature.ts';
import { pourOf } from '../../core/running-order/cue.ts';
import type { Plan } from '../../core/tasting.ts';
import { say } from '../../shared/language/en/host-script.ts';
import { paperWords } from '../../shared/language/en/paper.ts';
import { serveAt } from '../../shared/language/en/temperature.ts';
import { sayOf } from '../../shared/language/host-script.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { PrintPage } from '../../shared/ui/print-page.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import { verbOf } from '../evening/cue-words.ts';
import { allergensOnPaper } from './allergens-on-paper.ts';
import { labelOf } from './mat-sheets.ts';
import { RunCards } from './run-cards.tsx';
import { type RunBlock, type RunRow, runSheet } from './run-sheet.ts';
import { runningHead } from './running-head.ts';
import type { SheetProps } from './sheet-props.ts';

const words = paperWords.runSheet;

/** The evening on paper for the host's hand: when, what, how long, and what to say. */
export function RunSheetPages({ evening }: SheetProps) {
  const { plan } = evening.stored;
  const withSay = useSignal(true);
  const withStory = useSignal(true);
  const sheet = useMemo(() => runSheet(plan), [plan]);
  return (
    <>
      <div class="paper-settings screen-only">
        <Switch label={words.say} hint={words.sayHint} on={withSay.value} onTurn={setterOf(withSay)} />
        <Switch
          label={words.story}
          hint={words.storyHint}
          on={withStory.value}
          onTurn={setterOf(withStory)}
        />
      </div>
      <div class="paper-flow">
        <PrintPage title={paperWords.kinds['run-sheet']} running={runningHead(plan)} foot={words.care}>
          <p class="soft">
            {plan.blind && <strong>{words.eyes} </strong>}
            {!sheet.dated && `${words.fromDoors} `}
            {words.ends(sheet.ends)}
          </p>
          <table class="run">
            <thead class="run-columns">
              <tr>
                <th>{words.columns.at}</th>
                <th>{words.columns.lasts}</th>
                <th>{words.columns.what}</th>
                {withSay.value && <th>{words.columns.say}</th>}
              </tr>
            </thead>
            {sheet.blocks.map((block) => (
              <Block
                key={block.rows[0]?.cue.id}
                plan={plan}
                block={block}
                withSay={withSay.value}
                withStory={withStory.value}
              />
            ))}
          </table>
        </PrintPage>
      </div>
    </>
  );
}

interface BlockProps {
  readonly plan: Plan;
  readonly block: RunBlock;
  readonly withSay: boolean;
  readonly withStory: boolean;
}

function Block({ plan, block, withSay, withStory }: BlockProps) {
  const { pour, position, practice, rows } = block;
  const range = pour && serviceTemperatureOf(pour);
  const heading =
    pour === null
      ? practice
        ? words.practice
        : undefined
      : [
          paperWords.glass(position),
          ...(plan.blind && labelOf(plan, pour) !== String(position) ? [labelOf(plan, pour)] : []),
          pour.name,
          ...(pour.producer === undefined ? [] : [pour.producer]),
          ...(pour.abv === undefined ? [] : [paperWords.labels.strength(pour.abv)]),
          ...(range === null ? [] : [serveAt(range)]),
          allergensOnPaper(plan, pour.id, true),
        ]
          .filter((part) => part !== '')
          .join(' · ');
  return (
    <tbody>
      {heading !== undefined && (
        <tr class="run-heading">
          <th colSpan={withSay ? 4 : 3} scope="rowgroup">
            {heading}
          </th>
        </tr>
      )}
      {rows.map((row) => (
        <Fragment key={row.cue.id}>
          <Row plan={plan} row={row} position={position} withSay={withSay} />
          {withStory && <RunCards plan={plan} cue={row.cue} columns={withSay ? 4 : 3} />}
        </Fragment>
      ))}
    </tbody>
  );
}

function Row({
  plan,
  row,
  position,
  withSay,
}: Omit<BlockProps, 'block' | 'withStory'> & { row: RunRow; position: number }) {
  const { cue, at } = row;
  const glass = pourOf(cue);
  const drink = plan.pours.find(({ id }) => id === glass)?.drink ?? plan.drink;
  const known = position > 1 && cue.kind !== 'water' && cue.say === undefined;
  return (
    <tr class={cue.gate ? 'run-gate' : undefined}>
      <td class="figures">{at}</td>
      <td class="figures">{words.seconds(cue.ideal)}</td>
      <td>
        {verbOf(cue)}
        {cue.gate && <span class="run-waits">{words.gate}</span>}
      </td>
      {withSay && (
        <td class="run-say">
          {known
            ? ''
            : sayOf(say, cue, {
                drink,
                level: plan.level,
                glass: Math.max(1, position),
                silent: true,
                named: plan.blind && plan.rankNamed,
              })}
        </td>
      )}
    </tr>
  );
}
