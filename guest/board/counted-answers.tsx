import { consentWords } from '../../shared/language/en/consents.ts';
import { CountChoice } from '../consent/count-choice.tsx';
import { useRoom } from '../room/room.ts';
import type { BoardItem } from './board-items.ts';

/** Whether what this guest has answered counts in the results: here it can be given or withdrawn afterwards [Q10]. */
export function CountedAnswers({ items }: { readonly items: readonly BoardItem[] }) {
  const { notebook } = useRoom().follower;
  const answered = (field: 'place' | 'liking' | 'odd-one-out') =>
    items.flatMap(({ id }) => (notebook.read(id, field) === null ? [] : id));
  const all = [
    { about: 'order', pours: answered('place') },
    { about: 'liking', pours: answered('liking') },
    { about: 'odd-one-out', pours: answered('odd-one-out') },
  ] as const;
  const given = all.filter(({ pours }) => pours.length > 0);
  if (given.length === 0) return null;
  return (
    <section class="stack-tight">
      <h2>{consentWords.counting.title}</h2>
      <p class="soft">{consentWords.counting.lead}</p>
      {given.map(({ about, pours }) => (
        <CountChoice key={about} about={about} pours={pours} />
      ))}
    </section>
  );
}
