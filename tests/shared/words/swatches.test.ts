import { describe, expect, it } from 'vitest';
import * as carried from '../../../shared/words/swatches.ts';
import * as computed from '../../support/colour/swatches.ts';

/**
 * Phones carry the computed swatches as a plain table. When a model changes, `npx vitest -u` on this
 * file writes the table anew, and anything else that drifts fails here.
 */
const header = `/** The colour of one step of a drink's range, with the code of its word. */
export interface Swatch {
  readonly word: string;
  readonly hex: string;
  /** The colour of text that reads on it. */
  readonly text: 'white' | 'black';
  /** Which range of wine it belongs to. */
  readonly range?: 'white' | 'rose' | 'red';
}

// Written by tests/shared/words/swatches.test.ts from the models in tests/support/colour: change those, not this.
`;

const row = ({ word, hex, text, range }: computed.Swatch) =>
  `  { word: '${word}', hex: '${hex}', text: '${text}'${range === undefined ? '' : `, range: '${range}'`} },\n`;

const table = (name: string, list: readonly computed.Swatch[]) =>
  `\nexport const ${name} = [\n${list.map(row).join('')}] as const satisfies readonly Swatch[];\n`;

const source =
  header +
  table('spiritSwatches', computed.spiritSwatches) +
  table('wineSwatches', computed.wineSwatches) +
  table('beerSwatches', computed.beerSwatches);

describe("the phones' swatches", () => {
  it('are written as the models compute them', async () => {
    await expect(source).toMatchFileSnapshot('../../../shared/words/swatches.ts');
  });

  it('hold the same values when they are loaded', () => {
    expect(carried.spiritSwatches).toEqual(computed.spiritSwatches);
    expect(carried.wineSwatches).toEqual(computed.wineSwatches);
    expect(carried.beerSwatches).toEqual(computed.beerSwatches);
  });
});
