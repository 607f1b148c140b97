import type { ComponentChildren } from 'preact';

interface PrintPageProps {
  readonly title: string;
  /** What it belongs to: the evening and its date. */
  readonly running: string;
  readonly children: ComponentChildren;
  /** Cautions and the like, at the end of the page. */
  readonly foot?: ComponentChildren;
}

/** One sheet of paper, on the screen as it will be printed. Each starts on a sheet of its own. */
export function PrintPage({ title, running, children, foot }: PrintPageProps) {
  return (
    <section class="sheet" data-theme="linen" aria-label={title}>
      <header class="sheet-head">
        <h2>{title}</h2>
        <p>{running}</p>
      </header>
      <div class="sheet-body">{children}</div>
      {foot && <footer class="sheet-foot">{foot}</footer>}
    </section>
  );
}
