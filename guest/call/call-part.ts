import { CallStrip } from './call-strip.tsx';

/** Fetched by phones at home only. */
export const callPages = { CallStrip };
