import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import type { PourId } from '../../shared/wire/views.ts';
import { CountChoice } from '../consent/count-choice.tsx';
import { useRoom } from '../room/room.ts';

/**
 * The 9-point liking scale (Peryam and Pilgrim, 1957) as one row, every point with its words as it was published: 9 is "like
 * extremely", 1 "dislike extremely". The words of the chosen one stand below, before that those of both ends.
 */
export function LikingScale({ pour }: { readonly pour: PourId }) {
  const { notebook } = useRoom().follower;
  const liking = notebook.read(pour, 'liking');
  const { steps } = words.liking;
  const wordOf = (value: number): string => steps[steps.length - value] ?? '';
  return (
    <section class="stack-tight" aria-label={words.liking.title}>
      <h2>{words.liking.title}</h2>
      <div class="liking">
        {steps.map((_, index) => {
          const value = index + 1;
          const chosen = liking === value;
          return (
            <button
              type="button"
              key={value}
              class="liking-step figures"
              aria-pressed={chosen}
              aria-label={`${value} ${wordOf(value)}`}
              onClick={() => notebook.write(pour, 'liking', chosen ? null : value)}
            >
              {value}
            </button>
          );
        })}
      </div>
      {liking === null ? (
        <p class="soft small">{words.liking.ends(wordOf(1), wordOf(9))}</p>
      ) : (
        <p>
          <strong>{wordOf(liking)}</strong> <span class="soft small">{words.liking.hint}</span>
        </p>
      )}
      {liking !== null && <CountChoice about="liking" pours={[pour]} />}
    </section>
  );
}
