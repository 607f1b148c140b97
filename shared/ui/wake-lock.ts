/** Over plain http there is no wake lock; then a person has to set the device. */
export const wakeLockWorks = (): boolean => 'wakeLock' in navigator;

/** Keeps the screen on while the page is shown, where the device allows it. Answers with what lets go. */
export function keepAwake(): () => void {
  if (!wakeLockWorks()) return () => {};
  let lock: WakeLockSentinel | undefined;
  let done = false;
  const hold = async (): Promise<void> => {
    if (document.visibilityState !== 'visible') return;
    // A battery saver may refuse; the evening goes on all the same.
    lock = await navigator.wakeLock.request('screen').catch(() => undefined);
    if (done) await lock?.release();
  };
  const shown = (): void => void hold();
  document.addEventListener('visibilitychange', shown);
  shown();
  return () => {
    done = true;
    document.removeEventListener('visibilitychange', shown);
    void lock?.release();
  };
}
