import type { PourId } from '../../core/ids.ts';
import type { OrderFigures } from '../../core/panel/recap/order-comparison.ts';
import type { RankingResult } from '../../core/panel/recap/ranking-recap.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { chance, oneDecimal, twoDecimals } from './figures.ts';
import { Finding, type FindingOf, limitsOf } from './finding.tsx';
import type { Names } from './names.ts';
import { Rows } from './pictures/rows.tsx';

/** Which pour won, and how sure that is. */
export function OrderFinding({
  title,
  result,
  guests,
  names,
}: FindingOf<RankingResult<PourId>> & { readonly title: string }) {
  if (result.outcome === 'none') {
    return (
      <Finding title={title} said={words.ranking.none[result.reason]} reckoned={limitsOf(result, guests)} />
    );
  }
  const { figures, meaning, method, n } = result;
  const best = bestOf(figures).map(names.pour);
  const of = figures.places.length;
  return (
    <Finding
      title={title}
      said={words.ranking.headline[meaning](best)}
      table={{
        caption: title,
        columns: [words.pour, words.ranking.place, words.ranking.meanPlace, words.ranking.rankSum],
        rows: figures.places.map(({ pour, place, rankSum }) => [
          names.pour(pour),
          oneDecimal(place),
          twoDecimals(rankSum / n),
          oneDecimal(rankSum),
        ]),
      }}
      reckoned={[...reckonedOrder(figures, names), words.methods[method], ...limitsOf(result, guests)]}
    >
      <p>
        {words.ranking.sure[meaning](figures.p)}
        {result.limits.includes('small-panel') && ` ${words.limits['small-panel'](n)}`}
      </p>
      <Rows
        rows={figures.places.map(({ pour, rankSum }) => {
          const mean = rankSum / n;
          const at = of > 1 ? ((mean - 1) / (of - 1)) * 92 + 4 : 50;
          return {
            key: pour,
            name: names.pour(pour),
            label: words.ranking.picture(names.pour(pour), twoDecimals(mean), of),
            figure: twoDecimals(mean),
            drawing: (
              <>
                <line class="drawn-axis" x1="4%" x2="96%" y1="50%" y2="50%" />
                {Array.from({ length: of }, (_, index) => {
                  const x = `${of > 1 ? (index / (of - 1)) * 92 + 4 : 50}%`;
                  return <line key={x} class="drawn-axis" x1={x} x2={x} y1="9" y2="19" />;
                })}
                <circle class="drawn-mark" cx={`${at}%`} cy="50%" r="8" />
              </>
            ),
          };
        })}
      />
      <p class="small soft">{words.ranking.axis(of)}</p>
    </Finding>
  );
}

export const bestOf = ({ places }: OrderFigures<PourId>): PourId[] =>
  places.filter(({ place }) => place === places[0]?.place).map(({ pour }) => pour);

export const reckonedOrder = (figures: OrderFigures<PourId>, names: Names): string[] => [
  ...figures.places.flatMap(({ pour }) => {
    const behind = figures.apart
      .filter(({ better }) => better === pour)
      .map(({ worse }) => names.pour(worse));
    return behind.length === 0 ? [] : [words.ranking.apart(names.pour(pour), behind)];
  }),
  words.figures(oneDecimal(figures.chi2), figures.df, chance(figures.p), twoDecimals(figures.kendallW)),
  words.pairMethods[figures.differences.method](oneDecimal(figures.differences.threshold)),
];
