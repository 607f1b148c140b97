// German, not yet reviewed by a native speaker.
import type { waterWords as english } from '../en/plan-water.ts';

export const waterWords: typeof english = {
  when: 'Wassertropfen in Spirituosen',
  whens: { poured: 'Beim Einschenken', 'after-nose': 'Nach dem ersten Riechen', none: 'Nie' },
  hints: {
    poured: 'wer einschenkt, gibt sie hinein, bevor der Deckel daraufkommt',
    'after-nose': 'alle riechen erst pur und geben sie vor dem Notieren hinein',
    none: 'verkostet wird, wie es aus der Flasche kommt',
  },
  title: 'Wasser darin',
  drops: (drops, volume, from, to) =>
    `${drops} Tropfen auf ${volume}: Aus ${from}\u00a0% werden ${to}\u00a0%\u00a0vol.`,
  wish: 'Herabsetzen auf, %\u00a0vol',
  wishHint: 'Steht auch auf den Notizblättern. Leer heißt: nur die Tropfen.',
  wishWrong: (most) =>
    `Gib einen Gehalt von 1 bis ${most}\u00a0%\u00a0vol ein; Wasser kann ihn nicht erhöhen.`,
  reach: (water, volume, strength) => `${water} Wasser auf ${volume} ergeben ${strength}\u00a0%\u00a0vol.`,
  sheet: (drops, strength) => `${drops} Tropfen Wasser: ${strength}\u00a0%\u00a0vol`,
  sheetLater: 'Erst pur riechen, dann die Tropfen hinein',
  sheetReach: (water, strength) => `${water} Wasser: ${strength}\u00a0%\u00a0vol`,
};
