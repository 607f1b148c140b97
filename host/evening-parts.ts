import { later } from '../shared/ui/later.ts';

/** The pages that follow the room of one tasting, each fetched when it is first asked for. */
export const doorsPart = later(() => import('./set-up/doors-page.tsx'));
export const roomPart = later(() => import('./conduct/room-page.tsx'));
export const invitePart = later(() => import('./invite/invite-page.tsx'));
export const pouringPart = later(() => import('./pouring/pouring-page.tsx'));
export const paperPart = later(() => import('./print/paper-page.tsx'));
