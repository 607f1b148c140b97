/** What a page says to a worker that waits, when no evening is under way on it. */
export const takeOver = 'take-over';
