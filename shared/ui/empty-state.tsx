import type { ComponentChildren } from 'preact';
import { StemmedGlass } from './stemmed-glass.tsx';

interface EmptyStateProps {
  readonly title: string;
  /** What will be here, and how it comes to be. */
  readonly children: ComponentChildren;
  readonly action?: ComponentChildren;
}

/** A clean glass, and what to do to have something in it. */
export function EmptyState({ title, children, action }: EmptyStateProps) {
  return (
    <div class="empty">
      <StemmedGlass />
      <h2>{title}</h2>
      <div class="empty-words">{children}</div>
      {action}
    </div>
  );
}
