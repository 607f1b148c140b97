import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** A page's first heading takes the focus, so that screen readers and keyboards begin where the page begins. */
export function PageTitle({ children }: { readonly children: ComponentChildren }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <h1 class="page-title" tabIndex={-1} ref={heading}>
      {children}
    </h1>
  );
}
