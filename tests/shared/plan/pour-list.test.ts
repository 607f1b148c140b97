import { describe, expect, it } from 'vitest';
import type { CellProblem } from '../../../core/planning/pour-list/cell-reading.ts';
import { headingOf } from '../../../core/planning/pour-list/headings.ts';
import { pourFromRow, readPourList } from '../../../core/planning/pour-list/pour-list.ts';
import { parseList } from '../../../host/plan/csv/parse-list.ts';
import { listVocabulary } from '../../../shared/list-words/vocabulary.ts';

const setting = { drink: 'spirit', currency: 'EUR', digits: 2, ounce: 'us', words: listVocabulary } as const;
const read = (text: string, more = {}) => readPourList(parseList(text).lines, { ...setting, ...more });
const poursOf = (text: string, more = {}) =>
  read(text, more).rows.map((row, index) => pourFromRow(row, `p${index}`, 'spirit'));
const problemIn = (heading: string, cell: string): CellProblem | undefined =>
  read(`name\t${heading}\nOrchard Wall\t${cell}`).rows[0]?.problems[0]?.problem;

describe('headings of a list', () => {
  it.each([
    ['Name', 'name'],
    ['Bezeichnung', 'name'],
    ['Distillery', 'producer'],
    ['Brennerei', 'producer'],
    ['Weingut', 'producer'],
    ['Land', 'country'],
    ['Anbaugebiet', 'region'],
    ['Rebsorte', 'style'],
    ['Alter (Jahre)', 'age'],
    ['Jahrgang', 'vintage'],
    ['Age / vintage', 'age-or-vintage'],
    ['ABV', 'strength'],
    ['ABV (%)', 'strength'],
    ['% vol', 'strength'],
    ['Vol.-%', 'strength'],
    ['Alc. % by vol.', 'strength'],
    ['Alkohol %', 'strength'],
    ['Stärke', 'strength'],
    ['US proof', 'strength'],
    ['Fasstyp', 'cask'],
    ['Getorft', 'peat'],
    ['Farbe', 'colour'],
    ['Restzucker g/l', 'sugar'],
    ['SRM', 'srm'],
    ['EBC', 'ebc'],
    ['Bittereinheiten', 'ibu'],
    ['Flaschengröße', 'bottle'],
    ['Vol. (ml)', 'bottle'],
    ['Inhalt (l)', 'bottle'],
    ['Preis €', 'price'],
    ['Price (EUR)', 'price'],
    ['Pour size ml', 'pour'],
    ['Web page', 'link'],
    ['Geschichte', 'story'],
    ['Notizen', 'note'],
  ])('%s means %s', (text, meaning) => {
    expect(headingOf(text, listVocabulary)?.meaning).toBe(meaning);
  });

  it.each(['Shelf', 'Ordered by', '', 'A very long sentence that says nothing at all'])(
    '"%s" means nothing here',
    (text) => {
      expect(headingOf(text, listVocabulary)).toBeUndefined();
    },
  );

  it('are matched in any order, with commas, semicolons or tabs, a mark at the start and quotes', () => {
    const pour = { name: 'Slow; Candle, "the second"', producer: 'Varrowmere', abv: 46.3, bottleMl: 700 };
    for (const text of [
      '\uFEFFABV,Producer,Name,Bottle\r\n46.3,Varrowmere,"Slow; Candle, ""the second""",70cl\r\n',
      'Flasche;Bezeichnung;Stärke;Hersteller\n"0,7 l";"Slow; Candle, ""the second""";46,3 %;Varrowmere\n',
      'sep=;\nName;ABV;Producer;Bottle\n"Slow; Candle, ""the second""";46,3;Varrowmere;700 ml',
      'Producer\tName\tSize\tStrength\nVarrowmere\t"Slow; Candle, ""the second"""\t700\t46.3% vol',
    ]) {
      expect(poursOf(text)[0]).toEqual({ id: 'p0', drink: 'spirit', ...pour });
    }
  });
});

describe('a cell', () => {
  it.each([
    ['ABV', '0', { abv: 0 }],
    ['ABV', '46 %', { abv: 46 }],
    ['ABV', '46,3', { abv: 46.3 }],
    ['ABV', '46,3 % vol', { abv: 46.3 }],
    ['ABV', '96', { abv: 96 }],
    // 27 CFR 30.11: US proof is twice the per cent by volume.
    ['ABV', '92 proof', { abv: 46 }],
    ['Proof', '114.2', { abv: 57.1 }],
    ['Age', '12 yo', { ageYears: 12 }],
    ['Age', '12-year-old', { ageYears: 12 }],
    ['Alter', '12 Jahre', { ageYears: 12 }],
    ['Age', '18 months', { ageYears: 1.5 }],
    ['Age', 'NAS', {}],
    ['Age / vintage', '1998', { vintage: 1998 }],
    ['Age / vintage', '21', { ageYears: 21 }],
    ['Vintage', '12.05.2009', { vintage: 2009 }],
    ['Vintage', 'NV', {}],
    ['Peat', 'heavily peated', { peat: 3 }],
    ['Peat', '0', { peat: 0 }],
    ['Torf', 'nein', { peat: 0 }],
    ['Peat ppm', '20', { peat: 2 }],
    // EBC and SRM are both defined from the absorbance at 430 nm, 25 A and 12.7 A: 1.97 EBC to one SRM.
    ['EBC', '19,7', { srm: 10 }],
    ['Bottle', '0.7', { bottleMl: 700 }],
    ['Bottle', '1.000 ml', { bottleMl: 1000 }],
    ['Bottle', '1.500 l', { bottleMl: 1500 }],
    ['Bottle (cl)', '70', { bottleMl: 700 }],
    // A US fluid ounce is 1/128 of 231 cubic inches: 29.5735295625 mL.
    ['Bottle', '8 fl oz', { bottleMl: 236.5882365 }],
    ['Price', '45,-', { priceMinor: 4500 }],
    ['Price', '€1.234,50', { priceMinor: 123_450 }],
    ['Price', '1,200', { priceMinor: 120_000 }],
    ['Price', '46.90 EUR', { priceMinor: 4690 }],
    ['Allergene', 'Milch, Weizen und Sulfite', { allergens: ['gluten', 'milk', 'sulphites'] }],
    ['Contains', 'none', {}],
    ['Sparkling', 'ja', { sparkling: true }],
    ['Link', 'https://tarnweather.example/wall', { link: 'https://tarnweather.example/wall' }],
  ])('under %s, %s is read', (heading, cell, facts) => {
    const [pour] = poursOf(`name\t${heading}\nOrchard Wall\t${cell}`);
    expect(pour).toEqual({ id: 'p0', drink: 'spirit', name: 'Orchard Wall', ...facts });
  });

  it.each([
    ['ABV', '100', { code: 'above-any-drink', value: 100, asProof: 50 }],
    ['ABV', '146', { code: 'above-any-drink', value: 146, asProof: 73 }],
    ['ABV', '250', { code: 'above-any-drink', value: 250 }],
    ['ABV', '200 proof', { code: 'above-any-drink', value: 200 }],
    ['ABV', '-3', { code: 'out-of-range', value: -3, least: 0, most: 96 }],
    ['ABV', 'strong', { code: 'not-a-number' }],
    ['ABV', '46 bottles', { code: 'unit-unknown', rest: 'bottles' }],
    ['Age', '400', { code: 'out-of-range', value: 400, least: 0, most: 150 }],
    ['Vintage', 'last year', { code: 'no-year' }],
    ['Vintage', '2003-2005', { code: 'no-year' }],
    ['Vintage', '1066', { code: 'out-of-range', value: 1066, least: 1700, most: 2200 }],
    ['Bottle', '70', { code: 'unit-missing' }],
    ['Bottle', '0 ml', { code: 'out-of-range', value: 0, least: 1, most: 20_000 }],
    ['Price', 'ask', { code: 'not-a-number' }],
    ['Price', '1,23,4', { code: 'not-a-number' }],
    ['Link', 'javascript:alert(1)', { code: 'not-a-link' }],
    ['Sparkling', 'perhaps', { code: 'not-yes-or-no' }],
    ['Contains', 'milk, chestnuts', { code: 'not-one-of', meaning: 'allergens' }],
    ['Drink', 'tea', { code: 'not-one-of', meaning: 'drink' }],
    ['Producer', 'x'.repeat(121), { code: 'too-long', letters: 121, most: 120 }],
  ])('under %s, %s is named with its reason', (heading, cell, problem) => {
    expect(problemIn(heading, cell)).toEqual(problem);
  });

  it('says what it took a number for', () => {
    const { rows } = read('name\tABV\tPrice\nOrchard Wall\t92 proof\t$40\nSlow Candle\t46\t40 USD');
    expect(rows.map(({ notes }) => notes.map(({ note }) => note))).toEqual([
      [
        { code: 'us-proof-halved', proof: 92, abv: 46 },
        { code: 'other-currency', currency: '$', price: 40, how: 'open' },
      ],
      [{ code: 'other-currency', currency: 'USD', price: 40, how: 'open' }],
    ]);
  });
});

describe('a list', () => {
  it('names every bad row by its line, also behind blank lines and stories of several lines', () => {
    const { rows } = read(
      'name,abv,story\nA,46,"one\ntwo"\n\n,40,\nB,146,\nC,eleven,\nD,0,\n'.replaceAll('\n', '\r\n'),
    );
    expect(rows.map(({ line, problems }) => [line, ...problems.map(({ problem }) => problem.code)])).toEqual([
      [2],
      [5, 'name-missing'],
      [6, 'above-any-drink'],
      [7, 'not-a-number'],
      [8],
    ]);
  });

  it('keeps the text of bad cells, and what no fact takes', () => {
    const [row] = read('name;abv;shelf;colour;abv\nA;146;3b;old gold;40;beyond').rows;
    expect(row?.cells).toEqual(['A', '146', '3b', 'old gold', '40', 'beyond']);
    expect(row?.asides).toEqual([
      { heading: 'shelf', text: '3b' },
      { heading: 'colour', text: 'old gold' },
      { heading: 'abv', text: '40' },
      { heading: '', text: 'beyond' },
    ]);
  });

  it('without a column of names says so in every row, and reads on once the host points at one', () => {
    const text = 'bottle label no;abv\nOrchard Wall;46\nSlow Candle;43';
    expect(read(text).rows.map(({ problems }) => problems.map(({ problem }) => problem.code))).toEqual([
      ['name-missing'],
      ['name-missing'],
    ]);
    expect(poursOf(text, { columns: { 0: 'name' } }).map((pour) => pour?.name)).toEqual([
      'Orchard Wall',
      'Slow Candle',
    ]);
  });

  it('is read without headings, line by line', () => {
    expect(poursOf('Orchard Wall, 46%\nSlow Candle, Varrowmere, 12 yo, 46,3 %\nPlain')).toEqual([
      { id: 'p0', drink: 'spirit', name: 'Orchard Wall', abv: 46 },
      { id: 'p1', drink: 'spirit', name: 'Slow Candle', producer: 'Varrowmere', ageYears: 12, abv: 46.3 },
      { id: 'p2', drink: 'spirit', name: 'Plain' },
    ]);
    expect(read('Orchard Wall, 46').rows[0]?.problems).toEqual([
      { column: 1, meaning: undefined, problem: { code: 'which-number' } },
    ]);
    expect(poursOf('Orchard Wall, 46', { columns: { 1: 'strength' } })[0]?.abv).toBe(46);
  });

  it('takes the drink from its own column, and reads colours by it', () => {
    const [wine, spirit] = poursOf('name,drink,colour\nA,red wine,rot\nB,whisky,amber');
    expect(wine).toMatchObject({ drink: 'wine', colour: 'red' });
    expect(spirit).toEqual({ id: 'p1', drink: 'spirit', name: 'B' });
  });

  it('names a pour that stands in it twice', () => {
    const { rows } = read('name,abv\nA,46\nB,46\na,46.0');
    expect(rows[2]?.notes).toEqual([{ column: -1, note: { code: 'same-as-line', line: 2 } }]);
  });

  it('of nothing is no list', () => {
    expect(read('').rows).toEqual([]);
    expect(read('\n \n;;\n').rows).toEqual([]);
  });
});
