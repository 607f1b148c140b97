import { words } from './language.ts';

interface WaitingPageProps {
  /** Null until the server has given one. */
  readonly number: number | null;
  readonly trouble: string | null;
}

/** The number in a glass of its own, so large that the host reads it from across the room. */
export function WaitingPage({ number, trouble }: WaitingPageProps) {
  return (
    <main class="screen-page screen-waiting">
      <h1>{number === null ? words.waiting.asking : words.waiting.title}</h1>
      {number !== null && (
        <div class="screen-glass">
          <p class="screen-number figures">{number}</p>
          <span class="screen-stem" aria-hidden="true" />
        </div>
      )}
      <p class="screen-lead" aria-live="polite">
        {trouble ?? words.waiting.lead}
      </p>
      <p class="screen-aside">{words.waiting.light}</p>
    </main>
  );
}
