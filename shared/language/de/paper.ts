// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { PaperWords } from '../en/paper.ts';
import { hostWords } from './host.ts';

const several = countingIn('de');

const number = new Intl.NumberFormat('de', { maximumFractionDigits: 2 });

/** The words on paper and around it, in German. */
export const paperWords: PaperWords = {
  kinds: {
    mats: 'Matten',
    notes: 'Notizblätter',
    labels: 'Etiketten',
    'run-sheet': 'Ablaufplan',
    shopping: 'Einkaufsliste',
  },
  title: 'Auf Papier',
  back: 'Zurück zum Einlass',
  print: 'Drucken',
  printHow: {
    mats: 'Wähle im Druckfenster dieses Papier und „Originalgröße“ oder 100\u00a0%. Miss dann die Linie nach: Sie muss 100\u00a0mm lang sein. Ist sie es nicht, ändere die Skalierung und drucke noch einmal.',
    labels:
      'Wähle im Druckfenster dieses Papier und „Originalgröße“ oder 100\u00a0%. Miss dann ein Etikett nach, bevor du schneidest.',
  },
  printFlow: 'Das Druckfenster deines Geräts zeigt die Seiten, bevor sie gedruckt werden.',
  planChanged:
    'Der Plan ist auf einem anderen Gerät geändert worden, seit diese Seite offen ist. Versuch es noch einmal, um den neuen Stand zu sehen, und druck ihn dann noch einmal.',
  numbersNotKept:
    'Die Nummern auf diesem Ausdruck ließen sich nicht speichern. Versuch es noch einmal, bevor du ein Glas verschiebst: Sonst stimmen die Nummern auf dem Papier vielleicht nicht mehr.',
  sheet: (kind, sheet) => `${kind}, Blatt ${sheet}`,
  sheets: (count) => several(count, 'Blatt', 'Blätter'),
  size: 'Papier',
  sizes: { A4: 'A4', Letter: 'US Letter', A3: 'A3' },
  untitled: 'Eine Verkostung',
  noPours: 'Im Plan steht noch keine Probe',
  noPoursHint: 'Trag die Proben in den Plan ein; dann gibt es etwas zu drucken.',
  toPlan: 'Zum Plan',

  glass: (position) => `Glas ${position}`,
  place: (place) => `Platz ${place}`,
  hands: { left: 'linke Hand' },
  flight: (flight) => `Flight ${flight}`,
  oddOne: 'Das abweichende Glas finden',
  ruler: '100\u00a0mm: Miss mich nach',

  mats: {
    foot: 'Fuß eines Glases, Durchmesser (mm)',
    footHint: 'Miss den Fuß eines Glases. Die Kreise werden in dieser Größe gedruckt.',
    bowl: 'Breiteste Stelle eines Glases (mm)',
    bowlHint: 'Lass es leer, wenn der Fuß die breiteste Stelle ist.',
    wrong: 'Miss den Durchmesser des Glases in Millimetern: von 20 bis 150.',
    set: 'Auf einer Matte',
    sets: { evening: 'Alle Gläser des Abends', flight: 'Die Gläser eines Flights' },
    left: 'Plätze für Linkshänder',
    leftHint: 'Ihre Nummern, zum Beispiel 2, 5. Wer schon da ist, gibt es auf dem Handy an.',
    leftWrong: (places) => `Gib Nummern von 1 bis ${places} ein, durch Kommas getrennt.`,
    each: 'Eine Matte für jeden Platz',
    eachHint: 'Aus: eine für jede Hand, zum Kopieren.',
    eachForced: 'Jeder Platz hat eine eigene Reihenfolge und deshalb eine eigene Matte.',
    tooMany: (most, paper) =>
      most === 0
        ? `Auf ${paper} passt kein Glas dieser Größe.`
        : `Auf ${paper} ${most === 1 ? 'passt nur 1 Glas' : `passen nur ${most} Gläser`} dieser Größe.`,
    tryPaper: (paper) => `Nimm ${paper}.`,
    tryFlight: 'Nimm eine Matte für jeden Flight.',
    trySmaller: 'Nimm Gläser mit kleinerem Fuß, oder verteile sie auf zwei Matten.',
    copy: (hand) => (hand === 'right' ? 'Für Rechtshänder' : 'Für Linkshänder'),
  },

  notes: {
    name: 'Name',
    date: 'Datum',
    each: 'Eines für jeden Platz',
    eachHint: 'Aus: eines zum Kopieren.',
    fields: hostWords.board.fields,
    liking: 'Wie sehr es mir gefällt',
    likingScale: [
      '1 missfällt außerordentlich',
      '',
      '',
      '',
      '5 weder noch',
      '',
      '',
      '',
      '9 gefällt außerordentlich',
    ],
    quiet:
      'Spuck jeden Schluck aus, trink zwischen den Gläsern Wasser, und behalte deine Worte für dich, bis das Gespräch eröffnet ist. Jedes Glas darfst du auslassen. Nicht in Schwangerschaft oder Stillzeit; bei Medikamenten oder Krankheit frag vorher. Lass jemanden fahren, der nicht verkostet hat.',
  },

  labels: {
    width: 'Breite eines Etiketts (mm)',
    height: 'Höhe eines Etiketts (mm)',
    wrong: (paper) =>
      `Gib eine Größe an, die auf ${paper} passt: 20 bis 150\u00a0mm breit und 12 bis 150\u00a0mm hoch.`,
    presets: 'Größe',
    sizes: {
      small: '38 × 21\u00a0mm',
      middle: '50 × 25\u00a0mm',
      large: '63,5 × 38,1\u00a0mm',
      own: 'Andere Größe',
    },
    edges: 'Schnittlinien',
    edgesHint: 'Ausschalten bei vorgestanzten Bögen.',
    none: 'Keine Gäste zu Hause',
    noneHint: 'Im Plan sind keine Gäste zu Hause, also gibt es kein Fläschchen zu beschriften.',
    count: (labels, guests) =>
      `${several(labels, 'Etikett', 'Etiketten')}: eines für jede Probe und jeden Gast zu Hause (${several(guests, 'Gast', 'Gäste')}).`,
    strength: (abv) => `${number.format(abv)}\u00a0%\u00a0vol`,
    alcohol: 'Enthält Alkohol',
    age: (age) => `ab ${age} Jahren`,
    adults: 'nur ab gesetzlichem Mindestalter',
    shipping:
      'Alkohol zu verschicken ist vielerorts verboten oder braucht eine Genehmigung. Frag deine Behörde, bevor du ein Paket aufgibst.',
  },

  runSheet: {
    columns: { at: 'Um', lasts: 'Dauer', what: 'Was', say: 'Laut sagen' },
    say: 'Mit Sprechtext',
    sayHint: 'Die Schritte sind nur beim ersten Glas ganz ausgeschrieben.',
    story: 'Mit den Geschichten',
    storyHint: 'Etikett, Angaben und Geschichte jedes Glases, da, wo du sie erzählst.',
    eyes: 'Nur für dich als Gastgeber: Hier stehen die Namen der Proben.',
    gate: 'wartet auf dich',
    ends: (time) => `Endet etwa um ${time}.`,
    fromDoors: 'Die Zeiten zählen ab dem Öffnen der Türen.',
    practice: 'Üben mit Wasser',
    care: 'Alle spucken. An jedem Platz steht Wasser, und alle haben vorher gegessen. Fahren soll nur, wer nicht verkostet hat, heute Abend und morgen früh: Klär, wie alle nach Hause kommen. Schenk nur Gästen ein, die das gesetzliche Mindestalter erreicht haben. Wer schwanger ist oder stillt, verkostet nicht; bei Medikamenten oder Krankheit vorher in der Arztpraxis oder Apotheke fragen. Wer nicht oder nicht mehr trinkt, darf gern schauen, riechen und schreiben. Keine Kerzen neben offenen starken Spirituosen. Das Recht an deinem Ort und die Auflagen deiner Genehmigung gehen vor.',
    seconds: (seconds) =>
      seconds < 60
        ? `${seconds}\u00a0s`
        : `${Math.floor(seconds / 60)}\u00a0min${seconds % 60 === 0 ? '' : ` ${seconds % 60}\u00a0s`}`,
  },

  shopping: {
    drinks: 'Zum Ausschenken',
    table: 'Für den Tisch',
    home: 'Für Gäste zu Hause',
    paper: 'Auf Papier',
    washed: 'Gläser werden zwischen den Flights gespült',
    washedHint: 'Dann reichen die Gläser des längsten Flights.',
    bottles: (count) => several(count, 'Flasche', 'Flaschen'),
    ofSize: (size) => `zu ${size}`,
    assumed: 'übliche Größe angenommen',
    pours: (pours, each) => `${several(pours, 'Portion', 'Portionen')} zu ${each}`,
    tooSmall: (bottle, pour) => `Eine Flasche mit ${bottle} ist kleiner als eine Portion von ${pour}.`,
    reckoned:
      'Gezählt für alle Gäste, im Raum und zu Hause, dazu eine Portion für dich zum Vorkosten, eine zum Mitverkosten und ein Zehntel als Reserve.',
    items: {
      tastingGlasses: (count) => several(count, 'Verkostungsglas', 'Verkostungsgläser'),
      lids: (count) => several(count, 'Deckel', 'Deckel'),
      waterGlasses: (count) => several(count, 'Wasserglas', 'Wassergläser'),
      water: (volume) => `${volume} stilles Wasser`,
      spitCups: (count) => several(count, 'Spuckbecher', 'Spuckbecher'),
      napkins: (count) => several(count, 'weiße Serviette', 'weiße Servietten'),
      droppers: (count) => several(count, 'Pipette', 'Pipetten'),
      food: 'Einfaches Brot oder Cracker (Weizen heißt Gluten; frag nach Milch und Sesam, und besorg anderes für alle, die es brauchen), und etwas zu essen vorher',
    },
    vials: (count, size) => `${count} Fläschchen zu ${size}`,
    noVial: (name) => `Kein übliches Fläschchen fasst die Portion von ${name}.`,
    mats: (count) => several(count, 'Matte', 'Matten'),
    noteSheets: (count) => `Notizblätter für alle ohne Handy, bis zu ${count}`,
    labels: (count) => several(count, 'Etikett', 'Etiketten'),
    cost: (total, seat) => `${total} insgesamt, ${seat} je Gast`,
    uncounted: (count) =>
      `ohne ${several(count, 'Probe, die', 'Proben, die')} größer ${count === 1 ? 'ist' : 'sind'} als die Flasche`,
    unpriced: (count) =>
      `ohne ${several(count, 'Probe, die', 'Proben, die')} noch keinen Preis ${count === 1 ? 'hat' : 'haben'}`,
    care: 'Spuckbecher, Wasser und Essen gehören immer dazu. Für das Ausschenken und Verschicken von Alkohol gilt das örtliche Recht.',
  },
};
