import { guessWords } from '../../shared/language/en/guess.ts';
import { PrintPage } from '../../shared/ui/print-page.tsx';
import type { Keepsake } from '../../shared/wire/http.ts';
import { words } from '../language.ts';
import { keepsakeInWords, type PourInWords, type VocabularyOf } from './keepsake-text.ts';
import { homeWords, language } from './language.ts';

interface KeepsakeSheetProps {
  readonly keepsake: Keepsake;
  readonly vocabularyOf: VocabularyOf;
}

/** The same on the screen and on paper. */
export function KeepsakeSheet({ keepsake, vocabularyOf }: KeepsakeSheetProps) {
  const { title: evening, head, pours, trials, results } = keepsakeInWords(keepsake, vocabularyOf, language);
  return (
    <PrintPage title={evening} running={head}>
      {pours.map((each) => (
        <PourOnSheet key={each.pour.pour} {...each} />
      ))}
      {[...trials, ...results].map(({ title, said, rows }, place) => (
        <article class="sheet-pour" key={`${place} ${title}`}>
          <h3>{title}</h3>
          <p dir="auto">{said}</p>
          {rows.length > 0 && <Lines of={rows} />}
        </article>
      ))}
    </PrintPage>
  );
}

function PourOnSheet({ pour, glass, name, facts, reading, fields, room }: PourInWords) {
  return (
    <article class="sheet-pour">
      <p class="soft small">
        {glass}
        {pour.code !== null && ` · ${words.glass.coded(pour.code)}`}
      </p>
      <h3>
        <bdi>{name}</bdi>
      </h3>
      <Labels facts={pour.facts} />
      {facts.length > 0 && <p class="soft small">{facts.join(' · ')}</p>}
      {pour.facts?.story && (
        <p class="sheet-story" dir="auto">
          {pour.facts.story}
        </p>
      )}
      {fields.length === 0 ? (
        <p class="soft">{homeWords.noNotes}</p>
      ) : (
        <dl class="stack-tight own-words">
          {fields.map(({ field, text }) => (
            <div key={field}>
              <dt>{language.fields[field]}</dt>
              <dd dir="auto">{text}</dd>
            </div>
          ))}
        </dl>
      )}
      {room.length > 0 && (
        <>
          <h4>{guessWords.room.title}</h4>
          <Lines of={room} />
        </>
      )}
      {reading.length > 0 && (
        <>
          <h4>{homeWords.reading}</h4>
          <ul class="stack-close reading">
            {reading.map(({ title, link }) => (
              <li key={link}>
                <a href={link} target="_blank" rel="noreferrer noopener">
                  {title}
                </a>
                <span class="print-only small"> {link}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </article>
  );
}

const Lines = ({ of }: { readonly of: readonly string[] }) => (
  <ul class="room-lines">
    {of.map((line) => (
      <li key={line} dir="auto">
        {line}
      </li>
    ))}
  </ul>
);

function Labels({ facts }: Pick<PourInWords['pour'], 'facts'>) {
  const sides = (['front', 'back'] as const).flatMap((side) => {
    const photo = facts?.photos[side] ?? null;
    return facts === null || photo === null ? [] : [{ photo, alt: words.pour.labels[side](facts.name) }];
  });
  return sides.length === 0 ? null : (
    <p class="label-photos">
      {sides.map(({ photo, alt }) => (
        <img
          key={photo}
          src={`/photos/${encodeURIComponent(photo)}`}
          alt={alt}
          // Gone from the server, as in a copy of an evening that was deleted.
          onError={(event) => event.currentTarget.remove()}
        />
      ))}
    </p>
  );
}
