import { Button } from '../shared/ui/button.tsx';
import { Notice } from '../shared/ui/notice.tsx';
import { words } from './language.ts';

interface ErrorNoticeProps {
  /** What is wrong and what to do about it. */
  readonly sentence: string;
  readonly onRetry: () => void;
}

export function ErrorNotice({ sentence, onRetry }: ErrorNoticeProps) {
  return (
    <div class="stack" role="alert">
      <Notice kind="caution">
        <p>{sentence}</p>
      </Notice>
      <div>
        <Button onPress={onRetry}>{words.tryAgain}</Button>
      </div>
    </div>
  );
}
