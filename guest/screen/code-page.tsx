import { useEffect, useRef, useState } from 'preact/hooks';
import { callWords } from '../../shared/language/en/call.ts';
import { Notice } from '../../shared/ui/notice.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import { CodeForm } from '../page/code-form.tsx';
import { chooseCamera, isCamera } from './camera-choice.ts';
import { words } from './language.ts';

interface CodePageProps {
  readonly problem: string | null;
  readonly onCode: (code: string) => void;
}

/** One field, which has the keyboard from the start: a television has a remote control and no pointer. */
export function CodePage({ problem, onCode }: CodePageProps) {
  const page = useRef<HTMLElement>(null);
  const [camera, setCamera] = useState(isCamera);
  const turn = (on: boolean): void => {
    chooseCamera(on);
    setCamera(on);
  };
  useEffect(() => page.current?.querySelector('input')?.focus(), []);
  return (
    <main class="screen-page screen-door" ref={page}>
      <h1>{words.door.title}</h1>
      <p class="screen-lead">{words.door.lead}</p>
      {problem !== null && <Notice kind="info">{problem}</Notice>}
      <CodeForm class="screen-form" words={words.door} onCode={onCode} />
      <Switch label={callWords.asRoom} hint={callWords.asRoomHint} on={camera} onTurn={turn} />
    </main>
  );
}
