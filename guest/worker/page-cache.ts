import { isOurStore, storeName, type Version } from './version.ts';

/** The parts of a browser that the worker keeps things with, so that a test can stand in for them. */
export interface Surroundings {
  readonly caches: CacheStorage;
  readonly fetch: (input: RequestInfo, init?: RequestInit) => Promise<Response>;
}

/**
 * Takes the whole version in, or nothing of it. Rejects when the network fails, or when the server has another version
 * by now: the browser tries again when the page is next opened.
 */
export async function takeIn(version: Version, { caches, fetch }: Surroundings): Promise<void> {
  const page = await fetch(version.page, { cache: 'no-cache' });
  const [first = ''] = version.files;
  if (!page.ok || !(await page.clone().text()).includes(first)) {
    throw new Error('The page on the server is of another version than its worker.');
  }
  const store = await caches.open(storeName(version));
  await store.addAll([...version.files]);
  await store.put(version.page, page);
}

/** Lets go of every other version. To be called when no page of another version is open any more. */
export async function forgetOthers(version: Version, { caches }: Surroundings): Promise<void> {
  const names = (await caches.keys()).filter((name) => isOurStore(name) && name !== storeName(version));
  await Promise.all(names.map((name) => caches.delete(name)));
}
