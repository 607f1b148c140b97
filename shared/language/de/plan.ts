// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { PlanWords } from '../en/plan.ts';
import { hostWords } from './host.ts';
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
  done: 'Fertig',
  notNow: 'Jetzt nicht',
  allParts: 'Alle Teile',
  next: (part) => `Weiter: ${part}`,
  underWay:
    'Die Türen sind offen, der Plan steht also fest. Was sich noch ändern lässt, änderst du beim Leiten.',
  finished:
    'Dieser Abend ist vorbei, sein Plan lässt sich nicht mehr ändern. Dupliziere ihn, um ihn noch einmal auszurichten.',

  keeping: {
    kept: 'Alles gespeichert',
    changed: 'Geändert',
    sending: 'Wird gespeichert\u00a0…',
    failedAgain:
      'Noch nicht gespeichert: Der Server antwortet nicht. Lass diese Seite offen; sie versucht es von selbst wieder.',
    failed:
      'Nicht gespeichert: Der Server hat den Plan abgelehnt. Nimm die letzte Änderung zurück, oder lade die Seite neu.',
    doorsOpen:
      'Nicht gespeichert: Inzwischen sind die Türen offen, und der Plan steht fest. Lade die Seite neu.',
    wrongKey:
      'Nicht gespeichert: Der Schlüssel dieses Geräts öffnet diesen Plan nicht mehr. Öffne den Gastgeber-Link noch einmal.',
    elsewhereTitle: 'Ein anderes Gerät hat diesen Plan geändert',
    elsewhere: (title, pours) =>
      `Dort heißt er „${title}“ und hat ${several(pours, 'Probe', 'Proben')}. Nur einer kann bleiben: Wähle.`,
    takeTheirs: 'Den anderen nehmen',
    keepMine: 'Diesen behalten',
    taken: 'Ein anderes Gerät hat diesen Plan geändert; das hier ist die neue Fassung.',
  },

  parts: {
    pours: 'Die Proben',
    guests: 'Wer kommt',
    evening: 'Wann und wo',
    course: 'Wie es abläuft',
    strength: 'Alkohol und Vorsicht',
    shopping: 'Was du brauchst',
    table: 'Der Tisch',
    before: 'Vor dem Abend',
    copies: 'Kopien und Dateien',
  },
  summary: {
    noPours: 'noch keine',
    pours: (pours, flights) =>
      flights < 2 ? several(pours, 'Probe', 'Proben') : `${pours} in ${flights} Flights`,
    guests: (guests, remote, level) =>
      remote === 0 ? `${guests} · ${level}` : `${guests} und ${remote} zu Hause · ${level}`,
    noDate: 'noch kein Datum',
    strength: (grams, drinks) => `je ${grams}\u00a0g · ${drinks}`,
    strengthLoud: (grams) => `je ${grams}\u00a0g: zu viel`,
    strengthUnknown: 'Alkoholgehalte fehlen',
    bottles: (bottles) => several(bottles, 'Flasche', 'Flaschen'),
    bottlesCost: (bottles, money) => `${several(bottles, 'Flasche', 'Flaschen')} · ${money} je Platz`,
    table: 'Plätze, maßstäblich gezeichnet',
    before: 'einladen, drucken, einschenken',
    copies: 'duplizieren, speichern, Liste',
  },

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
    place: 'Ort',
    placeHint: 'So, dass die Gäste hinfinden.',
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
    terms: 'Wörter auf den Seiten der Gäste',
    termsOf: { plain: 'Einfache Wörter', trade: 'Fachwörter' },
    termsHints: { plain: 'Gerbstoff, Frische, Fülle', trade: 'Tannin, Säure, Körper' },
    advice: (level, pours, usual) =>
      pours === usual
        ? `${several(pours, 'Probe ist', 'Proben sind')} für ${level} üblich.`
        : `${several(usual, 'Probe ist', 'Proben sind')} für ${level} üblich; im Plan ${pours === 1 ? 'steht' : 'stehen'} ${pours}.`,
    spread: 'Eine gemischte Runde?',
    spreadLead:
      'Gib an, wie viele du jeweils erwartest; dann schlagen wir eine Größe vor, die zum ganzen Raum passt.',
    count: { newcomers: 'Neulinge', regulars: 'Geübte', devotees: 'Kenner' },
    advised: (level, pours, flights) =>
      `Plan am besten für ${level}: ${several(pours, 'Probe', 'Proben')} in ${flights > 1 ? `${flights} Flights` : 'einem Flight'}.`,
    noAdvice: 'Gib an, wie viele kommen, dann schlagen wir etwas vor.',
    notes: {
      'newcomers-among-them': (guests) =>
        `${several(guests, 'Neuling', 'Neulinge')} darunter: Das Üben mit Wasser ist an.`,
      'devotees-among-them': (guests) =>
        `${several(guests, 'Kenner', 'Kenner')} darunter: Biete mehr zu lesen an, nicht mehr zu trinken.`,
      'wide-spread': () => 'Neulinge und Kenner in einem Raum: Wir zielen auf die Mitte.',
      'not-placed': (guests) =>
        `${several(guests, 'Gast hat', 'Gäste haben')} zu wenig geantwortet, um sie einzuordnen.`,
      'mostly-unknown': () => 'Weniger als die Hälfte hat geantwortet. Frag noch einmal, oder wähle selbst.',
    },
    takeAdvice: 'Übernehmen',
    adviceTaken: 'Übernommen.',
    country: 'Land',
    countryHint: 'Für Standardgläser und das gesetzliche Mindestalter.',
    noCountry: 'Nicht gewählt',
  },

  course: {
    talk: 'Gespräch',
    talks: { 'each-pour': 'Nach jeder Probe', 'each-flight': 'Nach jedem Flight', 'at-the-end': 'Am Ende' },
    naming: 'Namen blinder Proben',
    namings: { 'one-by-one': 'Einer nach dem anderen', 'all-at-once': 'Alle auf einmal' },
    namingHints: {
      'one-by-one': 'jeder mit seinem Etikett und seiner Geschichte',
      'all-at-once': 'alle Gläser eines Gesprächs zusammen',
    },
    ranking: 'Rangfolge',
    rankings: { none: 'Nein', 'each-flight': 'Jeden Flight', 'at-the-end': 'Am Ende' },
    practice: 'Zuerst mit Wasser üben',
    practiceHint: 'Die Handgriffe, vor dem ersten Glas.',
    closing: 'Schlussdurchgang',
    closingHint: 'Die Notizen nachlesen, dann nachdenken.',
    rankNamed: 'Zuerst die Namen nennen',
    rankNamedHint:
      'Nicht ratsam: Was man weiß, schmeckt man. Die Rangfolge sagt dann so viel über die Etiketten wie über die Gläser.',
    liking: 'Fragen, wie gut jede Probe gefällt',
    breaks: 'Pause, Minuten',
    breaksWrong: 'Gib 5 bis 60 Minuten ein.',
    pacing: 'Wer das Tempo vorgibt',
    pacings: { host: 'Du', steps: 'Schritte laufen', clock: 'Die Uhr', room: 'Der Raum' },
    pacingHints: {
      host: 'ein Schritt endet, wenn du es sagst',
      steps: 'die Schritte eines Glases enden mit ihrer Zeit und warten am Ende des Glases auf dich',
      clock: 'ein Schritt endet mit seiner Zeit',
      room: 'ein Schritt endet, wenn genug bereit sind',
    },
    share: 'Wie viele bereit sein müssen',
    shares: { '0.5': 'Die Hälfte', '0.75': 'Drei von vier', '1': 'Alle' },
    pace: 'Kürzer oder länger',
    paces: { look: 'Schauen', nose: 'Riechen', sip: 'Probieren', write: 'Notieren', discussion: 'Gespräch' },
    shorter: (what) => `${what}: kürzer`,
    longer: (what) => `${what}: länger`,
    times: (factor) => `× ${factor}`,
    schedule: 'Der Abend nach der Uhr',
    total: (length) => `${length} ab dem Öffnen der Türen`,
    until: (time) => `bis etwa ${time}`,
    noClock: 'Leg ein Datum fest, dann stehen hier Uhrzeiten.',
    hours: (hours, minutes) =>
      hours === 0
        ? `${minutes}\u00a0min`
        : minutes === 0
          ? `${hours}\u00a0h`
          : `${hours}\u00a0h ${minutes}\u00a0min`,
    stretches: {
      ...hostWords.cue.kinds,
      gathering: 'Gäste kommen an',
      practice: 'Üben mit Wasser',
    },
    finishBy: 'Bis zu einer Zeit fertig sein',
    finishAt: 'Alle können gehen um',
    fitsAlready: 'Es passt, wie es ist.',
    wouldCut: (what) =>
      `Um bis dahin fertig zu sein, wird gekürzt: ${what}. Spucken, Wasser und Pausen behalten, was sie brauchen.`,
    tooLong: (over) =>
      `Selbst in der kürzesten Form ist der Abend ${over} zu lang. Nimm eine Probe heraus, oder hör später auf.`,
    cutOf: {
      senses: (length) => `Schauen, Riechen und Probieren um ${length}`,
      writing: (length) => `Notieren um ${length}`,
      talk: (length) => `Gespräch um ${length}`,
      rest: (length) => `Pausen und Wasser um ${length}`,
      ceremony: (length) => `Begrüßung und Abschied um ${length}`,
    },
    shorten: 'Kürzen',
    shortened: 'Der Abend ist gekürzt.',
    stepsOf: (what) => `${what}: jeder Schritt`,
    stepsLead: 'Sekunden für jeden Schritt, und deine eigenen Worte statt unserer.',
    secondsWrong: (least) => `Gib ganze Sekunden von ${least} bis 7200 ein.`,
    stepSeconds: (step) => `${step}, Sekunden`,
    ownWords: (step) => `Zu sagen bei: ${step}`,
    edited: (count) =>
      `${several(count, 'Schritt hat', 'Schritte haben')} eine eigene Zeit oder einen eigenen Text.`,
    forgetEdits: 'Alle Zeiten und Texte zurücksetzen',
    editsForgotten: 'Alle Zeiten und Texte sind zurückgesetzt.',
  },

  copies: {
    remove: {
      lead: 'Gelöscht werden der Plan, die Antworten der Umfrage und jeder Link dazu. Das lässt sich nicht rückgängig machen.',
      goes: [
        'Links, die du verschickt hast, öffnen nichts mehr.',
        'Was du nicht als Datei gespeichert oder gedruckt hast, ist weg.',
        'Niemand kann es zurückholen, und es gibt kein „Rückgängig“.',
      ],
      gone: 'Der Abend ist gelöscht. Der Server hat nichts mehr davon.',
    },
    duplicate: 'Diesen Abend duplizieren',
    duplicateHint: 'Derselbe Plan ohne sein Datum, als eigener Abend.',
    copyOf: (title) => `${title}, noch einmal`,
    save: 'Den Plan als Datei speichern',
    saveHint: 'Eine JSON-Datei mit allem außer den Fotos, zum Aufheben oder Weitergeben.',
    load: 'Einen Plan aus einer Datei laden',
    loadHint: 'Er ersetzt diesen Plan; du kannst es rückgängig machen.',
    loaded: 'Der Plan ist geladen.',
    notJson: 'Diese Datei ist kein gespeicherter Plan. Wähle eine, die hier gespeichert wurde.',
    problems: 'Dieser Plan lässt sich nicht öffnen:',
    problem: (where, what) => `${where}: ${what}`,
    whole: 'Die Datei',
    issues: {
      tooBig: (most) => `Das ist zu groß oder zu lang; höchstens ${most}.`,
      tooSmall: (least) => `Das ist zu klein oder zu kurz; mindestens ${least}.`,
      kind: 'Dort muss etwas anderes stehen.',
      unknownValue: (known) => `Möglich ist nur: ${known}.`,
      unknownKeys: (keys) => `So ein Feld hat kein Plan: ${keys}.`,
      format: 'Das Format stimmt nicht.',
      doubled: 'Das kommt doppelt vor.',
    },
    tooLarge: 'Diese Datei ist größer als 2\u00a0MB, also kein gespeicherter Plan.',
    csv: 'Die Proben als Liste speichern',
    csvHint: 'Eine CSV-Datei für jede Tabellenkalkulation; sie lässt sich vollständig wieder einlesen.',
    fileName: (title) => (title === '' ? 'Plan' : title),
  },

  ...planPours,
  ...planRehearsal,
  ...planLineup,
  ...planBefore,
  figures: planFigures,
};
