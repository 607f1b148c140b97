// German, not yet reviewed by a native speaker.

import type { FigureUnit, StepCode, StepInputs } from '../../../core/planning/figures/reckoning.ts';
import type { TableSupplies } from '../../../core/planning/shopping/table-supplies.ts';
import { countingIn } from '../counting.ts';
import type { PlanFigureWords } from '../en/plan-figures.ts';
import { oneStandard, standards } from './standard-drinks.ts';

const several = countingIn('de');

/** Units as they stand after a number; money is written by the page, which knows the currency. */
const units: Record<FigureUnit, string> = {
  mL: 'ml',
  g: 'g',
  '% vol': '%\u00a0vol',
  'kg/m3': 'kg/m³',
  '1': '',
  drinks: 'Standardgläser',
  drops: 'Tropfen',
  guests: 'Gäste',
  seats: 'Plätze',
  pours: 'Portionen',
  bottles: 'Flaschen',
  vials: 'Fläschchen',
  pieces: 'Stück',
  'minor units': '',
  years: 'Jahre',
};

/** The units that are counted, for a single one. */
const unitsOfOne: Partial<Record<FigureUnit, string>> = {
  drinks: 'Standardglas',
  guests: 'Gast',
  seats: 'Platz',
  pours: 'Portion',
  bottles: 'Flasche',
  years: 'Jahr',
};

const steps: Record<StepCode, string> = {
  'ethanol-volume': 'Ethanol in der Portion, als Volumen',
  'ethanol-mass': 'Ethanol in der Portion, als Masse',
  'ethanol-sum': 'Alle Portionen einer Person zusammen',
  'drinks-by-mass': 'In Standardgläsern',
  'drinks-by-volume': 'In Standardgläsern',
  'drop-water': 'Wasser in den Tropfen',
  'source-mass': 'Masse des Getränks',
  'source-mass-fraction': 'Ethanol im Getränk, nach Masse',
  'target-mass-fraction': 'Gewünschtes Ethanol, nach Masse',
  'water-mass': 'Wasser dazu, als Masse',
  'water-volume': 'Wasser dazu, als Volumen',
  'mixed-mass-fraction': 'Ethanol in der Mischung, nach Masse',
  'mixed-strength': 'Alkoholgehalt der Mischung',
  'final-volume': 'Volumen der Mischung',
  'final-volume-by-strength': 'Volumen der Mischung',
  'servings-in-bottle': 'Flasche geteilt durch Portion',
  'full-pours': 'Volle Portionen in einer Flasche',
  'left-in-bottle': 'Rest in jeder Flasche',
  'pours-for-people': 'Portionen für alle und den Gastgeber',
  'reserve-pours': 'Als Reserve',
  'pours-needed': 'Benötigte Portionen',
  'bottles-to-buy': 'Flaschen',
  'volume-poured': 'Insgesamt ausgeschenkt',
  'left-over': 'Bleibt übrig',
  'vial-size': 'Fläschchen mit Raum zum Ausdehnen',
  'vials-needed': 'Fläschchen',
  'items-per-seat': 'Für alle Plätze',
  'items-shared': 'Unter Nachbarn geteilt',
  'items-spare': 'Ersatz',
  'items-with-spare': 'Mit Ersatz',
  'water-for-table': 'Wasser zum Trinken und Spülen',
  'cost-line': 'Ein Getränk',
  'cost-sum': 'Alle Getränke',
  'cost-per-seat': 'Jeder Platz',
  'share-of-limit': 'Anteil, der innerhalb der Grenze bleibt',
  'smaller-pours': 'Ethanol in den kleineren Portionen',
  'fewer-pours': 'Portionen, die hineinpassen',
};

const inputs: Record<StepInputs[StepCode], string> = {
  pour: 'Portion',
  strength: 'Alkoholgehalt',
  ethanol: 'Ethanol',
  density: 'Dichte',
  pours: 'Portionen',
  perDrink: 'in einem Standardglas',
  drops: 'Tropfen',
  perDrop: 'in einem Tropfen',
  volume: 'Volumen',
  sourceMass: 'Masse',
  sourceFraction: 'Ethanol vorher',
  targetFraction: 'gewünschtes Ethanol',
  mass: 'Masse',
  fraction: 'Ethanol',
  target: 'gewünscht',
  bottle: 'Flasche',
  servings: 'Flasche durch Portion',
  guests: 'Gäste',
  perGuest: 'für jeden',
  hostPours: 'für den Gastgeber',
  reserve: 'Reserve',
  poursNeeded: 'benötigt',
  fullPours: 'aus einer Flasche',
  bottles: 'Flaschen',
  poured: 'ausgeschenkt',
  headspace: 'Raum',
  seats: 'Plätze',
  perSeat: 'für jeden Platz',
  seatsEach: 'Plätze, die sich eines teilen',
  items: 'benötigt',
  itemsEach: 'ein Ersatz für',
  spare: 'Ersatz',
  perPour: 'für jede Portion',
  price: 'Preis',
  count: 'Flaschen',
  lines: 'Getränke',
  total: 'insgesamt',
  limit: 'Grenze',
  share: 'Anteil',
  smallest: 'kleinste Portion',
};

const supplies: Record<Exclude<keyof TableSupplies, 'reckoning'>, string> = {
  tastingGlasses: 'Verkostungsgläser',
  lids: 'Deckel',
  waterGlasses: 'Wassergläser',
  water: 'Wasser',
  spitCups: 'Spuckbecher',
  napkins: 'Servietten',
  droppers: 'Pipetten',
  noteSheets: 'Notizblätter',
};

export const planFigures: PlanFigureWords = {
  reckoned: 'Wie das berechnet wurde',
  source: (title) => `Quelle: ${title}`,
  fromMemory: (title) => `Quelle, aus dem Gedächtnis: ${title}`,
  commonPractice: 'In der Praxis üblich, keine Quelle',
  unit: (value, unit) => (value === 1 ? (unitsOfOne[unit] ?? units[unit]) : units[unit]),
  steps,
  inputs,
  strength: {
    none: 'Trag Proben mit ihrem Alkoholgehalt ein, dann siehst du hier, wie viel Alkohol jeder Person eingeschenkt wird.',
    total: 'Je Person eingeschenkt, falls alles geschluckt wird',
    grams: (grams) => `${grams}\u00a0g Ethanol`,
    standards,
    oneStandard,
    standIn:
      'Kein Land ist gewählt, oder wir kennen kein Standardglas dafür: Wir zählen Gläser zu 10\u00a0g.',
    lines: {
      'ca-occasion': {
        above: 'Über der Tagesgrenze Kanadas',
        whose: 'Kanadas amtliche Empfehlung (2023) nennt höchstens zwei Gläser an einem Tag',
      },
      'au-day': {
        above: 'Über der Tagesgrenze Australiens',
        whose: 'Australiens amtliche Empfehlung (2020) nennt höchstens vier Gläser an einem Tag',
      },
    },
    unknown: (pours, count) =>
      `Nicht gezählt, weil ${count === 1 ? 'der Alkoholgehalt' : 'ihr Alkoholgehalt'} nicht bekannt ist: ${pours}.`,
    loudTitle: 'Das ist zu viel für einen Abend',
    loud: (grams, drinks, whose, line) =>
      `Jeder Person werden ${grams}\u00a0g Ethanol eingeschenkt, das sind ${drinks}. ${whose}: ${line}\u00a0g. Schenk weniger ein, und achte darauf, dass alle spucken.`,
    notice: (grams, drinks, whose, line) =>
      `Jeder Person werden ${grams}\u00a0g Ethanol eingeschenkt, das sind ${drinks}. ${whose}: ${line}\u00a0g. Das ist die niedrigste Tagesgrenze, die wir kennen. Kleinere Portionen bleiben darunter.`,
    quiet:
      'Das liegt unter der Tagesgrenze Kanadas (2023), der niedrigsten, die wir kennen. Ein Freibrief ist das nicht: Es ist keine Menge bekannt, die unbedenklich wäre.',
    smaller: (grams) => `Von jeder weniger einschenken: insgesamt ${grams}\u00a0g`,
    smallerTaken: 'Die Portionen sind jetzt kleiner.',
    fewer: (least, keep, grams) =>
      `Selbst Portionen von ${least} sind zusammen zu viel. ${keep === 1 ? 'Die erste Probe ergäbe' : `Die ersten ${keep} Proben ergäben`} ${grams}\u00a0g: Nimm Proben heraus, oder verteile sie auf zwei Abende.`,
    eachPour: 'Probe für Probe',
    inTrial: (name) => `${name}, in der Runde mit dem abweichenden Glas`,
    pourLine: (ml, grams, soFar) => `${ml}: ${grams}\u00a0g, bisher ${soFar}\u00a0g`,
  },
  shopping: {
    none: 'Trag Proben ein, dann siehst du hier, was du brauchst.',
    bottles: 'Flaschen',
    bottleLine: (bottles, size) => `${several(bottles, 'Flasche', 'Flaschen')} zu ${size}`,
    assumed: 'übliche Größe',
    perBottle: (pours, left) =>
      `${several(pours, 'volle Portion', 'volle Portionen')} aus jeder, insgesamt bleiben ${left} übrig`,
    tooSmall: (bottle, pour) =>
      `Eine Flasche mit ${bottle} reicht nicht für eine Portion von ${pour}. Prüfe beides bei der Probe.`,
    people: (guests) =>
      `Für ${several(guests, 'Gast', 'Gäste')}, zwei Portionen für dich und ein Zehntel als Reserve.`,
    nobody: 'Noch keine Gäste, also zählen nur deine eigenen Portionen.',
    table: 'Für den Tisch',
    supplies,
    washed: 'Gläser werden zwischen den Flights gespült',
    kits: 'Für Gäste zu Hause',
    vialLine: (count, size) => `${count} Fläschchen zu ${size}`,
    noVial: (pour) => `Kein übliches Fläschchen fasst ${pour}. Fülle zwei, oder schenk weniger ein.`,
    vials: (count) =>
      `${count} Fläschchen zu füllen und zu beschriften. Prüf die Rechtslage, bevor du sie verschickst.`,
    cost: 'Kosten der Getränke',
    perSeat: (money) => `${money} je Platz`,
    total: (money) => `${money} insgesamt`,
    noSeats: 'Noch keine Gäste, also lässt sich nichts aufteilen.',
    uncounted: (pours) =>
      `Nicht in den Kosten, weil die Menge im Glas größer ist als die Flasche: ${pours}. Prüfe beide Größen.`,
    unpriced: (pours) => `Ohne Preis und deshalb nicht gezählt: ${pours}.`,
    noPrices: 'Noch hat keine Probe einen Preis. Trag einen in den Angaben einer Probe ein.',
    units: 'Mengen in',
    unitChoices: { ml: 'Millilitern', 'fl-oz-us': 'US-Unzen', 'fl-oz-imperial': 'britischen Unzen' },
    currency: 'Währung',
    currencyHint: 'Drei Buchstaben, zum Beispiel EUR.',
    currencyWrong: 'Eine Währung hat drei Buchstaben, zum Beispiel EUR oder USD.',
  },
  table: {
    place: 'Ein Platz, maßstäblich gezeichnet',
    drawing: (glasses, hand) =>
      `Ein Platz von oben, für ${hand === 'left' ? 'Linkshänder' : 'Rechtshänder'}: ${several(glasses, 'Glas', 'Gläser')} auf der Matte, Spuckbecher, Wasser und Papier`,
    hand: 'Hand',
    hands: { right: 'Rechtshändig', left: 'Linkshändig' },
    computer: 'Ein Computer daneben',
    foot: 'Fuß des Glases, mm',
    footWrong: 'Ein Fuß misst 20 bis 150\u00a0mm im Durchmesser.',
    width: (cm, inches) => `${cm}\u00a0cm (${inches}\u00a0Zoll) Tischkante`,
    comfortable: 'Das ist bequem.',
    reach:
      'Das Papier liegt unter der Schreibhand; die andere hat den kürzesten Weg zu Spuckbecher und Wasser.',
    narrow: (cm) => `Ein Platz braucht mindestens ${cm}\u00a0cm.`,
    tooManyGlasses: (most) =>
      most === 1
        ? 'Auf diese Matte passt höchstens 1 Glas.'
        : `Auf diese Matte passen höchstens ${most} Gläser.`,
    tryInstead: (sheet) => `Auf ${sheet} passen sie.`,
    sheet: 'Matte',
    things: {
      'spit-cup': 'Becher',
      water: 'Wasser',
      mat: 'Matte',
      writing: 'Notizen',
      computer: 'Computer',
    },
    light: 'Neutrales, gleichmäßiges Licht um 6500\u00a0K, und etwas Weißes, um das Glas davorzuhalten.',
    which: 'Dein Tisch',
    shape: 'Form',
    shapes: { rectangle: 'Lang', round: 'Rund', horseshoe: 'Hufeisen' },
    length: 'Länge, cm',
    breadth: 'Breite, cm',
    diameter: 'Durchmesser, cm',
    across: 'Außenmaß quer, cm',
    leg: 'Außenmaß eines Schenkels, cm',
    depth: 'Tiefe, cm',
    sizeWrong: 'Gib 30 bis 3000\u00a0cm ein.',
    seated: 'Sitzordnung',
    seatings: { 'one-side': 'Eine Seite', 'both-sides': 'Beide Seiten', 'all-round': 'Rundherum' },
    holds: (freely, closely) =>
      freely === closely || freely === 0
        ? `Daran ${closely === 1 ? 'hat 1 Gast' : `haben ${closely} Gäste`} Platz.`
        : `Daran sitzen ${freely} mit freien Ellbogen, enger bis zu ${closely}.`,
    holdsNobody: 'Er ist sogar für einen einzigen Platz mit Matte zu klein.',
    need: (guests, tables) =>
      `Für ${several(guests, 'Gast', 'Gäste')} brauchst du ${several(tables, 'solchen Tisch', 'solche Tische')}.`,
    enough: (guests) => `Genug für ${several(guests, 'Gast', 'Gäste')}.`,
    notKept: 'Hier kannst du Tische ausprobieren; sie werden nicht mit dem Plan gespeichert.',
    noGlasses: 'Trag Proben ein, dann siehst du den Platz mit seinen Gläsern.',
  },
};
