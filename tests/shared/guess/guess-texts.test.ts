import { describe, expect, it } from 'vitest';
import { guessTrend } from '../../../shared/guess/guess-progress.ts';
import { choiceText, judged, nearnessText, valueText } from '../../../shared/guess/guess-texts.ts';
import { originName, styleName } from '../../../shared/guess/trade-names.ts';
import { guessWords } from '../../../shared/language/en/guess.ts';

const years = Array.from({ length: 51 }, (_, at) => 1976 + at);
const choices = {
  origin: ['france', 'france/alsace', 'germany'],
  vintage: years,
  age: [8, 10, 12],
  abv: [40, 45, 50],
  price: [1000, 2000, 4000],
};

describe('how near a guess was, in a word', () => {
  it.each([
    [{ origin: 'france' }, { origin: 'france/alsace' }, guessWords.told.countryRight],
    [{ origin: 'france/alsace' }, { origin: 'france/alsace' }, guessWords.told.bothRight],
    [{ origin: 'germany' }, { origin: 'france/alsace' }, guessWords.told.countryWrong],
    [{ vintage: 2019 }, { vintage: 2016 }, '3 years too young'],
    [{ vintage: 2015 }, { vintage: 2016 }, '1 year too old'],
    [{ age: 8 }, { age: 12 }, '4 years too young'],
    [{ age: 12 }, { age: 12 }, guessWords.told.right],
    [{ abv: 50 }, { abv: 45.5 }, '4.5\u00a0%\u00a0vol too strong'],
    [{ price: 2000 }, { price: 4000 }, '50% too cheap'],
  ])('%j beside %j is "%s"', (guess, truth, said) => {
    expect(judged(guess, truth, choices).map(nearnessText).map(plain)).toEqual([plain(said)]);
  });

  it('says nothing of what was not guessed or is not known', () => {
    expect(judged({ age: 8 }, { abv: 40 }, choices)).toEqual([]);
  });
});

/** Which spaces stand in a text is another test's. */
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');

describe('what is guessed', () => {
  it('is read in words, the host’s own as they are', () => {
    expect(styleName('single-malt')).toBe('Single malt');
    expect(styleName('own:House style')).toBe('House style');
    expect(styleName('constructor')).toBe('Constructor');
    expect(originName('germany/mosel')).toBe('Mosel, Germany');
    expect(originName('own:Fennmark')).toBe('Fennmark');
    expect(valueText('price', 2500, 'EUR')).toContain('25');
    expect(valueText('price', 2500, 'not one')).toContain('25');
  });

  it('says at the end of a slider that more lies beyond', () => {
    expect(choiceText('vintage', 1976, years, 'EUR')).toBe(guessWords.values.orOlder('1976'));
    expect(choiceText('age', 12, choices.age, 'EUR')).toBe(guessWords.values.orMore('12 years'));
    expect(choiceText('age', 8, choices.age, 'EUR')).toBe('8 years');
  });
});

describe('getting nearer', () => {
  it('leaves out evenings without guesses', () => {
    const of = (asNear: number) => ({ asNear, sureness: undefined });
    expect(guessTrend([of(0.5), null, of(0.4), of(0.3)])).toMatchObject({ evenings: 3, score: 3 });
    expect(guessTrend([of(0.5), null])).toBeUndefined();
  });
});
