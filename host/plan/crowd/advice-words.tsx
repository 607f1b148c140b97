import type { CrowdAdvice, CrowdNote } from '../../../core/planning/theme/crowd.ts';
import { words } from '../words.ts';

/** What suits a room, and what is to be known of it. */
export function AdviceWords({ advice }: { readonly advice: CrowdAdvice }) {
  const said = words.guests;
  return (
    <>
      {advice.status === 'advised' && (
        <p>
          {said.advised(
            words.levels[advice.level],
            advice.flightSizes.reduce((sum, size) => sum + size, 0),
            advice.flightSizes.length,
          )}
        </p>
      )}
      {advice.notes.map((note) => (
        <p key={note.code} class="soft">
          {noteSentence(note)}
        </p>
      ))}
    </>
  );
}

function noteSentence(note: CrowdNote): string {
  switch (note.code) {
    case 'newcomers-among-them':
    case 'devotees-among-them':
    case 'not-placed':
      return words.guests.notes[note.code](note.guests);
    case 'wide-spread':
    case 'mostly-unknown':
      return words.guests.notes[note.code]();
    default:
      return note satisfies never;
  }
}
