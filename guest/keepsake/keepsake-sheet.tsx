import { textFields, textOf } from '../../shared/notes/entry.ts';
import { PrintPage } from '../../shared/ui/print-page.tsx';
import type { Keepsake, KeepsakePour } from '../../shared/wire/http.ts';
import { PourFacts } from '../board/pour-facts.tsx';
import { words } from '../language.ts';
import { evening } from './evening-line.ts';

/** The same on the screen and on paper. */
export function KeepsakeSheet({ keepsake }: { readonly keepsake: Keepsake }) {
  return (
    <PrintPage
      title={keepsake.title || words.keepsake.title}
      running={[words.keepsake.notesOf(keepsake.guest), ...evening(keepsake, words)].join(' · ')}
    >
      {keepsake.pours.map((pour) => (
        <PourOnSheet key={pour.pour} pour={pour} />
      ))}
    </PrintPage>
  );
}

function PourOnSheet({ pour }: { readonly pour: KeepsakePour }) {
  const written = textFields.flatMap((field) => {
    const value = textOf(pour.entries, field);
    return value === '' ? [] : [{ field, value }];
  });
  return (
    <article class="sheet-pour">
      <p class="soft small">
        {words.glass.nth(pour.position)}
        {pour.code !== null && ` · ${words.glass.coded(pour.code)}`}
      </p>
      <h3>{pour.facts?.name ?? words.keepsake.unnamed}</h3>
      {pour.facts !== null && <PourFacts pour={pour.facts} />}
      {written.length === 0 ? (
        <p class="soft">{words.keepsake.noNotes}</p>
      ) : (
        <dl class="own-words">
          {written.map(({ field, value }) => (
            <div key={field}>
              <dt>{words.fields[field]}</dt>
              <dd dir="auto">{value}</dd>
            </div>
          ))}
        </dl>
      )}
    </article>
  );
}
