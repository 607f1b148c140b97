// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { HostWords } from '../en/host.ts';
import { hostPace } from './host-pace.ts';
import { hostAtTable } from './host-table.ts';

const several = countingIn('de');

const numbered = new Intl.ListFormat('de', { type: 'conjunction' });

/** Every word of the host's app, in German. */
export const hostWords: HostWords = {
  name: 'Quietpour',
  page: (title) => (title === '' ? 'Quietpour, für Gastgeber' : `${title} · Quietpour`),
  close: 'Schließen',
  cancel: 'Jetzt nicht',
  undo: 'Rückgängig',
  untitled: 'Ein Abend ohne Titel',
  loading: 'Einen Moment.',
  tryAgain: 'Noch einmal versuchen',
  noAnswer:
    'Der Server antwortet nicht. Sieh nach, ob er läuft und ob dieses Gerät in seinem Netz ist, und versuch es dann noch einmal.',
  noAnswerToAsk:
    'Der Server hat nicht geantwortet. Vielleicht ist es trotzdem geschehen; sieh auf den Raum, bevor du noch einmal fragst.',
  drinks: { spirit: 'Spirituosen', wine: 'Wein', beer: 'Bier' },

  key: {
    title: 'Öffne deine Abende auf diesem Tablet',
    lead: 'Der Server hat beim Start den Link für Gastgeber ausgegeben. Öffne ihn hier oder füge ihn ein.',
    field: 'Der Link für Gastgeber',
    hint: 'Er endet mit #key= und einer Reihe von Buchstaben.',
    open: 'Öffnen',
    notALink:
      'In dem, was du eingefügt hast, ist kein Schlüssel. Kopiere den ganzen Link für Gastgeber, von http bis zum letzten Buchstaben.',
    wrong:
      'Dieser Schlüssel passt nicht zu diesem Server. Sieh nach, was der Server beim Start ausgegeben hat, und füge den Link für Gastgeber von dort ein.',
    notKept:
      'Dieser Browser merkt sich nichts. Bewahre den Link für Gastgeber auf: Du brauchst ihn wieder, wenn du diese Seite geschlossen hast.',
  },

  home: {
    title: 'Deine Abende',
    list: 'Geplant, im Gange und vergangen',
    begin: 'Einen neuen beginnen',
    demo: 'Mit dem Beispielabend umsehen',
    demoHint: 'Ein erfundener Abend mit sechs Proben. Nichts kann kaputtgehen, und niemand wird eingeladen.',
    blank: { spirit: 'Leer, für Spirituosen', wine: 'Leer, für Wein', beer: 'Leer, für Bier' },
    blankHint: 'Du trägst die Proben eine nach der anderen ein.',
    paste: 'Eine Liste von Proben einfügen',
    pasteHint:
      'Aus einer Tabelle oder Datei: Name, Erzeuger, Alkoholgehalt und so weiter, die Spalten in beliebiger Reihenfolge.',
    none: 'Noch kein Abend',
    noneHint:
      'Beginne mit dem Beispiel: Es dauert eine Minute und zeigt dir alles, was deine Gäste sehen werden.',
    stages: { planned: 'Geplant', 'under-way': 'Im Gange', finished: 'Beendet' },
    code: (code) => `Code ${code}`,
    made: (day) => `angelegt am ${day}`,
    ended: (day) => `beendet am ${day}`,
    size: (pours, guests) =>
      `${pours === 1 ? '1 Probe' : `${pours} Proben`} für ${guests === 1 ? '1 Gast' : `${guests} Gäste`}`,
    find: 'Einen Abend finden',
    findHint: 'Nach Titel, Ort, Gastgeber, Code oder Datum, oder mit „geplant“, „im Gange“ oder „beendet“.',
    found: (count, more) =>
      more
        ? `Die ersten ${count} passenden Abende`
        : count === 1
          ? '1 Abend passt'
          : `${count} Abende passen`,
    notFound: 'Kein Abend passt. Versuch es mit weniger Wörtern oder nur einem Teil eines Wortes.',
    more: 'Weitere Abende zeigen',
    plan: 'Planen',
    doors: 'Einlass',
    room: 'Leiten',
    recap: 'Rückblick',
    oneOnly:
      'Dieses Gerät hat nur den Schlüssel zu einzelnen Abenden. Für alle öffne den Link für Gastgeber dieses Servers.',
  },

  doors: {
    title: 'Der Einlass',
    toPlan: 'Planen',
    elsewhere: 'Andere Seiten',
    toHome: 'Alle Abende',
    code: 'Der Code',
    address: 'Die Adresse für Gäste',
    otherAddress: 'Eine andere Adresse dieses Servers',
    scan: (code) => `Ein QR-Code, der ein Handy mit dem Code ${code} auf die Seite für Gäste führt`,
    how: 'Gäste scannen den QR-Code mit ihrer Kamera oder tippen Adresse und Code ein.',
    sameNetwork: 'Die Handys müssen im selben Netz sein wie dieser Server.',
    plainHttp:
      'Diese Seite kam über einfaches http: Wer im selben Netz ist, könnte mitlesen, auch Notizen und Schlüssel. Nimm ein eigenes Netz mit Passwort, oder gib dem Server ein Zertifikat für https.',
    open: 'Die Türen öffnen',
    opening: 'Die Türen gehen auf',
    notOpen:
      'Gäste können Platz nehmen, sobald die Türen offen sind. Bis dahin kannst du den Plan noch ändern.',
    noPours: 'Im Plan steht noch keine Probe. Trag eine ein, bevor du die Türen öffnest.',
    addPours: 'Zum Plan',
    isOpen:
      'Die Türen sind offen. Beginne, wenn deine Runde vollständig ist; wer später kommt, wird auch eingelassen.',
    toRoom: 'Den Abend leiten',
    isFinished: 'Dieser Abend ist beendet.',
    seats: 'Am Tisch',
    nobody: 'Noch hat niemand Platz genommen.',
    nobodyHint: 'Sobald jemand die Seite öffnet und einen Namen angibt, erscheint er hier.',
    places: 'Was auf jedem Platz liegt',
    placeItems: {
      glass: 'ein Glas für jede Probe eines Flights, gefüllt und an seiner Stelle',
      lids: 'ein Deckel auf jedem Glas',
      water: 'ein Glas Wasser und ein Krug in Reichweite',
      spit: 'ein eigener Spuckbecher',
      white: 'etwas Weißes zum Dagegenhalten: eine Serviette oder ein Blatt Papier',
      paper: 'Papier und Stift für alle ohne Handy',
      bread: 'einfaches Brot oder Cracker, nichts mit starkem Geruch',
    },
    care: 'Deine Sorgfalt als Gastgeber',
    careItems: {
      spit: 'Alle spucken. Sag es zu Beginn, mach es selbst vor, dann ist es niemandem peinlich.',
      water: 'Auf jedem Platz steht Wasser, und vorher wurde gegessen.',
      drive: 'Wer verkostet hat, fährt nicht. Wisse vor dem Beginn, wie alle nach Hause kommen.',
      age: 'Schenke nur an Menschen aus, die bei dir das gesetzliche Mindestalter haben.',
      not: 'Wer schwanger ist, stillt, Medikamente nimmt oder lieber nicht trinkt, darf gern schauen, riechen und schreiben.',
      law: 'Das Recht bei dir vor Ort und die Auflagen deiner Genehmigung gehen allem vor, was auf dieser Seite steht.',
    },
    screen:
      'Dieses Tablet lässt sich von hier aus nicht wach halten. Stell seinen Bildschirm für den Abend auf „immer an“.',
  },

  link: {
    connecting: 'Der Raum wird gesucht',
    live: 'Verbunden',
    lost: 'Verbindung weg, neuer Versuch',
    lostLong:
      'Die Verbindung zum Server ist weg und wird von selbst wieder gesucht. Gäste behalten, was sie sehen; der Raum wartet am nächsten Halt.',
    dismissed: {
      removed:
        'Dieses Gerät wurde von einem anderen Gastgeber abgemeldet. Öffne den Link für Gastgeber wieder, um weiterzumachen.',
      'key-withdrawn':
        'Der Schlüssel dieses Geräts wurde zurückgezogen. Bitte um einen neuen Link für Gastgeber.',
      'server-stopping': 'Der Server hält an. Warte einen Moment und lade dann diese Seite neu.',
      'tasting-deleted': 'Diese Verkostung wurde gelöscht.',
      'too-many-devices': 'Es sind zu viele Geräte offen. Lade diese Seite neu, um hier weiterzumachen.',
    },
    hosts: (hosts) => `${hosts} Geräte leiten`,
  },

  cue: {
    kinds: {
      gathering: 'Ankommen',
      welcome: 'Begrüßung',
      'ground-rules': 'Die Regeln',
      water: 'Wasser',
      break: 'Pause',
      farewell: 'Verabschiedung',
      ranking: 'Rangfolge',
      'odd-one-out': 'Das abweichende Glas finden',
      discussion: 'Gespräch',
      reveal: 'Die Namen',
    },
    calledBreak: 'Pause, ausgerufen',
    drops: '3 Tropfen dazu',
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
    writes: {
      look: 'Aussehen notieren',
      nose: 'Nase notieren',
      palate: 'Gaumen notieren',
      finish: 'Abgang notieren',
    },
    passes: { first: 'erster Durchgang', writing: 'Schreibdurchgang', closing: 'Schlussdurchgang' },
    threeGlasses: 'drei Gläser mit Codes, zwei davon gleich',
    practice: (move) =>
      ({
        swirl: 'Üben: schwenken',
        look: 'Üben: schauen',
        nose: 'Üben: riechen',
        sip: 'Üben: nippen',
        spit: 'Üben: spucken',
      })[move],
    practiceAll: 'Üben mit Wasser',
    glassOf: (position, of) => `Glas ${position} von ${of}`,
    glass: (position) => `Glas ${position}`,
    flight: (flight) => `Flight ${flight}`,
    glasses: (positions) => {
      const [first = 0, second] = positions;
      const last = positions.at(-1) ?? first;
      if (second === undefined) return `Glas ${first}`;
      const inARow = positions.length > 2 && last - first === positions.length - 1;
      return `Gläser ${inARow ? `${first} bis ${last}` : numbered.format(positions.map(String))}`;
    },
  },

  room: {
    say: 'Laut sagen',
    time: 'Zeit für diesen Schritt',
    phasesAtGate: { running: 'übrig, dann Halt', held: 'angehalten', over: 'vorbei, wartet auf dich' },
    phases: { running: 'übrig', held: 'angehalten', over: 'über der Zeit' },
    order: 'Der Abend',
    now: 'jetzt',
    next: 'Weiter',
    openTalk: 'Gespräch eröffnen',
    openTalkHint:
      'Eröffne es, wenn alle Stifte liegen. Die Worte aller werden versiegelt, so wie sie dastehen.',
    tellNames: 'Namen nennen',
    tellNamesHint: 'Die Namen erscheinen auf jedem Handy. Das lässt sich nicht zurücknehmen.',
    finish: 'Den Abend beenden',
    afterwards: (what) => `danach: ${what}`,
    back: 'Zurück',
    hold: 'Anhalten',
    resume: 'Fortsetzen',
    minute: '+1 min',
    minuteLabel: '+1 min: eine Minute mehr',
    jump: {
      title: (what) => `Zu „${what}“ gehen?`,
      body: 'Alle Bildschirme gehen mit dir dorthin. Niemand verliert ein Wort.',
      go: 'Dorthin gehen',
      stay: 'Hier bleiben',
      done: (what) => `Der Raum ist jetzt bei „${what}“.`,
    },
    reminder: (kind) =>
      ({
        water: 'Die Erinnerung an das Wasser steht auf jedem Handy.',
        spit: 'Die Erinnerung ans Spucken steht auf jedem Handy.',
        quiet: 'Die Bitte um Ruhe steht auf jedem Handy.',
        nudge: 'Wer noch nicht bereit ist, wird gebeten mitzukommen.',
      })[kind],
    clearReminder: 'Wegnehmen',
    pacedBy: {
      host: 'du gibst das Tempo vor',
      steps: 'die Schritte laufen',
      clock: 'die Uhr gibt das Tempo vor',
      room: 'der Raum gibt das Tempo vor',
    },
    steps: {
      run: 'Schritte laufen',
      label: 'Schritte laufen von selbst bis ans Ende eines Glases',
      offer:
        'Sollen die Schritte eines Glases von selbst laufen? An seinem Ende warten sie auf dich, und Weiter ist immer schneller.',
      yes: 'Laufen lassen',
      no: 'Von Hand',
      chosen:
        'Ab dem nächsten Glas laufen die Schritte. Mit Schritte laufen, neben Weiter, nimmst du sie wieder in die Hand.',
    },
    sayNext: 'Gleich sagst du',
    firstHints: {
      next: 'Der große Knopf nimmt jedes Handy mit. Tippe darauf, wenn alle sitzen.',
      table: 'Der Tisch zählt, wer zugestimmt hat. Geh weiter, wenn es alle getan oder dir gesagt haben.',
      time: 'Die Zeit ist nur ein Richtwert: Anhalten stoppt sie, +1 min gibt mehr, auf jedem Handy.',
      back: 'Zu früh gedrückt? Zurück nimmt alle mit, und niemand verliert ein Wort.',
      tools:
        'Wasser, eine Pause, ein Glas weglassen: Das haben die kleinen Tasten, und alles lässt sich rückgängig machen.',
    },
    moved: (what) => `Jetzt: ${what}.`,
  },

  board: {
    title: 'Was geteilt wurde',
    show: 'Tafel',
    showSay: 'Laut sagen',
    empty: 'Noch wurde nichts geteilt. Jeder Gast entscheidet das bei jedem Glas selbst.',
    later: 'später ergänzt',
    remote: 'zu Hause',
    fields: { look: 'Aussehen', nose: 'Nase', palate: 'Gaumen', finish: 'Abgang', thoughts: 'Gedanken' },
  },

  finished: {
    title: 'Der Abend ist beendet',
    body: 'Deine Gäste haben ihre Notizen mit den Namen der Proben. Danke, dass du Gastgeber warst.',
    home: 'Verabschiede alle: Wer verkostet hat, fährt nicht.',
    reopen: 'Wieder öffnen',
    reopenHint: 'Falls es ein Versehen war: Der Raum steht, wo er stand, und nichts ist verloren.',
    toHome: 'Alle Abende',
    tasted: (glasses) => several(glasses, 'Glas verkostet', 'Gläser verkostet'),
    guests: (guests) => several(guests, 'Gast', 'Gäste'),
    lasted: (from, to) => `von ${from} bis ${to}`,
  },

  ...hostAtTable,
  ...hostPace,
};
