// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { HostAtTableWords } from '../en/host-table.ts';

const several = countingIn('de');

const listed = new Intl.ListFormat('de', { type: 'conjunction' });

/** The host's words for the table and for what stands in the drawers of the conducting page. */
export const hostAtTable: HostAtTableWords = {
  table: {
    title: 'Der Tisch',
    readsFirst: (names) =>
      `${listed.format(names)} ${names.length === 1 ? 'kam später und liest' : 'kamen später und lesen'} zuerst die Hinweise und die Regeln.`,
    notAgreed: (names) => `Noch nicht zugestimmt: ${listed.format(names)}.`,
    counts: {
      here: (here, seated) => `${here} von ${seated} da`,
      asking: (asking) => several(asking, 'fragt', 'fragen'),
      ready: (ready) => `${ready} bereit`,
      rules: (accepted, seated) =>
        `${accepted} von ${seated} ${accepted === 1 ? 'nimmt' : 'nehmen'} die Regeln an`,
    },
    states: {
      'at-door': 'an der Tür',
      'needs-host': 'braucht dich',
      'more-time': 'bittet um Zeit',
      away: 'weg',
      ready: 'bereit',
      tasting: 'da',
    },
    remote: 'zu Hause',
    home: {
      title: 'Zu Hause',
      here: (here, seated) => `${here} von ${seated} da`,
      ready: (ready) => `${ready} bereit`,
      kits: (kits, seated) => `${kits} von ${seated} Pakete bereit`,
      waits: 'der Raum wartet auf sie',
      kitReady: 'Paket bereit',
      kitMisses: (items) => `noch bereitzulegen: ${listed.format(items)}`,
      items: {
        vials: 'Fläschchen',
        lids: 'Deckel',
        water: 'Wasser',
        'spit-cup': 'Spuckbecher',
        'white-paper': 'weißes Papier',
      },
      line: (ms) => `Leitung ${ms} ms`,
    },
    leftHanded: 'linke Hand',
    missed: (glasses) => `${glasses} verpasst`,
    everybody: 'Ganzer Tisch',
    letIn: 'Einlassen',
    answer: 'Geklärt',
    answered: 'Erledigt',
    newPhone: 'Link für ein anderes Handy',
    newPhoneHint:
      'Scanne das mit dem anderen Handy, es gilt einmal. Es hat dann diesen Platz; seine Notizen öffnet nur der Gast, auf dem alten Handy oder mit vier Wörtern.',
    newPhoneLabel: (name) => `Ein QR-Code, der den Platz von ${name} auf einem anderen Handy öffnet`,
    remove: 'Vom Tisch entfernen',
    removed: (name) => `${name} ist nicht mehr am Tisch und behält die eigenen Notizen.`,
    restore: 'Zurück an den Tisch',
    gone: 'Nicht mehr am Tisch',
    left: 'gegangen',
    takenOff: 'entfernt',
    more: (name) => `${name}: mehr`,
    nobody: 'Der Tisch ist leer. Den QR-Code und die Adresse findest du unter „Einlass“.',
  },

  tools: {
    remind: 'Hinweis',
    pause: 'Pause',
    glasses: 'Gläser',
    doors: 'Einlass',
    screenAsks: 'Einlass: Ein Bildschirm fragt an',
    more: 'Mehr',
  },

  remind: {
    title: 'Den Raum erinnern',
    lead: 'Es steht auf jedem Handy bis zum nächsten Schritt.',
    water: 'Trinkt etwas Wasser',
    spit: 'Bitte spucken',
    quiet: 'Bitte Ruhe',
    nudge: 'Die Letzten bitten',
  },

  pause: {
    title: 'Jetzt eine Pause ausrufen',
    lead: 'Danach beginnt der Schritt noch einmal von vorn.',
    minutes: (minutes) => several(minutes, 'Minute', 'Minuten'),
    called: (minutes) => `Pause, ${several(minutes, 'Minute', 'Minuten')}.`,
  },

  glasses: {
    title: 'Die Gläser',
    code: (code) => `Code ${code}`,
    notYet: 'noch nicht verkostet',
    tasted: 'verkostet',
    dropped: 'weggelassen',
    talkOpen: 'Gespräch offen',
    talkClosed: 'Gespräch geschlossen',
    named: 'Name genannt',
    unnamed: 'Name nicht genannt',
    openTalk: 'Gespräch eröffnen',
    openAll: 'Gespräch über alle verkosteten',
    closeTalk: 'Gespräch schließen',
    tellName: 'Den Namen nennen',
    drop: 'Weglassen',
    restore: 'Zurückholen',
    droppedNow: (name) => `${name} wird an diesem Abend weggelassen.`,
    closedNow: 'Das Gespräch ist geschlossen.',
    sure: {
      open: 'Das Gespräch über dieses Glas jetzt eröffnen? Die Worte aller werden versiegelt, so wie sie dastehen; was später dazukommt, wird gekennzeichnet.',
      'open-all':
        'Das Gespräch über alle bisher verkosteten Gläser eröffnen? Die Worte aller werden versiegelt, so wie sie dastehen; was später dazukommt, wird gekennzeichnet.',
      tell: 'Allen jetzt den Namen dieses Glases nennen? Das lässt sich nicht zurücknehmen.',
    },
  },

  doorway: {
    title: 'Einlass und Nachzügler',
    legend: 'Wer Platz nehmen darf',
    open: 'Offen',
    openHint: 'alle, die den Code haben',
    ask: 'Mich fragen',
    askHint: 'du lässt jeden einzeln ein',
    closed: 'Geschlossen',
    closedHint: 'niemand mehr',
    secondHost: 'Link für das Gerät eines zweiten Gastgebers',
    secondHostHint:
      'Scanne das mit dem Gerät, das mithelfen soll. Es darf alles, was dieses darf, aber nur für diesen Abend.',
    secondHostLabel: 'Ein QR-Code, der diesen Abend auf dem Gerät eines zweiten Gastgebers öffnet',
  },

  screens: {
    title: 'Ein Bildschirm für den Raum',
    address: 'Öffne auf dem Fernseher oder Projektor diese Adresse und gib den Code ein:',
    asks: (number) => `Ein Bildschirm möchte dazukommen: ${number}`,
    check: 'Lass ihn ein, wenn du diese Zahl auf deinem eigenen Bildschirm liest.',
    letIn: 'Einlassen',
    notOurs: 'Nicht unserer',
    named: (what, number) => `${what}: Bildschirm ${number}`,
    shown: (screens) => `${several(screens, 'Bildschirm zeigt', 'Bildschirme zeigen')} den Abend.`,
    off: 'Alle Bildschirme abschalten',
    isOff: 'Alle Bildschirme sind abgeschaltet.',
  },

  more: {
    title: 'Mehr',
    pacing: 'Wer das Tempo vorgibt',
    pacings: { host: 'Du', steps: 'Schritte laufen', clock: 'Die Uhr', room: 'Der Raum' },
    pacingHints: {
      host: 'bis du es sagst',
      steps: 'die Schritte eines Glases laufen von selbst und warten an seinem Ende',
      clock: 'bis die Zeit um ist',
      room: 'bis die meisten bereit sind',
    },
    gates: 'Pausen, Gespräche und Namen warten in jedem Fall auf dich.',
    waitForRemote: 'Auf die Gäste zu Hause warten',
    waitForRemoteHint: 'niemand geht weiter, bevor sie bereit sind',
    share: 'Wie viele bereit sein müssen',
    shares: { '0.5': 'die Hälfte', '0.75': 'drei von vier', '1': 'alle' },
    light: 'Licht des Raums',
    lights: { auto: 'Wie das Gerät', linen: 'Leinen', cellar: 'Keller' },
    lightHints: { auto: 'von selbst hell oder dunkel', linen: 'für helle Räume', cellar: 'für Kerzenlicht' },
    hand: 'Deine Hand',
    hands: { right: 'Rechts', left: 'Links' },
    keys: 'Tasten der Tastatur',
    finish: 'Den Abend beenden',
    plan: 'Zum Plan',
    home: 'Alle Abende',
  },

  finish: {
    title: 'Den Abend beenden?',
    body: 'Die Gäste bekommen ihre Notizen mit den Namen aller verkosteten Gläser. Du kannst den Abend wieder öffnen.',
    untasted: (glasses) => `${several(glasses, 'Glas wurde', 'Gläser wurden')} nicht verkostet.`,
    talked: 'Besprochen, obwohl niemand das Gespräch eröffnet hat?',
    talkedHint:
      'In deinen Rückblick kommen nur Gläser, deren Gespräch eröffnet wurde. Schalte ein, worüber am Tisch gesprochen wurde: diese Notizen werden versiegelt, so wie sie dastehen, und was die Gäste teilen oder mitzählen lassen, kommt hinein. Private Seiten bleiben privat.',
    go: 'Beenden',
    stay: 'Weitermachen',
  },

  keys: {
    title: 'Tasten',
    list: [
      { keys: ['Leertaste', '→', 'Bild ab'], does: 'Weiter, wie der große Knopf' },
      { keys: ['←', 'Bild auf'], does: 'Zurück' },
      { keys: ['H'], does: 'Anhalten und fortsetzen' },
      { keys: ['?'], does: 'Diese Liste' },
    ],
    remote: 'Ein Presenter sendet „Bild ab“ und „Bild auf“, also geht er auch.',
  },
};
