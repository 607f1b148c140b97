import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourId, seatId } from '../../../core/ids.ts';
import { TRIANGLE_ORDERS } from '../../../core/panel/presentation-orders.ts';
import type { PermittedPage } from '../../../core/recap/permitted-page.ts';
import { oddGlassOf } from '../../../core/session/serving.ts';
import type { Plan } from '../../../core/tasting.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';
import { isFiniteThroughout } from '../panel/panel-arbitraries.ts';
import { counted, lookBack, page } from './support.ts';

const guests = ['ada', 'ben', 'cleo', 'dai', 'eve', 'fay', 'gil', 'hal', 'ivo'];
const pours = ['ash', 'birch', 'cedar'];
const plan = planOf(3, { practice: false, ranking: 'each-flight', liking: true });

const trial = {
  id: pourId('juniper'),
  flight: 0,
  a: pourId('ash'),
  b: pourId('birch'),
  codes: { a: ['417', '952'], b: ['638', '285'] },
  orders: [...TRIANGLE_ORDERS],
} satisfies Plan['trials'][number];

/** Everybody has had every glass. */
const tasted = (of: Plan = plan, names: readonly string[] = guests) =>
  pours.reduce((evening, pour) => evening.goTo(`${pour}/first/look`), new EveningTold(of).sit(...names));

const ranked = (seat: string, places: readonly number[]) =>
  places.map((place, index) => page(seat, pours[index] ?? '', { place }));

describe('the recap of an evening', () => {
  it('given nine guests of one mind, names the winner with its figures', () => {
    const pages = guests.flatMap((seat) => ranked(seat, [2, 1, 3]));
    const [ranking] = lookBack(tasted(), pages, pours).rankings;
    expect(ranking?.result).toMatchObject({
      n: 9,
      method: 'friedman-exact',
      meaning: 'clear-favourite',
      limits: ['small-panel'],
      // Nine judges of one mind over three: chi square n(k - 1) = 18, W = 1, p = 6 (1/6)^9 = 6^-8.
      figures: {
        chi2: 18,
        kendallW: 1,
        p: expect.closeTo(6 ** -8, 12),
        places: [{ pour: 'birch', rankSum: 9 }, {}, {}],
      },
    });
  });

  it('keeps the rankings of two flights apart', () => {
    const six = ['ash', 'birch', 'cedar', 'dogwood', 'elm', 'fir'];
    const evening = six.reduce(
      (told, pour) => told.goTo(`${pour}/first/look`),
      new EveningTold(planOf(6, { practice: false, ranking: 'each-flight' })).sit('ada', 'ben'),
    );
    const pages = ['ada', 'ben'].flatMap((seat) =>
      six.map((pour, index) => page(seat, pour, { place: (index % 3) + 1 })),
    );
    const { rankings } = lookBack(evening, pages, six);
    expect(rankings.map((each) => each.pours)).toEqual([six.slice(0, 3), six.slice(3)]);
  });

  it('takes what was sealed, and what came later only where nothing was', () => {
    const changed = page('ada', 'ash', { liking: 9 }, { sealed: { liking: 3 } });
    const late = page('ben', 'ash', { liking: 8 }, { sealed: {} });
    const { liking } = lookBack(tasted(), [changed, late], pours);
    expect(liking).toMatchObject({ figures: { pours: [{ liking: { least: 3, most: 8 } }, {}, {}] } });
  });

  it('never mixes sealed places with later ones', () => {
    const pages = [
      page('ada', 'ash', { place: 2 }, { sealed: { place: 1 } }),
      page('ada', 'birch', { place: 3 }, { sealed: { place: 2 } }),
      page('ada', 'cedar', { place: 1 }, { sealed: {} }),
      ...ranked('ben', [2, 3, 1]),
    ];
    expect(lookBack(tasted(), pages, pours).rankings[0]?.result).toMatchObject({
      n: 2,
      figures: { places: [{ pour: 'cedar', rankSum: 2 }, { pour: 'ash' }, { pour: 'birch' }] },
    });
  });

  it('[Q1] leaves a pour whose talk was never opened in the notebooks', () => {
    const pages = guests.map((seat) => page(seat, 'cedar', { liking: 7, words: ['pear'], colour: 'hay' }));
    const recap = lookBack(tasted(), pages, ['ash', 'birch']);
    expect(recap.pours.map(({ standing }) => standing)).toEqual(['counted', 'counted', 'silent']);
    expect([recap.liking, recap.words, recap.colours]).toMatchObject(
      Array(3).fill({ outcome: 'none', reason: 'no-answers' }),
    );
    expect(recap.rankings[0]?.pours).toEqual(['ash', 'birch']);
  });

  it('[Q1] leaves an odd-one-out whose talk was never opened in the notebooks', () => {
    const evening = tasted({ ...plan, trials: [trial] }).goTo('juniper/odd-one-out');
    const pages = guests.map((seat) => page(seat, 'juniper', { oddGlass: 1 }));
    expect(lookBack(evening, pages, pours).trials).toMatchObject([{ result: { outcome: 'none', n: 0 } }]);
  });

  it('leaves out a guest who was taken off the table', () => {
    const evening = tasted();
    evening.host({ type: 'RemoveSeat', seat: seatId('ada') });
    const recap = lookBack(evening, [page('ada', 'ash', { liking: 1 })], pours);
    expect(recap).toMatchObject({ guests: 8, liking: { outcome: 'none' } });
  });

  it('reckons an odd-one-out by what stood in front of each seat', () => {
    const evening = tasted({ ...plan, trials: [trial] }).goTo('juniper/odd-one-out');
    const pages = guests.map((seat, row) =>
      page(seat, 'juniper', {
        oddGlass: row < 6 ? oddGlassOf(trial, { row }) : (oddGlassOf(trial, { row }) % 3) + 1,
      }),
    );
    const [found] = lookBack(evening, pages, ['juniper']).trials;
    // 6 of 9 is the critical number of a triangle test at 5 % (ISO 4120, table A.1, from memory).
    expect(found?.result).toMatchObject({
      n: 9,
      meaning: 'room-told-them-apart',
      figures: { correct: 6, critical: 6 },
    });
  });

  it('counts colours and marks', () => {
    const pages = [
      page('ada', 'ash', { colour: 'hay', structure: { sweet: 2, bitter: 5 } }),
      page('ben', 'ash', { colour: 'butter', structure: { sweet: 4 } }),
      page('cleo', 'ash', { colour: 'hay', structure: { sweet: 5 } }),
    ];
    const { colours, structure } = lookBack(tasted(), pages, pours);
    expect(colours).toMatchObject({
      n: 3,
      figures: [
        {
          n: 3,
          colours: [
            { colour: 'hay', guests: 2 },
            { colour: 'butter', guests: 1 },
          ],
        },
        { n: 0 },
        { n: 0 },
      ],
    });
    expect(structure).toMatchObject({
      figures: [
        {
          marks: [
            { mark: 'bitter', n: 1, median: 5 },
            { mark: 'sweet', n: 3, median: 4, least: 2, most: 5, counts: [0, 1, 0, 1, 1] },
          ],
        },
        { marks: [] },
        { marks: [] },
      ],
    });
  });
});

describe('anonymous pages', () => {
  it('count from three on, pour by pour, though guests chose pour by pour', () => {
    // For ash only Ada is anonymous, for birch three are: hers for ash would be what is left of the sum.
    const pages = [
      page('ada', 'ash', { liking: 2 }, counted),
      page('ada', 'birch', { liking: 3 }, counted),
      ...['ben', 'cleo'].flatMap((seat) => [
        page(seat, 'ash', { liking: 8 }),
        page(seat, 'birch', { liking: 7 }, counted),
      ]),
    ];
    const { liking } = lookBack(tasted(), pages, pours);
    expect(liking).toMatchObject({
      figures: { pours: [{ liking: { n: 2, least: 8 } }, { liking: { n: 3 } }, {}] },
    });
    if (liking?.outcome === 'result') expect(liking.limits).toContain('anonymous-left-out');
  });

  it('never let one row be worked out of a ranking by its shared parts', () => {
    const mixed = (seat: string, places: readonly number[], own: number) =>
      places.map((place, index) => page(seat, pours[index] ?? '', { place }, index === own ? counted : {}));
    const pages = [
      ...mixed('ada', [1, 2, 3], 0),
      ...mixed('ben', [1, 2, 3], 1),
      ...mixed('cleo', [1, 2, 3], 2),
      ...ranked('dai', [3, 2, 1]),
      ...ranked('eve', [3, 1, 2]),
    ];
    expect(lookBack(tasted(), pages, pours).rankings[0]?.result).toMatchObject({ n: 2 });
  });

  it('do not tell an own word, unless somebody with a name has it too or the host offered it', () => {
    const own = ['pear', 'own:gran’s barn', 'own:tent', 'own:wet slate'];
    const pages = [
      ...['ada', 'ben', 'cleo'].map((seat) => page(seat, 'ash', { words: own }, counted)),
      page('dai', 'ash', { words: ['own:Tent'] }),
    ];
    const { words } = lookBack(tasted({ ...plan, extraWords: ['Wet slate'] }), pages, pours);
    if (words.outcome !== 'result') expect.fail(words.reason);
    expect(words.figures.pours[0]?.words).toEqual([
      // Spelled as whoever tells it with a name; a capital makes no other word of it.
      { word: 'own:Tent', guests: 4 },
      { word: 'own:Wet slate', guests: 3 },
      { word: 'pear', guests: 3 },
    ]);
  });
});

describe('a recap with hardly anything in it', () => {
  it.each([
    ['nobody at the table', [], [], pours, 'no-answers'],
    ['nobody shared', guests, [], pours, 'no-answers'],
    ['one guest', ['ada'], ranked('ada', [1, 2, 3]), pours, 'one-guest'],
    ['one pour talked about', guests, guests.flatMap((seat) => ranked(seat, [1, 2, 3])), ['ash'], 'one-pour'],
    ['all ties', guests, guests.flatMap((seat) => ranked(seat, [1, 1, 1])), pours, 'all-tied'],
    ['missing places', guests, guests.map((seat) => page(seat, 'ash', { place: 1 })), pours, 'no-answers'],
  ])('has a plain reason: %s', (_, names, pages, talkedAbout, reason) => {
    const recap = lookBack(tasted(plan, names), pages, talkedAbout);
    expect(recap.rankings[0]?.result).toMatchObject({ outcome: 'none', reason });
    expect(isFiniteThroughout(recap)).toBe(true);
  });

  it('bears an evening that ended before it began', () => {
    const recap = lookBack(new EveningTold(planOf(1)), []);
    expect(recap).toMatchObject({
      guests: 0,
      rankings: [],
      liking: null,
      pours: [{ standing: 'not-reached' }],
    });
    expect(isFiniteThroughout(recap)).toBe(true);
  });

  it('never gives a figure that is no number, whatever was noted and chosen', () => {
    const marks = fc.record({
      colour: fc.option(fc.constantFrom('hay', 'butter')),
      words: fc.subarray(['pear', 'hay', 'own:x']),
      structure: fc.dictionary(fc.constantFrom('sweet', 'body'), fc.integer({ min: 0, max: 6 })),
      liking: fc.option(fc.integer({ min: 0, max: 10 })),
      place: fc.option(fc.integer({ min: 1, max: 3 })),
      oddGlass: fc.constant(null),
    });
    const consent = fc.constantFrom('shared' as const, 'anonymous' as const);
    const pages = fc.array(
      fc.record({
        seat: fc.constantFrom(...guests.slice(0, 5).map(seatId)),
        pour: fc.constantFrom(...pours.map(pourId)),
        consents: fc.record({
          colour: consent,
          words: consent,
          structure: consent,
          liking: consent,
          place: consent,
          oddGlass: consent,
        }),
        sealed: marks,
        current: marks,
      }),
      { maxLength: 15 },
    );
    const evening = tasted(plan, guests.slice(0, 5));
    evening.host({ type: 'OpenDiscussion', pours: pours.map(pourId) });
    fc.assert(
      fc.property(pages, (found: PermittedPage[]) => {
        expect(isFiniteThroughout(lookBack(evening, found))).toBe(true);
      }),
      { numRuns: 50 },
    );
  });
});
