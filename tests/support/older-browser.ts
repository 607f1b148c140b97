/**
 * Makes a page's browser know no more than iOS 15.0, Chrome 90 and Firefox 91 do, as far as our pages could tell: runs in
 * the page before its own scripts. What was there when is from MDN's browser-compat-data.
 */
export function forgetNewerMethods(): void {
  const newer: readonly (readonly [object, readonly string[]])[] = [
    [Array.prototype, ['at', 'findLast', 'findLastIndex', 'toSorted', 'toReversed', 'toSpliced', 'with']],
    [String.prototype, ['at', 'isWellFormed', 'toWellFormed']],
    [Object, ['hasOwn', 'groupBy']],
    [Map, ['groupBy']],
    [Promise, ['withResolvers', 'try']],
    [AbortSignal, ['timeout', 'any']],
    [URL, ['canParse', 'parse']],
    [Intl, ['supportedValuesOf', 'DurationFormat']],
    [HTMLDialogElement.prototype, ['showModal', 'close', 'show']],
    [Crypto.prototype, ['randomUUID']],
    [Element.prototype, ['moveBefore']],
    [globalThis, ['structuredClone', 'requestIdleCallback', 'scheduler', 'navigation']],
    [Navigator.prototype, ['wakeLock', 'vibrate', 'share', 'userAgentData']],
  ];
  for (const [owner, names] of newer) for (const name of names) Reflect.deleteProperty(owner, name);
}

/** As a browser from before our floor: it does not know the layout that we ask for. */
export function forgetOurLayout(): void {
  const supports = CSS.supports.bind(CSS);
  CSS.supports = (property: string, value?: string) =>
    !property.startsWith('aspect-ratio') &&
    (value === undefined ? supports(property) : supports(property, value));
}

/** As a browser whose owner lets no page keep anything: whoever asks for a store is refused, as the HTML standard says. */
export function refuseStorage(): void {
  const refuse = {
    get: (): never => {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    },
  };
  for (const store of ['localStorage', 'sessionStorage', 'indexedDB', 'caches'])
    Object.defineProperty(globalThis, store, refuse);
}
