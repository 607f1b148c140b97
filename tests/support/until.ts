/** How often a condition is looked at, in ms. */
const glance = 5;

/**
 * Waits for something to become true instead of for a time to pass.
 * Rejects with a sentence that names what did not come within `patience` ms.
 */
export async function until<Value>(
  what: string,
  look: () => Value | undefined | null | false,
  patience = 10_000,
): Promise<Value> {
  const giveUpAt = performance.now() + patience;
  for (;;) {
    const seen = look();
    if (seen !== undefined && seen !== null && seen !== false) return seen;
    if (performance.now() > giveUpAt) throw new Error(`Waited ${patience} ms in vain until ${what}.`);
    await new Promise((resolve) => setTimeout(resolve, glance));
  }
}

/** The same, for those who carry on either way. */
export const cameTrue = (look: () => boolean, patience: number): Promise<boolean> =>
  until('it came true', look, patience).catch(() => false);
