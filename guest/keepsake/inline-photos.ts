import type { Keepsake } from '../../shared/wire/http.ts';
import type { PhotosInline } from './keepsake-html.ts';

/** The longer side of a label in a saved page, in pixels: sharp on paper at 45 mm, and some 80 kB. */
const side = 900;

/** The labels of an evening for a page that is saved; what cannot be fetched is left out, and the page is saved all the same. */
export async function inlinePhotos({ pours }: Pick<Keepsake, 'pours'>): Promise<PhotosInline> {
  const ids = new Set(
    pours.flatMap(({ facts }) => Object.values(facts?.photos ?? {}).flatMap((id) => id ?? [])),
  );
  const read = await Promise.all([...ids].map(async (id) => [id, await inlinePhoto(id)] as const));
  return new Map(read.flatMap(([id, data]) => (data === undefined ? [] : [[id, data]])));
}

async function inlinePhoto(id: string): Promise<string | undefined> {
  try {
    const answer = await fetch(`/photos/${encodeURIComponent(id)}`);
    if (!answer.ok) return undefined;
    return await drawnSmall(await answer.blob());
  } catch {
    return undefined;
  }
}

/** As a `data:` address, no larger than a page needs. */
async function drawnSmall(blob: Blob): Promise<string> {
  const address = URL.createObjectURL(blob);
  try {
    const photo = new Image();
    photo.src = address;
    await photo.decode();
    const scale = Math.min(1, side / Math.max(photo.naturalWidth, photo.naturalHeight));
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(photo.naturalWidth * scale);
    canvas.height = Math.round(photo.naturalHeight * scale);
    canvas.getContext('2d')?.drawImage(photo, 0, 0, canvas.width, canvas.height);
    return canvas.toDataURL('image/jpeg', 0.82);
  } finally {
    URL.revokeObjectURL(address);
  }
}
