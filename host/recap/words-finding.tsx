import type { PourId } from '../../core/ids.ts';
import type { WordsResult } from '../../core/panel/recap/words-recap.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { chance, percent, twoDecimals } from './figures.ts';
import { Finding, type FindingOf, limitsOf } from './finding.tsx';
import { Rows } from './pictures/rows.tsx';

/** More than a handful nobody reads out. */
const mostShown = 6;
/** The level of the panel's recaps at which a word counts as telling. */
const telling = 0.05;

/** Words that two guests or more had for the same pour, and whether words told the pours apart. */
export function WordsFinding({ result, guests, names }: FindingOf<WordsResult<PourId>>) {
  const { title, columns } = words.words;
  if (result.outcome === 'none') {
    return <Finding title={title} said={words.words.none} reckoned={limitsOf(result, guests)} />;
  }
  const { pours, tests, agreement } = result.figures;
  const apart = tests.filter(({ adjustedP }) => adjustedP <= telling).map(({ word }) => names.word(word));
  return (
    <Finding
      title={title}
      said={words.words.headline[result.meaning]}
      table={{
        caption: title,
        columns: [words.pour, columns.word, columns.guests, columns.of],
        rows: pours.flatMap(({ pour, n, words: counted }) =>
          counted.map(({ word, guests: count }) => [
            names.pour(pour),
            names.word(word),
            String(count),
            String(n),
          ]),
        ),
      }}
      reckoned={[
        words.methods[result.method],
        ...tests
          .slice(0, mostShown)
          .map(({ word, adjustedP }) => `${names.word(word)}: p ${chance(adjustedP)}`),
        ...(agreement === null
          ? []
          : [words.words.agreement[agreement.method](twoDecimals(agreement.value))]),
        ...limitsOf(result, guests),
      ]}
    >
      {apart.length > 0 && <p>{words.words.agreed(apart)}</p>}
      <div class="by-pour">
        {pours.map(({ pour, n, words: counted, overlap }) => {
          const shared = counted.filter((each) => each.guests > 1).slice(0, mostShown);
          return (
            <div key={pour} class="by-pour-one">
              <h3>{names.pour(pour)}</h3>
              {shared.length === 0 ? (
                <p class="soft">{n === 0 ? words.words.nobody : words.words.noShared}</p>
              ) : (
                <Rows
                  rows={shared.map((each) => ({
                    key: each.word,
                    name: names.word(each.word),
                    label: words.words.count(names.word(each.word), each.guests, n),
                    figure: `${each.guests} / ${n}`,
                    height: 22,
                    drawing: (
                      <>
                        <rect class="drawn-ground" x="0" width="100%" y="5" height="12" />
                        <rect
                          class="drawn-bar"
                          x="0"
                          width={`${(each.guests / n) * 100}%`}
                          y="5"
                          height="12"
                        />
                      </>
                    ),
                  }))}
                />
              )}
              {overlap !== null && shared.length > 0 && (
                <p class="small soft">{words.words.overlap(percent(overlap))}</p>
              )}
            </div>
          );
        })}
      </div>
    </Finding>
  );
}
