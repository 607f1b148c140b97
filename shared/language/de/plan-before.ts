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
      return `${flight}: Eine einzelne Probe hat nichts, womit sie tauschen könnte.`;
    case 'forced-place-breaks-balance':
      return `${flight}: Eine Probe, die bei allen an derselben Stelle steht, lässt sich von ihrer Stelle nicht trennen.`;
    default:
      return limit satisfies never;
  }
}

/** The words of what happens before the evening: the survey, the orders by lot, tasting ahead. */
export const planBefore: PlanBeforeWords = {
  survey: {
    title: 'Frag deine Gäste',
    lead: 'Fünf Fragen auf ihrem Handy, ohne Namen und ohne Konto. Du siehst, wie sich die Antworten verteilen, nie, von wem sie sind.',
    link: 'Der Link zur Umfrage',
    copy: 'Kopieren',
    copied: 'Kopiert. Füge ihn in deine Nachricht ein.',
    selected: 'Der Link ist markiert. Kopiere ihn mit dem Befehl deines Geräts.',
    square: 'Als QR-Code',
    scan: 'Ein QR-Code, der ein Handy zur Umfrage führt',
    answered: (answered, guests) =>
      answered === 0
        ? 'Noch hat niemand geantwortet.'
        : guests === 0
          ? `${answered} ${answered === 1 ? 'hat' : 'haben'} geantwortet.`
          : `${answered} ${answered === 1 ? 'hat' : 'haben'} geantwortet, ${several(guests, 'Gast wird', 'Gäste werden')} erwartet.`,
    noAnswer: 'Die Antworten ließen sich nicht holen. Es wird von selbst wieder versucht.',
    spread: 'Wie sich die Antworten verteilen',
    notPlaced: 'Nicht genug Antworten',
    standsSo: 'So steht es im Plan.',
  },

  orders: {
    title: 'Wer bekommt was',
    draw: 'Die Reihenfolgen neu auslosen',
    drawn: 'Neue Reihenfolgen sind ausgelost.',
    level:
      'Jede Probe steht gleich oft an jeder Stelle und folgt gleich oft auf jede andere, sodass sich die Reihenfolge herausmittelt.',
    limitSentence,
    nobody: 'Gib an, wie viele Gäste kommen; dann stehen hier die Reihenfolgen, Platz für Platz.',
    caption: 'Codes in der Reihenfolge des Verkostens, Platz für Platz',
    place: 'Platz',
    places: 'Die Plätze sind nummeriert, wie die Gäste sich setzen.',
  },

  trials: {
    title: 'Das abweichende Glas finden',
    lead: 'Drei Gläser mit Codes, zwei davon gleich. Alle zeigen auf das andere; der Zufall allein findet es in einem von drei Fällen.',
    none: 'keins',
    some: (trials) => String(trials),
    needsTwo: 'Dafür braucht es zwei Proben im Plan.',
    add: 'Eine solche Runde hinzufügen',
    full: 'Ein Abend fasst drei davon.',
    one: 'Das eine Getränk',
    other: 'Das andere',
    after: 'Serviert nach',
    flight: (flight) => `Flight ${flight}`,
    codes: (a, aCodes, b, bCodes) => `${a}: ${aCodes}. ${b}: ${bCodes}.`,
    and: ' und ',
    orders: (orders) =>
      `Die sechs Reihenfolgen sind für ${several(orders, 'Platz', 'Plätze')} ausgelost: In je sechs kommt jede einmal vor.`,
    number: (number) => `Das abweichende Glas, Runde ${number}`,
    away: 'Herausnehmen',
    gone: 'Die Runde mit dem anderen Glas ist herausgenommen.',
    draw: 'Codes und Reihenfolgen neu auslosen',
    drawn: 'Codes und Reihenfolgen sind neu ausgelost.',
    counted: 'Ihre drei Gläser sind beim Alkohol und beim Einkauf mitgezählt.',
  },

  themeMore: {
    held: 'Gleich bei allen',
    nothingHeld: 'Nichts Bestimmtes',
    flights: 'Wie die Seiten sich begegnen',
    flightsOf: {
      'side-by-side': 'Ein Flight für jede Seite',
      matched: 'In jedem Flight eine von jeder Seite',
    },
    flightHints: {
      'side-by-side': 'erst die eine Seite, dann die andere',
      matched: 'die leichtesten beider zusammen, dann die nächsten',
    },
    cut: 'Bring die Proben in Reihenfolge, damit die Flights so geteilt werden.',
    each: 'Jeder Flight für sich',
    inFlight: (flight, fault) => `Im ${flight}. Flight: ${fault}`,
  },

  ahead: {
    title: 'Vorkosten',
    open: 'Vorkosten',
    openHint:
      'Auf deinem Handy, mit der Flasche vor dir: Etikettenfotos, Punkte, Alkoholgehalt und eine Zeile.',
    toPlan: 'Zum Plan',
    care: 'Du verkostest sie alle vor allen anderen: spuck aus, trink Wasser, iss etwas, und fahr danach nicht.',
    none: 'Noch keine Proben',
    noneHint: 'Trag die Flaschen in den Plan ein; dann verkoste sie hier, eine nach der anderen.',
    which: 'Probe',
    option: (number, name, tasted) => `${number} · ${name}${tasted ? ' ✓' : ''}`,
    labels: 'Etikettenfotos',
    labelsHint: 'Gäste sehen sie, sobald die Probe bekannt sein darf.',
    sides: { front: 'Etikett vorn', back: 'Etikett hinten' },
    photoOf: (side, name) => `${side}, ${name}`,
    take: 'Foto machen',
    takeOf: (side) => `Foto machen: ${side}`,
    choose: 'Auswählen',
    chooseOf: (side) => `Auswählen: ${side}`,
    sending: 'Wird gesendet …',
    sendingOf: (side) => `Wird gesendet … ${side}`,
    away: 'Entfernen',
    awayOf: (side) => `Entfernen: ${side}`,
    gone: 'Das Foto ist entfernt.',
    kept: (side) => `${side}: Das Foto ist gesichert.`,
    noPhoto: 'Diese Datei ist kein lesbares Foto. Mach es noch einmal, oder wähle ein JPEG oder PNG.',
    enlarge: (what) => `${what}, größer`,
    marks: 'Deine schnellen Punkte',
    pungency: { name: 'Zart bis kräftig', low: 'zart', high: 'kräftig' },
    dryness: { name: 'Süß bis trocken', low: 'süß', high: 'trocken' },
    mark: (value) => `${value} von 10`,
    noMark: 'keine Punkte',
    less: (name) => `${name}: weniger`,
    more: (name) => `${name}: mehr`,
    noMarkAgain: 'Die Punkte wegnehmen',
    noMarkAgainOf: (name) => `Die Punkte wegnehmen: ${name}`,
    order: 'Was die Reihenfolge wissen will',
    orderMissing: (facts) => `Die Reihenfolge wäre sicherer mit: ${facts}.`,
    orderKnown: 'Die Reihenfolge weiß von dieser Probe, was sie braucht.',
    line: 'Eine Zeile',
    lineHint: 'Nur für dich; Gäste sehen sie nie.',
    before: 'Die davor',
    next: 'Die nächste',
    done: 'Fertig',
    fixed: 'Die Türen sind geöffnet, also steht der Plan, wie er ist.',
    onPhone: 'Auf deinem Handy',
    onPhoneHint: 'Öffnet diese Verkostung auf deinem Handy als Gastgeber. Gib es niemandem sonst.',
    onPhoneLabel: 'Ein QR-Code, der diese Verkostung auf deinem Handy als Gastgeber öffnet',
  },
};
