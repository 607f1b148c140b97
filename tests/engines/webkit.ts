import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Device, Key, Point, Size } from './device.ts';
import { end, openDisplay } from './display.ts';
import { programOf } from './installed.ts';
import { sameTold } from './told.ts';

const elementKey = 'element-6066-11e4-a52e-4f735466cecf';
const patienceMs = 30_000;
/** As the WebDriver standard names them. */
const keys: Readonly<Record<Key, string>> = { Enter: '\uE007', Tab: '\uE004' };

/** The browser that comes with the driver, in a folder that names the machine and the version. */
function miniBrowser(): string {
  const found = readdirSync('/usr/lib')
    .flatMap((machine) =>
      ['webkit2gtk-4.1', 'webkit2gtk-4.0'].map((lib) => join('/usr/lib', machine, lib, 'MiniBrowser')),
    )
    .find(existsSync);
  if (found === undefined) throw new Error('WebKitWebDriver is here without its MiniBrowser.');
  return found;
}

/** A free port of this machine. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}

/** A WebKitGTK of its own on a screen of its own, spoken to by W3C WebDriver. */
export async function openWebKit(size: Size, dark = false): Promise<Device> {
  const { display, screen } = await openDisplay();
  const port = await freePort();
  const folder = layStyle();
  const driver = spawn(programOf('WebKitWebDriver') ?? '', [`--port=${port}`], {
    stdio: 'ignore',
    env: {
      ...process.env,
      DISPLAY: display,
      XDG_CONFIG_HOME: folder,
      XDG_DATA_HOME: folder,
      XDG_CACHE_HOME: folder,
      LIBGL_ALWAYS_SOFTWARE: '1',
      // Root has no namespaces of its own in many a container.
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1',
    },
  });
  let sessionId: string | undefined;
  const close = async (): Promise<void> => {
    // The driver ends its browser with the session, and leaves it alone when it is killed itself.
    if (sessionId !== undefined) await ask('DELETE', `/session/${sessionId}`).catch(() => undefined);
    await end(driver);
    await end(screen);
    rmSync(folder, { recursive: true, force: true });
  };
  const ask = async <Value>(method: string, path: string, body?: object): Promise<Value> => {
    const response = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      signal: AbortSignal.timeout(patienceMs),
    });
    const { value } = (await response.json()) as { readonly value: Value & { readonly message?: string } };
    if (!response.ok)
      throw new Error(`WebKit refused ${method} ${path}: ${value?.message ?? response.status}`);
    return value;
  };
  try {
    await untilReady(() => ask('GET', '/status'));
    const opened = await ask<{ readonly sessionId: string }>('POST', '/session', {
      capabilities: {
        alwaysMatch: {
          browserName: 'MiniBrowser',
          'webkitgtk:browserOptions': {
            binary: miniBrowser(),
            args: ['--automation', ...(dark ? ['--dark-mode'] : [])],
          },
        },
      },
    });
    sessionId = opened.sessionId;
    const at = (path: string): string => `/session/${opened.sessionId}${path}`;
    const read = <Value>(expression: string): Promise<Value> =>
      ask<Value>('POST', at('/execute/sync'), { script: `return (${expression});`, args: [] });
    const resize = (to: Size): Promise<void> =>
      fitWindow(to, (wanted) => ask('POST', at('/window/rect'), { x: 0, y: 0, ...wanted }), read);
    const drag = ([first, ...others]: readonly Point[]): Promise<void> => {
      const move = (point: Point | undefined, duration: number) => ({
        type: 'pointerMove',
        duration,
        x: Math.round(point?.x ?? 0),
        y: Math.round(point?.y ?? 0),
        origin: 'viewport',
      });
      const actions = [
        move(first, 0),
        { type: 'pointerDown', button: 0 },
        ...others.map((point) => move(point, 100)),
        { type: 'pointerUp', button: 0 },
      ];
      const finger = { type: 'pointer', id: 'finger', parameters: { pointerType: 'mouse' }, actions };
      return ask('POST', at('/actions'), { actions: [finger] });
    };
    const type = async (text: string): Promise<void> => {
      const active = await ask<Readonly<Record<string, string>>>('GET', at('/element/active'));
      await ask('POST', at(`/element/${active[elementKey] ?? ''}/value`), { text });
    };
    await resize(size);
    return {
      engine: 'webkit',
      open: (address) => ask('POST', at('/url'), { url: address }),
      read,
      press: (x, y) => drag([{ x, y }]),
      drag,
      type,
      key: (name) => type(keys[name]),
      async toldOtherwise(reckoned) {
        const otherwise: string[] = [];
        for (const each of reckoned) {
          const found = await ask<Readonly<Record<string, string>>>('POST', at('/element'), {
            using: 'css selector',
            value: each.selector,
          });
          const of = (what: string) =>
            ask<string>('GET', at(`/element/${found[elementKey] ?? ''}/computed${what}`));
          // Of something that it has just drawn anew WebKit at times has no answer yet, which is not a wrong one.
          const told = await Promise.all([of('role'), of('label')]).then(
            // What opens a list it calls a button that opens something (HTML-AAM, `select`), and leaves the second half out.
            ([role, name]) => ({
              role: each.role === 'combobox' && role === 'button' ? each.role : role,
              name,
            }),
            () => each,
          );
          if (!sameTold(told, each))
            otherwise.push(`“${each.name}”, a ${each.role}, is told as “${told.name}”, a ${told.role}`);
        }
        return otherwise;
      },
      resize,
      picture: async () => Buffer.from(await ask<string>('GET', at('/screenshot')), 'base64'),
      close,
    };
  } catch (error) {
    await close();
    throw error;
  }
}

async function untilReady(look: () => Promise<unknown>): Promise<void> {
  const giveUpAt = performance.now() + patienceMs;
  for (;;) {
    try {
      await look();
      return;
    } catch (error) {
      if (performance.now() > giveUpAt) throw error;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }
}

/** The window is larger than the page by what the browser has around it. */
async function fitWindow(
  wanted: Size,
  set: (size: Size) => Promise<unknown>,
  read: <Value>(expression: string) => Promise<Value>,
): Promise<void> {
  let asked = wanted;
  for (let tries = 0; tries < 10; tries += 1) {
    await set(asked);
    await new Promise((resolve) => setTimeout(resolve, 50));
    const [width, height] = await read<[number, number]>('[innerWidth, innerHeight]');
    if (width === wanted.width && height === wanted.height) return;
    asked = { width: asked.width + wanted.width - width, height: asked.height + wanted.height - height };
  }
  throw new Error(`WebKit's page could not be made ${wanted.width} by ${wanted.height}.`);
}

/** The bar of tools is never as narrow as a phone, unless nothing in it has a size. */
const nothingAround =
  '* { font-size: 2px; padding: 0; margin: 0; min-width: 0; min-height: 0; border-width: 0; }';

/** A folder of settings for the toolkit around the page. */
function layStyle(): string {
  const folder = mkdtempSync(join(tmpdir(), 'webkit-'));
  mkdirSync(join(folder, 'gtk-3.0'));
  writeFileSync(join(folder, 'gtk-3.0', 'gtk.css'), nothingAround);
  return folder;
}
