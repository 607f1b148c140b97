/** How often a condition is looked at, in ms. */
const glance = 5;

/**
 * How long to wait for what should come soon, in ms: for what never comes, and not for a machine that does four other
 * things meanwhile.
 */
export const patience = 30_000;

/**
 * Waits for something to become true instead of for a time to pass.
 * Rejects with a sentence that names what did not come within so many ms.
 */
export async function until<Value>(
  what: string,
  look: () => Value | undefined | null | false,
  atMost = patience,
): Promise<Value> {
  const giveUpAt = performance.now() + atMost;
  for (;;) {
    const seen = look();
    if (seen !== undefined && seen !== null && seen !== false) return seen;
    if (performance.now() > giveUpAt) throw new Error(`Waited ${atMost} ms in vain until ${what}.`);
    await new Promise((resolve) => setTimeout(resolve, glance));
  }
}

/** The same, for those who carry on either way. */
export const cameTrue = (look: () => boolean, atMost: number): Promise<boolean> =>
  until('it came true', look, atMost).catch(() => false);
