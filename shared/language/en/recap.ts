import type { DifferenceMethod } from '../../../core/panel/ranking-differences.ts';
import type { NoOrder, OrderMeaning, OrderMethod } from '../../../core/panel/recap/order-comparison.ts';
import type { LimitCode } from '../../../core/panel/recap/panel-result.ts';
import type { WordsResult } from '../../../core/panel/recap/words-recap.ts';
import type { Timing } from '../../../core/recap/timing.ts';
import type { PartKind } from '../../../core/running-order/cue-traits.ts';
import { several } from '../counting.ts';

const small = 'Nobody One Two Three Four Five Six Seven Eight Nine Ten Eleven Twelve'.split(' ');
const people = (count: number): string =>
  count === 1 ? 'One person' : `${small[count] ?? String(count)} people`;

const listed = new Intl.ListFormat('en', { type: 'conjunction' });
const inRow = (names: readonly string[]): string => listed.format(names);

/** A chance as one would say it over a table. */
const byLuck = (p: number): string => {
  const often = Math.round(p * 100);
  return often < 1 ? 'in fewer than 1 of 100 evenings' : `in about ${often} of 100 evenings`;
};

type WordsMeaning = Extract<WordsResult<never>, { outcome: 'result' }>['meaning'];

/** The words of the recap, in English: every code of its results has a plain sentence here. */
export const recapWords = {
  title: 'Looking back',
  untitled: 'An evening without a title',
  toHome: 'All evenings',
  toRoom: 'The room',
  open: 'Look back on the evening',
  notYet: 'You can look back once the evening is finished.',
  guests: (guests: number, remote: number) =>
    `${several(guests, 'guest', 'guests')}${remote > 0 ? `, ${remote} of them at home` : ''}`,
  when: (day: string, from: string, to: string) => `${day}, ${from} to ${to}`,
  quiet: (findings: number) =>
    findings === 1 ? 'On one thing there is nothing to say' : `On ${findings} things there is nothing to say`,
  onlyPermitted: 'This includes only what guests shared or let count. Private pages are not in it.',
  released:
    'The counts stay as you first saw them. They change when three or more guests have changed something, so that nobody’s change can be told by itself.',
  silent: (names: readonly string[]) =>
    `The talk was never opened for ${inRow(names)}, so those notes stay with the guests.`,
  glass: (position: number) => `Glass ${position}`,
  asTable: 'Show as a table',
  reckoned: 'How we worked this out',
  answers: (n: number, guests: number) => `From ${n} of ${several(guests, 'guest', 'guests')}.`,
  pour: 'Pour',

  ranking: {
    title: 'Which pour won',
    titleOf: (number: number) => `Which pour won, round ${number}`,
    noRanking: 'You did not ask the room to rank the glasses.',
    headline: {
      'clear-favourite': (best: readonly string[]) => `${inRow(best)} won.`,
      'favourites-share': (best: readonly string[]) =>
        best.length > 1
          ? `${inRow(best)} share the first place.`
          : `${inRow(best)} came first, but not clearly ahead of all others.`,
      'no-agreement-shown': (best: readonly string[]) =>
        `No clear winner. ${inRow(best)} came first by a little.`,
    } satisfies Record<OrderMeaning, (best: readonly string[]) => string>,
    sure: {
      'clear-favourite': (p: number) =>
        `The room agreed: luck alone would give so much agreement ${byLuck(p)}. The first is clearly ahead of every other pour.`,
      'favourites-share': (p: number) =>
        `The room agreed on something: luck alone would do this ${byLuck(p)}. But the first is not clearly ahead of all the others.`,
      'no-agreement-shown': (p: number) =>
        `Tastes went different ways: luck alone would give this much agreement ${byLuck(p)}.`,
    } satisfies Record<OrderMeaning, (p: number) => string>,
    apart: (better: string, worse: readonly string[]) => `${better} is clearly ahead of ${inRow(worse)}.`,
    none: {
      'no-answers': 'No guest who let it count ranked all the glasses.',
      'one-guest': 'Only one guest let their ranking count, and one taste is not the room’s.',
      'one-pour': 'Only one pour was ranked, and one alone cannot win.',
      'all-tied': 'Everybody ranked all pours equal, so there is no first.',
    } satisfies Record<NoOrder, string>,
    picture: (pour: string, mean: string, of: number) => `${pour}: mean place ${mean} of ${of}`,
    axis: (of: number) => `Mean place, from 1 (all put it first) to ${of} (all put it last)`,
    place: 'Place',
    meanPlace: 'Mean place',
    rankSum: 'Sum of places',
  },

  methods: {
    'friedman-exact': 'Friedman’s test with ties; the chance was counted exactly, case by case.',
    'friedman-chi-square': 'Friedman’s test with ties; the chance is from the chi-square curve.',
    'exact-binomial': 'Exact binomial test against picking one of three glasses by luck.',
    'cochran-q-holm': 'Cochran’s Q for each word, the chances raised by Holm’s rule.',
    'counts-only': 'Counted, not tested.',
    'summary-only': 'Summed up, not tested: too few guests rated all pours.',
  } satisfies Record<
    OrderMethod | 'exact-binomial' | 'cochran-q-holm' | 'counts-only' | 'summary-only',
    string
  >,
  pairMethods: {
    'rank-sum-lsd': (gap: string) =>
      `Two pours differ clearly when their sums of places differ by more than ${gap} (least significant difference, each pair by itself).`,
    nemenyi: (gap: string) =>
      `Two pours differ clearly when their sums of places differ by more than ${gap} (Nemenyi’s difference, all pairs at once).`,
  } satisfies Record<DifferenceMethod, (gap: string) => string>,
  figures: (chi2: string, df: number, p: string, w: string) =>
    `Chi square ${chi2} with ${df} degrees of freedom, p ${p}. Kendall’s W is ${w}: 0 is no agreement, 1 is one mind.`,
  limits: {
    'small-panel': (n: number) => `${people(n)}: this is a party, not proof.`,
    'panel-too-small-to-show': () =>
      'With so few answers, even full agreement would not have shown anything.',
    'not-shown-is-not-same': () => 'No proof of a difference is not proof that the pours are the same.',
    'approximate-p': () => 'There were too many cases to count, so the chance is an approximation.',
    'pairs-not-corrected': () =>
      'Each pair of pours was judged by itself; among many pairs, some differ by chance.',
    'incomplete-left-out': () => 'Answers with gaps are not in the comparison.',
    'anonymous-left-out': () =>
      'Where fewer than three answers came without a name, they are not counted: they could have been guessed.',
    'not-everyone-shared': () => 'Some guests kept their answers; those here may not speak for them.',
    'many-words-tested': () => 'Many words were tested at once; the chances are raised for that.',
  } satisfies Record<LimitCode, (n: number) => string>,

  liking: {
    title: 'How well each was liked',
    headline: {
      'clear-favourite': (best: readonly string[]) =>
        `${inRow(best)} ${best.length > 1 ? 'were' : 'was'} liked best.`,
      'favourites-share': (best: readonly string[]) =>
        `${inRow(best)} ${best.length > 1 ? 'were' : 'was'} liked best, but not clearly more than all others.`,
      'no-agreement-shown': () => 'No pour was clearly liked better than the others.',
      'summary-only': () => 'Each pour by itself; too few rated them all to compare them.',
    } satisfies Record<OrderMeaning | 'summary-only', (best: readonly string[]) => string>,
    none: 'No guest let their rating count.',
    axis: '1 dislike extremely · 5 neither · 9 like extremely',
    shapes: {
      divided: 'opinions divided',
      liked: 'liked',
      disliked: 'disliked',
      neither: 'neither liked nor disliked',
    },
    picture: (pour: string, median: string, least: number, most: number, n: number) =>
      `${pour}: median ${median}, from ${least} to ${most}, ${several(n, 'rating', 'ratings')}`,
    unrated: (pour: string) => `${pour}: no rating may be counted`,
    columns: {
      n: 'Ratings',
      mean: 'Mean',
      median: 'Median',
      range: 'From\u00a0… to',
      sd: 'Spread (s.d.)',
      shape: 'In a word',
    },
    legend: 'Bars: how many chose each point. The line marks the median.',
  },

  trials: {
    title: 'The odd one out',
    pair: (a: string, b: string) => `${a} and ${b}`,
    headline: {
      'room-told-them-apart': 'The room told them apart.',
      'no-difference-shown': 'The room did not show that it can tell them apart.',
    },
    none: 'No guest let their pick count.',
    right: (correct: number, n: number, expected: string) =>
      `${correct} of ${n} found the odd glass; luck alone would give about ${expected}.`,
    critical: (critical: number | null) =>
      critical === null
        ? 'With so few, no number of right answers would have been enough.'
        : `From ${critical} right answers on, luck is no good explanation (fewer than 5 of 100 evenings).`,
    share: (share: string, lower: string, upper: string) =>
      `Lucky guesses taken off, about ${share} truly tell them apart; the true share may lie anywhere from ${lower} to ${upper} (95\u00a0% limits).`,
    p: (p: string) => `p ${p}.`,
    picture: (correct: number, n: number, critical: number | null) =>
      `${correct} of ${n} right${critical === null ? '' : `; ${critical} would have been enough`}`,
    columns: { right: 'Right', wrong: 'Wrong', luck: 'By luck', enough: 'Enough' },
    enough: 'enough',
  },

  words: {
    title: 'Words the room shared',
    headline: {
      'words-tell-pours-apart': 'The room’s words tell the pours apart.',
      'no-word-shown-to-tell-pours-apart': 'No word was shown to belong to one pour more than to others.',
      'counts-only': 'These words came up.',
    } satisfies Record<WordsMeaning, string>,
    none: 'No guest let their words count.',
    agreed: (words: readonly string[]) => `They tell it apart: ${inRow(words)}.`,
    noShared: 'No two guests chose the same word here.',
    nobody: 'No words for this one.',
    overlap: (share: string) => `Two guests had ${share} of their words in common, on average.`,
    agreement: {
      'fleiss-kappa': (value: string) =>
        `Agreement on which word belongs where, beyond chance: ${value} (Fleiss’s kappa; 1 is full agreement, 0 is chance).`,
      'krippendorff-alpha': (value: string) =>
        `Agreement on which word belongs where, beyond chance: ${value} (Krippendorff’s alpha, which bears gaps; 1 is full agreement, 0 is chance).`,
    },
    count: (word: string, guests: number, n: number) => `${word}: ${guests} of ${n}`,
    columns: { word: 'Word', guests: 'Guests', of: 'Of' },
  },

  colours: {
    title: 'Colours the room saw',
    said: 'Each piece of a strip is as wide as the number of guests who saw that colour.',
    none: 'No guest let their colour count.',
    picture: (pour: string, named: readonly string[]) => `${pour}: ${named.join(', ')}`,
    count: (colour: string, guests: number) => (guests === 1 ? colour : `${colour} × ${guests}`),
    columns: { colour: 'Colour', guests: 'Guests' },
  },

  structure: {
    title: 'In the mouth',
    said: 'How the room found each pour, and how much people differed.',
    none: 'No guest let their marks count.',
    axis: 'From 1 to 5. The bar spans all marks, the line is the median.',
    picture: (mark: string, median: string, least: number, most: number, n: number) =>
      `${mark}: median ${median}, from ${least} to ${most}, ${several(n, 'guest', 'guests')}`,
    columns: { mark: 'Mark', median: 'Median', range: 'From\u00a0… to', n: 'Guests' },
  },

  timing: {
    title: 'The time it took',
    headline: {
      'as-planned': () => 'The evening went as planned.',
      'ran-over': (over: string) => `The evening ran over by ${over}.`,
      'ended-early': (over: string) => `The evening ended ${over} early.`,
      'never-began': () => 'The evening ended before it began.',
    } satisfies Record<Timing['meaning'], (over: string) => string>,
    sums: (planned: string, took: string) => `Planned ${planned} from the welcome on; it took ${took}.`,
    breaks: (taken: number, planned: number, called: number, time: string) =>
      `${several(taken, 'break', 'breaks')} of ${planned + called}${called > 0 ? `, ${several(called, 'extra break', 'extra breaks')} among them` : ''}, ${time} in all.`,
    noBreaks: (planned: number): string =>
      planned === 0 ? 'No break was planned, and none was taken.' : 'No break was taken.',
    reckoned:
      '“Planned” is the running order when the doors opened; later changes count as time taken. The gathering is not counted. “As planned” means within five minutes or five percent.',
    planned: 'Planned',
    took: 'Taken',
    difference: 'Difference',
    part: 'Part of the evening',
    skipped: 'skipped',
    parts: {
      gathering: 'Gathering',
      opening: 'Welcome and practice',
      glass: 'Glass',
      choosing: 'Ranking and odd ones',
      talk: 'Talk and names',
      break: 'Break',
      farewell: 'Goodbye',
    } satisfies Record<PartKind, string>,
    calledBreak: 'Extra break',
    /** One letter on the picture; glasses have their number. */
    letters: { gathering: 'G', opening: 'W', glass: '', choosing: 'R', talk: 'T', break: 'B', farewell: 'E' },
    numbers: 'Numbers are glasses.',
    picture: (which: string, parts: readonly string[]) => `${which}: ${parts.join('; ')}`,
    partTime: (part: string, time: string) => `${part}, ${time}`,
    hours: (hours: number, minutes: number) =>
      hours === 0
        ? `${minutes}\u00a0min`
        : minutes === 0
          ? `${hours}\u00a0h`
          : `${hours}\u00a0h ${minutes}\u00a0min`,
    more: (time: string) => `+${time}`,
    less: (time: string) => `−${time}`,
    perStep: 'Step by step',
    step: 'Step',
  },

  take: {
    title: 'Take it home',
    print: 'Print',
    csv: 'Table (CSV)',
    json: 'Everything (JSON)',
    hint: 'Names appear only beside notes that were shared with a name.',
    saved: 'Saved to your downloads.',
    fileName: (title: string) => `Recap ${title}`,
  },

  remove: {
    title: 'Delete this evening',
    lead: 'This deletes the plan, the running order, every seat, every note and every link to them. You cannot undo it.',
    begin: 'Delete this evening…',
    sure: (title: string) => `Delete “${title}” for good?`,
    goes: [
      'Your guests lose their notes too: their links stop working.',
      'Anything you have not saved as a file or printed is gone.',
      'Nobody can bring it back, and there is no undo.',
    ],
    understood: 'I understand that this cannot be undone',
    go: 'Delete for good',
    keep: 'Keep it',
    gone: 'Evening deleted',
    goneBody: 'We checked: the server has nothing left of it.',
    notSure:
      'We asked the server to delete it, but it is still there. Check the list of evenings and try again.',
  },
};
export type RecapWords = typeof recapWords;
