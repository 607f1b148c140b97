import { type Plan, planSchema } from '../../core/tasting.ts';

/** A plan whose evening has a cue of every kind: practice, steps, water, an odd-one-out, ranking, talk, reveal, break. */
export const everyKind = (): Plan =>
  planSchema.parse({
    title: 'Torf und Geduld – ein Abend für Anfänger',
    hostName: 'Käthe Brünnhofer',
    place: 'Weinkeller „Zur Öse“, 2. Stock',
    startsAt: '2031-05-09T19:00:00+02:00',
    timeZone: 'Europe/Vienna',
    welcome: 'Schön, dass ihr da seid. Heute geht es um Rauch, Salz und Süße.',
    callLink: 'https://video.example/torf',
    drink: 'spirit',
    level: 'newcomers',
    theme: { kind: 'versus', by: 'region', flights: 'side-by-side' },
    blind: true,
    servingOrders: [],
    pours: [
      pour('eins', {
        name: 'Größte Flut',
        producer: 'Brennerei Übersee',
        region: 'Küste',
        country: 'Erdichtet',
        style: 'Einzelfass',
        ageYears: 12,
        cask: 'Süßweinfass',
        peat: 2,
        marks: { pungency: 6.5, dryness: 4 },
        bottleMl: 700,
        pourMl: 15,
        priceMinor: 6490,
        link: 'https://brennerei.example/flut',
        reading: [{ title: 'Über den Torf', link: 'https://lesen.example/torf' }],
        story: 'Im Jahr der großen Flut gefüllt.',
        hostNote: 'Mit drei Tropfen Wasser öffnet er sich.',
      }),
      pour('zwei', { name: 'Nebelhorn', abv: 57.1 }),
      pour('drei', { name: 'Heidekraut', abv: 43 }),
      pour('vier', { name: 'Zweite Flut', abv: 50 }),
    ],
    flightSizes: [2, 2],
    codes: { eins: '417', zwei: '902', drei: '358', vier: '641' },
    ranking: 'each-flight',
    liking: true,
    trials: [
      {
        id: 'probe',
        flight: 0,
        a: 'eins',
        b: 'zwei',
        codes: { a: ['112', '274'], b: ['385', '496'] },
        orders: ['AAB', 'BAB', 'BAA', 'BBA', 'ABA', 'ABB'],
      },
    ],
    breakMinutes: 8,
    pace: { nose: 1.2 },
    cueEdits: { welcome: { seconds: 200, say: 'Grüß Gott und willkommen!' } },
    guests: 6,
    remoteGuests: 1,
    lawOf: 'AT',
    extraWords: ['Lagerfeuer', 'Süßholz'],
  });

const pour = (id: string, facts: object) => ({ id, drink: 'spirit', abv: 46, ...facts });

/** Wine, seen, with orders that need no codes; talk at the end. */
export const wines = (): Plan =>
  planSchema.parse({
    title: 'Six from the hill',
    hostName: 'Ilse',
    drink: 'wine',
    level: 'devotees',
    discussion: 'at-the-end',
    ranking: 'at-the-end',
    pours: ['ash', 'birch', 'cedar'].map((id, index) => ({
      id,
      drink: 'wine',
      name: `Hill ${id}`,
      vintage: 2019 + index,
      colour: 'red',
      body: 3,
      sugarGPerL: 2,
      abv: 13,
    })),
  });

/** Beers, blind, each seat in an order of its own. */
export const ownOrders = (): Plan =>
  planSchema.parse({
    title: 'Three from the brewhouse',
    drink: 'beer',
    level: 'newcomers',
    blind: true,
    ownOrders: true,
    servingOrders: [
      {
        rows: [
          ['x1', 'x2', 'x3'],
          ['x2', 'x3', 'x1'],
          ['x3', 'x1', 'x2'],
        ],
      },
    ],
    codes: { x1: '123', x2: '456', x3: '789' },
    pours: ['x1', 'x2', 'x3'].map((id) => ({
      id,
      drink: 'beer',
      name: `Vat ${id}`,
      srm: 10,
      ibu: 30,
      abv: 5,
    })),
  });
