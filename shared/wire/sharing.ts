import type { PourId } from '../../core/ids.ts';
import { textFields } from '../notes/entry.ts';

/**
 * What becomes of a guest's page of one pour while its talk is open. `private` until they choose [Q2]; `unnamed`: what they
 * wrote before the talk lies on the board without their name [Q9]; `named`: it lies there with it.
 */
export const sharings = ['named', 'unnamed', 'private'] as const;
export type Sharing = (typeof sharings)[number];

/** What can go to the table by itself: each sense, the thoughts, and the verdict (liking, place, odd one), which never goes without a name. */
export const pageParts = [...textFields, 'verdict'] as const;
export type PagePart = (typeof pageParts)[number];

/** Whether an answer counts in the room's results, without a name [Q10]. */
export const countings = ['counts', 'only-for-me'] as const;
export type Counting = (typeof countings)[number];

/** The answers that are counted each by a consent of its own. */
export const countedAnswers = ['order', 'liking', 'odd-one-out', 'guess'] as const;
export type CountedAnswer = (typeof countedAnswers)[number];

/** Whether somebody may be named when nobody's guess was nearer. */
export const namings = ['may-be-named', 'unnamed'] as const;
type Naming = (typeof namings)[number];

export interface PageSharing {
  readonly sharing: Sharing;
  /** What of the page goes; nothing of a private one does. */
  readonly parts: readonly PagePart[];
}

/**
 * What a guest has answered about one page: a pour's, or an odd-one-out's. What is absent was never answered, and is the
 * same as the answer that gives nothing.
 */
export type Consents = { readonly page?: PageSharing | undefined; readonly nearest?: Naming | undefined } & {
  readonly [Answer in CountedAnswer]?: Counting | undefined;
};

export interface GivenConsents {
  readonly pour: PourId;
  readonly consents: Consents;
}

/**
 * As pages of before ask and are told. `counted` permitted the recap to count marks without a name, `shared` the page
 * with it.
 */
export const sharingsBefore = ['private', 'counted', 'shared'] as const;
export type SharingBefore = (typeof sharingsBefore)[number];
