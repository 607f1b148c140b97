import { fold, type ListVocabulary } from './list-words.ts';

const amount = /^(?:[a-z]{3} )?\d/;

/** Whether a line counts up others: it says so, and whatever else stands in it is an amount. */
export function isTotal(cells: readonly string[], { total }: ListVocabulary): boolean {
  const told = cells.map(fold).filter((cell) => cell !== '');
  const rest = told.flatMap((cell) => {
    const left = cell.replace(total, '').trim();
    return left === '' ? [] : [left];
  });
  return told.some((cell) => total.test(cell)) && rest.every((cell) => amount.test(cell));
}
