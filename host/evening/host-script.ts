import { say } from '../../shared/language/en/say.ts';
import type { SayBook } from '../../shared/language/say.ts';

/** The language of what the host says aloud; the only place that knows which one it is. */
export const sayBook: SayBook = say;
