import { type CsvForm, writeCsv } from '../../shared/csv/write-csv.ts';
import { noteFields } from '../../shared/notes/entry.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import type { KeepsakeLanguage } from './keepsake-language.ts';
import { keepsakeInWords, type VocabularyOf } from './keepsake-text.ts';

/** One row for each glass and each odd-one-out. */
export function keepsakeCsv(
  keepsake: Keepsake,
  vocabularyOf: VocabularyOf,
  language: KeepsakeLanguage,
  form?: CsvForm,
): string {
  const { home } = language;
  const { pours, trials } = keepsakeInWords(keepsake, vocabularyOf, language);
  const head = [home.glass, home.code, home.name, home.facts];
  return writeCsv(
    [
      [...head, ...noteFields.map((field) => language.fields[field]), home.reading],
      ...pours.map(({ pour, glass, name, facts, reading, fields }) => [
        glass,
        pour.code ?? '',
        name,
        facts.join(' · '),
        ...noteFields.map((field) => fields.find((each) => each.field === field)?.text ?? ''),
        reading.map(({ title, link }) => `${title}: ${link}`).join('\n'),
      ]),
      ...trials.map(({ trial, title, said }) => [
        title,
        trial.glasses.join(' '),
        '',
        '',
        ...noteFields.map((field) => (field === 'odd-one-out' ? said : '')),
        '',
      ]),
    ],
    form,
  );
}
