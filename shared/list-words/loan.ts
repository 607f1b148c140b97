import type { ListWords } from '../../core/planning/pour-list/list-words.ts';

/** Words that labels and lists in any language borrow from French, Italian, Spanish and Portuguese. */
export const loanListWords: ListWords = {
  headings: {
    name: 'vin|vins|vino|bière|bières|birra',
    producer: 'château|domaine|brasserie|distillerie|cantina',
    strength: 'gradation',
  },
  drinkHeadings: {
    spirit: 'distillerie',
    wine: 'vin|vins|vino|vini|domaine|château|cantina|cépage|cépages',
    beer: 'bière|bières|birra|cerveza|brasserie|birrificio',
  },
  drinks: {
    spirit: 'liqueur',
    wine: 'vin|vino',
  },
  colours: {
    white: 'blanc|bianco|blanco|branco',
    rose: 'rosé|rosato|rosado',
    red: 'rouge|rosso|tinto',
  },
  wineKinds: {
    'film-yeast': 'flor',
    mistelle: 'mistelle|mistela',
  },
  allergens: {
    gluten: 'gluten',
    sesame: 'sesame',
    lupin: 'lupin',
    sulphites: 'so2',
  },
  levels: ['', '', '', '', ''],
  peat: ['non', '', 'x', ''],
  yes: 'oui|si',
  no: 'non',
  nothing: '',
  noAge: '',
  total: 'totale|somme|suma',
  measures: 'euro',
  and: 'et',
};
