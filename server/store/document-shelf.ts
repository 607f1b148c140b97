import type { TastingId } from '../../core/ids.ts';

/** What a small document is called. */
type DocumentName = 'pouring' | 'kits';

/** Small documents of a tasting, each replaced as a whole. */
export interface DocumentShelf {
  /** The body as it was given to `save`; undefined before the first save. */
  read(
    tasting: TastingId,
    name: DocumentName,
  ): { readonly body: unknown; readonly revision: number } | undefined;
  /** The new revision, counted from 1; undefined when `base` (0 before the first) is not the stored one any more. */
  save(tasting: TastingId, name: DocumentName, body: unknown, base: number): Promise<number | undefined>;
}
