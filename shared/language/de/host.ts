// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { HostWords } from '../en/host.ts';
import { hostHome } from './host-home.ts';
import { hostPace } from './host-pace.ts';
import { hostAtTable } from './host-table.ts';

const several = countingIn('de');

const numbered = new Intl.ListFormat('de', { type: 'conjunction' });

/** Every word of the host's app, in German. */
export const hostWords: HostWords = {
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

  key: {
    title: 'Öffne deine Abende auf diesem Tablet',
    lead: 'Beim Start hat der Server den Gastgeber-Link ausgegeben. Öffne ihn hier oder füge ihn ein.',
    field: 'Der Gastgeber-Link',
    hint: 'An seinem Ende stehen #key= und eine Reihe von Buchstaben.',
    open: 'Öffnen',
    notALink:
      'Das Eingefügte enthält keinen Schlüssel. Kopiere den ganzen Gastgeber-Link, von http bis zum letzten Buchstaben.',
    wrong:
      'Dieser Schlüssel passt nicht zu diesem Server. Füge den Gastgeber-Link ein, den der Server beim Start ausgegeben hat.',
    notKept:
      'Dieser Browser kann nichts speichern. Bewahre den Gastgeber-Link auf: Du brauchst ihn wieder, wenn du diese Seite geschlossen hast.',
  },

  home: hostHome,

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
      'Diese Seite kam über unverschlüsseltes http: Wer im selben Netz ist, könnte mitlesen, auch Notizen und Schlüssel. Nimm ein eigenes Netz mit Passwort, oder gib dem Server ein Zertifikat für https.',
    open: 'Die Türen öffnen',
    opening: 'Die Türen gehen auf',
    notOpen: 'Gäste können Platz nehmen, sobald die Türen offen sind.',
    noPours: 'Im Plan steht noch keine Probe. Trag eine ein, bevor du die Türen öffnest.',
    addPours: 'Zum Plan',
    isOpen:
      'Die Türen sind offen. Beginne, wenn deine Runde vollständig ist; Nachzügler kommen auch dann noch herein.',
    toRoom: 'Den Abend leiten',
    isFinished: 'Dieser Abend ist beendet.',
    seats: 'Am Tisch',
    nobody: 'Noch hat niemand Platz genommen.',
    nobodyHint: 'Wer die Seite öffnet und einen Namen angibt, erscheint hier.',
    places: 'Was an jeden Platz gehört',
    placeItems: {
      glass: 'für jede Probe eines Flights ein Glas, eingeschenkt und an seiner Stelle',
      lids: 'ein Deckel auf jedem Glas',
      water: 'ein Glas Wasser, dazu ein Krug in Reichweite',
      spit: 'ein eigener Spuckbecher',
      white: 'etwas Weißes als Hintergrund: eine Serviette oder ein Blatt Papier',
      paper: 'Papier und Stift für alle ohne Handy',
      bread: 'einfaches Brot oder Cracker, nichts mit starkem Geruch',
    },
    care: 'Gut für die Gäste sorgen',
    careItems: {
      spit: 'Alle spucken. Sag es zu Beginn und mach es vor, dann ist es niemandem peinlich.',
      water: 'An jedem Platz steht Wasser, und alle haben vorher gegessen.',
      drive:
        'Fahren soll nur, wer nicht verkostet hat, heute Abend und morgen früh. Klär vor dem Beginn, wie alle nach Hause kommen.',
      age: 'Schenk nur Gästen ein, die das gesetzliche Mindestalter an deinem Ort erreicht haben.',
      not: 'Wer schwanger ist oder stillt, verkostet nicht. Bei Medikamenten oder Krankheit vorher in der Arztpraxis oder Apotheke fragen. Wer nicht oder nicht mehr trinkt, darf gern schauen, riechen und schreiben.',
      flame: 'Keine Kerzen neben offenen starken Spirituosen.',
      law: 'Das Recht an deinem Ort und die Auflagen deiner Genehmigung gehen allem vor, was hier steht.',
    },
    screen:
      'Diese Seite kann das Tablet nicht wach halten. Stell seinen Bildschirm für den Abend auf „immer an“.',
  },

  link: {
    connecting: 'Der Raum wird gesucht',
    live: 'Verbunden',
    lost: 'Verbindung weg, neuer Versuch',
    lostLong:
      'Verbindung weg, neuer Versuch. Die Gäste behalten, was sie sehen; der Raum wartet dort, wo er dich braucht.',
    dismissed: {
      removed:
        'Dieses Gerät wurde von einem anderen Gastgeber abgemeldet. Öffne den Gastgeber-Link wieder, um weiterzumachen.',
      'key-withdrawn':
        'Der Schlüssel dieses Geräts wurde zurückgezogen. Bitte um einen neuen Gastgeber-Link.',
      'server-stopping': 'Der Server wird beendet. Warte einen Moment und lade diese Seite dann neu.',
      'tasting-deleted': 'Diese Verkostung wurde gelöscht.',
      'too-many-devices': 'Es sind zu viele Geräte verbunden. Lade diese Seite neu, um hier weiterzumachen.',
    },
    hosts: (hosts) => `${hosts} Geräte leiten mit`,
  },

  cue: {
    kinds: {
      gathering: 'Ankommen',
      welcome: 'Begrüßung',
      'ground-rules': 'Regeln',
      water: 'Wasser',
      break: 'Pause',
      farewell: 'Abschied',
      ranking: 'Rangfolge',
      'odd-one-out': 'Das abweichende Glas finden',
      discussion: 'Gespräch',
      result: 'Ergebnis',
      reveal: 'Namen',
    },
    calledBreak: 'Extrapause',
    drops: '3 Tropfen dazu',
    steps: {
      swirl: 'Schwenken',
      look: 'Schauen',
      nose: 'Riechen',
      sip: 'Probieren',
      spit: 'Spucken',
      write: 'Notieren',
      review: 'Nachlesen',
      reflect: 'Nachdenken',
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
        sip: 'Üben: probieren',
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
    phasesAtGate: { running: 'dann wartet es', held: 'angehalten', over: 'wartet auf dich' },
    phases: { running: 'übrig', held: 'angehalten', over: 'überzogen' },
    order: 'Der Abend',
    now: 'jetzt',
    next: 'Weiter',
    openTalk: 'Gespräch eröffnen',
    openTalkHint:
      'Eröffne es, wenn alle Stifte liegen. Alles Geschriebene wird versiegelt, so wie es dasteht.',
    tellResult: 'Ergebnis zeigen',
    tellResultHint: 'Es erscheint auf jedem Handy und auf dem Fernseher, wie es jetzt ist, und bleibt so.',
    tellNames: 'Namen nennen',
    tellName: (glass) => `Namen nennen: ${glass}`,
    namesLeft: (names) => `danach: ${several(names, 'weiterer Name', 'weitere Namen')}`,
    tellNamesHint: 'Die Namen erscheinen auf jedem Handy. Das lässt sich nicht zurücknehmen.',
    tellNameHint:
      'Name und Geschichte erscheinen auf allen Bildschirmen, die anderen bleiben geheim. Das lässt sich nicht zurücknehmen.',
    finish: 'Den Abend beenden',
    afterwards: (what) => `danach: ${what}`,
    back: 'Zurück',
    hold: 'Anhalten',
    resume: 'Fortsetzen',
    minute: '+1\u00a0min',
    minuteLabel: '+1\u00a0min: eine Minute mehr',
    jump: {
      title: (what) => `Zu „${what}“ gehen?`,
      body: 'Alle Bildschirme gehen mit dir dorthin. Niemand verliert ein Wort.',
      go: 'Dorthin gehen',
      stay: 'Hier bleiben',
      change: 'Dauer und Worte',
      changed: (what) => `„${what}“ ist geändert.`,
      done: (what) => `Der Raum ist jetzt bei „${what}“.`,
    },
    reminder: (kind) =>
      ({
        water: 'Die Erinnerung ans Wasser steht auf jedem Handy.',
        spit: 'Die Erinnerung ans Spucken steht auf jedem Handy.',
        quiet: 'Die Bitte um Ruhe steht auf jedem Handy.',
        nudge: 'Wer noch nicht bereit ist, wurde erinnert.',
      })[kind],
    clearReminder: 'Entfernen',
    pacedBy: {
      steps: 'die Schritte laufen',
      clock: 'die Uhr gibt das Tempo vor',
      room: 'der Raum gibt das Tempo vor',
    },
    steps: {
      run: 'Schritte laufen',
      label: 'Schritte laufen von selbst bis ans Ende eines Glases',
      offer:
        'Sollen die Schritte eines Glases von selbst laufen? Am Ende des Glases warten sie auf dich, und mit „Weiter“ geht es jederzeit schneller.',
      yes: 'Laufen lassen',
      no: 'Von Hand',
      chosen:
        'Ab dem nächsten Glas laufen die Schritte. Mit „Schritte laufen“ neben „Weiter“ übernimmst du wieder selbst.',
    },
    sayNext: 'Gleich sagst du',
    firstHints: {
      next: 'Der große Knopf nimmt jedes Handy mit. Tippe darauf, wenn alle sitzen.',
      table: 'Der Tisch zeigt, wer zugestimmt hat. Geh weiter, wenn alle es getan oder dir gesagt haben.',
      time: 'Die Zeit ist nur ein Richtwert: „Anhalten“ stoppt sie, „+1\u00a0min“ gibt mehr dazu, auf jedem Handy.',
      back: 'Zu früh getippt? „Zurück“ nimmt alle mit, und niemand verliert ein Wort.',
      tools:
        'Wasser, eine Pause, ein Glas weglassen: Dafür sind die kleinen Knöpfe da. Alles lässt sich rückgängig machen.',
    },
    moved: (what) => `Jetzt: ${what}.`,
  },

  board: {
    title: 'Was geteilt wurde',
    show: 'Tafel',
    showSay: 'Laut sagen',
    showCard: 'Karte',
    showScreen: 'Bildschirm',
    empty: 'Noch liegt nichts auf dem Tisch. Jedes Handy fragt, was dorthin darf.',
    chosen: (chosen, of) => `${chosen} von ${of} haben gesagt, was auf den Tisch kommt.`,
    later: 'später ergänzt',
    remote: 'zu Hause',
    fields: { look: 'Aussehen', nose: 'Nase', palate: 'Gaumen', finish: 'Abgang', thoughts: 'Gedanken' },
  },

  finished: {
    title: 'Der Abend ist beendet',
    body: 'Deine Gäste haben ihre Notizen mit den Namen der Proben. Danke, dass du eingeladen hast.',
    home: 'Verabschiede alle: Wer verkostet hat, fährt nicht.',
    reopen: 'Wieder öffnen',
    reopenHint: 'War es ein Versehen? Der Raum macht weiter, wo er war, und nichts ist verloren.',
    toHome: 'Alle Abende',
    tasted: (glasses) => several(glasses, 'Glas verkostet', 'Gläser verkostet'),
    guests: (guests) => several(guests, 'Gast', 'Gäste'),
    lasted: (from, to) => `von ${from} bis ${to}`,
  },

  ...hostAtTable,
  ...hostPace,
};
