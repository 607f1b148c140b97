import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { lendBrowser } from '../support/browser.ts';
import { type Line, layLine } from '../support/line.ts';
import { forgetFolder, type SpawnedServer, spawnServer, temporaryFolder } from '../support/server.ts';

/** What an evening needs before anybody comes: a server with a store of its own, a browser, and two ways to the server. */
export class Premises {
  readonly browser: Browser;
  /** How the host and most guests reach the server. */
  readonly room: Line;
  /** How one guest reaches it, so that this one's network can fail alone. */
  readonly wifi: Line;
  readonly #folder: string;
  #server: SpawnedServer | undefined;

  private constructor(browser: Browser, room: Line, wifi: Line, folder: string) {
    this.browser = browser;
    this.room = room;
    this.wifi = wifi;
    this.#folder = folder;
  }

  static async open(
    options: { readonly pageCache?: boolean; readonly fakeMedia?: boolean } = {},
  ): Promise<Premises> {
    const [room, wifi] = [await layLine(), await layLine()];
    const premises = new Premises(await lendBrowser(options), room, wifi, await temporaryFolder());
    await premises.serve();
    return premises;
  }

  get houseKey(): string {
    return this.#server?.houseKey ?? '';
  }

  /**
   * Again after a kill: with the same store, under the same addresses.
   *
   * @param bundle of another version of the server and its pages
   */
  async serve(bundle?: string): Promise<void> {
    this.#server = await spawnServer({
      folder: this.#folder,
      from: 'bundle',
      origins: [this.room.origin],
      ...(bundle === undefined ? {} : { bundle }),
    });
    for (const line of [this.room, this.wifi]) line.leadTo(this.#server.port);
  }

  /** The file of its store, for who lays a hand on it while the server is down. */
  get store(): string {
    return join(this.#folder, 'quietpour.db');
  }

  async powerCut(): Promise<void> {
    await this.#server?.kill();
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.#server?.stop();
    await this.room.close();
    await this.wifi.close();
    await forgetFolder(this.#folder);
  }
}
