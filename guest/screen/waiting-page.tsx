import { words } from './language.ts';

interface WaitingPageProps {
  /** Null until the server has given one. */
  readonly number: number | null;
  readonly trouble: string | null;
}

/** The number as large as a number plate: the host reads it from across the room. */
export function WaitingPage({ number, trouble }: WaitingPageProps) {
  return (
    <main class="screen-page screen-waiting">
      <h1>{number === null ? words.waiting.asking : words.waiting.title}</h1>
      {number !== null && <p class="screen-number figures">{number}</p>}
      <p class="screen-lead" aria-live="polite">
        {trouble ?? words.waiting.lead}
      </p>
      <p class="screen-aside">{words.waiting.light}</p>
    </main>
  );
}
