/**
 * Methods that our code calls and that the oldest browsers we serve lack (iOS 15, Chrome 90, Firefox 91, televisions of
 * 2021): the bundler lowers syntax, not methods. Imported by each page and worker before anything else; a test of the
 * built files names what is missing here. Sources of the behaviour: ECMA-262 (`at`, `findLast`, `toSorted` and the like),
 * the DOM standard (`AbortSignal.timeout`).
 */
function add(owner: object, methods: Readonly<Record<string, unknown>>) {
  for (const [name, value] of Object.entries(methods))
    if (!(name in owner)) Object.defineProperty(owner, name, { value, configurable: true, writable: true });
}

type Test = (value: unknown, index: number, all: readonly unknown[]) => unknown;

function at(this: { readonly length: number; readonly [index: number]: unknown }, index: number) {
  return this[index < 0 ? this.length + index : index];
}

function findLastIndex(this: readonly unknown[], test: Test) {
  let index = this.length - 1;
  while (index >= 0 && !test(this[index], index, this)) index -= 1;
  return index;
}

add(Array.prototype, {
  at,
  findLastIndex,
  findLast(this: readonly unknown[], test: Test) {
    return this[findLastIndex.call(this, test)];
  },
  toSorted(this: readonly unknown[], order?: (one: unknown, other: unknown) => number) {
    return [...this].sort(order);
  },
  toReversed(this: readonly unknown[]) {
    return [...this].reverse();
  },
});
add(String.prototype, {
  at,
  // Ours are all of text or of patterns for all matches; the text that comes in says nothing with `$`.
  replaceAll(this: string, what: string | RegExp, by: string) {
    return typeof what === 'string' ? this.split(what).join(by) : this.replace(what, by);
  },
});
const own = Object.prototype.hasOwnProperty;
add(Object, { hasOwn: (owner: object, key: PropertyKey) => own.call(owner, key) });
add(AbortSignal, {
  timeout(ms: number) {
    const ending = new AbortController();
    setTimeout(() => ending.abort(), ms);
    return ending.signal;
  },
});
