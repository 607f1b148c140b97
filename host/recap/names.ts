import type { PourId } from '../../core/ids.ts';
import type { EveningRecap, RecapPour } from '../../core/recap/evening-recap.ts';
import type { Drink } from '../../core/tasting.ts';
import type { Swatch } from '../../shared/words/swatches.ts';
import { textOf, type WordSheet } from '../../shared/words/word-sheet.ts';

export type Sheets = Partial<Record<Drink, WordSheet>>;

/** What codes and ids of a recap are called. A code that no sheet knows stands as it is. */
export interface Names {
  readonly pour: (id: PourId) => string;
  /** Whatever the drink: a code that two drinks share means the same in both. */
  readonly word: (code: string) => string;
  readonly mark: (code: string) => string;
  readonly colour: (pour: PourId, code: string) => { readonly word: string; readonly hex: string | null };
}

export function namesOf({ pours }: Pick<EveningRecap, 'pours'>, sheets: Sheets): Names {
  const byId = new Map(pours.map((pour) => [pour.id, pour]));
  const all = Object.values(sheets);
  const sheetOf = (id: PourId): WordSheet | undefined => sheets[byId.get(id)?.drink ?? 'spirit'];
  return {
    pour: (id) => nameOf(byId.get(id)) ?? id,
    word: (code) => all.map((sheet) => textOf(sheet, code)).find((text) => text !== code) ?? code,
    mark: (code) => all.map(({ text }) => text.marks[code]?.name).find((name) => name !== undefined) ?? code,
    colour: (id, code) => {
      const sheet = sheetOf(id);
      const swatch: Swatch | undefined = sheet?.board.swatches.find(({ word }) => word === code);
      return { word: sheet?.text.colours[code] ?? code, hex: swatch?.hex ?? null };
    },
  };
}

const nameOf = (pour: RecapPour | undefined): string | undefined => pour?.name;
