import { afterEach, beforeEach } from 'vitest';

/** For steps of one evening: one that has broken off is not played on, for what follows would only fail for want of it. */
export function stopAtTheFirstFault(): void {
  let brokeOff: string | undefined;
  beforeEach(() => {
    if (brokeOff !== undefined) throw new Error(`The evening has broken off at “${brokeOff}”.`);
  });
  afterEach(({ task }) => {
    if (task.result?.state === 'fail') brokeOff ??= task.name;
  });
}
