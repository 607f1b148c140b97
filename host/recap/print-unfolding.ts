/**
 * Paper has no folds: how a finding was reckoned is opened for printing, and what was folded is folded again. To be
 * called once the page stands; answers with what ends it.
 */
export function unfoldForPrint(): () => void {
  let opened: HTMLDetailsElement[] = [];
  const before = (): void => {
    opened = [...document.querySelectorAll<HTMLDetailsElement>('details[data-print="open"]:not([open])')];
    for (const fold of opened) fold.open = true;
  };
  const after = (): void => {
    for (const fold of opened) fold.open = false;
    opened = [];
  };
  window.addEventListener('beforeprint', before);
  window.addEventListener('afterprint', after);
  return () => {
    window.removeEventListener('beforeprint', before);
    window.removeEventListener('afterprint', after);
  };
}
