import type { Surroundings } from './page-cache.ts';
import { storeName, type Version } from './version.ts';

/** How long the network is waited for before the kept page is shown, in ms. A poor network often answers never. */
export const patience = 3000;

/**
 * A file whose name carries its content never changes: the kept one is as good, whichever version has kept it. One that
 * was not kept is fetched, and kept.
 */
export async function answerAsset(
  request: Request,
  version: Version,
  { caches, fetch }: Surroundings,
): Promise<Response> {
  const kept = await caches.match(request, { ignoreVary: true });
  if (kept !== undefined) return kept;
  const answer = await fetch(request);
  if (answer.ok) {
    const copy = answer.clone();
    const store = await caches.open(storeName(version));
    // A device that is full has the answer all the same.
    await store.put(request, copy).catch(() => undefined);
  }
  return answer;
}

/**
 * The page as the server has it now; the kept one when the server is silent for too long, cannot be reached or is
 * broken. Without a kept page the network is waited for.
 */
export async function answerPage(
  request: Request,
  version: Version,
  { caches, fetch }: Surroundings,
  wait: (ms: number) => Promise<void>,
): Promise<Response> {
  const answer = fetch(request);
  const timely = await Promise.race([answer.catch(() => undefined), wait(patience).then(() => undefined)]);
  if (timely !== undefined && timely.status < 500) return timely;
  const store = await caches.open(storeName(version));
  return (await store.match(version.page, { ignoreVary: true })) ?? answer;
}
