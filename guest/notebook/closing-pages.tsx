import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import { textFields } from '../../shared/notes/entry.ts';
import { useLazyPart } from '../../shared/page/lazy-part.ts';
import { GuessPlace } from '../guess/guess-place.tsx';
import { closingText } from '../stage/word-sheets.ts';
import { FeelingsPick, Prompts } from './feelings-pick.tsx';
import { LikingScale } from './liking-scale.tsx';
import { NoteField } from './note-field.tsx';
import { ReviewWalk } from './review-walk.tsx';
import { type OfPour, useSheet } from './sense-marks.tsx';

/** Above the guest's own page, which stands below. */
export function ReviewPage({ stage, pour }: OfPour) {
  const sheet = useSheet({ stage, pour });
  const text = useLazyPart(closingText);
  return (
    <>
      {sheet === undefined || text === undefined ? (
        <p class="soft small">{words.fetching}</p>
      ) : (
        <ReviewWalk key={pour} pour={pour} sheet={sheet} text={text} />
      )}
      {stage.liking && <LikingScale pour={pour} />}
      <h2>{words.review.page}</h2>
      {textFields.map((field) => (
        <NoteField key={`${pour}/${field}`} pour={pour} field={field} rows={1} />
      ))}
      <GuessPlace pour={pour} />
    </>
  );
}

export function ReflectMarks({ pour }: OfPour) {
  const text = useLazyPart(closingText);
  if (text === undefined) return null;
  return (
    <>
      <Prompts pour={pour} text={text} />
      <FeelingsPick pour={pour} text={text} />
    </>
  );
}
