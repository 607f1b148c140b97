import type { PhotoId, TastingId } from '../../core/ids.ts';

/** Label photos, re-encoded before they come here. Whoever knows an id may see the photo, so ids are not guessable. */
export interface PhotoShelf {
  add(tasting: TastingId, photo: PhotoId, jpeg: Buffer): Promise<void>;
  find(photo: PhotoId): Promise<Buffer | undefined>;
  count(tasting: TastingId): Promise<number>;
  remove(tasting: TastingId, photo: PhotoId): Promise<void>;
}
