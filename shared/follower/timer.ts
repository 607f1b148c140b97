/** Runs something once after `ms`; answers with what cancels it. Given to whatever waits, so that tests turn the time. */
export type After = (ms: number, run: () => void) => () => void;

export const after: After = (ms, run) => {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
};
