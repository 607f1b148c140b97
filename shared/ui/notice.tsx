import type { ComponentChildren } from 'preact';
import { Icon } from './icon.tsx';
import { caution, info, water } from './notice-strokes.ts';

interface NoticeProps {
  readonly kind: 'caution' | 'info' | 'water';
  readonly title?: string | undefined;
  readonly children: ComponentChildren;
}

const marks = { caution, info, water } as const;

/** Something to know before going on. It is part of the page and does not interrupt. */
export function Notice({ kind, title, children }: NoticeProps) {
  return (
    <div class={`notice notice-${kind}`} role="note">
      <Icon of={marks[kind]} />
      <div>
        {title && <p class="notice-title">{title}</p>}
        {children}
      </div>
    </div>
  );
}
