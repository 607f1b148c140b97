import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';

const folder = new URL('../pictures', import.meta.url).pathname;

/** The screens that README shows, with the width in pixels that they have there. */
const shown: Readonly<Record<string, number>> = {
  'host-table': 880,
  'host-board': 880,
  'plan-pours': 880,
  'recap-tablet-light': 880,
  'screen-board-720': 880,
  'guest-look': 300,
  'guest-nose': 300,
  'guest-write': 300,
  'guest-board': 300,
};

/** With PICTURES=1 the browser tests also draw README's pictures anew, small enough to be kept beside the code. */
export async function keepPicture(screen: string, png: Buffer, height: number): Promise<void> {
  const width = shown[screen];
  if (process.env.PICTURES === undefined || width === undefined) return;
  mkdirSync(folder, { recursive: true });
  const { width: drawn = width, height: tall = height } = await sharp(png).metadata();
  await sharp(png)
    .extract({ left: 0, top: 0, width: drawn, height: Math.min(height, tall) })
    .resize({ width })
    .webp({ quality: 82 })
    .toFile(join(folder, `${screen}.webp`));
}
