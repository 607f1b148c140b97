// German, not yet reviewed by a native speaker.
import type { OrderLimit } from '../../../core/planning/serving/serving-orders.ts';
import { countingIn } from '../counting.ts';
import type { PlanBeforeWords } from '../en/plan-before.ts';

const several = countingIn('de');

/** What the drawn orders cannot keep level, in a host's words. `least` and `most`: how often a pour has one position. */
function limitSentence(limit: OrderLimit, least: number, most: number): string {
  const flight = `Flight ${limit.flight + 1}`;
  switch (limit.code) {
    case 'seats-do-not-fill-design': {
      const often = least === most ? `${least}-mal` : `${least}- oder ${most}-mal`;
      return `${flight}: Bei ${several(limit.seats, 'Gast', 'Gästen')} steht jede Probe ${often} an jeder Stelle, und die Nachbarschaften sind fast gleich verteilt. Mit ${limit.needed} wäre alles genau ausgeglichen.`;
    }
    case 'nothing-to-vary':
      return `${flight}: Eine einzelne Probe hat keine, mit der sie tauschen könnte.`;
    case 'forced-place-breaks-balance':
      return `${flight}: Steht eine Probe bei allen an derselben Stelle, lässt sich ihre Wirkung nicht von der Stelle trennen.`;
    default:
      return limit satisfies never;
  }
}

/** The words of what happens before the evening: the survey, the orders by lot, tasting ahead. */
export const planBefore: PlanBeforeWords = {
  survey: {
    title: 'Frag deine Gäste',
    lead: 'Fünf Fragen auf ihrem Handy, und was sie nicht vertragen, ohne Namen und ohne Konto. Du siehst, wie sich die Antworten verteilen, nie, von wem sie sind.',
    link: 'Der Link zur Umfrage',
    copy: 'Kopieren',
    copied: 'Kopiert. Füge ihn in deine Nachricht ein.',
    selected: 'Der Link ist markiert. Kopiere ihn jetzt.',
    square: 'Als QR-Code',
    scan: 'Ein QR-Code, der ein Handy zur Umfrage führt',
    answered: (answered, guests) =>
      answered === 0
        ? 'Noch hat niemand geantwortet.'
        : guests === 0
          ? `${answered} ${answered === 1 ? 'hat' : 'haben'} geantwortet.`
          : `${answered} ${answered === 1 ? 'hat' : 'haben'} geantwortet, ${several(guests, 'Gast wird', 'Gäste werden')} erwartet.`,
    noAnswer: 'Die Antworten ließen sich nicht laden, neuer Versuch.',
    spread: 'Wie sich die Antworten verteilen',
    notPlaced: 'Nicht genug Antworten',
    standsSo: 'So steht es im Plan.',
  },

  orders: {
    title: 'Wer bekommt was',
    draw: 'Die Reihenfolgen neu auslosen',
    drawn: 'Neue Reihenfolgen sind ausgelost.',
    level:
      'Jede Probe steht gleich oft an jeder Stelle und folgt gleich oft auf jede andere; so gleicht sich der Einfluss der Reihenfolge aus.',
    limitSentence,
    nobody: 'Gib an, wie viele Gäste kommen; dann stehen hier die Reihenfolgen, Platz für Platz.',
    caption: 'Codes in der Reihenfolge des Verkostens, Platz für Platz',
    place: 'Platz',
    places: 'Die Plätze sind in der Reihenfolge nummeriert, in der sich die Gäste setzen.',
  },

  trials: {
    title: 'Das abweichende Glas finden',
    lead: 'Drei Gläser mit Codes, zwei davon gleich. Alle wählen das abweichende; reines Raten trifft es in einem von drei Fällen.',
    none: 'keins',
    some: (trials) => String(trials),
    needsTwo: 'Dafür braucht es zwei Proben im Plan.',
    add: 'Eine solche Runde hinzufügen',
    full: 'Mehr als drei davon fasst ein Abend nicht.',
    one: 'Das eine Getränk',
    other: 'Das andere',
    after: 'Serviert nach',
    flight: (flight) => `Flight ${flight}`,
    codes: (a, aCodes, b, bCodes) => `${a}: ${aCodes}. ${b}: ${bCodes}.`,
    and: ' und ',
    orders: (orders) =>
      `Die sechs Reihenfolgen sind für ${several(orders, 'Platz', 'Plätze')} ausgelost: Auf je sechs Plätzen kommt jede einmal vor.`,
    number: (number) => `Das abweichende Glas, Runde ${number}`,
    away: 'Herausnehmen',
    gone: 'Die Runde mit dem abweichenden Glas ist herausgenommen.',
    draw: 'Codes und Reihenfolgen neu auslosen',
    drawn: 'Codes und Reihenfolgen sind neu ausgelost.',
    counted: 'Ihre drei Gläser sind beim Alkohol und beim Einkauf mitgezählt.',
  },

  themeMore: {
    held: 'Gleich bei allen',
    nothingHeld: 'Nichts Bestimmtes',
    flights: 'Wie die Seiten aufeinandertreffen',
    flightsOf: {
      'side-by-side': 'Ein Flight für jede Seite',
      matched: 'In jedem Flight eine von jeder Seite',
    },
    flightHints: {
      'side-by-side': 'erst die eine Seite, dann die andere',
      matched: 'von beiden Seiten erst die leichtesten, dann die nächsten',
    },
    cut: 'Bring die Proben in Reihenfolge, um die Flights so zu teilen.',
    each: 'Jeder Flight für sich',
    inFlight: (flight, fault) => `Im ${flight}. Flight: ${fault}`,
  },

  ahead: {
    title: 'Vorkosten',
    open: 'Vorkosten',
    toPlan: 'Zum Plan',
    care: 'Du verkostest sie alle vor allen anderen: Spuck aus, trink Wasser, iss etwas, und fahr danach nicht.',
    none: 'Noch keine Proben',
    noneHint: 'Trag die Flaschen in den Plan ein; dann verkoste sie hier, eine nach der anderen.',
    which: 'Probe',
    option: (number, name, tasted) => `${number} · ${name}${tasted ? ' ✓' : ''}`,
    labels: 'Etikettenfotos',
    labelsHint: 'Gäste sehen sie, sobald der Name genannt ist.',
    sides: { front: 'Frontetikett', back: 'Rückenetikett' },
    photoOf: (side, name) => `${side}, ${name}`,
    take: 'Foto machen',
    takeOf: (side) => `Foto machen: ${side}`,
    choose: 'Auswählen',
    chooseOf: (side) => `Auswählen: ${side}`,
    sending: 'Wird gesendet\u00a0…',
    sendingOf: (side) => `Wird gesendet\u00a0… ${side}`,
    away: 'Entfernen',
    awayOf: (side) => `Entfernen: ${side}`,
    gone: 'Das Foto ist entfernt.',
    kept: (side) => `${side}: Das Foto ist gespeichert.`,
    noPhoto: 'Diese Datei ist nicht als Foto lesbar. Nimm es neu auf, oder wähle ein JPEG oder PNG.',
    enlarge: (what) => `${what}, größer`,
    marks: 'Deine Punkte',
    pungency: { name: 'Zart bis kräftig', low: 'zart', high: 'kräftig' },
    powerSteps: ['kaum da', 'sehr schwach', 'schwach', 'deutlich', 'stark', 'sehr stark', 'extrem stark'],
    drynessTerms: { sweet: 'süß', medium: 'lieblich', 'medium-dry': 'halbtrocken', dry: 'trocken' },
    measures: {
      pungency: 'Wie stark der Geruch ist, in den sieben Stufen der VDI 3882.',
      dryness:
        'Wie auf dem Weinetikett: trocken bis 4, halbtrocken bis 12, lieblich bis 45\u00a0g/l Zucker, darüber süß.',
    },
    dryness: { name: 'Süß bis trocken', low: 'süß', high: 'trocken' },
    mark: (value, step) => `${value} von 10: ${step}`,
    noMark: 'keine Punkte',
    less: (name) => `${name}: weniger`,
    more: (name) => `${name}: mehr`,
    noMarkAgain: 'Punkte entfernen',
    noMarkAgainOf: (name) => `Punkte entfernen: ${name}`,
    order: 'Was die Reihenfolge braucht',
    orderMissing: (facts) => `Die Reihenfolge wäre sicherer mit: ${facts}.`,
    orderKnown: 'Für die Reihenfolge ist über diese Probe alles bekannt.',
    line: 'Eine Zeile',
    lineHint: 'Nur für dich; Gäste sehen sie nie.',
    before: 'Vorige',
    next: 'Nächste',
    done: 'Fertig',
    fixed: 'Die Türen sind offen, der Plan steht also fest.',
    onPhone: 'Auf deinem Handy',
    onPhoneHint: 'Öffnet diese Verkostung auf deinem Handy, als Gastgeber. Zeig den Code niemand anderem.',
    onPhoneLabel: 'Ein QR-Code, der diese Verkostung auf deinem Handy als Gastgeber öffnet',
  },
};
