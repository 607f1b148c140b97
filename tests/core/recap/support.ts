import { pourId, seatId } from '../../../core/ids.ts';
import type { Consent } from '../../../core/panel/recap/permitted-answers.ts';
import { type EveningRecap, eveningRecap } from '../../../core/recap/evening-recap.ts';
import type { PageMarks, PermittedPage } from '../../../core/recap/permitted-page.ts';
import { asPlanned } from '../../../core/recap/planned-course.ts';
import type { EveningTold } from '../../support/evening.ts';

const blankMarks: PageMarks = {
  colour: null,
  words: [],
  structure: {},
  liking: null,
  place: null,
  oddGlass: null,
};

/** A page of an evening's test; sealed as it is unless told otherwise. */
export function page(
  seat: string,
  pour: string,
  marks: Partial<PageMarks>,
  { consent = 'shared', sealed = marks }: { consent?: Consent; sealed?: Partial<PageMarks> } = {},
): PermittedPage {
  return {
    seat: seatId(seat),
    pour: pourId(pour),
    consents: {
      colour: consent,
      words: consent,
      structure: consent,
      liking: consent,
      place: consent,
      oddGlass: consent,
    },
    sealed: { ...blankMarks, ...sealed },
    current: { ...blankMarks, ...marks },
  };
}

export const counted = { consent: 'anonymous' } as const;

/** Opens the talk about these pours, ends the evening, and looks back. */
export function lookBack(
  evening: EveningTold,
  pages: readonly PermittedPage[],
  talkedAbout: readonly string[] = [],
): EveningRecap {
  if (talkedAbout.length > 0) {
    const asked = { type: 'OpenDiscussion', pours: talkedAbout.map(pourId) } as const;
    if (evening.host(asked) !== 'done') throw new Error('The talk could not be opened.');
  }
  if (evening.session.status === 'under-way') evening.host({ type: 'Finish' });
  const { session } = evening;
  if (session.status !== 'finished') throw new Error('The evening is not over.');
  return eveningRecap({ session, planned: asPlanned(evening.events), pages });
}
