import { guestRefusals } from '../../shared/language/en/guest-refusals.ts';
import { words } from '../language.ts';

/** What to do about it, in the language of the page. A code that this page does not know yet asks for patience. */
export function refusalSentence(code: string): string {
  return (guestRefusals as Readonly<Record<string, string | undefined>>)[code] ?? words.link.noAnswer;
}
