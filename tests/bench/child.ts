import { type ChildProcess, fork } from 'node:child_process';

/**
 * Another process that does what it is asked, one question at a time: servers and crowds do not share a processor's
 * time by sharing an event loop. Ends with its parent.
 */
export interface Child {
  ask<Answer>(question: string, details?: object): Promise<Answer>;
  stop(): Promise<void>;
}

interface Reply {
  readonly id: number;
  readonly answer?: unknown;
  readonly failed?: string;
}

export function startChild(file: string): Child {
  const child: ChildProcess = fork(new URL(file, import.meta.url), {
    execArgv: [
      '--import',
      'tsx',
      '--expose-gc',
      ...(process.env.BENCH_PROFILES ? ['--cpu-prof', `--cpu-prof-dir=${process.env.BENCH_PROFILES}`] : []),
    ],
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  });
  let asked = 0;
  const waiting = new Map<number, { done: (answer: never) => void; fail: (error: Error) => void }>();
  child.on('message', ({ id, answer, failed }: Reply) => {
    const each = waiting.get(id);
    waiting.delete(id);
    if (failed === undefined) each?.done(answer as never);
    else each?.fail(new Error(failed));
  });
  child.on('exit', (code) => {
    for (const each of waiting.values()) each.fail(new Error(`${file} ended with ${code}.`));
  });
  return {
    ask: (question, details = {}) =>
      new Promise((done, fail) => {
        asked += 1;
        waiting.set(asked, { done, fail });
        child.send({ id: asked, question, details });
      }),
    stop: () =>
      new Promise((done) => {
        if (child.exitCode !== null) return done();
        child.once('exit', () => done());
        child.disconnect();
      }),
  };
}

/** The other end: answers questions until the parent goes. */
export function answerParent(answers: Record<string, (details: never) => unknown>, end?: () => void): void {
  process.on(
    'message',
    async ({ id, question, details }: { id: number; question: string; details: never }) => {
      try {
        process.send?.({ id, answer: await answers[question]?.(details) });
      } catch (error) {
        process.send?.({
          id,
          failed: error instanceof Error ? (error.stack ?? error.message) : String(error),
        });
      }
    },
  );
  process.on('disconnect', () => {
    end?.();
    process.exit(0);
  });
}

/** What this process has used so far, after a collection of garbage. */
export function usage(): { readonly rss: number; readonly cpuMs: number } {
  globalThis.gc?.();
  globalThis.gc?.();
  const { user, system } = process.cpuUsage();
  return { rss: process.memoryUsage.rss(), cpuMs: (user + system) / 1000 };
}
export type Usage = ReturnType<typeof usage>;
