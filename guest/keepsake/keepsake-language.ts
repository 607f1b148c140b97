import type { GuestWords } from '../../shared/language/en/guest.ts';
import type { KeepsakeWords } from '../../shared/language/en/keepsake.ts';
import type { NoteField } from '../../shared/notes/entry.ts';

/** Every word that a keepsake is written with, in one language. */
export interface KeepsakeLanguage {
  readonly home: KeepsakeWords;
  readonly guest: GuestWords;
  readonly fields: Readonly<Record<NoteField, string>>;
  /** The nine words of the liking scale, best first. */
  readonly liking: readonly string[];
}
