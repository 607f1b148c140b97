import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serverCode } from '../../support/server.ts';

const root = new URL('../../..', import.meta.url).pathname;

export interface Exit {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** A server in a process of its own, as a host starts it. */
export class ServerProcess {
  readonly #child: ChildProcess;
  readonly exited: Promise<Exit>;
  stdout = '';
  stderr = '';

  /** @param user other than the one who runs the tests, by number */
  constructor(data: string, environment: Record<string, string> = {}, user?: number) {
    this.#child = spawn(process.execPath, serverCode(), {
      cwd: root,
      env: { ...process.env, QUIETPOUR_DATA: data, PORT: '0', HOST: '127.0.0.1', ...environment },
      stdio: ['ignore', 'pipe', 'pipe'],
      ...(user === undefined ? {} : { uid: user, gid: user }),
    });
    this.#child.stdout?.on('data', (text) => {
      this.stdout += String(text);
    });
    this.#child.stderr?.on('data', (text) => {
      this.stderr += String(text);
    });
    this.exited = new Promise((resolve) => {
      this.#child.once('close', (code) => resolve({ code, stdout: this.stdout, stderr: this.stderr }));
    });
  }

  /** Where it listens and with which key, read from what it prints. */
  async started(): Promise<{ readonly url: string; readonly houseKey: string }> {
    const gone = this.exited.then(({ stderr }) => {
      throw new Error(`The server did not start: ${stderr}`);
    });
    gone.catch(() => undefined);
    for (;;) {
      const printed = /(https?:\/\/localhost:\d+)\/host#key=(\S+)/.exec(this.stdout);
      if (printed?.[1] !== undefined && printed[2] !== undefined) {
        return { url: printed[1].replace('localhost', '127.0.0.1'), houseKey: printed[2] };
      }
      await Promise.race([new Promise((resolve) => this.#child.stdout?.once('data', resolve)), gone]);
    }
  }

  signal(signal: 'SIGKILL' | 'SIGTERM'): Promise<Exit> {
    this.#child.kill(signal);
    return this.exited;
  }
}

export function temporaryFolder(): { readonly path: string; remove(): void } {
  const path = mkdtempSync(join(tmpdir(), 'quietpour-'));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}
