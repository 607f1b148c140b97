/**
 * Over plain http there is no wake lock; then a person has to set the device. On iOS before 18.4 a page on the home
 * screen has one that does nothing (WebKit bug 254545, from memory).
 */
export function wakeLockWorks({
  userAgent = '',
  standalone = false,
}: Partial<IosNavigator> = navigator): boolean {
  const [, major, minor] = /\bOS (\d+)_(\d+)/.exec(userAgent) ?? [];
  if (standalone && Number(major) + Number(minor) / 100 < 18.04) return false;
  return 'wakeLock' in navigator;
}

/** Only iOS says whether a page runs from the home screen. */
type IosNavigator = Pick<Navigator, 'userAgent'> & { readonly standalone: boolean };

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
