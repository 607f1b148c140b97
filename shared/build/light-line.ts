import { join } from 'node:path';

const line = join(import.meta.dirname, '../line');

/**
 * For a page's `resolve.alias`: what carries the Socket.IO client's packets and what reads them is our own, text only and
 * a quarter as large. Elsewhere, as for stand-ins, the packages' own are used.
 */
export const lightLine = [
  { find: /^engine\.io-client$/, replacement: join(line, 'engine.ts') },
  { find: /^socket\.io-parser$/, replacement: join(line, 'parser.ts') },
];
