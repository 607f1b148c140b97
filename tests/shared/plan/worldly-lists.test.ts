import { describe, expect, it } from 'vitest';
import type { ForeignMoney } from '../../../core/planning/pour-list/cell-reading.ts';
import { pourFromRow, readPourList, rowIsTotal } from '../../../core/planning/pour-list/pour-list.ts';
import type { Drink } from '../../../core/tasting.ts';
import { parseList } from '../../../host/plan/csv/parse-list.ts';
import { listVocabulary } from '../../../shared/list-words/vocabulary.ts';

const setting = { drink: 'spirit', currency: 'EUR', digits: 2, ounce: 'us', words: listVocabulary } as const;
const read = (text: string, more = {}) => readPourList(parseList(text).lines, { ...setting, ...more });
const cellsOf = (text: string) => parseList(text).lines.map(({ cells }) => cells);

describe('the drink of a list', () => {
  it.each<[string, Drink]>([
    ['Wein;Jahrgang', 'wine'],
    ['Vin;Millésime', 'wine'],
    ['Weingut;Name', 'wine'],
    ['Name;Rebsorte', 'wine'],
    ['Whisky;Age', 'spirit'],
    ['Brennerei;Name', 'spirit'],
    ['Bier;Alkohol', 'beer'],
    ['Brauerei;Name', 'beer'],
    ['Brasserie;Bière', 'beer'],
  ])('is told by its headings: %s', (headings, drink) => {
    // Whatever the plan thought until then.
    for (const planned of ['spirit', 'wine', 'beer'] as const) {
      expect(read(`${headings}\nHollow Hill;Elder`, { drink: planned }).drink).toBe(drink);
    }
  });

  it.each<[string, Drink]>([
    ['Name;IBU\nHollow Hill;40', 'beer'],
    ['Name;EBC\nHollow Hill;12', 'beer'],
    ['Name;Colour\nHollow Hill;red\nElder Bank;white', 'wine'],
    ['Name;Fortified\nHollow Hill;yes', 'wine'],
    ['Name;Style\nHollow Hill;Dry Stout\nElder Bank;Pale Ale', 'beer'],
    ['Hollow Hill, Whisky, 46%\nElder Bank, Whisky, 43%', 'spirit'],
    // Only spirits are usually of this strength.
    ['Name;ABV\nHollow Hill;46\nElder Bank;57.1', 'spirit'],
  ])('is told by facts that only one drink has: %s', (text, drink) => {
    expect(read(text, { drink: drink === 'spirit' ? 'wine' : 'spirit' }).drink).toBe(drink);
  });

  it('is the plan’s where the list does not tell, and the host’s word goes before all', () => {
    const bare = 'Name;ABV\nHollow Hill;12.5';
    for (const drink of ['spirit', 'wine', 'beer'] as const) {
      expect(read(bare, { drink }).drink).toBe(drink);
      expect(read('Wein;Jahrgang\nHollow Hill;2019', { pours: drink }).drink).toBe(drink);
    }
  });

  it('is that of its pours, but for a line that says another', () => {
    const list = read('Wein;Getränk;Farbe\nHollow Hill;;rot\nElder Still;Whisky;');
    const pours = list.rows.map((row, index) => pourFromRow(row, `p${index}`, list.drink));
    expect(pours.map((pour) => pour?.drink)).toEqual(['wine', 'spirit']);
    expect(list.rows.flatMap(({ problems }) => problems)).toEqual([]);
  });
});

describe('separators', () => {
  it('may differ from line to line', () => {
    expect(cellsOf('Hollow Hill;46%;700 ml\nElder Bank\t43%\t700 ml\nOak Ford;50%;500 ml')).toEqual([
      ['Hollow Hill', '46%', '700 ml'],
      ['Elder Bank', '43%', '700 ml'],
      ['Oak Ford', '50%', '500 ml'],
    ]);
    expect(cellsOf('Hollow Hill; 46,3 %\nElder Bank | 43 %\nOak Ford, 50 %')).toEqual([
      ['Hollow Hill', ' 46,3 %'],
      ['Elder Bank ', ' 43 %'],
      ['Oak Ford', '50 %'],
    ]);
  });

  it('do not part what stands in quotes, or the decimals of a line that has its own', () => {
    expect(cellsOf('Name;Story\n"Hollow Hill";"one, two"\nElder Bank;three, four')).toEqual([
      ['Name', 'Story'],
      ['Hollow Hill', 'one, two'],
      ['Elder Bank', 'three, four'],
    ]);
    expect(cellsOf('Hollow Hill,46\nElder Bank;43,5').at(-1)).toEqual(['Elder Bank', '43,5']);
  });
});

describe('a total at the foot', () => {
  it.each([
    'Summe;;312,50',
    'Total;;312.50 EUR',
    ';Gesamtsumme;€ 312,50',
    'Zwischensumme: 312,50',
    'Grand total;2;312.50',
    'Insgesamt;6 Flaschen;312,50',
  ])('is no pour: %s', (foot) => {
    const list = read(`Name;Alter;Preis\nHollow Hill;12;52,50\n${foot}`);
    expect(list.rows.map(rowIsTotal)).toEqual([false, true]);
    expect(list.rows[1]?.problems).toEqual([]);
  });

  it.each(['Total Eclipse;12;52,50', 'Summerhill;12;52,50', 'Hollow Hill;12;Total'])(
    'is not seen in a pour: %s',
    (line) => {
      expect(read(`Name;Alter;Preis\n${line}`).rows.map(rowIsTotal)).toEqual([false]);
    },
  );
});

describe('a price in another currency', () => {
  const priced = (cell: string, money?: Record<string, ForeignMoney>, currency = 'EUR') => {
    const { rows, currencies } = read(`Name;Price\nHollow Hill;${cell}`, { money, currency });
    return { price: rows[0]?.facts.get('price'), currencies };
  };

  it('is left open until it is said what becomes of it, once for the list', () => {
    const list = read('Name;Price\nHollow Hill;48 CHF\nElder Bank;CHF 52\nOak Ford;£30\nAsh;20 €');
    expect(list.currencies).toEqual(['CHF', 'GBP']);
    expect(list.rows.map(({ facts }) => facts.get('price'))).toEqual([undefined, undefined, undefined, 2000]);
  });

  it('is converted at the host’s rate, taken as it is, or left out; and stays asked about', () => {
    expect(priced('50 CHF', { CHF: { how: 'convert', rate: 1.06 } }).price).toBe(5300);
    expect(priced('50 CHF', { CHF: { how: 'convert', rate: undefined } }).price).toBeUndefined();
    expect(priced('50 CHF', { CHF: { how: 'take' } }).price).toBe(5000);
    expect(priced('50 CHF', { CHF: { how: 'leave' } })).toEqual({ price: undefined, currencies: ['CHF'] });
    expect(priced('50 CHF', { GBP: { how: 'take' } }).price).toBeUndefined();
  });

  it('may be named in the heading alone', () => {
    expect(read('Name;Preis (CHF)\nHollow Hill;48').currencies).toEqual(['CHF']);
    expect(read('Name;Preis (EUR)\nHollow Hill;48').currencies).toEqual([]);
  });

  it.each([
    ['$48', 'EUR', '$'],
    ['Fr. 48.-', 'EUR', 'CHF'],
  ])('is seen in %s where the evening is in %s', (cell, currency, named) => {
    expect(priced(cell, undefined, currency).currencies).toEqual([named]);
  });

  it.each([
    ['$48', 'USD'],
    ['$48', 'CAD'],
    ['48 Fr.', 'CHF'],
    ['48', 'EUR'],
    ['48 Euro', 'EUR'],
  ])('%s is of the evening in %s', (cell, currency) => {
    expect(priced(cell, undefined, currency)).toEqual({ price: 4800, currencies: [] });
  });
});
