import { type TastingId, tastingId } from '../core/ids.ts';

export type Route =
  | { readonly page: 'home' }
  /** `paste`: the page begins with a field to paste a list of pours into. */
  | { readonly page: 'plan'; readonly tasting: TastingId; readonly paste: boolean }
  | { readonly page: 'doors'; readonly tasting: TastingId }
  | { readonly page: 'room'; readonly tasting: TastingId };

const ofTasting = /^#\/t\/([A-Za-z0-9_-]{1,40})\/(plan|plan\/paste|doors|room)$/;

/** Reads the part of the address behind the page; whatever is unknown leads home. */
export function routeOf(hash: string): Route {
  const [, id, page] = ofTasting.exec(hash) ?? [];
  if (id === undefined) return { page: 'home' };
  const tasting = tastingId(id);
  switch (page) {
    case 'plan':
    case 'plan/paste':
      return { page: 'plan', tasting, paste: page === 'plan/paste' };
    case 'doors':
    case 'room':
      return { page, tasting };
    default:
      return { page: 'home' };
  }
}

export function hrefOf(route: Route): string {
  switch (route.page) {
    case 'home':
      return '#/';
    case 'plan':
      return `#/t/${route.tasting}/plan${route.paste ? '/paste' : ''}`;
    case 'doors':
    case 'room':
      return `#/t/${route.tasting}/${route.page}`;
    default:
      return route satisfies never;
  }
}

export function goTo(route: Route): void {
  window.location.hash = hrefOf(route);
}
