// German, not yet reviewed by a native speaker.
import type { AxisCode, FactName } from '../../../core/planning/order/axes/axis.ts';
import type { FactClash } from '../../../core/planning/order/fact-clashes.ts';
import type { LabelClash } from '../../../core/planning/order/label-clashes.ts';
import type { CellNote, CellProblem } from '../../../core/planning/pour-list/cell-reading.ts';
import type { ThemeCheck } from '../../../core/planning/theme/theme.ts';
import type { Drink } from '../../../core/tasting.ts';
import { countingIn } from '../counting.ts';
import type { PlanLineupWords } from '../en/plan-lineup.ts';
import { planList } from './plan-list.ts';

const several = countingIn('de');

const conjunction = new Intl.ListFormat('de', { type: 'conjunction' });

/** What there is more or less of along each axis. */
const axes: Record<AxisCode, { readonly more: string; readonly less: string; readonly noun: string }> = {
  drink: { more: 'ein stärkeres Getränk', less: 'ein leichteres Getränk', noun: 'Art des Getränks' },
  smoke: { more: 'mehr Rauch', less: 'weniger Rauch', noun: 'Rauch' },
  strength: { more: 'mehr Alkohol', less: 'weniger Alkohol', noun: 'Alkohol' },
  pungency: { more: 'kräftiger', less: 'zarter', noun: 'Kraft' },
  dryness: { more: 'trockener', less: 'süßer', noun: 'Trockenheit' },
  sweetness: { more: 'süßer', less: 'trockener', noun: 'Süße' },
  category: { more: 'von der Art her später', less: 'von der Art her früher', noun: 'Art' },
  body: { more: 'mehr Körper', less: 'weniger Körper', noun: 'Körper' },
  cask: { more: 'mehr Fassnote', less: 'weniger Fassnote', noun: 'Fassnote' },
  age: { more: 'älter', less: 'jünger', noun: 'Alter' },
  bitterness: { more: 'bitterer', less: 'weniger bitter', noun: 'Bittere' },
  colour: { more: 'dunkler', less: 'heller', noun: 'Farbe' },
  sourness: { more: 'mehr Säure', less: 'weniger Säure', noun: 'Säure' },
};

const facts: Record<FactName, string> = {
  drink: 'Getränk',
  abv: 'Alkoholgehalt',
  ageYears: 'Alter',
  vintage: 'Jahrgang',
  peat: 'Torf',
  cask: 'Fass',
  colour: 'Farbe',
  sparkling: 'schäumend',
  fortified: 'aufgespritet',
  wineKind: 'Weinart',
  body: 'Körper',
  tannin: 'Gerbstoff',
  sugarGPerL: 'Zucker',
  srm: 'Farbe in SRM',
  ibu: 'Bittere',
  sour: 'sauer',
  smoked: 'mit Rauchmalz',
  marks: 'deine Punkte vom Vorkosten',
  producer: 'Erzeuger',
  region: 'Region',
  country: 'Land',
  style: 'Stil',
  priceMinor: 'Preis',
};

const labelClashes: Record<LabelClash, string> = {
  'vintage-in-the-future': 'Dieser Jahrgang liegt in der Zukunft. Prüfe das Jahr.',
  'older-than-its-vintage': 'Das Alter ist höher, als der Jahrgang zulässt. Prüfe beides.',
  'pour-larger-than-bottle': 'Die Portion ist größer als die Flasche. Prüfe beides.',
};

const drinkNames: Record<Drink, string> = { spirit: 'Spirituosen', wine: 'Wein', beer: 'Bier' };

/** What to look at again in one pour's facts. */
function clashSentence(clash: FactClash, drink: Drink, number: (value: number) => string): string {
  switch (clash.code) {
    case 'not-of-this-drink':
      return `Bei ${drinkNames[drink]} ist diese Angabe selten: ${facts[clash.fact]}. Prüfe sie oder das Getränk.`;
    case 'unusual-strength':
      return `${number(clash.abv)}\u00a0%\u00a0vol ist bei ${drinkNames[drink]} ungewöhnlich; meist sind es ${number(clash.from)} bis ${number(clash.to)}. Prüfe das Etikett.`;
    case 'strong-as-fortified':
      return `${number(clash.abv)}\u00a0%\u00a0vol ist so stark wie ein aufgespriteter Wein. Kennzeichne ihn so, oder prüfe das Etikett.`;
    case 'sugar-against-mark':
      return `${number(clash.sugarGPerL)}\u00a0g/l Zucker und deine Punkte von ${number(clash.dryness)} für die Trockenheit passen nicht zusammen. Prüfe beides.`;
    default:
      return clash satisfies never;
  }
}

const choices: Record<Extract<CellProblem, { code: 'not-one-of' }>['meaning'], string> = {
  drink: 'Möglich sind Spirituose, Wein oder Bier.',
  colour: 'Möglich sind weiß, rosé, orange oder rot.',
  peat: 'Gib 0 (keiner) bis 3 (kräftig) ein.',
  body: 'Gib 1 (leicht) bis 5 (voll) ein.',
  tannin: 'Gib 1 (kaum) bis 5 (griffig) ein.',
  allergens:
    'Schreib die Allergene, wie sie bei der Probe heißen, mit Kommas dazwischen, oder leer die Zelle.',
  'wine-kind': 'Möglich sind Florhefe, natursüß, Eiswein, Likörwein, Mistelle oder ein leeres Feld.',
};

/** Why a cell cannot be kept, and what to write instead. `cell` is its text, `number` writes as the page does. */
function problemSentence(problem: CellProblem, cell: string, number: (value: number) => string): string {
  switch (problem.code) {
    case 'name-missing':
      return 'Es fehlt ein Name. Gib einen an, oder lass diese Zeile weg.';
    case 'too-long':
      return `Das sind ${problem.letters} Zeichen; kürze es auf ${problem.most}.`;
    case 'not-a-number':
      return `„${cell}“ ist keine Zahl. Gib eine ein, oder leere das Feld.`;
    case 'unit-unknown':
      return `„${problem.rest}“ nach der Zahl verstehen wir nicht. Nimm die übliche Einheit.`;
    case 'unit-missing':
      return `„${cell}“ wovon? Gib ${cell.trim()}\u00a0cl oder ${cell.trim()}\u00a0ml an.`;
    case 'out-of-range':
      return `${number(problem.value)} liegt nicht zwischen ${number(problem.least)} und ${number(problem.most)}. Prüfe die Zahl.`;
    case 'above-any-drink':
      return problem.asProof === undefined
        ? `${number(problem.value)} ist mehr, als irgendein Getränk enthält. Prüfe das Etikett.`
        : `${number(problem.value)} ist mehr, als irgendein Getränk enthält; als US-Proof wären es ${number(problem.asProof)}\u00a0%\u00a0vol.`;
    case 'not-whole':
      return `${number(problem.value)} ist keine ganze Zahl. Gib eine ohne Nachkommastellen ein.`;
    case 'not-yes-or-no':
      return `„${cell}“ ist weder ja noch nein. Gib eines von beiden ein.`;
    case 'not-one-of':
      return `„${cell}“ kennen wir hier nicht. ${choices[problem.meaning]}`;
    case 'no-year':
      return `„${cell}“ nennt kein einzelnes Jahr. Gib es mit vier Ziffern an.`;
    case 'not-a-link':
      return 'Ein Link beginnt mit http:// oder https://.';
    case 'not-an-id':
      return 'Das kann keine Kennung sein. Leere das Feld, dann entsteht eine neue.';
    case 'which-number':
      return `„${cell}“ könnte ein Alkoholgehalt oder ein Alter sein. Gib ${cell.trim()}\u00a0% oder ${cell.trim()} Jahre an.`;
    default:
      return problem satisfies never;
  }
}

function otherCurrency(
  { currency, price, how }: Extract<CellNote, { code: 'other-currency' }>,
  number: (value: number) => string,
): string {
  const written = `${number(price)} ${currency}`;
  switch (how) {
    case 'open':
      return `Der Preis ist ${written}. Sag oben, was damit geschehen soll.`;
    case 'convert':
      return `Der Preis war ${written}, umgerechnet zu deinem Kurs.`;
    case 'take':
      return `Der Preis war ${written}; die Zahl wird so übernommen.`;
    case 'leave':
      return `Der Preis war ${written} und wird weggelassen.`;
    default:
      return how satisfies never;
  }
}

function noteSentence(note: CellNote, number: (value: number) => string): string {
  switch (note.code) {
    case 'us-proof-halved':
      return `${number(note.proof)} US-Proof sind ${number(note.abv)}\u00a0%\u00a0vol.`;
    case 'ebc-as-srm':
      return `${number(note.ebc)}\u00a0EBC sind ${number(note.srm)}\u00a0SRM.`;
    case 'ppm-as-peat':
      return `${number(note.ppm)}\u00a0ppm gelten als Torf ${note.peat} von 3.`;
    case 'litres-taken':
      return `Als Liter gelesen: ${number(note.ml)}\u00a0ml.`;
    case 'other-currency':
      return otherCurrency(note, number);
    case 'a-total':
      return 'Diese Zeile zählt die anderen zusammen und ist keine Probe.';
    case 'same-as-line':
      return `Dieselbe Probe steht in Zeile ${note.line}.`;
    default:
      return note satisfies never;
  }
}

/** What goes against the theme; `name` tells a pour by its id. */
function themeSentence(check: ThemeCheck, name: (id: string) => string): string {
  const listed = (ids: readonly string[]) => conjunction.format(ids.map(name));
  switch (check.code) {
    case 'another-producer':
      return `Eine Vertikale braucht einen einzigen Erzeuger: ${name(check.pour)} ist von ${check.producer}, die anderen sind von ${check.expected}.`;
    case 'same-step':
      return `Eine Vertikale geht Schritt für Schritt durch die Jahre: ${listed(check.pours)} haben dasselbe, ${check.step}.`;
    case 'does-not-share':
      return `${name(check.pour)} weicht von den anderen ab (${facts[check.fact]}): ${check.value} und nicht ${check.expected}.`;
    case 'not-apart':
      return `Diese unterscheiden sich nicht (${facts[check.fact]}): ${listed(check.pours)} (${check.value}).`;
    case 'fact-missing':
      return `Das Thema braucht diese Angabe: ${facts[check.fact]}; bei ${name(check.pour)} fehlt sie noch.`;
    case 'one-side-only':
      return 'Ein Vergleich braucht zwei Seiten. Nimm Proben der anderen Seite dazu, oder wähle ein anderes Thema.';
    case 'uneven-sides':
      return `Die Seiten sind verschieden groß: ${conjunction.format(check.sizes.map(String))}. Die größere bekommt mehr Aufmerksamkeit.`;
    case 'sides-mixed':
      return `Ein Flight sollte nur eine Seite zeigen: ${listed(check.pours)} gehören zu verschiedenen.`;
    case 'side-missing':
      return 'Eine der Seiten fehlt.';
    case 'too-few-pours':
      return 'Ein Thema braucht mindestens zwei Proben.';
    default:
      return check satisfies never;
  }
}

export const planLineup: PlanLineupWords = {
  axes,
  factNames: facts,
  clashSentence,
  labelClashes,
  themeSentence,
  reason: {
    opens: 'eröffnet den Abend',
    rises: (axis) => axes[axis].more,
    assumed: (axis) => `vielleicht ${axes[axis].more}: Eine Angabe fehlt`,
    again: (axis) => `nach der Pause wieder ${axes[axis].less}`,
    gives: (axis) => `${axes[axis].less}, insgesamt hier aber am besten`,
    givesByHand: (axis) => `${axes[axis].less} als die Probe davor`,
    equal: 'nichts Bekanntes unterscheidet die beiden',
  },
  cost: {
    none: 'Eine Reihenfolge braucht zwei Proben.',
    best: 'Diese Reihenfolge hat die geringste Nachwirkung.',
    bestCost: (cost) => `Nachwirkung: ${cost}.`,
    more: (cost, best) => `Nachwirkung: ${cost}. In der besten Reihenfolge: ${best}.`,
    putInOrder: 'In Reihenfolge bringen',
    inOrder: 'Die Proben stehen jetzt in der Reihenfolge mit der geringsten Nachwirkung.',
    already: 'Die Proben stehen schon in der besten Reihenfolge.',
    explain: 'Was Nachwirkung heißt',
    explained:
      'Für jedes Paar von Proben zählen wir, wie viel Rauch, Alkohol, Kraft, Süße und so weiter von der früheren in die spätere nachwirkt. Nachbarn zählen voll, mit einer Pause dazwischen etwas mehr als halb, frühere Proben zu einem Fünftel. Dann suchen wir die Reihenfolge mit der kleinsten Summe. Die Gewichte sind unsere eigene Einschätzung, keine Messung, und du darfst ihnen widersprechen.',
  },
  risks: {
    title: 'Proben, die die nächste überdecken können',
    risk: (axis, earlier, later) => `${axes[axis].noun} von ${earlier} vor ${later}`,
    assumed: 'weil eine Angabe fehlt',
    remedies: {
      'longer-water': 'mehr Zeit für Wasser',
      'longer-water-or-move': 'mehr Zeit für Wasser, oder eine der beiden verschieben',
    },
  },
  missing: {
    title: 'Angaben, die diese Reihenfolge sicherer machen',
    or: ' oder ',
  },
  list: {
    title: 'Proben aus einer Liste',
    lead: 'Füge Zeilen aus einer Tabelle, der Liste eines Ladens oder einer Nachricht ein, oder wähle eine Datei. Nichts wird übernommen, bevor du es sagst.',
    paste: 'Die Liste',
    pasteHint:
      'Eine Probe je Zeile, zum Beispiel: Obstgartenmauer, 46%. Überschriften dürfen in beliebiger Reihenfolge stehen.',
    file: 'Eine Datei wählen',
    workbook:
      'Das ist eine Datei aus einer Tabellenkalkulation. Speichere sie dort als CSV, oder kopiere die Zellen und füge sie hier ein.',
    notText: 'In dieser Datei ist kein Text. Wähle eine CSV-Datei, oder füge die Zeilen ein.',
    tooLarge:
      'Diese Datei ist größer als 2\u00a0MB. Kopiere die Zeilen, die du brauchst, und füge sie hier ein.',
    cut: (most) => `Wir lesen höchstens ${several(most, 'Zeile', 'Zeilen')}.`,
    nothing: 'Es gibt noch nichts zu lesen.',
    headed: 'Die erste Zeile enthält Überschriften',
    columns: 'Was die Spalten bedeuten',
    column: (index) => `Spalte ${index}`,
    skip: 'Als Notiz behalten',
    doubled: 'Eine Spalte davor bedeutet dasselbe.',
    noName: 'Keine Spalte ist der Name. Wähle die, in der er steht.',
    ...planList,
    line: (line) => `Zeile ${line}`,
    found: (pours, bad) =>
      bad === 0
        ? `${several(pours, 'Probe', 'Proben')} gefunden, alles klar.`
        : `${several(pours, 'Probe', 'Proben')} gefunden; sieh dir ${several(bad, 'Zeile', 'Zeilen')} noch an.`,
    take: (name) => `${name} nehmen`,
    nameless: 'ohne Namen',
    room: (taken, room) =>
      taken > room
        ? `Ein Abend fasst 16 Proben. Gewählt: ${taken}, Platz ist für ${room}; lass ${taken - room} weg.`
        : `Gewählt: ${taken}; Platz ist für ${room}.`,
    asides:
      'Was zu keiner Angabe passt oder nicht zu lesen ist, kommt in deine eigene Notiz zur Probe, so geht nichts verloren.',
    are: 'Was das ist',
    money: {
      asked: (from, to) => `Manche Preise sind in ${from}, der Abend rechnet in ${to}`,
      ways: { convert: 'Zu meinem Kurs umrechnen', take: 'Die Zahl übernehmen', leave: 'Weglassen' },
      rate: (from, to) => `Wie viel 1 ${from} in ${to} ist`,
      rateWrong: 'Ein Kurs ist eine Zahl über 0.',
    },
    replace: 'Die vorhandenen Proben ersetzen',
    keep: (pours) => `${several(pours, 'Probe', 'Proben')} übernehmen`,
    kept: (pours) => `${several(pours, 'Probe steht', 'Proben stehen')} im Plan.`,
    read: 'Die Liste lesen',
    again: 'Eine andere Liste',
    problemSentence,
    noteSentence,
    asideLine: (heading, text) => (heading === '' ? text : `${heading}: ${text}`),
  },
};
