import { notebookWords as words } from '../../shared/language/en/notebook.ts';
import type { PourId } from '../../shared/wire/views.ts';
import { type ClosingText, closingPrompts, feelings } from '../../shared/words/closing.ts';
import { useRoom } from '../room/room.ts';

interface ClosingProps {
  readonly pour: PourId;
  readonly text: ClosingText;
}

export function FeelingsPick({ pour, text }: ClosingProps) {
  const { notebook } = useRoom().follower;
  const chosen = notebook.read(pour, 'feelings');
  return (
    <section class="stack-tight" aria-label={words.reflect.feelings}>
      <h2>{words.reflect.feelings}</h2>
      <div class="row">
        {feelings.map((feeling) => {
          const on = chosen.includes(feeling);
          return (
            <button
              type="button"
              key={feeling}
              class="chip"
              aria-pressed={on}
              onClick={() =>
                notebook.write(
                  pour,
                  'feelings',
                  on ? chosen.filter((each) => each !== feeling) : [...chosen, feeling],
                )
              }
            >
              {text.feelings[feeling]}
            </button>
          );
        })}
      </div>
    </section>
  );
}

/** Beginnings of sentences, put on a line of their own below what is written. */
export function Prompts({ pour, text }: ClosingProps) {
  const { notebook } = useRoom().follower;
  const start = (prompt: string): void => {
    const before = notebook.read(pour, 'thoughts').trimEnd();
    const opening = prompt.replace(/\s*…$/, ' ');
    const text = before === '' ? opening : `${before}\n${opening}`;
    notebook.write(pour, 'thoughts', text);
    const field = document.querySelector<HTMLTextAreaElement>('[data-field="thoughts"] textarea');
    if (field === null) return;
    // Before the page is drawn again, so that what is typed at once goes behind it.
    field.value = text;
    field.focus();
    field.setSelectionRange(text.length, text.length);
  };
  return (
    <section class="stack-tight" aria-label={words.reflect.prompts}>
      <h2>{words.reflect.prompts}</h2>
      <div class="row">
        {closingPrompts.map((prompt) => (
          <button
            type="button"
            class="chip chip-place"
            key={prompt}
            onClick={() => start(text.prompts[prompt])}
          >
            {text.prompts[prompt]}
          </button>
        ))}
      </div>
    </section>
  );
}
