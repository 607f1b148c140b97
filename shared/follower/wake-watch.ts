/**
 * Calls back whenever this page may have slept: shown again, back from the page cache, network back, or a second that
 * took much longer than a second. Phones give no better sign. Answers with what stops it.
 */
export function watchForWake(onWake: () => void): () => void {
  const shown = (): void => {
    if (document.visibilityState === 'visible') onWake();
  };
  document.addEventListener('visibilitychange', shown);
  window.addEventListener('pageshow', onWake);
  window.addEventListener('online', onWake);
  let last = Date.now();
  const beat = setInterval(() => {
    const slept = Math.abs(Date.now() - last - 1000) > 3000;
    last = Date.now();
    if (slept) onWake();
  }, 1000);
  return () => {
    document.removeEventListener('visibilitychange', shown);
    window.removeEventListener('pageshow', onWake);
    window.removeEventListener('online', onWake);
    clearInterval(beat);
  };
}
