// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { PlanWords } from '../en/plan.ts';
import { planBefore } from './plan-before.ts';
import { planFigures } from './plan-figures.ts';
import { planLineup } from './plan-lineup.ts';
import { planPours } from './plan-pours.ts';
import { planRehearsal } from './plan-rehearsal.ts';

const several = countingIn('de');

/** Every word of the plan page, in German. */
export const planWords: PlanWords = {
  page: (title) => `${title === '' ? 'Planen' : title} · Quietpour`,
  untitled: 'Ein Abend ohne Titel',
  home: 'Alle Abende',
  doors: 'Zum Einlass',
  doorsNeed: 'Für den Einlass fehlt nur noch eine Probe.',
  undo: 'Rückgängig',
  close: 'Schließen',
  done: 'Fertig',
  notNow: 'Jetzt nicht',
  allParts: 'Alle Teile',
  next: (part) => `Weiter: ${part}`,
  underWay:
    'Die Türen sind offen, also steht der Plan, wie er ist. Was sich noch ändern lässt, änderst du beim Leiten.',
  finished:
    'Dieser Abend ist vorbei, also steht sein Plan, wie er war. Dupliziere ihn, um ihn noch einmal auszurichten.',

  keeping: {
    kept: 'Alles ist gesichert',
    changed: 'Geändert',
    sending: 'Wird gesichert',
    failedAgain:
      'Noch nicht gesichert: Der Server antwortet nicht. Lass diese Seite offen; sie versucht es von selbst wieder.',
    failed:
      'Nicht gesichert: Der Server hat den Plan abgelehnt. Nimm die letzte Änderung zurück, oder lade die Seite neu.',
    doorsOpen:
      'Nicht gesichert: Inzwischen sind die Türen geöffnet worden, und der Plan steht, wie er da war. Lade die Seite neu.',
    wrongKey:
      'Nicht gesichert: Der Schlüssel dieses Geräts öffnet diesen Plan nicht mehr. Öffne den Link für Gastgeber noch einmal.',
    elsewhereTitle: 'Ein anderes Gerät hat diesen Plan geändert',
    elsewhere: (title, pours) =>
      `Dort heißt er „${title}“ und hat ${several(pours, 'Probe', 'Proben')}. Beides lässt sich nicht behalten: Wähle eines.`,
    takeTheirs: 'Den anderen nehmen',
    keepMine: 'Behalten, was hier steht',
    taken: 'Ein anderes Gerät hat diesen Plan geändert; du siehst ihn, wie er jetzt ist.',
  },

  parts: {
    pours: 'Die Proben',
    guests: 'Wer kommt',
    evening: 'Wann und wo',
    course: 'Wie es abläuft',
    strength: 'Alkohol und Sorgfalt',
    shopping: 'Was zu besorgen ist',
    table: 'Der Tisch',
    copies: 'Kopien und Dateien',
  },
  summary: {
    noPours: 'noch keine',
    pours: (pours, flights) =>
      flights < 2 ? several(pours, 'Probe', 'Proben') : `${pours} in ${flights} Flights`,
    guests: (guests, remote, level) =>
      remote === 0 ? `${guests} · ${level}` : `${guests} und ${remote} zu Hause · ${level}`,
    noDate: 'noch kein Datum',
    strength: (grams, drinks) => `je ${grams} g · ${drinks}`,
    strengthLoud: (grams) => `je ${grams} g: zu viel`,
    strengthUnknown: 'Alkoholgehalte fehlen',
    bottles: (bottles) => several(bottles, 'Flasche', 'Flaschen'),
    bottlesCost: (bottles, money) => `${several(bottles, 'Flasche', 'Flaschen')} · ${money} je Platz`,
    table: 'Plätze, maßstäblich gezeichnet',
    copies: 'duplizieren, sichern, Liste',
  },

  volumeUnits: { ml: 'ml', 'fl-oz-us': 'fl oz', 'fl-oz-imperial': 'fl oz' },
  drinks: { spirit: 'Spirituose', wine: 'Wein', beer: 'Bier' },
  drinksOf: { spirit: 'Spirituosen', wine: 'Wein', beer: 'Bier' },
  levels: { newcomers: 'Neulinge', regulars: 'Geübte', devotees: 'Kenner' },

  evening: {
    title: 'Titel',
    titleHint: 'Was auf der Einladung und auf jedem Handy steht.',
    date: 'Datum',
    time: 'Einlass ab',
    clear: 'Noch kein Datum',
    noSuchTime: 'An diesem Tag überspringt die Uhr diese Zeit. Wähle eine andere.',
    past: 'Dieser Tag ist schon vorbei. Prüfe das Datum und das Jahr.',
    notADate: 'Gib das Datum mit Jahr, Monat und Tag an.',
    zone: 'Zeitzone',
    zoneNow: (zone) => `Zeit von ${zone}`,
    otherZone: 'Eine andere Zeitzone',
    place: 'Ort',
    placeHint: 'So, wie Gäste danach fragen würden.',
    hostName: 'Dein Name',
    hostNameHint: 'Damit die Gäste wissen, wen sie fragen können.',
    welcome: 'Begrüßung',
    welcomeHint: 'Ein paar Zeilen, die Gäste vor dem ersten Glas lesen.',
    more: 'Für Gäste zu Hause',
    callLink: 'Link zum Videoanruf',
    callHint: 'Gäste zu Hause finden ihn auf ihrer Seite.',
    linkWrong: 'Ein Link beginnt mit http:// oder https://.',
    test: 'Den Anruf ausprobieren',
  },

  guests: {
    guests: 'Gäste am Tisch',
    remote: 'Gäste zu Hause',
    tooMany: 'Ein Abend fasst bis zu 200 Gäste. Gib eine Zahl von 0 bis 200 ein.',
    nobody: 'Noch niemand. Planen kannst du trotzdem.',
    level: 'Wie geübt sind sie im Verkosten?',
    levels: { newcomers: 'Neulinge', regulars: 'Geübte', devotees: 'Kenner' },
    levelHints: {
      newcomers: '3 Proben, langsam und geführt',
      regulars: '6 Proben in 2 Flights',
      devotees: '9 Proben in 3 Flights',
    },
    advice: (level, pours, usual) =>
      pours === usual
        ? `${pours} Proben sind für ${level} üblich.`
        : `${usual} Proben sind für ${level} üblich; im Plan ${pours === 1 ? 'steht' : 'stehen'} ${pours}.`,
    spread: 'Eine gemischte Runde?',
    spreadLead: 'Gib an, wie viele du von jeder Art erwartest; dann findet sich die Größe, die allen passt.',
    count: { newcomers: 'Neulinge', regulars: 'Geübte', devotees: 'Kenner' },
    advised: (level, pours, flights) =>
      `Dieser Raum ist am besten bedient als Runde für ${level}: ${several(pours, 'Probe', 'Proben')} in ${flights > 1 ? `${flights} Flights` : 'einem Flight'}.`,
    noAdvice: 'Gib an, wie viele kommen, dann wird eine Größe empfohlen.',
    notes: {
      'newcomers-among-them': (guests) =>
        `${several(guests, 'Neuling', 'Neulinge')} darunter: Das Üben mit Wasser ist an.`,
      'devotees-among-them': (guests) =>
        `${several(guests, 'Kenner', 'Kenner')} darunter: Biete mehr zu lesen an, nicht mehr zu trinken.`,
      'wide-spread': () => 'Neulinge und Kenner in einem Raum: Bedient wird die Mitte, keines der Enden.',
      'not-placed': (guests) =>
        `${several(guests, 'Gast hat', 'Gäste haben')} nicht genug geantwortet, um eingeordnet zu werden.`,
      'mostly-unknown': () => 'Weniger als die Hälfte ist bekannt. Frag noch einmal, oder wähle selbst.',
    },
    takeAdvice: 'So nehmen',
    adviceTaken: 'Die Stufe ist gesetzt.',
    country: 'Land',
    countryHint: 'Für Standardgläser und das gesetzliche Mindestalter.',
    noCountry: 'Nicht gewählt',
  },

  course: {
    talk: 'Gespräch',
    talks: { 'each-pour': 'Nach jeder Probe', 'each-flight': 'Nach jedem Flight', 'at-the-end': 'Am Ende' },
    ranking: 'Rangfolge',
    rankings: { none: 'Nein', 'each-flight': 'Jeden Flight', 'at-the-end': 'Am Ende' },
    practice: 'Zuerst mit Wasser üben',
    practiceHint: 'Die Handgriffe, vor dem ersten Glas.',
    closing: 'Schlussdurchgang',
    closingHint: 'Notizen von oben bis unten, dann Gedanken.',
    liking: 'Fragen, wie gut jede Probe gefällt',
    breaks: 'Pause, Minuten',
    breaksWrong: 'Gib 5 bis 60 Minuten ein.',
    pacing: 'Wer das Tempo vorgibt',
    pacings: { host: 'Du', steps: 'Schritte laufen', clock: 'Die Uhr', room: 'Der Raum' },
    pacingHints: {
      host: 'ein Schritt endet, wenn du es sagst',
      steps: 'die Schritte eines Glases enden mit ihrer Zeit, und an seinem Ende wird auf dich gewartet',
      clock: 'ein Schritt endet mit seiner Zeit',
      room: 'ein Schritt endet, wenn genug bereit sind',
    },
    share: 'Wie viele bereit sein müssen',
    shares: { '0.5': 'Die Hälfte', '0.75': 'Drei von vier', '1': 'Alle' },
    pace: 'Kürzer oder länger',
    paces: { look: 'Schauen', nose: 'Riechen', sip: 'Nippen', write: 'Schreiben', discussion: 'Gespräch' },
    shorter: (what) => `${what}: kürzer`,
    longer: (what) => `${what}: länger`,
    times: (factor) => `× ${factor}`,
    schedule: 'Der Abend nach der Uhr',
    total: (length) => `${length} ab dem Öffnen der Türen`,
    until: (time) => `bis etwa ${time}`,
    noClock: 'Leg ein Datum fest, dann stehen hier Uhrzeiten.',
    hours: (hours, minutes) =>
      hours === 0 ? `${minutes} min` : minutes === 0 ? `${hours} h` : `${hours} h ${minutes} min`,
    stretches: {
      gathering: 'Gäste kommen an',
      welcome: 'Begrüßung',
      'ground-rules': 'Die Regeln',
      practice: 'Üben mit Wasser',
      break: 'Pause',
      ranking: 'Rangfolge',
      'odd-one-out': 'Das abweichende Glas finden',
      discussion: 'Gespräch',
      reveal: 'Die Namen',
      farewell: 'Verabschiedung',
    },
    finishBy: 'Bis zu einer Zeit fertig sein',
    finishAt: 'Alle können gehen um',
    fitsAlready: 'Es passt, wie es ist.',
    wouldCut: (what) =>
      `Um bis dahin fertig zu sein, wird gekürzt: ${what}. Spucken, Wasser und Pausen behalten, was sie brauchen.`,
    tooLong: (over) =>
      `Selbst in der kürzesten Form ist der Abend ${over} zu lang. Nimm eine Probe heraus, oder hör später auf.`,
    cutOf: {
      senses: (length) => `Schauen, Riechen und Nippen um ${length}`,
      writing: (length) => `Schreiben um ${length}`,
      talk: (length) => `Gespräch um ${length}`,
      rest: (length) => `Pausen und Wasser um ${length}`,
      ceremony: (length) => `Begrüßung und Verabschiedung um ${length}`,
    },
    shorten: 'Kürzen',
    shortened: 'Der Abend ist gekürzt.',
    stepsOf: (what) => `${what}: jeder Schritt`,
    stepsLead: 'Sekunden für jeden Schritt, und was du statt der üblichen Worte lieber laut sagst.',
    secondsWrong: (least) => `Gib ganze Sekunden von ${least} bis 7200 ein.`,
    stepSeconds: (step) => `${step}, Sekunden`,
    ownWords: (step) => `Zu sagen bei: ${step}`,
    steps: {
      swirl: 'Schwenken',
      look: 'Schauen',
      nose: 'Riechen',
      sip: 'Nippen',
      spit: 'Spucken',
      write: 'Schreiben',
      review: 'Nachlesen',
      reflect: 'Gedanken',
    },
    writing: {
      look: 'Aussehen notieren',
      nose: 'Nase notieren',
      palate: 'Gaumen notieren',
      finish: 'Abgang notieren',
    },
    water: 'Wasser',
    edited: (count) =>
      `${several(count, 'Schritt hat', 'Schritte haben')} eine eigene Zeit oder einen eigenen Text.`,
    forgetEdits: 'Zurück zu den üblichen Zeiten und Texten',
    editsForgotten: 'Alle Schritte haben ihre üblichen Zeiten und Texte.',
  },

  copies: {
    duplicate: 'Diesen Abend duplizieren',
    duplicateHint: 'Derselbe Plan ohne sein Datum, als eigener Abend.',
    copyOf: (title) => `${title}, noch einmal`,
    save: 'Den Plan als Datei sichern',
    saveHint: 'Eine JSON-Datei mit allem außer den Fotos, zum Aufheben oder Weitergeben.',
    load: 'Einen Plan aus einer Datei laden',
    loadHint: 'Er tritt an die Stelle von diesem; du kannst es zurücknehmen.',
    loaded: 'Der Plan aus der Datei ist jetzt hier.',
    notJson: 'Diese Datei ist kein gesicherter Plan. Wähle eine Datei, die hier gesichert wurde.',
    problems: 'Dieser Plan lässt sich so nicht öffnen:',
    problem: (where, what) => `${where}: ${what}`,
    whole: 'Die Datei',
    issues: {
      tooBig: (most) => `Das ist zu groß oder zu lang; höchstens ${most}.`,
      tooSmall: (least) => `Das ist zu klein oder zu kurz; mindestens ${least}.`,
      kind: 'Dort muss etwas anderes stehen.',
      unknownValue: (known) => `Es muss eines davon sein: ${known}.`,
      unknownKeys: (keys) => `Das gibt es in keinem Plan: ${keys}.`,
      format: 'So wird das nicht geschrieben.',
      doubled: 'Es steht zweimal da.',
    },
    tooLarge: 'Diese Datei ist größer als 2 MB, also kein gesicherter Plan.',
    csv: 'Die Proben als Liste sichern',
    csvHint: 'Eine CSV-Datei für jede Tabellenkalkulation; sie lässt sich ohne Verlust wieder einlesen.',
    fileName: (title) => (title === '' ? 'Plan' : title),
  },

  ...planPours,
  ...planRehearsal,
  ...planLineup,
  ...planBefore,
  figures: planFigures,
};
