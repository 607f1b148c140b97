import type { PourId } from '../ids.ts';
import { type LikingResult, likingRecap } from '../panel/recap/liking-recap.ts';
import { type OddOneOutResult, oddOneOutRecap } from '../panel/recap/odd-one-out-recap.ts';
import { type RankingResult, rankingRecap } from '../panel/recap/ranking-recap.ts';
import { type WordsResult, wordsRecap } from '../panel/recap/words-recap.ts';
import type { RoundResult, Told } from '../panel/round-result.ts';
import { glassNumbers } from '../running-order/glass-numbers.ts';
import { oddGlassOf, servedInOwnOrders } from '../session/serving.ts';
import type { Finished, Seat } from '../session/state.ts';
import { type Drink, flightsOf, type Trial } from '../tasting.ts';
import { guessRecap, type ToldFact } from './guess-recap.ts';
import { type ColoursResult, coloursRecap, type StructureResult, structureRecap } from './page-counts.ts';
import type { PermittedPage } from './permitted-page.ts';
import type { AsPlanned } from './planned-course.ts';
import { placesOf, rowsOf, type TableOfPages, tableOfPages } from './table-of-pages.ts';
import { type Timing, timingOf } from './timing.ts';

type ToldPart = Extract<RoundResult, { outcome: 'told' }>;

/** All that a host takes home of an evening, from its log and from the pages that guests do not keep private. */
export interface EveningRecap {
  readonly title: string;
  readonly place: string;
  /** Who sat at the table and was not taken off it. */
  readonly guests: number;
  readonly remoteGuests: number;
  /** Each seat met the glasses in an order of its own, so that a glass of the timing is a place and no pour. */
  readonly ownOrders: boolean;
  readonly pours: readonly RecapPour[];
  readonly timing: Timing;
  /**
   * What the room was told in the evening, as it was told: reckoned anew beside it, it would show by its difference whose
   * consent has changed since [Q8, R1].
   */
  readonly told: readonly ToldPart[];
  /** One for each time that the room put glasses in order, but for those whose order was told. */
  readonly rankings: readonly { readonly pours: readonly PourId[]; readonly result: RankingResult<PourId> }[];
  /** Null when liking was not asked for, or was told of all pours. */
  readonly liking: LikingResult<PourId> | null;
  readonly trials: readonly {
    readonly trial: PourId;
    readonly a: PourId;
    readonly b: PourId;
    readonly result: OddOneOutResult;
  }[];
  readonly words: WordsResult<PourId>;
  readonly structure: StructureResult;
  readonly colours: ColoursResult;
  /** Null in an evening without guesses. */
  readonly guesses: readonly ToldFact[] | null;
}

export interface RecapPour {
  readonly id: PourId;
  /** The number on mats, vials and sheets, from 1. */
  readonly position: number;
  /** From 0. */
  readonly flight: number;
  readonly drink: Drink;
  readonly name: string;
  readonly producer: string | null;
  readonly code: string | null;
  /** `silent`: tasted, but its talk was never opened, so that its pages stay in the notebooks [Q1]. */
  readonly standing: 'counted' | 'silent' | 'dropped' | 'not-reached';
}

export interface EveningOver {
  readonly session: Finished;
  readonly planned: AsPlanned;
  /** What may be counted; pages of pours without an opened talk, or of removed guests, are left out here. */
  readonly pages: readonly PermittedPage[];
}

export function eveningRecap({ session, planned, pages }: EveningOver): EveningRecap {
  const { plan } = session;
  const table = tableOfPages(session, pages);
  const guests = table.guests.length;
  const pours = poursOf(session);
  const counted = pours.filter(({ standing }) => standing === 'counted').map(({ id }) => id);
  const told = session.results.flatMap(({ parts }) =>
    parts.flatMap((part) => (part.outcome === 'told' ? [part] : [])),
  );
  const isTold = (of: Told, ranked: readonly PourId[]): boolean =>
    told.some(
      (part) => part.of === of && ranked.every((pour) => part.pours.some((each) => each.pour === pour)),
    );
  const untold = counted.filter((pour) => !isTold('liking', [pour]));
  const likings = rowsOf(table, untold, 'liking', ({ liking }) => liking);
  const rated = likings.some(({ answer }) => answer.some((rating) => rating !== null));
  return {
    title: plan.title,
    place: plan.place,
    guests,
    remoteGuests: table.guests.filter(({ remote }) => remote).length,
    ownOrders: servedInOwnOrders(plan),
    pours,
    timing: timingOf(session, planned),
    told,
    rankings: rankedTogether(session, counted)
      .filter((ranked) => !isTold('order', ranked))
      .map((ranked) => ({
        pours: ranked,
        result: rankingRecap({ pours: ranked, answers: placesOf(table, ranked), guests }),
      })),
    liking:
      (plan.liking || rated) && (untold.length > 0 || counted.length === 0)
        ? likingRecap({ pours: untold, answers: likings, guests })
        : null,
    trials: plan.trials
      .filter(({ id }) => session.reached.includes(id))
      .map((trial) => ({ trial: trial.id, a: trial.a, b: trial.b, result: trialRecap(table, trial) })),
    words: wordsRecap({
      pours: counted,
      answers: rowsOf(table, counted, 'words', ({ words }) => (words.length > 0 ? words : null)),
      guests,
    }),
    structure: structureRecap(table, counted),
    colours: coloursRecap(table, counted),
    guesses: guessRecap(session),
  };
}

function poursOf({ plan, dropped, reached, discussions }: Finished): RecapPour[] {
  const places = flightsOf(plan).flatMap(({ index, pours }) =>
    pours.map((pour) => ({ flight: index, pour })),
  );
  const standing = (id: PourId): RecapPour['standing'] => {
    if (dropped.includes(id)) return 'dropped';
    if (discussions[id] !== undefined) return 'counted';
    return reached.includes(id) ? 'silent' : 'not-reached';
  };
  const numbers = glassNumbers(plan);
  return places.map(({ flight, pour }, index) => ({
    id: pour.id,
    position: numbers.get(pour.id) ?? index + 1,
    flight,
    drink: pour.drink,
    name: pour.name,
    producer: pour.producer ?? null,
    code: plan.codes[pour.id] ?? null,
    standing: standing(pour.id),
  }));
}

/** The pours of each ranking that may be counted; one that lost all but one of its pours is no ranking any more. */
export const rankedTogether = ({ cues }: Finished, counted: readonly PourId[]): PourId[][] =>
  cues
    .flatMap((cue) => (cue.kind === 'ranking' ? [cue.pours.filter((pour) => counted.includes(pour))] : []))
    .filter((pours) => pours.length > 0);

function trialRecap(table: TableOfPages, trial: Trial): OddOneOutResult {
  const picked = (seat: Seat): boolean | null => {
    const page = table.pageOf(seat, trial.id);
    const glass = page?.sealed.oddGlass ?? page?.current.oddGlass ?? null;
    return glass === null ? null : glass === oddGlassOf(trial, seat);
  };
  const answers = table.guests.flatMap((seat) => {
    const page = table.pageOf(seat, trial.id);
    return page === undefined ? [] : [{ consent: page.consents.oddGlass, answer: picked(seat) }];
  });
  return oddOneOutRecap({ test: 'triangle', answers, guests: table.guests.length });
}
