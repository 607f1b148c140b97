import { fold } from './meanings.ts';

const totalWord =
  /^(?:zwischensumme|gesamtsumme|endsumme|summe|gesamtbetrag|gesamtpreis|gesamt|insgesamt|sub ?total|grand total|totale?|sum|somme|suma)\b/;

const amount = /^(?:[a-z]{3} )?\d/;

/** Whether a line counts up others: it says so, and whatever else stands in it is an amount. */
export function isTotal(cells: readonly string[]): boolean {
  const told = cells.map(fold).filter((cell) => cell !== '');
  const rest = told.flatMap((cell) => {
    const left = cell.replace(totalWord, '').trim();
    return left === '' ? [] : [left];
  });
  return told.some((cell) => totalWord.test(cell)) && rest.every((cell) => amount.test(cell));
}
