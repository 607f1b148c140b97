import type { ComponentChildren } from 'preact';
import { Icon } from '../../../shared/ui/icon.tsx';
import { down } from '../../../shared/ui/strokes.ts';

interface FoldProps {
  readonly title: string;
  /** What it belongs to, for those who do not see what stands beside it. */
  readonly of?: string | undefined;
  /** What it holds, in a word, for those who leave it folded. */
  readonly summary?: string | undefined;
  readonly open?: boolean | undefined;
  /** Less room: for what explains a figure. */
  readonly small?: boolean | undefined;
  readonly children: ComponentChildren;
}

/** Something that most hosts leave folded. */
export function Fold({ title, of, summary, open, small, children }: FoldProps) {
  return (
    <details class={small ? 'fold fold-small' : 'fold'} open={open}>
      <summary>
        <span class="fold-title">
          {title}
          {of && <span class="visually-hidden">: {of}</span>}
        </span>
        {summary && <span class="fold-summary">{summary}</span>}
        <Icon of={down} />
      </summary>
      <div class="fold-body">{children}</div>
    </details>
  );
}
