import { consentWords } from '../../shared/language/en/consents.ts';
import { noteFields, textFields } from '../../shared/notes/entry.ts';
import { pageInWords } from '../../shared/notes/in-words.ts';
import { Choice } from '../../shared/ui/choice.tsx';
import { type PagePart, type Sharing, sharings } from '../../shared/wire/sharing.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';
import type { BoardItem } from './board-items.ts';
import { fieldNames, words } from './language.ts';
import { PartChips } from './part-chips.tsx';
import { useVocabulary } from './use-vocabulary.ts';

interface ShareChoiceProps {
  readonly item: BoardItem;
  readonly drink: Drink;
  /** Those that go with the next tap; absent: as they went before, at first every sense. */
  readonly parts?: readonly PagePart[] | undefined;
}

/** What becomes of one page: nothing is chosen before they tap, and it can be taken back at any time [Q2]. */
export function ShareChoice({ item, drink, parts }: ShareChoiceProps) {
  const { follower, consent, status } = useRoom();
  const { notebook } = follower;
  const vocabulary = useVocabulary(drink);
  const entries = noteFields.map((field) => ({ field, value: notebook.read(item.id, field) }));
  const picked = notebook.read(item.id, 'odd-one-out');
  const written = vocabulary === undefined ? [] : pageInWords(entries, vocabulary);
  const given = follower.consents.value.get(item.id);
  const { page } = given ?? {};
  const ofTrial = item.drink === null;
  const chosen = page?.sharing;
  const give = async (sharing: Sharing, some: readonly PagePart[]): Promise<void> => {
    const page = { sharing, parts: sharing === 'private' ? [] : some };
    // An odd one has nothing but its pick: with a name that is what goes.
    const wanted =
      ofTrial && sharing === 'named'
        ? ({ page: { sharing, parts: ['verdict'] }, 'odd-one-out': 'counts' } as const)
        : { page };
    if (await consent([item.id], wanted)) status.say(words.share.done[sharing](item.title), { unseen: true });
  };
  const before = page === undefined || page.parts.length === 0 ? textFields : page.parts;
  return (
    <div class="share">
      <Choice<Sharing>
        legend={words.share.choose([item.title, item.name].filter((part) => part !== null).join(', '))}
        options={sharings
          .filter((value) => !ofTrial || value !== 'unnamed')
          .map((value) => ({ value, label: words.share.choices[value] }))}
        value={chosen}
        onChoose={(wanted) => void give(wanted, parts ?? before)}
      />
      {!ofTrial && chosen !== undefined && chosen !== 'private' && (
        <PartChips
          legend={consentWords.parts}
          chosen={before}
          verdict={chosen === 'named' && (given?.order === 'counts' || given?.liking === 'counts')}
          onChange={(some) => void give(some.length === 0 ? 'private' : chosen, some)}
        />
      )}
      {written.length === 0 && picked === null ? (
        <p class="soft small">{words.share.nothing}</p>
      ) : (
        <details>
          <summary>
            {words.share.yours}
            <span class="visually-hidden"> ({item.title})</span>
          </summary>
          <dl class="stack-tight own-words">
            {written.map(({ field, text }) => (
              <div key={field}>
                <dt>{fieldNames[field]}</dt>
                <dd dir="auto">{text}</dd>
              </div>
            ))}
            {picked !== null && (
              <div>
                <dt>{fieldNames['odd-one-out']}</dt>
                <dd>
                  {words.odd.picked(picked.glass)}
                  {picked.guessed && ` (${words.odd.guessed})`}
                </dd>
              </div>
            )}
          </dl>
        </details>
      )}
    </div>
  );
}
