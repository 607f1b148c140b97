import { useEffect, useRef } from 'preact/hooks';
import {
  type Advice,
  changed,
  type RehearsalReport,
  type RehearsedPart,
} from '../../../core/running-order/rehearsal-report.ts';
import type { Plan } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { timeOfDay } from '../../language.ts';
import { Fold } from '../fields/fold.tsx';
import type { PlanEditor } from '../plan-editor.ts';
import { length, words } from '../words.ts';
import { EndBand } from './end-band.tsx';

interface ReportProps {
  readonly editor: PlanEditor;
  readonly report: RehearsalReport;
  /** The plan that was rehearsed. */
  readonly plan: Plan;
}

/** What a rehearsal has shown: how long, where the time runs short, and what would help. */
export function Report({ editor, report, plan }: ReportProps) {
  const said = words.rehearsal;
  const heading = useRef<HTMLHeadingElement>(null);
  // Whoever pressed the button and does not see the page is led to what came of it.
  useEffect(() => heading.current?.focus(), [report]);
  const starts = plan.startsAt === undefined ? undefined : Date.parse(plan.startsAt);
  const at = (seconds: number): string =>
    starts === undefined ? length(seconds) : timeOfDay(starts + seconds * 1000, plan.timeZone);
  const { early, late, likely } = report.length;
  const range = said.length(length(early), length(late), length(likely));
  return (
    <div class="rehearsal-report">
      <h4 class="lead figures" ref={heading} tabIndex={-1}>
        {range}
      </h4>
      <p class="figures">
        {starts !== undefined && `${said.ends(at(early), at(late), at(likely))} `}
        {said.planned(length(report.planned))}{' '}
        {starts === undefined
          ? said.inTimeWithin(inTen(report.inTime), length(report.wished))
          : said.inTime(inTen(report.inTime), at(report.wished))}
      </p>
      <p>{whereShort(report.parts)}</p>
      <Parts report={report} at={at} />
      <AdviceList advice={report.advice} editor={editor} />
      <Fold title={said.how} small>
        {said.method.map((paragraph) => (
          <p key={paragraph} class="small">
            {paragraph}
          </p>
        ))}
      </Fold>
    </div>
  );
}

const inTen = (share: number): string => words.rehearsal.inTen(Math.round(share * 10));

const nameOf = ({ part, flight }: RehearsedPart): string =>
  part === 'flight' ? words.rehearsal.parts.flight((flight ?? 0) + 1) : words.rehearsal.parts[part];

/** Only what a host would notice is worth a word. */
function whereShort(parts: readonly RehearsedPart[]): string {
  const [worst] = parts.toSorted((a, b) => b.overran - a.overran);
  const minutes = Math.round((worst?.overran ?? 0) / 60);
  return worst === undefined || minutes < 1
    ? words.rehearsal.nowhere
    : words.rehearsal.shortest(nameOf(worst), minutes);
}

interface PartsProps {
  readonly report: RehearsalReport;
  readonly at: (seconds: number) => string;
}

/** The table says in words all that the bands show. */
function Parts({ report, at }: PartsProps) {
  const said = words.rehearsal;
  const span = Math.max(...report.parts.map(({ planned, ended }) => Math.max(planned, ended.late)));
  return (
    <>
      <table class="rehearsal-parts">
        <caption class="visually-hidden">{said.table.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{said.table.part}</th>
            <th scope="col">{said.table.planned}</th>
            <th scope="col">{said.table.ended}</th>
            <th scope="col">{said.table.behind}</th>
          </tr>
        </thead>
        <tbody>
          {report.parts.map((part) => {
            const { early, likely, late } = part.ended;
            return (
              <tr key={`${part.part}-${part.flight}`}>
                <th scope="row">{nameOf(part)}</th>
                <td class="figures">{at(part.planned)}</td>
                <td class="figures">
                  {said.length(at(early), at(late), at(likely))}
                  <EndBand range={part.ended} planned={part.planned} span={span} />
                </td>
                <td class="figures">
                  {said.table.percent(Math.round(part.behind * 100))}
                  <span class="rehearsal-narrow"> {said.table.later}</span>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p class="small soft">{said.picture}</p>
    </>
  );
}

function AdviceList({ advice, editor }: { readonly advice: readonly Advice[]; readonly editor: PlanEditor }) {
  const said = words.rehearsal;
  if (advice.length === 0) return null;
  return (
    <>
      <h4>{said.advice}</h4>
      <ul class="rehearsal-advice">
        {advice.map(({ change, saves, inTime }) => (
          <li key={change}>
            <span>
              {said.changes[change]}
              <span class="small soft figures">
                {said.saves(Math.round(saves / 60))}; {said.inTimeThen(inTen(inTime))}
              </span>
            </span>
            <Button
              label={said.changeLabel(said.changes[change])}
              onPress={() => editor.change(said.made, (plan) => changed(plan, change) ?? plan)}
            >
              {said.change}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}
