import { type ChildProcess, fork } from 'node:child_process';
import { join } from 'node:path';
import { build } from 'vite';

const root = new URL('../..', import.meta.url).pathname;
/** Where the children's code was put together; undefined while they run from the sources. */
let bundles: string | undefined;

/** Puts the children's code together as the server is shipped: what a loader adds to it is not to be measured. */
export async function bundleChildren(): Promise<void> {
  const names = ['our-server', 'floor-server', 'bare-server', 'crowd', 'tables', 'busy-disk'];
  const outDir = join(root, '.cache/bench/code');
  await build({
    configFile: false,
    root,
    logLevel: 'silent',
    build: {
      ssr: true,
      target: 'node20',
      outDir,
      emptyOutDir: true,
      rolldownOptions: {
        input: {
          ...Object.fromEntries(names.map((name) => [name, join(import.meta.dirname, `${name}.ts`)])),
          'recap-worker': join(root, 'server/http/recap/recap-worker.ts'),
          'commit-worker': join(root, 'server/store/thread/commit-worker.ts'),
        },
        output: { entryFileNames: '[name].js' },
      },
    },
  });
  bundles = outDir;
}

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

/** @param file the name of the file beside this one, without its ending */
export function startChild(file: string): Child {
  const { BENCH_PROFILES: profiles } = process.env;
  const code = bundles === undefined ? join(import.meta.dirname, `${file}.ts`) : join(bundles, `${file}.js`);
  const child: ChildProcess = fork(code, {
    cwd: root,
    execArgv: [
      ...(bundles === undefined ? ['--import', 'tsx'] : []),
      '--expose-gc',
      ...(profiles === undefined ? [] : ['--cpu-prof', `--cpu-prof-dir=${profiles}`]),
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

/** The memory that this process has, after a collection of garbage. */
export function memory(): { readonly rss: number; readonly heap: number } {
  globalThis.gc?.();
  globalThis.gc?.();
  return { rss: process.memoryUsage.rss(), heap: process.memoryUsage().heapUsed };
}
export type Memory = ReturnType<typeof memory>;

/** Ms that all its threads have worked so far, collections of garbage that came by themselves included. */
export function worked(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
