import { bundleServer } from './server.ts';

/** Once, before all tests of the server: some start a hundred processes of it, and a bundle starts in a third of the time. */
export async function setup(): Promise<void> {
  process.env.SERVER_BUNDLE = await bundleServer('under-test');
}
