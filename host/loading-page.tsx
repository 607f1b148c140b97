import { ErrorNotice } from './error-notice.tsx';
import { words } from './language.ts';
import { hrefOf } from './route.ts';

interface LoadingPageProps {
  readonly title?: string | undefined;
  /** What is wrong and what to do about it; absent while it is on its way. */
  readonly failed: string | undefined;
  readonly onRetry: () => void;
}

/** In place of a page that is not here yet. */
export function LoadingPage({ title, failed, onRetry }: LoadingPageProps) {
  if (failed === undefined) {
    return (
      <main class="page">
        <p class="soft">{words.loading}</p>
      </main>
    );
  }
  return (
    <main class="page page-narrow stack">
      {title && <h1>{title}</h1>}
      <ErrorNotice sentence={failed} onRetry={onRetry} />
      <a href={hrefOf({ page: 'home' })}>{words.doors.toHome}</a>
    </main>
  );
}
