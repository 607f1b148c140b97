/**
 * A copy in random order: Fisher and Yates' shuffle, in Durstenfeld's form (1964). `random` gives numbers
 * from 0 up to but not including 1; the same sequence gives the same order.
 */
export function shuffled<T>(items: readonly T[], random: () => number): T[] {
  const pool = [...items];
  const drawn: T[] = [];
  while (pool.length > 0) {
    const at = Math.min(pool.length - 1, Math.max(0, Math.floor(random() * pool.length)));
    drawn.push(...pool.splice(at, 1));
  }
  return drawn;
}
