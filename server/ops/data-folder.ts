import { join } from 'node:path';

/** What lies in the data folder. */
export const storeIn = (folder: string): string => join(folder, 'quietpour.db');

/** Where a running server is asked for a backup and about its houses: only who may enter the folder can ask. */
export const doorOf = (folder: string): string =>
  process.platform === 'win32'
    ? `\\\\.\\pipe\\quietpour-${Buffer.from(folder).toString('hex').slice(-200)}`
    : join(folder, 'door.sock');
