import { copyFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type SpawnedServer, spawnServer } from '../../support/server.ts';

/** Where a process of the cluster runs, and the one that runs there. */
export interface Place {
  readonly folder: string;
  server: SpawnedServer | undefined;
}

interface Starting {
  readonly database: string;
  /** The keys of its folder are everybody's. */
  readonly first: Place;
  readonly clockOff?: number;
  /** Another bundle of the server than the sources as they stand. */
  readonly bundle?: string | undefined;
}

export async function startIn(place: Place, { database, first, clockOff, bundle }: Starting): Promise<void> {
  for (const key of first === place ? [] : ['notes.key', 'house.key'])
    await copyFile(join(first.folder, key), join(place.folder, key));
  place.server = await spawnServer({
    folder: place.folder,
    database,
    ...(clockOff === undefined ? {} : { clockOff }),
    ...(bundle === undefined ? {} : { bundle }),
  });
}
