import { useState } from 'preact/hooks';
import type { PhotoId } from '../../../core/ids.ts';
import { words } from '../words.ts';

interface LabelThumbProps {
  readonly photo: PhotoId;
  /** What the picture shows; nothing where the words beside it say so. */
  readonly words?: string | undefined;
  /** As wide as there is room, and a way to the whole picture; small and plain otherwise. */
  readonly large?: boolean | undefined;
}

/** A label photo; nothing where it is gone from the server, as in a copy of an evening that was deleted. */
export function LabelThumb({ photo, words: said = '', large }: LabelThumbProps) {
  const [gone, setGone] = useState(false);
  if (gone) return null;
  const src = `/photos/${photo}`;
  const picture = <img src={src} alt={said} loading="lazy" onError={() => setGone(true)} />;
  if (!large) return <span class="thumb">{picture}</span>;
  return (
    <a class="thumb-large" href={src} target="_blank" rel="noopener" aria-label={words.ahead.enlarge(said)}>
      {picture}
    </a>
  );
}
