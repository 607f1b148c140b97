/** A function and its arguments as an expression for a page; it knows nothing of what stands around it here. */
export const inPage = <Given extends readonly unknown[]>(
  run: (...given: Given) => unknown,
  ...given: Given
): string =>
  // What runs TypeScript here may have every function keep its name by a helper that no page has.
  `((__name) => (${String(run)})(${given.map((each) => JSON.stringify(each)).join()}))((named) => named)`;
