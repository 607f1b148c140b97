/** Time that passes only when a test says so. */
export function handClock(start = 0) {
  let now = start;
  let timers: { readonly at: number; readonly run: () => void }[] = [];
  const settle = async (): Promise<void> => {
    for (let turn = 0; turn < 8; turn += 1) await Promise.resolve();
  };
  return {
    now: () => now,
    after(ms: number, run: () => void): () => void {
      const timer = { at: now + ms, run };
      // In order of time, and of asking where that is the same.
      const later = timers.findIndex(({ at }) => at > timer.at);
      timers.splice(later < 0 ? timers.length : later, 0, timer);
      return () => {
        timers = timers.filter((each) => each !== timer);
      };
    },
    /** Runs what falls due on the way, in order, and lets promises settle after each. */
    async pass(ms: number): Promise<void> {
      const until = now + ms;
      await settle();
      for (;;) {
        const due = timers[0];
        if (due === undefined || due.at > until) break;
        timers.shift();
        now = Math.max(now, due.at);
        due.run();
        await settle();
      }
      now = until;
    },
  };
}
