import type { PourId } from '../../core/ids.ts';
import type { Liking } from '../../core/panel/liking.ts';
import type { LikingResult } from '../../core/panel/recap/liking-recap.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { oneDecimal, twoDecimals } from './figures.ts';
import { Finding, type FindingOf, limitsOf } from './finding.tsx';
import { bestOf, reckonedOrder } from './order-finding.tsx';
import { Rows } from './pictures/rows.tsx';

/** How well each pour was liked and how far opinions went apart. */
export function LikingFinding({ result, guests, names }: FindingOf<LikingResult<PourId>>) {
  const { title, columns } = words.liking;
  if (result.outcome === 'none') {
    return <Finding title={title} said={words.liking.none} reckoned={limitsOf(result, guests)} />;
  }
  const { pours, order } = result.figures;
  const best = order === null ? [] : bestOf(order).map(names.pour);
  const most = Math.max(
    1,
    ...pours.flatMap(({ liking }) => (liking.status === 'rated' ? liking.counts : [])),
  );
  return (
    <Finding
      title={title}
      said={words.liking.headline[result.meaning](best)}
      table={{
        caption: title,
        columns: [
          words.pour,
          columns.n,
          columns.mean,
          columns.median,
          columns.range,
          columns.sd,
          columns.shape,
        ],
        rows: pours.map(({ pour, liking }) => [names.pour(pour), ...cellsOf(liking)]),
      }}
      reckoned={[
        ...(order === null ? [] : reckonedOrder(order, names)),
        words.methods[result.method],
        ...limitsOf(result, guests),
      ]}
    >
      <Rows
        rows={pours.map(({ pour, liking }) => ({
          key: pour,
          name: names.pour(pour),
          height: 44,
          label:
            liking.status === 'rated'
              ? words.liking.picture(
                  names.pour(pour),
                  oneDecimal(liking.median),
                  liking.least,
                  liking.most,
                  liking.n,
                )
              : words.liking.unrated(names.pour(pour)),
          figure: liking.status === 'rated' ? oneDecimal(liking.median) : '–',
          drawing: <Histogram liking={liking} most={most} />,
        }))}
      />
      <p class="small soft">
        {words.liking.axis}. {words.liking.legend}
      </p>
    </Finding>
  );
}

const middleOf = (point: number): number => ((point - 0.5) / 9) * 100;

function Histogram({ liking, most }: { readonly liking: Liking; readonly most: number }) {
  const floor = 40;
  return (
    <>
      <line class="drawn-axis" x1="0" x2="100%" y1={floor} y2={floor} />
      {liking.status === 'rated' &&
        liking.counts.map((count, index) => {
          const height = (count / most) * 32;
          const x = `${middleOf(index + 1) - 4.2}%`;
          return <rect key={x} class="drawn-bar" x={x} width="8.4%" y={floor - height} height={height} />;
        })}
      {liking.status === 'rated' && (
        <line
          class="drawn-median"
          x1={`${middleOf(liking.median)}%`}
          x2={`${middleOf(liking.median)}%`}
          y1="2"
          y2={floor + 4}
        />
      )}
    </>
  );
}

function cellsOf(liking: Liking): string[] {
  if (liking.status === 'no-ratings') return ['0', '–', '–', '–', '–', '–'];
  return [
    String(liking.n),
    twoDecimals(liking.mean),
    oneDecimal(liking.median),
    `${liking.least} … ${liking.most}`,
    liking.standardDeviation === null ? '–' : twoDecimals(liking.standardDeviation),
    words.liking.shapes[liking.shape],
  ];
}
