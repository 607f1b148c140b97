import { currencyIn } from './headings.ts';
import { fold, type ListVocabulary } from './list-words.ts';
import type { Meaning } from './meanings.ts';
import { numberAtStart } from './numbers.ts';

/**
 * What a cell is by its form alone, for lists without headings: units, currencies and addresses tell. A bare number
 * with decimals that a strength could be is one; any other bare number is asked about.
 */
function formOf(cell: string, { noAge }: ListVocabulary): Meaning | 'bare-number' | 'words' | 'nothing' {
  const text = cell.trim();
  if (text === '') return 'nothing';
  if (/^https?:\/\//i.test(text)) return 'link';
  const number = '\\d+(?:[.,]\\d+)?';
  if (new RegExp(`^(?:abv|alc\\.?)?\\s*${number}\\s*(?:%|°|(?:us )?proof|vol\\b|abv\\b)`, 'i').test(text))
    return 'strength';
  if (
    /^\d{1,3}([.,]\d)?[-\s]*(y|yo|y\.?o\.?|yrs?|years?([-\s]old)?|jahre?|jährig|ans|months?|monate?)\.?$/i.test(
      text,
    )
  )
    return 'age';
  if (/^nas$/i.test(text) || noAge.has(fold(text))) return 'age';
  if (new RegExp(`^${number}\\s*(?:ml|cl|l|ltr|lit(?:er|re)s?|(?:fl\\.? ?)?oz)\\.?$`, 'i').test(text))
    return 'bottle';
  if (/^(1[789]|20)\d{2}$/.test(text)) return 'vintage';
  if (/\d/.test(text) && hasOnlyACode(text) && (currencyIn(text) !== undefined || /\$/.test(text)))
    return 'price';
  const read = numberAtStart(text);
  if (read === undefined || read.rest !== '') return 'words';
  return /[.,]\d/.test(text) && read.value >= 20 && read.value <= 96 ? 'strength' : 'bare-number';
}

/** No letters but for the three of one currency, wherever they stand. */
function hasOnlyACode(text: string): boolean {
  const [first, ...others] = text.match(/\p{L}+/gu) ?? [];
  return first === undefined || (others.length === 0 && /^[A-Z]{3}$/.test(first));
}

const wordsInOrder: readonly Meaning[] = ['name', 'producer', 'region', 'style'];

/** What each cell of a line without headings means: words in the order of a label, the rest by form. */
export function meaningsOfLine(
  cells: readonly string[],
  words: ListVocabulary,
): (Meaning | 'bare-number' | undefined)[] {
  const used = new Set<Meaning>();
  return cells.map((cell) => {
    const form = formOf(cell, words);
    if (form === 'nothing') return undefined;
    if (form === 'bare-number') return form;
    const meaning = form === 'words' ? wordsInOrder.find((each) => !used.has(each)) : form;
    if (meaning === undefined || used.has(meaning)) return undefined;
    used.add(meaning);
    return meaning;
  });
}
