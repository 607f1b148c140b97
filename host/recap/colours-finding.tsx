import type { ColoursResult } from '../../core/recap/page-counts.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { Swatch } from '../../shared/ui/swatch.tsx';
import { Finding, type FindingOf, limitsOf } from './finding.tsx';

/** The colours that were named, as a strip for each pour, and in words. */
export function ColoursFinding({ result, guests, names }: FindingOf<ColoursResult>) {
  const { title, columns } = words.colours;
  if (result.outcome === 'none') {
    return <Finding title={title} said={words.colours.none} reckoned={limitsOf(result, guests)} />;
  }
  const pours = result.figures.filter(({ n }) => n > 0);
  return (
    <Finding
      title={title}
      said={words.colours.said}
      table={{
        caption: title,
        columns: [words.pour, columns.colour, columns.guests],
        rows: pours.flatMap(({ pour, colours }) =>
          colours.map((each) => [
            names.pour(pour),
            names.colour(pour, each.colour).word,
            String(each.guests),
          ]),
        ),
      }}
      reckoned={[words.methods[result.method], ...limitsOf(result, guests)]}
    >
      <div class="by-pour">
        {pours.map(({ pour, n, colours }) => {
          const strip = colours.map((each, index) => ({
            ...each,
            ...names.colour(pour, each.colour),
            before: colours.slice(0, index).reduce((sum, { guests: count }) => sum + count, 0),
          }));
          const said = strip.map(({ word, guests: count }) => words.colours.count(word, count));
          return (
            <div key={pour} class="by-pour-one">
              <h3>{names.pour(pour)}</h3>
              <svg
                class="strip"
                role="img"
                aria-label={words.colours.picture(names.pour(pour), said)}
                width="100%"
                height="36"
              >
                {strip.map(({ colour, hex, guests: count, before }) => (
                  <rect
                    key={colour}
                    class="strip-colour"
                    x={`${(before / n) * 100}%`}
                    width={`${(count / n) * 100}%`}
                    height="36"
                    fill={hex ?? 'none'}
                  />
                ))}
              </svg>
              <p class="strip-words">
                {strip.map(({ colour, hex, word, guests: count }) =>
                  hex === null ? (
                    <span key={colour}>{words.colours.count(word, count)}</span>
                  ) : (
                    <Swatch key={colour} colour={hex} word={words.colours.count(word, count)} />
                  ),
                )}
              </p>
            </div>
          );
        })}
      </div>
    </Finding>
  );
}
