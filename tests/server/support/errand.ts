import { spawn } from 'node:child_process';
import { serverCode } from '../../support/server.ts';
import type { Exit } from './process.ts';

/** As `npm run backup`, `restore` and `house` do, from the sources. */
export function errandIn(data: string, ...words: string[]): Promise<Exit> {
  const root = new URL('../../..', import.meta.url).pathname;
  const child = spawn(process.execPath, [...serverCode(), ...words], {
    cwd: root,
    env: { ...process.env, QUIETPOUR_DATA: data },
  });
  const said = { stdout: '', stderr: '' };
  child.stdout.on('data', (text) => {
    said.stdout += String(text);
  });
  child.stderr.on('data', (text) => {
    said.stderr += String(text);
  });
  return new Promise((resolve) => child.once('close', (code) => resolve({ code, ...said })));
}
