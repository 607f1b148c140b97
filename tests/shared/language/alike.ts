/** What no language translates: our own name, unit symbols and scales, sizes of paper, the direction of a script. */
export const international: readonly string[] = [
  'Quietpour',
  '% vol',
  'fl oz',
  'min',
  'mm',
  'kg/m³',
  'SRM',
  'EBC',
  'IBU',
  'A3',
  'A4',
  'ltr',
  'rtl',
];

/** Texts, or what of a text is not its arguments, that a language rightly shares with English, letter by letter. */
export const alikeIn: Readonly<Record<string, readonly string[]>> = {
  de: [
    'Blind',
    'Code',
    'Flight',
    'Hand',
    'Link',
    'Maren',
    'Median',
    'Name',
    'Orange',
    'orange',
    'rosé',
    'Region',
    'Rosé',
    'Tannin',
    'US Letter',
    'bitter',
    'mild',
    'still',
    'warm',
  ],
};
