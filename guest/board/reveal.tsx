import type { StageUnderWay } from '../../shared/wire/views.ts';
import { GuessesPlace } from '../guess/guess-place.tsx';
import { words } from '../language.ts';
import { PourFacts } from '../stage/pour-facts.tsx';
import { glassOf, type ReachedGlass } from '../stage/reached-glasses.ts';

/** The names, for those pours that the host has named. */
export function Reveal({ stage }: { readonly stage: StageUnderWay }) {
  const all = stage.cue.pours.flatMap((pour) => glassOf(stage, pour) ?? []);
  const told = ({ card }: ReachedGlass): boolean => stage.justTold.includes(card.id);
  // What the host tells now stands on top, where nobody has to look for it.
  const glasses = [...all.filter(told), ...all.filter((glass) => !told(glass))];
  return (
    <ol class="reveal">
      {glasses.map(({ position, card }) => (
        <li key={card.id}>
          <p class="soft small">
            {words.glass.nth(position)}
            {card.code !== null && ` · ${words.glass.coded(card.code)}`}
          </p>
          {card.kind === 'named' ? (
            <>
              <h2>
                <bdi>{card.name}</bdi>
              </h2>
              <PourFacts pour={card} />
              {card.story !== null && <p>{card.story}</p>}
              {card.link !== null && (
                <a href={card.link} target="_blank" rel="noreferrer noopener">
                  {words.pour.more}
                </a>
              )}
            </>
          ) : (
            <h2>{words.keepsake.unnamed}</h2>
          )}
          <GuessesPlace pour={card.id} />
        </li>
      ))}
    </ol>
  );
}
