import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * A page's first heading takes the focus, so that screen readers and keyboards begin where the page begins. Whoever was quick
 * enough to be in a field of it already keeps the keyboard.
 */
export function PageTitle({ children }: { readonly children: ComponentChildren }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (document.querySelector('input:focus')) return;
    window.scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <h1 class="page-title" tabIndex={-1} ref={heading}>
      {children}
    </h1>
  );
}
