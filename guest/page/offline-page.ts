import { words } from '../language.ts';
import { takeOver } from '../worker/take-over-message.ts';

/**
 * Has the browser keep this page with everything that belongs to it, so that it opens without a network. Only over https
 * and on this machine itself; elsewhere browsers have no workers, and the page is as it is.
 */
export function keepPageOffline(): void {
  const workers = workersHere();
  if (workers === undefined || !import.meta.env.PROD) return;
  const keep = () => void workers.register(`/worker.${words.language}.js`).catch(() => undefined);
  // What is on the screen comes first.
  if (document.readyState === 'complete') keep();
  else window.addEventListener('load', keep, { once: true });
}

/** To be called where no evening is under way: a newer version of the page that waits may come in. */
export async function letNewVersionIn(): Promise<void> {
  const registration = await workersHere()
    ?.getRegistration()
    .catch(() => undefined);
  registration?.waiting?.postMessage(takeOver);
}

const workersHere = (): ServiceWorkerContainer | undefined =>
  'serviceWorker' in navigator ? navigator.serviceWorker : undefined;
