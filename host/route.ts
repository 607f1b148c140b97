import { type TastingId, tastingId } from '../core/ids.ts';
import { isPaperKind, type PaperKind } from './paper-kind.ts';

export type Route =
  | { readonly page: 'home' }
  /** `part`: the name of an opened part of the plan, so that the browser's own way back leads from part to part. */
  | { readonly page: 'plan'; readonly tasting: TastingId; readonly part?: string | undefined }
  | { readonly page: 'ahead'; readonly tasting: TastingId }
  | { readonly page: 'doors'; readonly tasting: TastingId }
  | { readonly page: 'room'; readonly tasting: TastingId }
  | { readonly page: 'invite'; readonly tasting: TastingId }
  | { readonly page: 'pouring'; readonly tasting: TastingId }
  | { readonly page: 'recap'; readonly tasting: TastingId }
  /** For a helper's key. */
  | { readonly page: 'help'; readonly tasting: TastingId }
  | { readonly page: 'print'; readonly tasting: TastingId; readonly kind: PaperKind };

/** The pages that follow the room of one tasting. */
const alone = ['home', 'plan', 'ahead', 'recap', 'help'] as const;
type AloneRoute = Extract<Route, { page: (typeof alone)[number] }>;
export type TastingRoute = Exclude<Route, AloneRoute>;
export const ofRoom = (route: Route): route is TastingRoute =>
  !(alone as readonly string[]).includes(route.page);

const ofTasting =
  /^#\/t\/([A-Za-z0-9_-]{1,40})\/(plan(?:\/[a-z-]+)?|ahead|doors|room|invite|pouring|recap|help|print\/[a-z-]+)$/;

/** Reads the part of the address behind the page; whatever is unknown leads home. */
export function routeOf(hash: string): Route {
  const [, id, page] = ofTasting.exec(hash) ?? [];
  if (id === undefined) return { page: 'home' };
  const tasting = tastingId(id);
  if (page === 'plan' || page?.startsWith('plan/')) {
    return { page: 'plan', tasting, part: page.split('/')[1] };
  }
  switch (page) {
    case 'ahead':
    case 'doors':
    case 'room':
    case 'invite':
    case 'pouring':
    case 'recap':
    case 'help':
      return { page, tasting };
    default: {
      const kind = page?.replace('print/', '') ?? '';
      return isPaperKind(kind) ? { page: 'print', tasting, kind } : { page: 'home' };
    }
  }
}

export function hrefOf(route: Route): string {
  switch (route.page) {
    case 'home':
      return '#/';
    case 'plan':
      return `#/t/${route.tasting}/plan${route.part === undefined ? '' : `/${route.part}`}`;
    case 'print':
      return `#/t/${route.tasting}/print/${route.kind}`;
    default:
      return `#/t/${route.tasting}/${route.page}`;
  }
}

export function goTo(route: Route): void {
  window.location.hash = hrefOf(route);
}
