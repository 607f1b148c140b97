import type { RoomGuess } from '../../core/panel/guess/room.ts';
import { chanceText, factName, valueText } from '../guess/guess-texts.ts';
import { spreadRows } from '../guess/spread-rows.ts';
import { guessWords as words } from '../language/en/guess.ts';
import type { RoomGuesses } from '../wire/guesses.ts';
import type { Drink } from '../wire/views.ts';

interface GuessSpreadProps {
  readonly guesses: RoomGuesses;
  readonly drink: Drink;
  /** Of the heading. */
  readonly level?: 2 | 3;
  /** So many values stand in rows; what fewer people said is counted together. */
  readonly rows?: number;
}

/** What the room guessed of a pour beside what it is, and how often chance alone would have been as near. Never a table of people. */
export function GuessSpread({ guesses, drink, level = 3, rows = 5 }: GuessSpreadProps) {
  const Heading = `h${level}` as const;
  const { counts, facts } = guesses;
  return (
    <section class="guess-room">
      <Heading>{words.room.title}</Heading>
      {counts === null ? (
        <p class="soft">{words.room.few}</p>
      ) : (
        <p class="soft small">{words.room.counts(counts.counted, counts.of)}</p>
      )}
      <div class="guess-facts">
        {facts.map((fact) => (
          <FactSpread
            key={fact.fact}
            guess={fact}
            drink={drink}
            currency={guesses.currency}
            most={rows}
            level={level === 2 ? 3 : 4}
          />
        ))}
      </div>
    </section>
  );
}

interface FactSpreadProps {
  readonly guess: RoomGuess;
  readonly drink: Drink;
  readonly currency: string;
  readonly most: number;
  readonly level: 3 | 4;
}

function FactSpread({ guess, drink, currency, most: mostRows, level }: FactSpreadProps) {
  const Heading = `h${level}` as const;
  const text = (value: RoomGuess['truth']) => valueText(guess.fact, value, currency);
  const rows = spreadRows(guess, mostRows);
  const most = Math.max(1, ...rows.map(({ guests }) => guests));
  return (
    <section class="guess-fact">
      <Heading>
        {factName(guess.fact, drink)} <span class="guess-truth">{text(guess.truth)}</span>
      </Heading>
      <ul class="stack-close">
        {rows.map(({ value, guests }) => {
          const name = value === null ? words.room.others : text(value);
          const right = value === guess.truth;
          return (
            <li key={String(value)} class={right ? 'guess-row guess-row-right' : 'guess-row'}>
              <span class="visually-hidden">{words.room.row(name, words.room.people(guests), right)}</span>
              <span class="guess-name" aria-hidden="true" dir="auto">
                {right && '✓ '}
                {name}
              </span>
              <span class="guess-bar" aria-hidden="true" style={{ '--share': `${(guests / most) * 100}%` }} />
              <span class="figures" aria-hidden="true">
                {guests}
              </span>
            </li>
          );
        })}
      </ul>
      <p class="small">{chanceText(guess.chance)}</p>
      {guess.nearest.length > 0 && (
        <p class="small" dir="auto">
          {words.room.nearest(guess.nearest.join(', '))}
        </p>
      )}
    </section>
  );
}
