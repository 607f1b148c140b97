import type { FigureUnit } from '../../../core/planning/figures/reckoning.ts';
import type { WayIn } from '../../../core/planning/invitation/invitation.ts';
import type { WallTime } from '../../../core/planning/invitation/invitation-time.ts';
import type { AxisCode } from '../../../core/planning/order/axes/axis.ts';
import type { FactClash } from '../../../core/planning/order/fact-clashes.ts';
import type { CellNote, CellProblem } from '../../../core/planning/pour-list/cell-reading.ts';
import type { OrderLimit } from '../../../core/planning/serving/serving-orders.ts';
import type { ThemeCheck } from '../../../core/planning/theme/theme.ts';
import type { Move } from '../../../core/running-order/cue.ts';
import type { ReminderKind } from '../../../core/session/state.ts';
import { hostWords } from '../../../shared/language/en/host.ts';
import { invitationWords } from '../../../shared/language/en/invite.ts';
import { planBefore } from '../../../shared/language/en/plan-before.ts';
import { planFigures } from '../../../shared/language/en/plan-figures.ts';
import { planLineup } from '../../../shared/language/en/plan-lineup.ts';
import { planRehearsal } from '../../../shared/language/en/plan-rehearsal.ts';
import { recapWords } from '../../../shared/language/en/recap.ts';
import { resultWords } from '../../../shared/language/en/result.ts';
import { serveAt, temperatures } from '../../../shared/language/en/temperature.ts';

/** One of each kind of a union, so that the compiler asks for a sample of every new kind. */
type OneOfEach<Union extends { readonly code: string }> = {
  readonly [Code in Union['code']]: Extract<Union, { readonly code: Code }>;
};

/** Every code of a union of codes. */
const codes = <Code extends string>(all: Readonly<Record<Code, true>>): readonly Code[] =>
  Object.keys(all) as Code[];

const axes = codes<AxisCode>({
  drink: true,
  smoke: true,
  strength: true,
  pungency: true,
  dryness: true,
  sweetness: true,
  category: true,
  body: true,
  cask: true,
  age: true,
  bitterness: true,
  colour: true,
  sourness: true,
});

const units = codes<FigureUnit>({
  mL: true,
  g: true,
  '% vol': true,
  'kg/m3': true,
  '1': true,
  drinks: true,
  drops: true,
  guests: true,
  seats: true,
  pours: true,
  bottles: true,
  vials: true,
  pieces: true,
  'minor units': true,
  years: true,
});

const moves = codes<Move>({ swirl: true, look: true, nose: true, sip: true, spit: true });
const reminders = codes<ReminderKind>({ water: true, spit: true, quiet: true, nudge: true });

const clashes: OneOfEach<FactClash> = {
  'not-of-this-drink': { code: 'not-of-this-drink', pour: 'Quitte', fact: 'peat' },
  'unusual-strength': { code: 'unusual-strength', pour: 'Quitte', abv: 71, from: 15, to: 62 },
  'strong-as-fortified': { code: 'strong-as-fortified', pour: 'Quitte', abv: 19 },
  'sugar-against-mark': { code: 'sugar-against-mark', pour: 'Quitte', sugarGPerL: 83, dryness: 9 },
};

const problems: OneOfEach<CellProblem> = {
  'name-missing': { code: 'name-missing' },
  'too-long': { code: 'too-long', letters: 131, most: 120 },
  'not-a-number': { code: 'not-a-number' },
  'unit-unknown': { code: 'unit-unknown', rest: 'Scheffel' },
  'unit-missing': { code: 'unit-missing' },
  'out-of-range': { code: 'out-of-range', value: 412, least: 11, most: 399 },
  'above-any-drink': { code: 'above-any-drink', value: 114, asProof: 57 },
  'not-whole': { code: 'not-whole', value: 12 },
  'not-yes-or-no': { code: 'not-yes-or-no' },
  'not-one-of': { code: 'not-one-of', meaning: 'body' },
  'no-year': { code: 'no-year' },
  'not-a-link': { code: 'not-a-link' },
  'not-an-id': { code: 'not-an-id' },
  'which-number': { code: 'which-number' },
};

const cellNotes: OneOfEach<CellNote> = {
  'us-proof-halved': { code: 'us-proof-halved', proof: 114, abv: 57 },
  'ebc-as-srm': { code: 'ebc-as-srm', ebc: 39, srm: 20 },
  'ppm-as-peat': { code: 'ppm-as-peat', ppm: 41, peat: 3 },
  'litres-taken': { code: 'litres-taken', ml: 700 },
  'other-currency': { code: 'other-currency', currency: 'CHF', price: 48, how: 'convert' },
  'a-total': { code: 'a-total' },
  'same-as-line': { code: 'same-as-line', line: 14 },
};

const themes: OneOfEach<ThemeCheck> = {
  'another-producer': {
    code: 'another-producer',
    pour: 'Quitte',
    producer: 'Hof am Bach',
    expected: 'Hof am Berg',
  },
  'same-step': { code: 'same-step', pours: ['Quitte', 'Feige'], step: 12 },
  'does-not-share': {
    code: 'does-not-share',
    fact: 'region',
    pour: 'Quitte',
    value: 'Bachtal',
    expected: 'Bergtal',
  },
  'not-apart': { code: 'not-apart', fact: 'region', pours: ['Quitte', 'Feige'], value: 'Bachtal' },
  'fact-missing': { code: 'fact-missing', fact: 'abv', pour: 'Quitte' },
  'one-side-only': { code: 'one-side-only' },
  'uneven-sides': { code: 'uneven-sides', sizes: [4, 2] },
  'sides-mixed': { code: 'sides-mixed', pours: ['Quitte', 'Feige'] },
  'side-missing': { code: 'side-missing' },
  'too-few-pours': { code: 'too-few-pours', pours: 1 },
};

const limits: OneOfEach<OrderLimit> = {
  'seats-do-not-fill-design': { code: 'seats-do-not-fill-design', flight: 2, seats: 7, needed: 10 },
  'nothing-to-vary': { code: 'nothing-to-vary', flight: 2 },
  'forced-place-breaks-balance': { code: 'forced-place-breaks-balance', flight: 2, pours: ['Quitte'] },
};

const spread = [
  { at: '1', guests: 2 },
  { at: '3', guests: 4 },
];
const sureness = {
  people: 7,
  party: true,
  tooFewToShow: false,
  luck: 0.03,
  meaning: 'clear-favourite',
} as const;

const wall: WallTime = { day: 'Freitag', time: '19:30', zone: 'MEZ', offset: 'UTC+1' };
const wayIn: WayIn = { link: 'https://tisch.example/s', code: 'K7M2PD' };

const plainly = String;

/** What a function of the English files is asked with, where only certain codes, objects or sums make sense to it. */
export const samples: ReadonlyMap<unknown, readonly (readonly unknown[])[]> = new Map<
  unknown,
  readonly (readonly unknown[])[]
>([
  [temperatures, [[{ minC: 10, maxC: 12 }]]],
  [serveAt, [[{ minC: 10, maxC: 12 }]]],
  [hostWords.cue.practice, moves.map((move) => [move])],
  [hostWords.room.reminder, reminders.map((kind) => [kind])],
  [invitationWords.when, [[wall], [{ ...wall, zone: wall.offset }]]],
  [invitationWords.otherZone, [[wall]]],
  [invitationWords.way, [[wayIn]]],
  [planFigures.unit, units.flatMap((unit) => [1, 3].map((value) => [value, unit]))],
  [planFigures.table.drawing, ['right', 'left'].map((hand) => [9, hand])],
  [planRehearsal.rehearsal.inTime, [['7 in ten', '22:30']]],
  [planRehearsal.rehearsal.inTimeWithin, [['7 in ten', '3\u00a0h']]],
  [resultWords.row.order, [['Quitte', '4', 5, spread]]],
  [resultWords.row.liking, [['Quitte', '7', 9, spread]]],
  [
    resultWords.sure,
    [
      [sureness],
      [{ ...sureness, luck: 0.001, party: false }],
      [{ ...sureness, meaning: 'no-agreement-shown' }],
      [{ ...sureness, luck: null }],
      [{ ...sureness, tooFewToShow: true }],
    ],
  ],
  [recapWords.timing.breaks, [[4, 3, 1, 'Quitte']]],
  [planLineup.reason.rises, axes.map((axis) => [axis])],
  [planLineup.reason.assumed, axes.map((axis) => [axis])],
  [planLineup.reason.again, axes.map((axis) => [axis])],
  [planLineup.reason.gives, axes.map((axis) => [axis])],
  [planLineup.reason.givesByHand, axes.map((axis) => [axis])],
  [planLineup.risks.risk, axes.map((axis) => [axis, 'Quitte', 'Feige'])],
  [planLineup.clashSentence, Object.values(clashes).map((clash) => [clash, 'wine', plainly])],
  [planLineup.list.problemSentence, Object.values(problems).map((problem) => [problem, '47', plainly])],
  [planLineup.list.noteSentence, Object.values(cellNotes).map((note) => [note, plainly])],
  [planLineup.themeSentence, Object.values(themes).map((check) => [check, plainly])],
  [planBefore.orders.limitSentence, Object.values(limits).map((limit) => [limit, 1, 2])],
]);
