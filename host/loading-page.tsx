import type { Later } from '../shared/ui/later.ts';
import { ErrorNotice } from './error-notice.tsx';
import { words } from './language.ts';

/** In place of a page that is being fetched; it is tried again by itself, and at once by hand. */
export function LoadingPage({ part }: { readonly part: Later<unknown> }) {
  return (
    <main class="page page-narrow">
      {part.failing.value ? (
        <ErrorNotice sentence={words.noAnswer} onRetry={part.again} />
      ) : (
        <p class="soft">{words.loading}</p>
      )}
    </main>
  );
}
