import { noteFields } from '../../shared/notes/entry.ts';
import { pageInWords } from '../../shared/notes/in-words.ts';
import { Choice } from '../../shared/ui/choice.tsx';
import { pageParts, type Sharing, sharings } from '../../shared/wire/sharing.ts';
import type { Drink } from '../../shared/wire/views.ts';
import { useRoom } from '../room/room.ts';
import type { BoardItem } from './board-items.ts';
import { fieldNames, words } from './language.ts';
import { useVocabulary } from './use-vocabulary.ts';

interface ShareChoiceProps {
  readonly item: BoardItem;
  readonly drink: Drink;
}

/** Private until something else is chosen, for one page, and private again at any time [Q2]. What would be seen stands below. */
export function ShareChoice({ item, drink }: ShareChoiceProps) {
  const { follower, consent, status } = useRoom();
  const { notebook } = follower;
  const vocabulary = useVocabulary(drink);
  const entries = noteFields.map((field) => ({ field, value: notebook.read(item.id, field) }));
  const picked = notebook.read(item.id, 'odd-one-out');
  const page = vocabulary === undefined ? [] : pageInWords(entries, vocabulary);
  const chosen = follower.consents.value.get(item.id)?.page?.sharing ?? 'private';
  return (
    <div class="share">
      <Choice<Sharing>
        legend={words.share.choose([item.title, item.name].filter((part) => part !== null).join(', '))}
        options={sharings.map((value) => ({ value, label: words.share.choices[value] }))}
        value={chosen}
        onChoose={async (wanted) => {
          const parts = wanted === 'private' ? [] : pageParts;
          const counting = wanted === 'private' ? 'only-for-me' : 'counts';
          const verdict = { order: counting, liking: counting, 'odd-one-out': counting } as const;
          if (await consent([item.id], { page: { sharing: wanted, parts }, ...verdict }))
            status.say(words.share.done[wanted](item.title), { unseen: true });
        }}
      />
      {page.length === 0 && picked === null ? (
        <p class="soft small">{words.share.nothing}</p>
      ) : (
        <details>
          <summary>
            {words.share.yours}
            <span class="visually-hidden"> ({item.title})</span>
          </summary>
          <dl class="own-words">
            {page.map(({ field, text }) => (
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
