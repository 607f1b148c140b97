import { Worker } from 'node:worker_threads';

/**
 * A thread whose code is the file `name` beside the caller's. Bundled, it lies beside the server. As source it needs the
 * loader, which Node 20 does not hand on to threads.
 *
 * @param from the caller's `import.meta.url`
 */
export function openThread(from: string, name: string, workerData?: unknown): Worker {
  if (!from.endsWith('.ts')) return new Worker(new URL(`${name}.js`, from), { workerData });
  const source = new URL(`${name}.ts`, from);
  return new Worker(`import('tsx/esm/api').then((tsx) => (tsx.register(), import('${source}')))`, {
    eval: true,
    execArgv: [],
    workerData,
  });
}
