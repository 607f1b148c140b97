import { type TextField, textFields } from '../../shared/notes/entry.ts';
import type { PourId, StageView } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { NoteField } from './note-field.tsx';

interface NotePageProps {
  readonly stage: StageView;
  readonly pour: PourId;
  readonly fields?: readonly TextField[];
}

/** The page of one glass, from top to bottom. */
export function NotePage({ stage, pour, fields = textFields }: NotePageProps) {
  return (
    <div class="stack note-page">
      {stage.sealed.includes(pour) && <p class="soft small">{words.saved.later}</p>}
      {fields.map((field) => (
        <NoteField key={`${pour}/${field}`} pour={pour} field={field} rows={2} />
      ))}
    </div>
  );
}
