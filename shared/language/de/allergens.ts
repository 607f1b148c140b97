// German, not yet reviewed by a native speaker.
import type { AllergenWords } from '../en/allergens.ts';

const listed = new Intl.ListFormat('de', { type: 'conjunction' });

/** Allergens and how they are told, in German. */
export const allergenWords: AllergenWords = {
  names: {
    gluten: 'Gluten (Weizen, Gerste, Roggen, Hafer)',
    crustaceans: 'Krebstiere',
    eggs: 'Ei',
    fish: 'Fisch',
    peanuts: 'Erdnüsse',
    soybeans: 'Soja',
    milk: 'Milch',
    nuts: 'Nüsse',
    celery: 'Sellerie',
    mustard: 'Senf',
    sesame: 'Sesam',
    sulphites: 'Sulfite',
    lupin: 'Lupinen',
    molluscs: 'Weichtiere',
  },
  told: {
    pour: (names) => `Enthält unter anderem: ${listed.format(names)}.`,
    flight: (names) => `In diesem Flight unter anderem: ${listed.format(names)}.`,
  },
  vial: {
    pour: (names) => `Enthält ${names.join(', ')}\u00a0…`,
    flight: (names) => `In diesem Flight: ${names.join(', ')}\u00a0…`,
  },
  ask: 'Verträgst du etwas nicht? Frag, bevor du probierst.',
  title: 'Allergene',
  noneNoted: 'keine notiert',
  hint: 'Vom Etikett oder vom Hersteller. Viele Etiketten von Getränken schweigen, und bei Spirituosen muss das Getreide nicht genannt sein: Frag den Hersteller. Du entscheidest; was du notierst, erfahren alle vor dem ersten Schluck, bei einer blinden Probe für den ganzen Flight. Nichts notiert heißt nicht, dass nichts darin ist.',
  usual: {
    spirit: 'In Likören und aromatisierten Spirituosen können Milch, Ei oder Nüsse sein.',
    wine: 'In Wein sind meist Sulfite; von der Schönung kann Ei, Milch oder Fisch bleiben.',
    beer: 'In Bier ist meist Gluten; in manchem sind Milch, Nüsse oder Sulfite.',
  },
  source: 'Die vierzehn der Verordnung (EU) Nr. 1169/2011, Anhang II; die neun der USA sind darunter.',
  prepare:
    'Frag alle, was sie nicht vertragen, und frag die Hersteller. Im Brot ist Gluten, vielleicht auch Milch oder Sesam: Halt ein anderes getrennt bereit.',
  avoid: 'Verträgst du etwas nicht?',
  avoidHint:
    'Damit dein Gastgeber bei den Herstellern fragen und das Brot auswählen kann. Dein Name steht nicht dabei, sag es also am Abend noch einmal.',
  avoided: (names) =>
    `Wer geantwortet hat, verträgt nicht: ${names.join('; ')}. Ein Name steht nicht dabei: Frag alle noch einmal, und vorher die Hersteller.`,
  times: (name, guests) => `${name} (${guests})`,
};
