import { existsSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { RequestHandler } from 'express';

const packable = /^\/[\w.-]+\.(?:js|css|svg)$/;

/**
 * Serves files of text as the build has packed them beside themselves, `name.gz` for `name`, to whoever takes gzip (RFC
 * 9110, 12.5.3): packed once and well, not anew for each phone. To be used before what serves the folder.
 */
export function packed(folder: string): RequestHandler {
  return (request, response, next) => {
    if (!packable.test(request.path)) return next();
    const name = basename(request.path);
    if (!existsSync(join(folder, `${name}.gz`))) return next();
    response.vary('Accept-Encoding');
    if (request.acceptsEncodings('gzip') === 'gzip') {
      response.type(name.slice(name.lastIndexOf('.'))).set('Content-Encoding', 'gzip');
      request.url = `/${name}.gz`;
    }
    next();
  };
}
