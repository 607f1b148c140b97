import type { PourId } from '../../shared/wire/views.ts';
import { CountChoice } from '../consent/count-choice.tsx';
import { useRoom } from '../room/room.ts';
import { words } from './language.ts';

/**
 * The 9-point liking scale (Peryam and Pilgrim, 1957), every point with its words as it was published, the best on top.
 * 9 is "like extremely", 1 "dislike extremely".
 */
export function LikingScale({ pour }: { readonly pour: PourId }) {
  const { notebook } = useRoom().follower;
  const liking = notebook.read(pour, 'liking');
  return (
    <section class="stack-tight" aria-label={words.liking.title}>
      <h2>{words.liking.title}</h2>
      <p class="soft small">{words.liking.hint}</p>
      <div class="liking">
        {words.liking.steps.map((step, index) => {
          const value = words.liking.steps.length - index;
          const chosen = liking === value;
          return (
            <button
              type="button"
              key={step}
              class="liking-step"
              aria-pressed={chosen}
              onClick={() => notebook.write(pour, 'liking', chosen ? null : value)}
            >
              {step}
            </button>
          );
        })}
      </div>
      {liking !== null && <CountChoice about="liking" pours={[pour]} />}
    </section>
  );
}
