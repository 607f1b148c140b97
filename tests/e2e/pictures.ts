import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';

const folder = new URL('../pictures', import.meta.url).pathname;

interface Shown {
  /** In pixels, as README shows it. */
  readonly width: number;
  /** Pixels of the screen that are left out above. */
  readonly from?: number;
}

/** The screens that README shows. */
const shown: Readonly<Record<string, Shown>> = {
  'host-table': { width: 880 },
  'host-board': { width: 880 },
  'plan-pours': { width: 880 },
  'recap-tablet-light': { width: 880, from: 190 },
  'guest-look': { width: 300 },
  'guest-nose': { width: 300 },
  'guest-write': { width: 300 },
  'guest-board': { width: 300 },
};

/** With PICTURES=1 the browser tests also draw README's pictures anew, small enough to be kept beside the code. */
export async function keepPicture(screen: string, png: Buffer, height: number): Promise<void> {
  const asked = shown[screen];
  if (process.env.PICTURES === undefined || asked === undefined) return;
  const { width, from = 0 } = asked;
  mkdirSync(folder, { recursive: true });
  const { width: drawn = width, height: tall = height } = await sharp(png).metadata();
  await sharp(png)
    .extract({ left: 0, top: from, width: drawn, height: Math.min(height, tall - from) })
    .resize({ width })
    .webp({ quality: 82 })
    .toFile(join(folder, `${screen}.webp`));
}
