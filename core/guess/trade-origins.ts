import type { Drink } from '../drinks/drink-kinds.ts';
import type { Synonyms } from './trade-styles.ts';

/**
 * Where a glass may come from: countries, and in them by drink the regions that a list of the trade has, each with the words
 * by which a host may have written it, folded. A list of our own (common practice, no source).
 */
export interface Country {
  readonly names: readonly string[];
  readonly regions: Readonly<Partial<Record<Drink, Synonyms>>>;
}

const same = (...codes: readonly string[]): Synonyms =>
  Object.fromEntries(codes.map((code) => [code, [code.replaceAll('-', ' ')]]));

export const tradeOrigins: Readonly<Record<string, Country>> = {
  france: {
    names: ['france', 'frankreich'],
    regions: {
      wine: {
        ...same('bordeaux', 'champagne', 'loire', 'provence', 'languedoc', 'beaujolais', 'jura'),
        burgundy: ['burgundy', 'bourgogne', 'burgund'],
        alsace: ['alsace', 'elsass'],
        rhone: ['rhone'],
      },
      spirit: { ...same('cognac', 'armagnac'), normandy: ['normandy', 'normandie', 'calvados'] },
    },
  },
  italy: {
    names: ['italy', 'italien', 'italia'],
    regions: {
      wine: {
        ...same('veneto', 'friuli', 'umbria'),
        piedmont: ['piedmont', 'piemont', 'piemonte'],
        tuscany: ['tuscany', 'toskana', 'toscana', 'chianti'],
        sicily: ['sicily', 'sizilien', 'sicilia', 'etna'],
        'alto-adige': ['alto adige', 'sudtirol', 'suedtirol'],
        apulia: ['apulia', 'apulien', 'puglia'],
      },
    },
  },
  spain: {
    names: ['spain', 'spanien', 'espana'],
    regions: {
      wine: {
        ...same('rioja', 'ribera-del-duero', 'priorat', 'rueda', 'penedes'),
        'rias-baixas': ['rias baixas', 'galicia', 'galicien'],
        jerez: ['jerez', 'andalusia', 'andalusien'],
      },
      spirit: { jerez: ['jerez'] },
    },
  },
  portugal: {
    names: ['portugal'],
    regions: { wine: same('douro', 'alentejo', 'dao', 'vinho-verde', 'bairrada', 'madeira') },
  },
  germany: {
    names: ['germany', 'deutschland'],
    regions: {
      wine: {
        ...same('mosel', 'rheingau', 'rheinhessen', 'nahe', 'baden', 'ahr'),
        pfalz: ['pfalz', 'palatinate'],
        franken: ['franken', 'franconia'],
        wuerttemberg: ['wurttemberg', 'wuerttemberg'],
      },
      spirit: { 'black-forest': ['black forest', 'schwarzwald'] },
      beer: {
        bavaria: ['bavaria', 'bayern', 'oberbayern'],
        franken: ['franken', 'franconia'],
        cologne: ['cologne', 'koln', 'koeln'],
        duesseldorf: ['dusseldorf', 'duesseldorf'],
        berlin: ['berlin'],
      },
    },
  },
  austria: {
    names: ['austria', 'osterreich', 'oesterreich'],
    regions: {
      wine: {
        ...same('wachau', 'kamptal', 'kremstal', 'burgenland', 'thermenregion'),
        styria: ['styria', 'steiermark', 'sudsteiermark'],
        vienna: ['vienna', 'wien'],
      },
    },
  },
  switzerland: { names: ['switzerland', 'schweiz'], regions: { wine: { valais: ['valais', 'wallis'] } } },
  hungary: { names: ['hungary', 'ungarn'], regions: { wine: same('tokaj', 'eger', 'villany') } },
  greece: { names: ['greece', 'griechenland'], regions: { wine: same('santorini', 'naoussa', 'nemea') } },
  georgia: { names: ['georgia', 'georgien'], regions: { wine: { kakheti: ['kakheti', 'kachetien'] } } },
  scotland: {
    names: ['scotland', 'schottland'],
    regions: {
      spirit: {
        ...same('islay', 'speyside', 'campbeltown'),
        highlands: ['highlands', 'highland'],
        lowlands: ['lowlands', 'lowland'],
        islands: ['islands', 'island', 'orkney', 'skye'],
      },
    },
  },
  ireland: { names: ['ireland', 'irland', 'eire'], regions: { spirit: same('cork', 'dublin', 'antrim') } },
  england: {
    names: ['england'],
    regions: { beer: same('london', 'yorkshire', 'burton'), wine: same('sussex', 'kent') },
  },
  wales: { names: ['wales'], regions: {} },
  belgium: {
    names: ['belgium', 'belgien'],
    regions: {
      beer: {
        flanders: ['flanders', 'flandern'],
        wallonia: ['wallonia', 'wallonien'],
        brussels: ['brussels', 'brussel', 'zenne', 'senne'],
      },
    },
  },
  netherlands: { names: ['netherlands', 'niederlande', 'holland'], regions: {} },
  denmark: { names: ['denmark', 'danemark', 'daenemark'], regions: {} },
  sweden: { names: ['sweden', 'schweden'], regions: {} },
  czechia: {
    names: ['czechia', 'czech republic', 'tschechien'],
    regions: {
      beer: { bohemia: ['bohemia', 'bohmen', 'boehmen', 'pilsen'], moravia: ['moravia', 'mahren'] },
    },
  },
  'united-states': {
    names: ['united states', 'usa', 'us', 'vereinigte staaten', 'america', 'amerika'],
    regions: {
      wine: {
        ...same('napa', 'sonoma', 'oregon', 'washington'),
        california: ['california', 'kalifornien'],
      },
      spirit: same('kentucky', 'tennessee', 'indiana', 'texas'),
      beer: { ...same('oregon', 'vermont', 'colorado'), california: ['california', 'kalifornien'] },
    },
  },
  canada: { names: ['canada', 'kanada'], regions: {} },
  argentina: { names: ['argentina', 'argentinien'], regions: { wine: same('mendoza', 'salta') } },
  chile: { names: ['chile'], regions: { wine: same('maipo', 'colchagua', 'casablanca') } },
  'south-africa': {
    names: ['south africa', 'sudafrika', 'suedafrika'],
    regions: { wine: same('stellenbosch', 'swartland', 'walker-bay') },
  },
  australia: {
    names: ['australia', 'australien'],
    regions: {
      wine: same('barossa', 'margaret-river', 'yarra-valley', 'hunter-valley'),
      spirit: { tasmania: ['tasmania', 'tasmanien'] },
    },
  },
  'new-zealand': {
    names: ['new zealand', 'neuseeland'],
    regions: { wine: same('marlborough', 'central-otago', 'hawkes-bay') },
  },
  japan: { names: ['japan'], regions: { spirit: same('hokkaido', 'yamanashi') } },
  india: { names: ['india', 'indien'], regions: {} },
  taiwan: { names: ['taiwan'], regions: {} },
  jamaica: { names: ['jamaica', 'jamaika'], regions: {} },
  barbados: { names: ['barbados'], regions: {} },
  guyana: { names: ['guyana'], regions: {} },
  cuba: { names: ['cuba', 'kuba'], regions: {} },
  martinique: { names: ['martinique'], regions: {} },
  mexico: { names: ['mexico', 'mexiko'], regions: { spirit: same('jalisco', 'oaxaca') } },
};

/** Countries that a drink is usually poured from, for what stands in a list beside the evening's own. */
export const usualCountries: Readonly<Record<Drink, readonly string[]>> = {
  wine: [
    'france',
    'italy',
    'spain',
    'portugal',
    'germany',
    'austria',
    'united-states',
    'argentina',
    'chile',
    'south-africa',
    'australia',
    'new-zealand',
    'hungary',
    'greece',
  ],
  spirit: [
    'scotland',
    'ireland',
    'united-states',
    'japan',
    'france',
    'germany',
    'canada',
    'india',
    'taiwan',
    'australia',
    'jamaica',
    'mexico',
    'spain',
  ],
  beer: [
    'germany',
    'belgium',
    'czechia',
    'england',
    'scotland',
    'ireland',
    'united-states',
    'austria',
    'denmark',
    'netherlands',
    'italy',
  ],
};
