import { describe, expect, it } from 'vitest';
import { headingOf, meanings } from '../../../core/planning/pour-list/meanings.ts';
import { colourCell, drinkCell, wineKindCell } from '../../../core/planning/pour-list/worded-cells.ts';
import { planWords as german } from '../../../shared/language/de/plan.ts';
import { planWords as english } from '../../../shared/language/en/plan.ts';

describe.each([
  ['English', english],
  ['German', german],
])('a list of pours in %s', (_, words) => {
  it.each(meanings)('is read by the heading that the page itself shows for %s', (meaning) => {
    expect(headingOf(words.list.meanings[meaning])?.meaning).toBe(meaning);
  });

  const asked = (meaning: 'drink' | 'colour' | 'wine-kind'): string[] =>
    words.list
      .problemSentence({ code: 'not-one-of', meaning }, '?', String)
      .replace(/^.*?(Enter|Möglich sind) /, '')
      .replace(/,? (or clear|oder ein leeres).*$|\.$/, '')
      .split(/, | or | oder /);

  it('takes the words that it asks for', () => {
    expect(asked('drink').map((word) => drinkCell(word))).toEqual(
      ['spirit', 'wine', 'beer'].map((value) => ({ is: 'fact', fact: value })),
    );
    expect(asked('colour').map((word) => colourCell(word, 'wine'))).toEqual(
      ['white', 'rose', 'orange', 'red'].map((value) => ({ is: 'fact', fact: value })),
    );
    expect(asked('wine-kind').map((word) => wineKindCell(word))).toEqual(
      ['film-yeast', 'naturally-sweet', 'ice', 'liqueur', 'mistelle'].map((value) => ({
        is: 'fact',
        fact: value,
      })),
    );
  });
});
