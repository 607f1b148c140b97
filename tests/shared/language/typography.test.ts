import { describe, expect, it } from 'vitest';
import { languagesOf } from '../../support/languages.ts';
import { type SaidText, saidTexts } from './said-texts.ts';

/** Unit symbols that stand after a number; SI Brochure, 9th edition, 5.4.3: a space between them, here one that does not break. */
const units = '%|g|g/l|g/L|ml|mL|cl|l|L|mm|cm|min|h|s|ms|K|MB|EBC|SRM|ppm|°C|°F|kg/m³|fl oz|Zoll'
  .split('|')
  .map((unit) => unit.replace('/', '\\/'))
  .join('|');

/** Words that one language has and the other has not; of those that people lend, like Flight and Name, none. */
const ownTo: Readonly<Record<string, RegExp>> = {
  en: /(?<![\p{L}’-])(the|and|of|with|for|from|your|you|is|are|not|this|that|which|pours?|guests?|evening|steps?|takes?|tap|saved?)(?![\p{L}’-])/iu,
  de: /(?<![\p{L}’-])(der|das|und|nicht|ist|sind|ein|eine|einen|mit|für|dein\w*|du|ihr|euch|Glas|Gläser|Probe|Proben|Gast|Gäste|Abend|Schritte?)(?![\p{L}’-])/u,
};

/** Nouns of this program, one and many: after 1 stands the first, after any other whole number the second. */
const nouns: Readonly<Record<string, readonly (readonly [one: string, many: string])[]>> = {
  en: 'glass|glasses pour|pours guest|guests seat|seats bottle|bottles vial|vials drink|drinks drop|drops word|words minute|minutes second|seconds hour|hours day|days evening|evenings screen|screens sheet|sheets label|labels mat|mats table|tables step|steps break|breaks person|people place|places line|lines rating|ratings character|characters flight|flights'
    .split(' ')
    .map((pair) => pair.split('|') as [string, string]),
  de: 'Glas|Gläser Probe|Proben Gast|Gäste Platz|Plätze Flasche|Flaschen Portion|Portionen Wort|Wörter Minute|Minuten Sekunde|Sekunden Stunde|Stunden Tag|Tage Abend|Abende Blatt|Blätter Etikett|Etiketten Matte|Matten Tisch|Tische Schritt|Schritte Pause|Pausen Person|Personen Zeile|Zeilen Bewertung|Bewertungen Flight|Flights Standardglas|Standardgläser'
    .split(' ')
    .map((pair) => pair.split('|') as [string, string]),
};

/** Verbs that make what stands after a colon a whole sentence. */
const finite =
  'ist|sind|war|hat|haben|wird|werden|kann|können|muss|müssen|darf|dürfen|bleibt|bleiben|kommt|kommen|steht|stehen|zählt|zählen|siehst|sieht|öffnet|wartet|warten|fehlt|gibt|braucht|nimm|spuck|trink|gib|tippe|tipp|prüfe|prüf|wähle|wähl|sieh|schau|lass|lade|frag|versuch|halte|sag|bitte';

const all: Readonly<Record<string, readonly SaidText[]>> = Object.fromEntries(
  await Promise.all(languagesOf('shared/language').map(async (tag) => [tag, await saidTexts(tag)] as const)),
);

/** The first fault of each place: what a function says for one number it says for the others too. */
function faults(texts: readonly SaidText[], fault: (text: string) => boolean): readonly string[] {
  const found = new Map(texts.filter(({ text }) => fault(text)).map(({ path, text }) => [path, text]));
  return [...found].map(([path, text]) => `${path}: ${text}`);
}

describe.each(Object.entries(all))('typography of %s', (language, texts) => {
  it('keeps a number and its unit on one line', () => {
    const parted = new RegExp(`\\d (${units})(?![\\p{L}\\d])|% vol`, 'u');
    expect(faults(texts, (text) => parted.test(text))).toEqual([]);
  });

  it('keeps three dots, one sign, on the line of the word before them', () => {
    expect(faults(texts, (text) => /\.\.\.| …/.test(text))).toEqual([]);
  });

  it('has single spaces, and none before a stop', () => {
    expect(faults(texts, (text) => /[ \u00a0]{2}|[\p{L}\d] [,.;:!?](?!\d)|\( | \)/u.test(text))).toEqual([]);
  });

  it('has dashes for dashes', () => {
    expect(faults(texts, (text) => / - |--/.test(text))).toEqual([]);
  });

  it('has its own quotation marks in pairs, and no straight ones', () => {
    const [open, close] = language === 'de' ? ['„', '“'] : ['“', '”'];
    const rest = (text: string) =>
      text
        .replaceAll(new RegExp(`${open}(?! )[^${open}${close}]*(?<! )${close}`, 'g'), '')
        .replaceAll('’', '');
    expect(faults(texts, (text) => /["'„“”‚‘`]/.test(rest(text)))).toEqual([]);
  });

  it('has no lonely word of another language', () => {
    for (const [other, words] of Object.entries(ownTo))
      if (other !== language)
        expect(
          faults(texts, (text) => words.test(text)),
          other,
        ).toEqual([]);
  });

  it('counts one as one, and many as many', () => {
    const among = nouns[language] ?? [];
    const oneOfMany = new RegExp(
      `(?<![\\d.,:]|\\bof )\\b1 (${among.map(([, many]) => many).join('|')})\\b`,
      'u',
    );
    const manyOfOne = new RegExp(
      `(?<![\\d.,:–])\\b(?!1\\b)\\d+ (${among.map(([one]) => one).join('|')})(?![\\p{L}])`,
      'u',
    );
    expect(faults(texts, (text) => oneOfMany.test(text) || manyOfOne.test(text))).toEqual([]);
  });

  it.runIf(language === 'de')('begins a whole sentence after a colon with a capital', () => {
    const small = new RegExp(
      `: (?!(was|wie|wo|wer|ob|dass|so|zum|welche\\p{L}?) )\\p{Ll}[^,;.!?:]*(?<=[ :])(${finite})(?![\\p{L}])[^:]*[.!?]`,
      'u',
    );
    expect(faults(texts, (text) => small.test(text))).toEqual([]);
  });
});

describe('the rules of typography', () => {
  const wrong = (text: string): readonly SaidText[] => [{ path: 'here', text }];
  it('find what is wrong', () => {
    expect(faults(wrong('46 % vol'), (text) => /% vol/.test(text))).toHaveLength(1);
    expect(ownTo.en?.test('Der Tisch and mehr')).toBe(true);
    expect(ownTo.de?.test('The Glas of wine')).toBe(true);
  });
});
