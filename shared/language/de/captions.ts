// German, not yet reviewed by a native speaker.
import type { CaptionWords } from '../en/captions.ts';

export const captionWords: CaptionWords = {
  title: 'Dein Gastgeber sagt',
  hide: 'Ausblenden',
  show: 'Zeigen, was dein Gastgeber sagt',
};
