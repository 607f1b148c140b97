import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { chance, oneDecimal, percent } from './figures.ts';
import { Finding, limitsOf } from './finding.tsx';
import type { Names } from './names.ts';
import { Rows } from './pictures/rows.tsx';

interface TrialFindingProps {
  readonly trial: EveningRecap['trials'][number];
  readonly guests: number;
  readonly names: Names;
}

/** Could the room tell the two drinks apart? */
export function TrialFinding({ trial: { a, b, result }, guests, names }: TrialFindingProps) {
  const pair = words.trials.pair(names.pour(a), names.pour(b));
  const title = `${words.trials.title}: ${pair}`;
  if (result.outcome === 'none') {
    return <Finding title={title} said={words.trials.none} reckoned={limitsOf(result, guests)} />;
  }
  const { n, figures } = result;
  const { correct, critical, distinguishers } = figures;
  const { columns } = words.trials;
  return (
    <Finding
      title={title}
      said={words.trials.headline[result.meaning]}
      table={{
        caption: title,
        columns: [words.pour, columns.right, columns.wrong, columns.luck, columns.enough],
        rows: [
          [
            pair,
            String(correct),
            String(n - correct),
            oneDecimal(figures.expectedByGuessing),
            critical === null ? '–' : String(critical),
          ],
        ],
      }}
      reckoned={[
        words.methods[result.method],
        words.trials.p(chance(figures.p)),
        words.trials.share(
          percent(distinguishers.share),
          percent(distinguishers.lower),
          percent(distinguishers.upper),
        ),
        ...limitsOf(result, guests),
      ]}
    >
      <p>
        {words.trials.right(correct, n, oneDecimal(figures.expectedByGuessing))}{' '}
        {words.trials.critical(critical)}
      </p>
      <Rows
        rows={[
          {
            key: 'right',
            name: columns.right,
            label: words.trials.picture(correct, n, critical),
            figure: `${correct} / ${n}`,
            height: 40,
            drawing: <Picks correct={correct} n={n} critical={critical} />,
          },
        ]}
      />
    </Finding>
  );
}

function Picks({ correct, n, critical }: { correct: number; n: number; critical: number | null }) {
  const at = (count: number) => `${(count / n) * 100}%`;
  return (
    <>
      <rect class="drawn-ground" x="0" width="100%" y="14" height="18" />
      <rect class="drawn-bar" x="0" width={at(correct)} y="14" height="18" />
      {critical !== null && (
        <>
          <line class="drawn-median" x1={at(critical)} x2={at(critical)} y1="10" y2="38" />
          <text class="drawn-text" x={at(critical)} y="9" text-anchor={critical > n * 0.8 ? 'end' : 'middle'}>
            {words.trials.enough} {critical}
          </text>
        </>
      )}
    </>
  );
}
