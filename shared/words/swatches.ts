/** The colour of one step of a drink's range, with the code of its word. */
export interface Swatch {
  readonly word: string;
  readonly hex: string;
  /** The colour of text that reads on it. */
  readonly text: 'white' | 'black';
  /** Which range of wine it belongs to. */
  readonly range?: 'white' | 'rose' | 'red';
}

// Written by tests/shared/words/swatches.test.ts from the models in tests/support/colour: change those, not this.

export const spiritSwatches = [
  { word: 'clear', hex: '#ffffff', text: 'black' },
  { word: 'breath', hex: '#fffdf5', text: 'black' },
  { word: 'ivory', hex: '#fefae7', text: 'black' },
  { word: 'hay', hex: '#fdf3d1', text: 'black' },
  { word: 'butter', hex: '#fceab6', text: 'black' },
  { word: 'light-honey', hex: '#f9dd93', text: 'black' },
  { word: 'honey', hex: '#f4cb6c', text: 'black' },
  { word: 'brass', hex: '#ecb543', text: 'black' },
  { word: 'marmalade', hex: '#e19b0e', text: 'black' },
  { word: 'amber', hex: '#d07e00', text: 'black' },
  { word: 'copper', hex: '#b95e00', text: 'black' },
  { word: 'fox', hex: '#9c3d00', text: 'white' },
  { word: 'strong-tea', hex: '#791e00', text: 'white' },
] as const satisfies readonly Swatch[];

export const wineSwatches = [
  { word: 'breath', hex: '#fcfcf3', text: 'black', range: 'white' },
  { word: 'green-grape', hex: '#f8f7db', text: 'black', range: 'white' },
  { word: 'butter', hex: '#fbefb6', text: 'black', range: 'white' },
  { word: 'light-honey', hex: '#fedf88', text: 'black', range: 'white' },
  { word: 'gold', hex: '#fdc752', text: 'black', range: 'white' },
  { word: 'dried-apricot', hex: '#f49400', text: 'black', range: 'white' },
  { word: 'onion-skin', hex: '#ffddc1', text: 'black', range: 'rose' },
  { word: 'petal', hex: '#ffd2d2', text: 'black', range: 'rose' },
  { word: 'pink', hex: '#ffa9b9', text: 'black', range: 'rose' },
  { word: 'raspberry', hex: '#e75f8c', text: 'black', range: 'rose' },
  { word: 'violet', hex: '#590033', text: 'white', range: 'red' },
  { word: 'black-cherry', hex: '#82002b', text: 'white', range: 'red' },
  { word: 'ruby', hex: '#ae002e', text: 'white', range: 'red' },
  { word: 'pomegranate', hex: '#a1090f', text: 'white', range: 'red' },
  { word: 'brick', hex: '#ae2700', text: 'white', range: 'red' },
  { word: 'rust', hex: '#b74b00', text: 'white', range: 'red' },
] as const satisfies readonly Swatch[];

export const beerSwatches = [
  { word: 'light-honey', hex: '#f7dc99', text: 'black' },
  { word: 'honey', hex: '#f1c769', text: 'black' },
  { word: 'brass', hex: '#ebb342', text: 'black' },
  { word: 'marmalade', hex: '#e09a03', text: 'black' },
  { word: 'amber', hex: '#d17d00', text: 'black' },
  { word: 'copper', hex: '#c26500', text: 'black' },
  { word: 'cinnamon', hex: '#ac4900', text: 'white' },
  { word: 'fox', hex: '#993400', text: 'white' },
  { word: 'strong-tea', hex: '#821e00', text: 'white' },
  { word: 'mahogany', hex: '#6b0800', text: 'white' },
  { word: 'coffee', hex: '#510000', text: 'white' },
  { word: 'black', hex: '#2f0000', text: 'white' },
] as const satisfies readonly Swatch[];
