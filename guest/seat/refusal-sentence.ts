import { refusals } from '../../shared/language/en/refusals.ts';
import type { RefusalCode } from '../../shared/wire/protocol.ts';
import { words } from '../language.ts';

/** What to do about it, in the language of the page. A code that this page does not know yet asks for patience. */
export function refusalSentence(code: string): string {
  return refusals[code as RefusalCode] ?? words.link.noAnswer;
}
