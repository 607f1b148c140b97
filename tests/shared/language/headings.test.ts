import { describe, expect, it } from 'vitest';
import { headingOf } from '../../../core/planning/pour-list/headings.ts';
import { type ListWords, vocabularyOf } from '../../../core/planning/pour-list/list-words.ts';
import { meanings } from '../../../core/planning/pour-list/meanings.ts';
import { colourCell, drinkCell, wineKindCell } from '../../../core/planning/pour-list/worded-cells.ts';
import { languages } from '../../../shared/build/one-language.ts';
import { planWords as german } from '../../../shared/language/de/plan.ts';
import { planWords as english } from '../../../shared/language/en/plan.ts';
import { englishListWords } from '../../../shared/list-words/en.ts';
import { listVocabulary } from '../../../shared/list-words/vocabulary.ts';

describe.each([
  ['English', english],
  ['German', german],
])('a list of pours in %s', (_, words) => {
  it.each(meanings)('is read by the heading that the page itself shows for %s', (meaning) => {
    expect(headingOf(words.list.meanings[meaning], listVocabulary)?.meaning).toBe(meaning);
  });

  const asked = (meaning: 'drink' | 'colour' | 'wine-kind'): string[] =>
    words.list
      .problemSentence({ code: 'not-one-of', meaning }, '?', String)
      .replace(/^.*?(Enter|Möglich sind) /, '')
      .replace(/,? (or clear|oder ein leeres).*$|\.$/, '')
      .split(/, | or | oder /);

  it('takes the words that it asks for', () => {
    expect(asked('drink').map((word) => drinkCell(word, listVocabulary))).toEqual(
      ['spirit', 'wine', 'beer'].map((value) => ({ is: 'fact', fact: value })),
    );
    expect(asked('colour').map((word) => colourCell(word, 'wine', listVocabulary))).toEqual(
      ['white', 'rose', 'orange', 'red'].map((value) => ({ is: 'fact', fact: value })),
    );
    expect(asked('wine-kind').map((word) => wineKindCell(word, listVocabulary))).toEqual(
      ['film-yeast', 'naturally-sweet', 'ice', 'liqueur', 'mistelle'].map((value) => ({
        is: 'fact',
        fact: value,
      })),
    );
  });
});

describe('words that lists are read by', () => {
  it.each(languages)('are there in %s, and read', async (language) => {
    const file: Readonly<Record<string, ListWords>> = await import(
      `../../../shared/list-words/${language}.ts`
    );
    const [words] = Object.values(file);
    expect(Object.keys(words?.headings ?? {}).length).toBeGreaterThan(30);
    for (const [meaning, headings] of Object.entries(words?.headings ?? {}))
      for (const heading of headings.split('|'))
        expect({ heading, meaning: headingOf(heading, listVocabulary)?.meaning }).toEqual({
          heading,
          meaning,
        });
  });

  it('may be of one language in the heading and of another in the cells', () => {
    expect(headingOf('Rebsorte', listVocabulary)?.meaning).toBe('style');
    expect(colourCell('Weißwein', 'wine', listVocabulary)).toEqual({ is: 'fact', fact: 'white' });
    expect(colourCell('rouge', 'wine', listVocabulary)).toEqual({ is: 'fact', fact: 'red' });
    expect(colourCell('rot', 'wine', vocabularyOf([englishListWords]))).toMatchObject({ is: 'problem' });
  });
});
