import type { NamedPour, PourId, StageUnderWay } from '../../../shared/wire/views.ts';
import { cueWordsFor, drinkOf } from '../../stage/cue-words.ts';
import { factLines } from '../../stage/fact-lines.ts';
import { guestWords, sheet, words } from '../language.ts';
import { type RevealedGlass, revealedGlasses, toldGlass } from '../revealed-glasses.ts';
import { CueVerb } from './cue-line.tsx';

/** Before the first name is told. */
export const NamesToCome = ({ stage }: { readonly stage: StageUnderWay }) => (
  <div class="scene scene-word">
    <CueVerb stage={stage} />
    <p class="scene-hint">{words.reveal.soon}</p>
  </div>
);

/** One pour with its label, its facts and its story. */
export function PourOnScreen({ stage, pour }: { readonly stage: StageUnderWay; readonly pour: PourId }) {
  const glass = toldGlass(stage, pour);
  return glass === undefined ? (
    <NamesToCome stage={stage} />
  ) : (
    <div class="scene scene-reveal scene-one">
      <h1 class="visually-hidden">{cueWordsFor(sheet, stage.cue, drinkOf(stage)).verb}</h1>
      <ol class="scene-pours">
        <Told key={pour} glass={glass} alone />
      </ol>
    </div>
  );
}

/** The pours of a talk by name, side by side. */
export function NamesOnScreen({ stage }: { readonly stage: StageUnderWay }) {
  const glasses = revealedGlasses(stage);
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

interface ToldProps {
  readonly glass: RevealedGlass;
  readonly alone: boolean;
}

function Told({ glass: { position, card }, alone }: ToldProps) {
  const place = [
    ...(position === null ? [] : [words.place.glass(position)]),
    ...(card.code === null ? [] : [words.place.coded(card.code)]),
  ].join(' · ');
  return (
    <li class={alone ? 'scene-pour scene-pour-alone' : 'scene-pour'}>
      {card.kind === 'named' && <Photo pour={card} />}
      <div>
        <p class="scene-pour-place">{place}</p>
        {card.kind === 'named' ? (
          <>
            <h2 dir="auto">{card.name}</h2>
            <p class="scene-pour-facts" dir="auto">
              {factLines(guestWords, card).join(' · ')}
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
