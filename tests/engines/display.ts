import { type ChildProcess, spawn } from 'node:child_process';

/** Xvfb takes the first display that is free and writes its number to its third channel. */
export function openDisplay(): Promise<{ readonly display: string; readonly screen: ChildProcess }> {
  const screen = spawn('Xvfb', ['-displayfd', '3', '-screen', '0', '1400x1000x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  return new Promise((resolve, reject) => {
    screen.once('error', reject);
    screen.once('exit', () => reject(new Error('Xvfb ended before it had a display.')));
    screen.stdio[3]?.once('data', (said: Buffer) => resolve({ display: `:${String(said).trim()}`, screen }));
  });
}

/** Ends a process that a test started, and waits until it is gone. */
export function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.removeAllListeners('exit');
    child.once('exit', () => resolve());
    child.kill('SIGKILL');
  });
}
