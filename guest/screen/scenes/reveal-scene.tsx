import type { NamedPour, StageUnderWay } from '../../../shared/wire/views.ts';
import { factsOf } from '../../board/facts-of.ts';
import { glassOf, type ReachedGlass } from '../../glass/glasses.ts';
import { guestWords, words } from '../language.ts';
import { CueVerb } from './cue-line.tsx';

/** The pours by name, once the host has told them. */
export function RevealScene({ stage }: { readonly stage: StageUnderWay }) {
  const glasses = stage.cue.pours.flatMap((pour) => glassOf(stage, pour) ?? []);
  if (!glasses.some(({ card }) => card.kind === 'named')) {
    return (
      <div class="scene scene-word">
        <CueVerb stage={stage} />
        <p class="scene-hint">{stage.ownOrders ? words.reveal.onPhones : words.reveal.soon}</p>
      </div>
    );
  }
  return (
    <div class="scene scene-reveal">
      <CueVerb stage={stage} />
      <ol class={glasses.length > 3 ? 'scene-pours scene-pours-many' : 'scene-pours'}>
        {glasses.map((glass) => (
          <Told key={glass.card.id} glass={glass} alone={glasses.length === 1} />
        ))}
      </ol>
    </div>
  );
}

function Told({
  glass: { position, card },
  alone,
}: {
  readonly glass: ReachedGlass;
  readonly alone: boolean;
}) {
  return (
    <li class={alone ? 'scene-pour scene-pour-alone' : 'scene-pour'}>
      {card.kind === 'named' && <Photo pour={card} />}
      <div>
        <p class="scene-pour-place">
          {words.place.glass(position)}
          {card.code !== null && ` · ${words.place.coded(card.code)}`}
        </p>
        {card.kind === 'named' ? (
          <>
            <h2 dir="auto">{card.name}</h2>
            <p class="scene-pour-facts" dir="auto">
              {factsOf(guestWords, card).join(' · ')}
            </p>
            {alone && card.story !== null && (
              <p class="scene-pour-story" dir="auto">
                {card.story}
              </p>
            )}
          </>
        ) : (
          <h2>{words.reveal.unnamed}</h2>
        )}
      </div>
    </li>
  );
}

function Photo({ pour: { name, photos } }: { readonly pour: NamedPour }) {
  const photo = photos.front ?? photos.back;
  return photo === null ? null : (
    <img class="scene-photo" src={`/photos/${encodeURIComponent(photo)}`} alt={words.reveal.photo(name)} />
  );
}
