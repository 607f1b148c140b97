import { useEffect, useRef } from 'preact/hooks';
import { Notice } from '../../shared/ui/notice.tsx';
import { CodeForm } from '../page/code-form.tsx';
import { words } from './language.ts';

interface CodePageProps {
  readonly problem: string | null;
  readonly onCode: (code: string) => void;
}

/** One field, which has the keyboard from the start: a television has a remote control and no pointer. */
export function CodePage({ problem, onCode }: CodePageProps) {
  const page = useRef<HTMLElement>(null);
  useEffect(() => page.current?.querySelector('input')?.focus(), []);
  return (
    <main class="screen-page screen-door" ref={page}>
      <h1>{words.door.title}</h1>
      <p class="screen-lead">{words.door.lead}</p>
      {problem !== null && <Notice kind="info">{problem}</Notice>}
      <CodeForm class="screen-form" words={words.door} onCode={onCode} />
    </main>
  );
}
