import type { Consent } from '../../../core/panel/recap/permitted-answers.ts';
import type { PageMarks, PermittedPage } from '../../../core/recap/permitted-page.ts';
import { type NoteField, type NoteValue, type NoteValues, wordFields } from '../../../shared/notes/entry.ts';
import { blankOf } from '../../../shared/notes/value.ts';
import type { Permit } from '../../../shared/wire/permits.ts';
import type { StoredEntry, PermittedPage as StoredPage } from '../../store/store.ts';

/** Takes from a stored page what is counted, and leaves its written words where they are. */
export const marksOfPage = ({ seat, pour, permits, entries }: StoredPage): PermittedPage => ({
  seat,
  pour,
  consents: {
    colour: consentOf(permits.colour),
    words: consentOf(...wordFields.map((field) => permits[field])),
    structure: consentOf(permits.structure),
    liking: consentOf(permits.liking),
    place: consentOf(permits.place),
    oddGlass: consentOf(permits['odd-one-out']),
  },
  sealed: marksOf(entries, ({ value, sealedValue }) => (sealedValue === undefined ? value : sealedValue)),
  current: marksOf(entries, ({ value }) => value),
});

/** With a name only where all that is permitted has one. */
const consentOf = (...permits: readonly (Permit | undefined)[]): Consent =>
  permits.includes('named') && permits.every((permit) => permit === undefined || permit === 'named')
    ? 'shared'
    : 'anonymous';

function marksOf(entries: readonly StoredEntry[], read: (entry: StoredEntry) => NoteValue): PageMarks {
  const answered = <Field extends NoteField>(field: Field): NoteValues[Field] => {
    const entry = entries.find((each) => each.field === field);
    // That a field and its value belong together was checked where the value came in.
    return entry === undefined ? blankOf(field) : (read(entry) as NoteValues[Field]);
  };
  return {
    colour: answered('colour'),
    words: [...new Set(wordFields.flatMap((field) => Object.keys(answered(field))))],
    structure: answered('structure'),
    liking: answered('liking'),
    place: answered('place'),
    oddGlass: answered('odd-one-out')?.glass ?? null,
  };
}
