/** Pixels of the longer side: enough to read a label, and a fifth of what a phone's camera makes. */
export const longestSide = 1600;
const quality = 0.85;

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The size within a square of `side`, in the same shape and never enlarged, in whole pixels from 1. */
export function fitWithin({ width, height }: Size, side: number): Size {
  const share = Math.min(1, side / Math.max(width, height));
  const pixels = (length: number) => Math.max(1, Math.round(length * share));
  return { width: pixels(width), height: pixels(height) };
}

/**
 * A photo as it is sent: upright, no longer than `longestSide`, as a JPEG. What the camera wrote into the file, the place
 * among it, stays on the phone.
 * @returns undefined when this browser cannot read the file as a picture
 */
export async function smallerPhoto(file: Blob): Promise<Blob | undefined> {
  try {
    const picture = await createImageBitmap(file);
    const { width, height } = fitWithin(picture, longestSide);
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const pen = canvas.getContext('2d');
    if (pen === null) return undefined;
    // What is transparent would turn black.
    pen.fillStyle = 'white';
    pen.fillRect(0, 0, width, height);
    pen.drawImage(picture, 0, 0, width, height);
    picture.close();
    const jpeg = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));
    return jpeg ?? undefined;
  } catch {
    return undefined;
  }
}
