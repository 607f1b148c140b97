import { useState } from 'preact/hooks';
import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import { wordsToReview } from '../../shared/notes/words-to-review.ts';
import { Button } from '../../shared/ui/button.tsx';
import type { PourId } from '../../shared/wire/views.ts';
import { type ClosingText, reviewAnswers } from '../../shared/words/closing.ts';
import { textOf, type WordSheet } from '../../shared/words/word-sheet.ts';
import { words as pageWords } from '../language.ts';
import { useRoom } from '../room/room.ts';
import { senseOf } from './word-senses.ts';

interface ReviewWalkProps {
  readonly pour: PourId;
  readonly sheet: WordSheet;
  readonly text: ClosingText;
}

/** One word after the other, from the top: is it still in the glass? */
export function ReviewWalk({ pour, sheet, text }: ReviewWalkProps) {
  const { notebook } = useRoom().follower;
  const all = wordsToReview((field) => notebook.read(pour, field));
  const answers = notebook.read(pour, 'review');
  const firstOpen = all.findIndex(({ code }) => answers[code] === undefined);
  const [at, setAt] = useState(firstOpen === -1 ? all.length : firstOpen);
  const word = all[at];
  if (all.length === 0) return <p class="soft">{words.review.none}</p>;
  if (word === undefined) {
    return (
      <section class="stack-tight">
        <p class="accepted">{words.review.done}</p>
        <Button onPress={() => setAt(0)}>{words.review.again}</Button>
      </section>
    );
  }
  return (
    <section class="stack-tight" aria-label={text.review.question}>
      <p class="soft small figures-line">{words.review.where(at + 1, all.length)}</p>
      <p class="review-word" aria-live="polite">
        <bdi>{textOf(sheet, word.code)}</bdi>{' '}
        <span class="soft small">
          {word.fields.map((field) => pageWords.fields[senseOf(field)]).join(', ')}
        </span>
      </p>
      <h2 class="visually-hidden">{text.review.question}</h2>
      <div class="review-answers">
        {reviewAnswers.map((answer) => (
          <Button
            key={answer}
            pressed={answers[word.code] === answer}
            onPress={() => {
              notebook.write(pour, 'review', { ...answers, [word.code]: answer });
              setAt(at + 1);
            }}
          >
            {text.review[answer]}
          </Button>
        ))}
      </div>
      <div class="review-ways">
        <Button kind="quiet" disabled={at === 0} onPress={() => setAt(at - 1)}>
          {words.review.back}
        </Button>
        <Button kind="quiet" onPress={() => setAt(at + 1)}>
          {words.review.skip}
        </Button>
      </div>
    </section>
  );
}
