import type { NamedPour } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { factLines } from './fact-lines.ts';

/** The facts in a line or two, and the label. */
export function PourFacts({ pour }: { readonly pour: NamedPour }) {
  return (
    <>
      <p class="soft small">{factLines(words, pour).join(' · ')}</p>
      <LabelPhotos pour={pour} />
    </>
  );
}

/** Known to the guest's device with the name of the pour, and not before [Q4]. */
function LabelPhotos({ pour: { name, photos } }: { readonly pour: NamedPour }) {
  const sides = (['front', 'back'] as const).flatMap((side) => {
    const photo = photos[side];
    return photo === null ? [] : [{ photo, alt: words.pour.labels[side](name) }];
  });
  if (sides.length === 0) return null;
  return (
    <p class="label-photos">
      {sides.map(({ photo, alt }) => (
        <a key={photo} href={`/photos/${photo}`} target="_blank" rel="noreferrer noopener">
          <img
            src={`/photos/${photo}`}
            alt={alt}
            loading="lazy"
            // Gone from the server, as in a copy of an evening that was deleted: then there is nothing to open.
            onError={(event) => event.currentTarget.parentElement?.remove()}
          />
        </a>
      ))}
    </p>
  );
}
