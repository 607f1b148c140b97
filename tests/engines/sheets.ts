import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { engines } from './device.ts';

/** Of one picture on a sheet, in px. */
const height = 480;
const gap = 12;
const lineHeight = 24;

/** One sheet for each screen: a row for each engine, beside each other themes and sizes. Answers with the sheets' names. */
export async function layOutSheets(folder: string): Promise<string[]> {
  const all = readdirSync(folder).flatMap((file) => {
    const [screen, variant, engine, ending] = file.split('.');
    return ending === 'png' && screen && variant && engine ? [{ file, screen, variant, engine }] : [];
  });
  const screens = [...new Set(all.map(({ screen }) => screen))];
  for (const screen of screens) {
    const rows = engines.map((engine) =>
      all
        .filter((each) => each.screen === screen && each.engine === engine)
        .sort((a, b) => a.variant.localeCompare(b.variant)),
    );
    const placed: { readonly input: Buffer; readonly left: number; readonly top: number }[] = [];
    let width = 0;
    for (const [index, row] of rows.entries()) {
      const top = index * (height + lineHeight + gap);
      let left = gap;
      for (const { file, engine, variant } of row) {
        const { data, info } = await sharp(join(folder, file))
          .resize({ height })
          .toBuffer({ resolveWithObject: true });
        placed.push({ input: caption(`${engine} ${variant}`), left, top });
        placed.push({ input: data, left, top: top + lineHeight });
        left += info.width + gap;
      }
      width = Math.max(width, left);
    }
    await sharp({
      create: { width, height: rows.length * (height + lineHeight + gap), channels: 3, background: '#888' },
    })
      .composite(placed)
      .jpeg({ quality: 80 })
      .toFile(join(folder, `${screen}.jpg`));
  }
  return screens;
}

const caption = (text: string): Buffer =>
  Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="260" height="${lineHeight}"><text y="18" font-size="15" font-family="sans-serif">${text}</text></svg>`,
  );
