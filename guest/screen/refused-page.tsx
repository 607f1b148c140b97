import { useEffect, useRef } from 'preact/hooks';
import { words } from './language.ts';

interface RefusedPageProps {
  readonly why: string;
  readonly onAgain: () => void;
  readonly onOther: () => void;
}

/** Switched off: dark in every theme, with a way back for whoever has the remote control. */
export function RefusedPage({ why, onAgain, onOther }: RefusedPageProps) {
  const again = useRef<HTMLButtonElement>(null);
  useEffect(() => again.current?.focus(), []);
  return (
    <main class="screen-page screen-dark" data-theme="cellar">
      <h1>{words.refused.title}</h1>
      <p class="screen-lead">{why}</p>
      <div class="screen-ways">
        <button ref={again} type="button" class="button" onClick={onAgain}>
          {words.refused.again}
        </button>
        <button type="button" class="button button-quiet" onClick={onOther}>
          {words.refused.otherCode}
        </button>
      </div>
    </main>
  );
}
