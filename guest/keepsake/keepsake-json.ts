import type { Keepsake } from '../../shared/wire/http.ts';
import type { KeepsakeLanguage } from './keepsake-language.ts';
import { keepsakeInWords, type VocabularyOf } from './keepsake-text.ts';

/** The evening with codes and with words, for programs. `format` is raised when its shape changes. */
export function keepsakeJson(
  keepsake: Keepsake,
  vocabularyOf: VocabularyOf,
  language: KeepsakeLanguage,
): string {
  const { pours, trials } = keepsakeInWords(keepsake, vocabularyOf, language);
  const whole = {
    format: 1,
    ...keepsake,
    language: language.guest.language,
    pours: pours.map(({ pour, fields, reading }) => ({
      ...pour,
      reading,
      inWords: Object.fromEntries(fields.map(({ field, text }) => [field, text])),
    })),
    trials: trials.map(({ trial, said }) => ({ ...trial, inWords: said })),
  };
  return `${JSON.stringify(whole, null, 2)}\n`;
}
