// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { RecapWords } from '../en/recap.ts';

const several = countingIn('de');

const small = 'Keine Eine Zwei Drei Vier Fünf Sechs Sieben Acht Neun Zehn Elf Zwölf'.split(' ');
const people = (count: number): string =>
  `${small[count] ?? String(count)} ${count === 1 ? 'Person' : 'Personen'}`;

const listed = new Intl.ListFormat('de', { type: 'conjunction' });
const inRow = (names: readonly string[]): string => listed.format(names);

/** A chance as one would say it over a table. */
const byLuck = (p: number): string => {
  const often = Math.round(p * 100);
  return often < 1 ? 'an weniger als 1 von 100 Abenden' : `an etwa ${often} von 100 Abenden`;
};

/** The words of the recap, in German: every code of its results has a plain sentence here. */
export const recapWords: RecapWords = {
  title: 'Rückblick',
  untitled: 'Ein Abend ohne Titel',
  toHome: 'Alle Abende',
  toRoom: 'Der Raum',
  open: 'Auf den Abend zurückblicken',
  notYet: 'Den Rückblick gibt es, sobald der Abend beendet ist.',
  guests: (guests, remote) =>
    `${several(guests, 'Gast', 'Gäste')}${remote > 0 ? `, davon ${remote} zu Hause` : ''}`,
  when: (day, from, to) => `${day}, ${from} bis ${to}`,
  quiet: (findings) =>
    findings === 1
      ? 'Zu einem Punkt gibt es nichts zu sagen'
      : `Zu ${findings} Punkten gibt es nichts zu sagen`,
  onlyPermitted:
    'Hier steht nur, was Gäste geteilt haben oder zählen lassen. Private Seiten gehören nicht dazu.',
  released:
    'Die Zahlen bleiben so, wie du sie zuerst gesehen hast. Sie ändern sich erst, wenn drei oder mehr Gäste etwas geändert haben; so lässt sich nicht erkennen, was ein einzelner geändert hat.',
  silent: (names) =>
    `Das Gespräch über ${inRow(names)} wurde nie eröffnet, deshalb bleiben diese Notizen bei den Gästen.`,
  glass: (position) => `Glas ${position}`,
  asTable: 'Dasselbe als Tabelle',
  reckoned: 'Wie das berechnet wurde',
  answers: (n, guests) => `${n} von ${several(guests, 'Gast', 'Gästen')}.`,
  pour: 'Probe',

  ranking: {
    title: 'Welche Probe gewann',
    titleOf: (number) => `Welche Probe gewann, Runde ${number}`,
    noRanking: 'Du hast den Raum nicht nach einer Rangfolge gefragt.',
    headline: {
      'clear-favourite': (best) => `${inRow(best)} ${best.length > 1 ? 'haben' : 'hat'} gewonnen.`,
      'favourites-share': (best) =>
        best.length > 1
          ? `${inRow(best)} teilen sich den ersten Platz.`
          : `${inRow(best)} kam auf den ersten Platz, aber nicht klar vor allen anderen.`,
      'no-agreement-shown': (best) =>
        `Kein klarer Sieger. ${inRow(best)} ${best.length > 1 ? 'lagen' : 'lag'} knapp vorn.`,
    },
    sure: {
      'clear-favourite': (p) =>
        `Der Raum war sich einig: Der Zufall allein ergäbe so viel Einigkeit ${byLuck(p)}. Die erste liegt klar vor jeder anderen Probe.`,
      'favourites-share': (p) =>
        `Der Raum war sich in etwas einig: Der Zufall allein brächte das ${byLuck(p)} zustande. Aber die erste liegt nicht klar vor allen anderen.`,
      'no-agreement-shown': (p) =>
        `Die Geschmäcker gingen auseinander: Der Zufall allein ergäbe so viel Einigkeit ${byLuck(p)}.`,
    },
    apart: (better, worse) => `${better} liegt klar vor ${inRow(worse)}.`,
    none: {
      'no-answers':
        'Kein Gast, dessen Antwort gezählt werden darf, hat alle Gläser in eine Rangfolge gebracht.',
      'one-guest':
        'Nur die Rangfolge eines einzigen Gastes darf gezählt werden, und ein Geschmack ist nicht der des ganzen Raums.',
      'one-pour': 'Nur eine Probe darf gezählt werden, und eine allein kann nicht gewinnen.',
      'all-tied': 'Alle fanden alle Proben gleich gut, also gibt es keine erste.',
    },
    picture: (pour, mean, of) => `${pour}: mittlerer Platz ${mean} von ${of}`,
    axis: (of) =>
      `Mittlerer Platz, von 1 (von allen auf den ersten gesetzt) bis ${of} (von allen auf den letzten)`,
    place: 'Platz',
    meanPlace: 'Mittlerer Platz',
    rankSum: 'Summe der Plätze',
  },

  methods: {
    'friedman-exact':
      'Friedman-Test mit Bindungen; die Wahrscheinlichkeit wurde exakt ausgezählt, Fall für Fall.',
    'friedman-chi-square':
      'Friedman-Test mit Bindungen; die Wahrscheinlichkeit stammt aus der Chi-Quadrat-Verteilung.',
    'exact-binomial': 'Exakter Binomialtest gegen zufälliges Wählen eines von drei Gläsern.',
    'cochran-q-holm': 'Cochrans Q für jedes Wort, die Wahrscheinlichkeiten nach Holm angehoben.',
    'counts-only': 'Gezählt, nicht getestet.',
    'summary-only': 'Zusammengefasst, nicht getestet: Zu wenige Gäste haben alle Proben bewertet.',
  },
  pairMethods: {
    'rank-sum-lsd': (gap) =>
      `Zwei Proben heben sich voneinander ab, wenn ihre Summen der Plätze um mehr als ${gap} auseinanderliegen (kleinste signifikante Differenz, jedes Paar für sich).`,
    nemenyi: (gap) =>
      `Zwei Proben heben sich voneinander ab, wenn ihre Summen der Plätze um mehr als ${gap} auseinanderliegen (Nemenyis Differenz, alle Paare zugleich).`,
  },
  figures: (chi2, df, p, w) =>
    `Chi-Quadrat ${chi2} bei ${df} ${df === 1 ? 'Freiheitsgrad' : 'Freiheitsgraden'}, p ${p}. Kendalls W ist ${w}: 0 heißt keine Einigkeit, 1 heißt volle Einigkeit.`,
  limits: {
    'small-panel': (n) => `${people(n)}: Das ist ein Abend unter Freunden, kein Beweis.`,
    'panel-too-small-to-show': () => 'Bei so wenigen Antworten hätte selbst volle Einigkeit nichts gezeigt.',
    'not-shown-is-not-same': () => 'Dass sich nichts gezeigt hat, heißt nicht, dass die Proben gleich sind.',
    'approximate-p': () =>
      'Es waren zu viele Fälle zum Auszählen, deshalb ist die Wahrscheinlichkeit eine Näherung.',
    'pairs-not-corrected': () =>
      'Jedes Paar von Proben wurde für sich beurteilt; unter vielen heben sich manche zufällig ab.',
    'incomplete-left-out': () => 'Antworten mit Lücken sind nicht im Vergleich.',
    'anonymous-left-out': () =>
      'Wo weniger als drei Antworten ohne Namen kamen, zählen sie nicht mit: Man hätte sie erraten können.',
    'not-everyone-shared': () =>
      'Manche Gäste haben ihre Antworten für sich behalten; diese hier sprechen vielleicht nicht für sie.',
    'many-words-tested': () =>
      'Viele Wörter wurden zugleich getestet; die Wahrscheinlichkeiten sind dafür angehoben.',
  },

  liking: {
    title: 'Wie gut jede Probe gefiel',
    headline: {
      'clear-favourite': (best) => `${inRow(best)} ${best.length > 1 ? 'gefielen' : 'gefiel'} am besten.`,
      'favourites-share': (best) =>
        `${inRow(best)} ${best.length > 1 ? 'gefielen' : 'gefiel'} am besten, aber nicht klar besser als alle anderen.`,
      'no-agreement-shown': () => 'Keine Probe gefiel klar besser als die anderen.',
      'summary-only': () => 'Jede Probe für sich; zu wenige haben alle bewertet, um sie zu vergleichen.',
    },
    none: 'Keine Bewertung darf gezählt werden.',
    axis: '1 missfällt außerordentlich · 5 weder noch · 9 gefällt außerordentlich',
    shapes: {
      divided: 'Meinungen geteilt',
      liked: 'gefiel',
      disliked: 'missfiel',
      neither: 'weder noch',
    },
    picture: (pour, median, least, most, n) =>
      `${pour}: Median ${median}, von ${least} bis ${most}, ${several(n, 'Bewertung', 'Bewertungen')}`,
    unrated: (pour) => `${pour}: Keine Bewertung darf gezählt werden`,
    columns: {
      n: 'Bewertungen',
      mean: 'Mittelwert',
      median: 'Median',
      range: 'Von\u00a0… bis',
      sd: 'Streuung (Standardabw.)',
      shape: 'In einem Wort',
    },
    legend: 'Balken: wie viele jeden Punkt gewählt haben. Die Linie markiert den Median.',
  },

  trials: {
    title: 'Das abweichende Glas',
    pair: (a, b) => `${a} und ${b}`,
    headline: {
      'room-told-them-apart': 'Der Raum hat sie auseinandergehalten.',
      'no-difference-shown': 'Der Raum hat nicht gezeigt, dass er sie auseinanderhalten kann.',
    },
    none: 'Keine Wahl darf gezählt werden.',
    right: (correct, n, expected) =>
      `${correct} von ${n} ${correct === 1 ? 'fand' : 'fanden'} das abweichende Glas; durch Zufall sind ${expected} zu erwarten.`,
    critical: (critical) =>
      critical === null
        ? 'Bei so wenigen hätte keine Zahl richtiger Antworten genügt.'
        : `Ab ${several(critical, 'richtigen Antwort', 'richtigen Antworten')} ist Zufall keine gute Erklärung mehr (weniger als 5 von 100 Abenden).`,
    share: (share, lower, upper) =>
      `Ohne Glückstreffer halten etwa ${share} sie wirklich auseinander (der wahre Anteil kann irgendwo zwischen ${lower} und ${upper} liegen, 95-%-Grenzen).`,
    p: (p) => `p ${p}.`,
    picture: (correct, n, critical) =>
      `${correct} von ${n} richtig${critical === null ? '' : `; ${critical} ${critical === 1 ? 'hätte' : 'hätten'} genügt`}`,
    columns: { right: 'Richtig', wrong: 'Falsch', luck: 'Durch Zufall', enough: 'Genug' },
    enough: 'genug',
  },

  words: {
    title: 'Wörter, die der Raum gemeinsam hatte',
    headline: {
      'words-tell-pours-apart': 'Die Wörter des Raums unterscheiden die Proben.',
      'no-word-shown-to-tell-pours-apart':
        'Bei keinem Wort hat sich gezeigt, dass es eher zu einer Probe gehört als zu den anderen.',
      'counts-only': 'Diese Wörter kamen vor.',
    },
    none: 'Keine Wörter dürfen gezählt werden.',
    agreed: (words) => `Bezeichnend: ${inRow(words)}.`,
    noShared: 'Keine zwei Gäste haben hier dasselbe Wort gewählt.',
    nobody: 'Keine Wörter zu dieser Probe.',
    overlap: (share) => `Zwei Gäste hatten im Mittel ${share} ihrer Wörter gemeinsam.`,
    agreement: {
      'fleiss-kappa': (value) =>
        `Einigkeit darüber, welches Wort wohin gehört, über den Zufall hinaus: ${value} (Fleiss’ Kappa; 1 ist volle Einigkeit, 0 ist Zufall).`,
      'krippendorff-alpha': (value) =>
        `Einigkeit darüber, welches Wort wohin gehört, über den Zufall hinaus: ${value} (Krippendorffs Alpha, das Lücken verträgt; 1 ist volle Einigkeit, 0 ist Zufall).`,
    },
    count: (word, guests, n) => `${word}: ${guests} von ${n}`,
    columns: { word: 'Wort', guests: 'Gäste', of: 'Von' },
  },

  colours: {
    title: 'Farben, die der Raum sah',
    said: 'Jedes Stück eines Streifens ist so breit wie die Zahl der Gäste, die diese Farbe sahen.',
    none: 'Keine Farbe darf gezählt werden.',
    picture: (pour, named) => `${pour}: ${named.join(', ')}`,
    count: (colour, guests) => (guests === 1 ? colour : `${colour} × ${guests}`),
    columns: { colour: 'Farbe', guests: 'Gäste' },
  },

  structure: {
    title: 'Im Mund',
    said: 'Wie der Raum jede Probe fand, und wie weit die Meinungen auseinanderlagen.',
    none: 'Keine Stufen dürfen gezählt werden.',
    axis: 'Von 1 bis 5. Der Balken umspannt alle Stufen, die Linie ist der Median.',
    picture: (mark, median, least, most, n) =>
      `${mark}: Median ${median}, von ${least} bis ${most}, ${several(n, 'Gast', 'Gäste')}`,
    columns: { mark: 'Merkmal', median: 'Median', range: 'Von\u00a0… bis', n: 'Gäste' },
  },

  timing: {
    title: 'Die Zeit, die es brauchte',
    headline: {
      'as-planned': () => 'Der Abend verlief wie geplant.',
      'ran-over': (over) => `Der Abend dauerte ${over} länger als geplant.`,
      'ended-early': (over) => `Der Abend war ${over} früher zu Ende als geplant.`,
      'never-began': () => 'Der Abend endete, bevor er begann.',
    },
    sums: (planned, took) => `Geplant waren ab der Begrüßung ${planned}; gebraucht wurden ${took}.`,
    breaks: (taken, planned, called, time) =>
      `${taken} von ${several(planned + called, 'Pause', 'Pausen')} gemacht${called > 0 ? `, davon ${several(called, 'Extrapause', 'Extrapausen')}` : ''}, insgesamt ${time}.`,
    noBreaks: (planned) =>
      planned === 0
        ? 'Es war keine Pause geplant, und es wurde keine gemacht.'
        : 'Es wurde keine Pause gemacht.',
    reckoned:
      '„Geplant“ ist der Ablauf beim Öffnen der Türen; was du später geändert hast, zählt als gebrauchte Zeit. Das Ankommen zählt nicht mit. „Wie geplant“ heißt: auf fünf Minuten oder fünf Prozent genau.',
    planned: 'Geplant',
    took: 'Gebraucht',
    difference: 'Unterschied',
    part: 'Teil des Abends',
    skipped: 'ausgelassen',
    parts: {
      gathering: 'Ankommen',
      opening: 'Begrüßung und Üben',
      glass: 'Glas',
      choosing: 'Rangfolge und abweichende Gläser',
      talk: 'Gespräch und Namen',
      break: 'Pause',
      farewell: 'Abschied',
    },
    calledBreak: 'Extrapause',
    letters: { gathering: 'A', opening: 'B', glass: '', choosing: 'R', talk: 'G', break: 'P', farewell: 'E' },
    numbers: 'Zahlen sind Gläser.',
    picture: (which, parts) => `${which}: ${parts.join('; ')}`,
    partTime: (part, time) => `${part}, ${time}`,
    hours: (hours, minutes) =>
      hours === 0
        ? `${minutes}\u00a0min`
        : minutes === 0
          ? `${hours}\u00a0h`
          : `${hours}\u00a0h ${minutes}\u00a0min`,
    more: (time) => `+${time}`,
    less: (time) => `−${time}`,
    perStep: 'Schritt für Schritt',
    step: 'Schritt',
  },

  take: {
    title: 'Mit nach Hause nehmen',
    print: 'Drucken',
    csv: 'Tabelle (CSV)',
    json: 'Alles (JSON)',
    hint: 'Namen stehen nur neben Notizen, die mit Namen geteilt wurden.',
    saved: 'In deinen Downloads gespeichert.',
    fileName: (title) => `Rückblick ${title}`,
  },

  remove: {
    title: 'Diesen Abend löschen',
    lead: 'Den Plan, den Ablauf, jeden Platz, jede Notiz und jeden Link dazu. Das lässt sich nicht rückgängig machen.',
    begin: 'Diesen Abend löschen\u00a0…',
    sure: (title) => `„${title}“ endgültig löschen?`,
    goes: [
      'Auch deine Gäste verlieren ihre Notizen: Ihre Links öffnen danach nichts mehr.',
      'Was du nicht als Datei gespeichert oder gedruckt hast, ist weg.',
      'Niemand kann es zurückholen, und es gibt kein „Rückgängig“.',
    ],
    understood: 'Ich weiß, dass sich das nicht rückgängig machen lässt',
    go: 'Endgültig löschen',
    keep: 'Behalten',
    gone: 'Der Abend ist gelöscht',
    goneBody: 'Wir haben nachgesehen: Der Server hat nichts mehr davon.',
    notSure:
      'Der Server sollte ihn löschen, hat ihn aber noch. Sieh in der Liste der Abende nach, und versuch es noch einmal.',
  },
};
