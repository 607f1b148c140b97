import { createHash } from 'node:crypto';
import type { TastingId } from '../../../core/ids.ts';
import type { EveningRecap } from '../../../core/recap/evening-recap.ts';
import { type HiddenParts, mayFollow, sameParts } from '../../../core/recap/release.ts';
import type { PermittedPage, ReleaseShelf } from '../../store/store.ts';
import { Refused } from '../answers.ts';
import { countedPages } from './counted-pages.ts';
import { busy, mostWaiting, type RecapDesk } from './recap-desk.ts';
import { openedPours, type RecapFigures, type RecapMaterial } from './recap-text.ts';

/** Each is compared with all before it. An evening that has shown so many stays with the last. */
const mostShown = 12;

/** With another number the figures are reckoned again. */
const format = 1;

interface Kept {
  readonly format: number;
  /** Of the pages with a name. */
  readonly named: string;
  readonly hidden: HiddenParts;
  readonly figures: RecapFigures;
}

/**
 * [Q8] Decides which figures a recap may show. Those that were shown stay, until in every part no guest without a name has
 * changed or at least three have: a host who asks again after each guest's tap learns nothing about that guest.
 *
 * Where pages with a name change meanwhile, the figures are of those pages alone: a page that its guest takes back is gone
 * from them at once, and who gives a name to theirs does not leave the others open to subtraction.
 */
export class RecapReleases {
  readonly #shelf: ReleaseShelf;
  readonly #desk: RecapDesk;
  readonly #last = new Map<TastingId, Promise<unknown>>();
  #waiting = 0;

  constructor(shelf: ReleaseShelf, desk: RecapDesk) {
    this.#shelf = shelf;
    this.#desk = desk;
  }

  /** One after another for each evening: two at a time might each be compared with too little. Rejects as `RecapDesk.make`. */
  make(tasting: TastingId, read: () => Promise<RecapMaterial>): Promise<string> {
    if (this.#waiting >= mostWaiting) return Promise.reject(new Refused('too-fast', busy));
    this.#waiting += 1;
    const before = this.#last.get(tasting) ?? Promise.resolve();
    const made = before.then(async () => this.#make(tasting, await read()));
    const settled = made.then(
      () => undefined,
      () => undefined,
    );
    this.#last.set(tasting, settled);
    void settled.then(() => {
      this.#waiting -= 1;
      if (this.#last.get(tasting) === settled) this.#last.delete(tasting);
    });
    return made;
  }

  async #make(tasting: TastingId, material: RecapMaterial): Promise<string> {
    const { session, pages } = material;
    const counted = countedPages(session, openedPours(session), pages);
    const named = createHash('sha256').update(counted.named).digest('base64url');
    const { hidden } = counted;
    const kept = this.#kept(tasting);
    const shown = (this.#shelf.shown(tasting) ?? []) as readonly HiddenParts[];
    const known = shown.some((each) => sameParts(each, hidden));
    const allowed = mayFollow(shown, hidden) && (known || shown.length < mostShown);
    if (kept?.named === named && (!allowed || sameParts(kept.hidden, hidden)))
      return this.#desk.make({ ...material, figures: kept.figures });
    if (!allowed) return this.#desk.make({ ...material, pages: pages.map(namedOnly) });
    // Before anybody sees it: a server that dies in between has told too little, not too much.
    if (!known) await this.#shelf.saveShown(tasting, [...shown, hidden]);
    const recap = JSON.parse(await this.#desk.make({ ...material, form: 'recap' })) as EveningRecap;
    const { rankings, liking, trials, words, structure, colours } = recap;
    const figures: RecapFigures = { rankings, liking, trials, words, structure, colours };
    const seats = pages.flatMap(({ seat, entries }) => (entries.length > 0 ? seat : []));
    const body: Kept = { format, named, hidden, figures };
    await this.#shelf.saveFigures(tasting, body, [...new Set(seats)]);
    return this.#desk.make({ ...material, figures });
  }

  #kept(tasting: TastingId): Kept | undefined {
    const kept = this.#shelf.figures(tasting) as Kept | undefined;
    return kept?.format === format ? kept : undefined;
  }
}

const namedOnly = (page: PermittedPage): PermittedPage => ({
  ...page,
  entries: page.entries.filter(({ field }) => page.permits[field] === 'named'),
});
