import { forgetOthers, takeIn } from './page-cache.ts';
import { kindOf } from './request-kind.ts';
import { answerAsset, answerPage } from './responses.ts';
import { takeOver } from './take-over-message.ts';
import type { Version } from './version.ts';

/** Put in by the build. */
declare const thisVersion: Version;

interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Asked extends Lasting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
/** A worker's global scope; its types cannot be had beside those of a page. */
interface WorkerScope {
  readonly location: { readonly origin: string };
  readonly caches: CacheStorage;
  readonly fetch: typeof fetch;
  readonly clients: { matchAll(options: object): Promise<readonly unknown[]> };
  skipWaiting(): Promise<void>;
  addEventListener(name: 'install' | 'activate', run: (event: Lasting) => void): void;
  addEventListener(name: 'fetch', run: (event: Asked) => void): void;
  addEventListener(name: 'message', run: (event: Lasting & { readonly data: unknown }) => void): void;
}

const version = thisVersion;
const scope = globalThis as unknown as WorkerScope;
const around = { caches: scope.caches, fetch: scope.fetch.bind(scope) };
const wait = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

scope.addEventListener('install', (event) => event.waitUntil(takeIn(version, around)));
scope.addEventListener('activate', (event) => event.waitUntil(forgetOthers(version, around)));
// A new version waits until no page is open, or until the only one stands outside an evening and lets it in.
scope.addEventListener('message', (event) => {
  if (event.data === takeOver) event.waitUntil(takeOverFromOne());
});
async function takeOverFromOne(): Promise<void> {
  const open = await scope.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (open.length <= 1) await scope.skipWaiting();
}
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  switch (kindOf(request, scope.location.origin)) {
    case 'asset':
      return event.respondWith(answerAsset(request, version, around));
    case 'page':
      return event.respondWith(answerPage(request, version, around, wait));
    case 'not-ours':
      return;
  }
});
