/** What the worker looks after: the guests' page at each of its addresses, and the files it is made of. */
export type RequestKind = 'page' | 'asset' | 'not-ours';

/** The addresses of the guests' app; everything else, such as the host's app, has a way of its own. */
const places = /^\/(?:$|j(?:\/|$)|seat(?:\/|$))/;

export function kindOf(request: Pick<Request, 'method' | 'mode' | 'url'>, origin: string): RequestKind {
  const { origin: asked, pathname } = new URL(request.url);
  if (request.method !== 'GET' || asked !== origin) return 'not-ours';
  if (pathname.startsWith('/assets/')) return 'asset';
  return request.mode === 'navigate' && places.test(pathname) ? 'page' : 'not-ours';
}
