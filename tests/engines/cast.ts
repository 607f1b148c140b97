import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { barriers } from './barriers.ts';
import { cutFeet, footSizes } from './cut-feet.ts';
import type { Device, Engine, Size } from './device.ts';
import { inPage } from './in-page.ts';
import { openChromium, openFirefox } from './puppeteer.ts';
import { Visitor } from './visitor.ts';
import { openWebKit } from './webkit.ts';

const open = { chromium: openChromium, firefox: openFirefox, webkit: openWebKit };

const themes = ['light', 'dark'] as const;
type Theme = (typeof themes)[number];

const sizes = {
  host: [{ width: 1024, height: 768 }],
  guest: [
    { width: 390, height: 844 },
    { width: 360, height: 640 },
  ],
  screen: [{ width: 1280, height: 720 }],
} satisfies Record<string, readonly [Size, ...Size[]]>;
export type Role = keyof typeof sizes;
type Everybody = Readonly<Record<Role, Readonly<Record<Theme, Visitor>>>>;

/** Everybody who has a device in the evening of one engine: host and guest in either theme, and the room's screen. */
export class Cast {
  readonly engine: Engine;
  readonly faults: string[] = [];
  readonly #folder: string;
  readonly #all: Everybody;

  private constructor(engine: Engine, folder: string, all: Everybody) {
    this.engine = engine;
    this.#folder = folder;
    this.#all = all;
  }

  static async open(engine: Engine, folder: string): Promise<Cast> {
    mkdirSync(folder, { recursive: true });
    const visitor = async (role: Role, theme: Theme) =>
      new Visitor(await open[engine](sizes[role][0], theme === 'dark'));
    const both = async (role: Role) => ({
      light: await visitor(role, 'light'),
      dark: await visitor(role, 'dark'),
    });
    const screen = await visitor('screen', 'dark');
    return new Cast(engine, folder, {
      host: await both('host'),
      guest: await both('guest'),
      screen: { light: screen, dark: screen },
    });
  }

  /** Who leads, and the first guest. */
  get host(): Visitor {
    return this.#all.host.light;
  }
  get screen(): Visitor {
    return this.#all.screen.dark;
  }

  /** Every device of this role. */
  all(role: Role): readonly Visitor[] {
    return [...new Set(Object.values(this.#all[role]))];
  }

  /** A picture in every theme and size, and what stands between people and this screen. */
  async look(role: Role, screen: string): Promise<void> {
    for (const theme of themes) {
      const visitor = this.#all[role][theme];
      if (role === 'screen' && theme === 'light') continue;
      for (const size of sizes[role]) {
        const { device } = visitor;
        if (sizes[role].length > 1) await device.resize(size);
        await visitor.calms();
        const name = `${role}-${screen}`;
        const variant = `${theme}-${size.width}`;
        writeFileSync(join(this.#folder, `${name}.${variant}.${this.engine}.png`), await device.picture());
        const fault = (what: string) => this.faults.push(`${this.engine}, ${name}, ${variant}: ${what}`);
        for (const found of await visitor.cutOff()) fault(found);
        if (theme === 'light' && (await device.read('document.querySelector("dialog[open]") !== null'))) {
          for (const { width, height } of footSizes) {
            await device.resize({ width, height });
            for (const found of await device.read<string[]>(inPage(cutFeet)))
              fault(`${found}, at ${width}x${height}`);
          }
          await device.resize(size);
        }
        if (role === 'screen') {
          const below = await device.read<number>('document.documentElement.scrollHeight - innerHeight');
          if (below > 0) fault(`${below} px are below the screen, where nobody can scroll`);
        }
        // Of the sizes the smaller one in the dark, the larger one in the light.
        if (sizes[role].length === 1 || (size === sizes[role][0]) === (theme === 'light'))
          for (const found of await barriers(device)) fault(found);
      }
    }
  }

  async close(): Promise<void> {
    const devices: readonly Device[] = [
      ...new Set(Object.values(this.#all).flatMap(({ light, dark }) => [light.device, dark.device])),
    ];
    for (const device of devices) await device.close();
  }
}
