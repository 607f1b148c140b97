import jsQR from 'jsqr';
import type { Locator } from 'playwright-core';
import { PNG } from 'pngjs';

/** What a phone's camera would read from this part of the screen; jsQR is a general-purpose reader. */
export async function readQr(picture: Locator): Promise<string | undefined> {
  const { data, width, height } = PNG.sync.read(await picture.screenshot());
  return jsQR(new Uint8ClampedArray(data), width, height)?.data;
}
