import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adviseCrowd,
  type CrowdAnswer,
  crowdQuestions,
  placeGuest,
  type SurveyAnswers,
} from '../../../../core/planning/theme/crowd.ts';

const all = (answer: CrowdAnswer): SurveyAnswers =>
  Object.fromEntries(crowdQuestions.map((question) => [question, answer]));
const newcomer = all(0);
const regular = all(1);
const devotee = all(3);
const anyAnswer = fc.constantFrom<CrowdAnswer>(0, 1, 2, 3);
const anySurvey: fc.Arbitrary<SurveyAnswers> = fc
  .record(Object.fromEntries(crowdQuestions.map((question) => [question, anyAnswer])), { requiredKeys: [] })
  .map((answers) => answers as SurveyAnswers);

describe('placing a guest', () => {
  it.each([
    [all(0), 'newcomers', 0],
    [all(1), 'regulars', 1],
    [all(2), 'regulars', 2],
    [all(3), 'devotees', 3],
    [{ ...all(2), 'two-side-by-side': 3, 'quiet-evening': 3 } as const, 'devotees', 2.4],
    [{ ...all(1), 'tastings-sat-through': 0 } as const, 'newcomers', 0.8],
  ] as const)('reads the mean of the answers: %j', (answers, level, score) => {
    expect(placeGuest(answers)).toEqual({ status: 'placed', level, score: expect.closeTo(score) });
  });

  it('does not place anybody on two answers', () => {
    const answers: SurveyAnswers = { 'tastings-sat-through': 3, 'words-for-a-glass': 3 };
    expect(placeGuest(answers)).toEqual({ status: 'too-few-answers', answered: 2 });
  });

  it('never places a guest lower for a better answer', () => {
    const ladder = ['newcomers', 'regulars', 'devotees'];
    fc.assert(
      fc.property(anySurvey, fc.constantFrom(...crowdQuestions), (answers, question) => {
        const [low, high] = [0 as const, 3 as const].map((answer) =>
          placeGuest({ ...answers, [question]: answer }),
        );
        if (low?.status !== 'placed' || high?.status !== 'placed') return;
        expect(ladder.indexOf(high.level)).toBeGreaterThanOrEqual(ladder.indexOf(low.level));
      }),
    );
  });
});

describe('advice for a crowd', () => {
  it.each([
    ['newcomers', [newcomer, newcomer], [3]],
    ['regulars', [regular, regular], [3, 3]],
    ['devotees', [devotee, devotee], [3, 3, 3]],
  ] as const)('gives %s their usual size', (level, surveys, flightSizes) => {
    expect(adviseCrowd(surveys)).toMatchObject({ status: 'advised', level, flightSizes });
  });

  it('turns the practice round on for two newcomers among regulars, and says so', () => {
    expect(adviseCrowd([regular, regular, regular, newcomer, newcomer])).toMatchObject({
      level: 'regulars',
      practiceRound: true,
      notes: [{ code: 'newcomers-among-them', guests: 2 }],
    });
    expect(adviseCrowd([regular, regular])).toMatchObject({ practiceRound: false, notes: [] });
  });

  it('serves the middle of a wide spread and names both ends', () => {
    expect(adviseCrowd([newcomer, regular, devotee])).toMatchObject({
      level: 'regulars',
      notes: [
        { code: 'newcomers-among-them', guests: 1 },
        { code: 'devotees-among-them', guests: 1 },
        { code: 'wide-spread' },
      ],
    });
  });

  it('lets an evenly split room have the gentler evening', () => {
    expect(adviseCrowd([newcomer, devotee])).toMatchObject({ level: 'newcomers' });
    expect(adviseCrowd([regular, devotee])).toMatchObject({ level: 'regulars' });
  });

  it('knows nothing of an empty crowd and little of a silent one', () => {
    expect(adviseCrowd([])).toMatchObject({ status: 'unknown', notes: [] });
    expect(adviseCrowd([{}, {}])).toMatchObject({
      status: 'unknown',
      notes: [{ code: 'not-placed', guests: 2 }],
    });
    expect(adviseCrowd([regular, {}, {}])).toMatchObject({
      level: 'regulars',
      notes: [{ code: 'not-placed', guests: 2 }, { code: 'mostly-unknown' }],
    });
  });

  it('counts every survey once, whatever the order', () => {
    fc.assert(
      fc.property(fc.array(anySurvey, { maxLength: 30 }), (surveys) => {
        const { spread } = adviseCrowd(surveys);
        expect(spread.newcomers + spread.regulars + spread.devotees + spread.notPlaced).toBe(surveys.length);
        expect(adviseCrowd([...surveys].reverse())).toEqual(adviseCrowd(surveys));
      }),
    );
  });
});
