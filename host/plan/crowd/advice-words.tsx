import type { CrowdAdvice } from '../../../core/planning/theme/crowd.ts';
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
          {'guests' in note ? said.notes[note.code](note.guests) : said.notes[note.code]()}
        </p>
      ))}
    </>
  );
}
