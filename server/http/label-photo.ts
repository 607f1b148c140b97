/**
 * A label photo as it may be served: decoded, turned upright, at most 1,600 pixels a side, and encoded anew as a JPEG, so
 * that nothing of the file as it was sent (a script, a position, a second file behind the picture) is kept.
 * @returns undefined when it is no photo that can be decoded
 */
export async function labelPhoto(sent: Buffer): Promise<Buffer | undefined> {
  if (sent.length === 0) return undefined;
  // Loaded when the first photo comes: most evenings have none, and the decoder takes memory.
  const { default: sharp } = await import('sharp');
  try {
    const picture = sharp(sent, { limitInputPixels: 60_000_000, failOn: 'error', pages: 1 });
    const { format } = await picture.metadata();
    if (format === undefined || !photoFormats.has(format)) return undefined;
    return await picture
      .rotate()
      .resize(1600, 1600, { fit: 'inside', withoutEnlargement: true })
      .flatten({ background: 'white' })
      .jpeg({ quality: 82 })
      .toBuffer();
  } catch {
    return undefined;
  }
}

/** What cameras and phones make; a drawing with scripts in it is none of these. */
const photoFormats: ReadonlySet<string> = new Set(['jpeg', 'png', 'webp', 'heif']);
