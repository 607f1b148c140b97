import { describe, expect, it } from 'vitest';
import { crowdQuestions } from '../../../core/planning/theme/crowd.ts';
import { keepSurvey, type Question, readSurvey } from '../../../guest/survey/answer-storage.ts';
import { newRespondent } from '../../../shared/seats/new-id.ts';

const questions: readonly Question[] = crowdQuestions;

function aDevice(start: Record<string, string> = {}) {
  const shelves = new Map(Object.entries(start));
  return () => ({
    getItem: (name: string) => shelves.get(name) ?? null,
    setItem: (name: string, text: string) => void shelves.set(name, text),
  });
}

const survey = { respondent: newRespondent(), answers: { 'quiet-evening': 2 }, sent: true } as const;

describe('answers kept on a phone', () => {
  it('come back under the code they were given for, and under no other', () => {
    const device = aDevice();
    expect(keepSurvey('ABC123', survey, device)).toBe(true);
    expect(readSurvey('ABC123', questions, device)).toEqual(survey);
    expect(readSurvey('ABC124', questions, device)).toBeUndefined();
  });

  it('are made by somebody without a name: each respondent is new', () => {
    const made = new Set(Array.from({ length: 100 }, newRespondent));
    expect(made.size).toBe(100);
    for (const each of made) expect(each).toMatch(/^[A-Za-z0-9_-]{20,40}$/);
  });

  it('drop what is no question and no score of ours', () => {
    const text = JSON.stringify({
      ...survey,
      answers: { 'quiet-evening': 4, weight: 2, 'two-side-by-side': 0 },
    });
    const device = aDevice({ 'quietpour.survey.ABC123': text });
    expect(readSurvey('ABC123', questions, device)?.answers).toEqual({ 'two-side-by-side': 0 });
  });

  it.each(['', '{', 'null', '[]', '{"respondent":"me","answers":{}}', '{"respondent":3}'])(
    'are forgotten where something else stands in their place: %s',
    (text) => {
      const device = aDevice({ 'quietpour.survey.ABC123': text });
      expect(readSurvey('ABC123', questions, device)).toBeUndefined();
    },
  );

  it('say when the device keeps nothing', () => {
    const refuses = (): never => {
      throw new Error('refused');
    };
    expect(keepSurvey('ABC123', survey, refuses)).toBe(false);
    expect(readSurvey('ABC123', questions, refuses)).toBeUndefined();
  });
});
