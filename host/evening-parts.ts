import { type Later, later } from '../shared/ui/later.ts';
import type { TastingRoute } from './route.ts';

/** The pages that follow the room of one tasting, each fetched when it is first asked for. */
export const doorsPart = later(() => import('./set-up/doors-page.tsx'));
export const roomPart = later(() => import('./conduct/room-page.tsx'));
export const invitePart = later(() => import('./invite/invite-page.tsx'));
export const pouringPart = later(() => import('./pouring/pouring-page.tsx'));
export const paperPart = later(() => import('./print/paper-page.tsx'));

export const eveningParts = {
  doors: doorsPart,
  room: roomPart,
  invite: invitePart,
  pouring: pouringPart,
  print: paperPart,
} as const satisfies Record<TastingRoute['page'], Later<unknown>>;
