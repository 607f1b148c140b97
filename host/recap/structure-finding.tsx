import type { StructureResult } from '../../core/recap/page-counts.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { oneDecimal } from './figures.ts';
import { Finding, type FindingOf, limitsOf } from './finding.tsx';
import { Rows } from './pictures/rows.tsx';

const atStep = (step: number): number => ((step - 1) / 4) * 88 + 6;

/** How sweet, sour, bitter and full the room found each pour, and how far apart it was about that. */
export function StructureFinding({ result, guests, names }: FindingOf<StructureResult>) {
  const { title, columns } = words.structure;
  if (result.outcome === 'none') {
    return <Finding title={title} said={words.structure.none} reckoned={limitsOf(result, guests)} />;
  }
  const pours = result.figures.filter(({ marks }) => marks.length > 0);
  return (
    <Finding
      title={title}
      said={words.structure.said}
      table={{
        caption: title,
        columns: [words.pour, columns.mark, columns.median, columns.range, columns.n],
        rows: pours.flatMap(({ pour, marks }) =>
          marks.map(({ mark, n, median, least, most }) => [
            names.pour(pour),
            names.mark(mark),
            oneDecimal(median),
            `${least} … ${most}`,
            String(n),
          ]),
        ),
      }}
      reckoned={[words.methods[result.method], ...limitsOf(result, guests)]}
    >
      <div class="by-pour">
        {pours.map(({ pour, marks }) => (
          <div key={pour} class="by-pour-one">
            <h3>{names.pour(pour)}</h3>
            <Rows
              rows={marks.map(({ mark, n, median, least, most }) => ({
                key: mark,
                name: names.mark(mark),
                label: words.structure.picture(names.mark(mark), oneDecimal(median), least, most, n),
                figure: oneDecimal(median),
                height: 24,
                drawing: (
                  <>
                    <line class="drawn-axis" x1="6%" x2="94%" y1="12" y2="12" />
                    <rect
                      class="drawn-range"
                      x={`${atStep(least) - 2}%`}
                      width={`${atStep(most) - atStep(least) + 4}%`}
                      y="7"
                      height="10"
                    />
                    <line
                      class="drawn-median"
                      x1={`${atStep(median)}%`}
                      x2={`${atStep(median)}%`}
                      y1="2"
                      y2="22"
                    />
                  </>
                ),
              }))}
            />
          </div>
        ))}
      </div>
      <p class="small soft">{words.structure.axis}</p>
    </Finding>
  );
}
