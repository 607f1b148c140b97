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
    silent: (names) => `Seit zwei Minuten nichts gehört: ${listed.format(names)}.`,
    behind: (names) => `Noch bei einem früheren Schritt: ${listed.format(names)}.`,
    notRead: (names) => `Hinweise noch nicht gelesen: ${listed.format(names)}.`,
    onlyWater: 'nur Wasser',
    care: 'Unwohl, oder zu viel',
    notAgreed: (names) => `Noch nicht zugestimmt: ${listed.format(names)}.`,
    counts: {
      here: (here, seated) => `${here} von ${seated} da`,
      ready: (ready) => `${ready} bereit`,
      cautions: (read, seated) =>
        `${read} von ${seated} ${read === 1 ? 'hat' : 'haben'} die Hinweise gelesen`,
      rules: (accepted, seated) =>
        `${accepted} von ${seated} ${accepted === 1 ? 'hat' : 'haben'} den Regeln zugestimmt`,
    },
    states: {
      'at-door': 'an der Tür',
      'needs-host': 'braucht dich',
      'more-time': 'möchte mehr Zeit',
      away: 'weg',
      ready: 'bereit',
      tasting: 'da',
    },
    remote: 'zu Hause',
    home: {
      title: 'Zu Hause',
      here: (here, seated) => `${here} von ${seated} da`,
      ready: (ready) => `${ready} bereit`,
      kits: (kits, seated) => `Pakete: ${kits} von ${seated} bereit`,
      waits: 'der Raum wartet auf sie',
      kitReady: 'Paket bereit',
      kitNotReady: 'Paket unvollständig',
      kitMisses: (items) => `es fehlt noch: ${listed.format(items)}`,
      items: {
        vials: 'Fläschchen',
        lids: 'Deckel',
        water: 'Wasser',
        'spit-cup': 'Spuckbecher',
        'white-paper': 'weißes Papier',
      },
      slow: 'langsame Verbindung',
      line: (ms) => `Leitung ${ms}\u00a0ms`,
    },
    leftHanded: 'linke Hand',
    missed: (glasses) => `${glasses} verpasst`,
    everybody: 'Ganzer Tisch',
    letIn: 'Einlassen',
    answer: 'Erledigt',
    answered: 'Erledigt',
    newPhone: 'Link für ein anderes Handy',
    newPhoneHint:
      'Scann den Code mit dem anderen Handy; er gilt einmal. Es hat dann diesen Platz; die Notizen öffnet nur der Gast selbst, auf dem alten Handy oder mit vier Wörtern.',
    newPhoneLabel: (name) => `Ein QR-Code, der den Platz von ${name} auf einem anderen Handy öffnet`,
    remove: 'Platz schließen',
    removed: (name) => `Der Platz von ${name} ist geschlossen. Die Notizen behält der Gast.`,
    restore: 'Zurück an den Tisch',
    gone: 'Nicht mehr am Tisch',
    left: 'gegangen',
    takenOff: 'Platz geschlossen',
    nobody: 'Der Tisch ist leer. Den QR-Code und die Adresse findest du unter „Einlass“.',
  },

  tools: {
    remind: 'Erinnern',
    pause: 'Pause',
    glasses: 'Gläser',
    doors: 'Einlass',
    screenAsks: 'Einlass: Ein Bildschirm fragt an',
    care: 'Unwohl?',
    more: 'Mehr',
  },

  remind: {
    title: 'Den Raum erinnern',
    lead: 'Die Erinnerung bleibt bis zum nächsten Schritt auf jedem Handy.',
    water: 'Trinkt etwas Wasser',
    spit: 'Bitte spucken',
    quiet: 'Bitte Ruhe',
    nudge: 'Die Letzten erinnern',
  },

  pause: {
    title: 'Jetzt eine Pause machen',
    lead: 'Danach beginnt der Schritt noch einmal von vorn.',
    minutes: (minutes) => several(minutes, 'Minute', 'Minuten'),
    called: (minutes) => `${several(minutes, 'Minute', 'Minuten')} Pause.`,
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
    openAll: 'Alle verkosteten besprechen',
    closeTalk: 'Gespräch schließen',
    tellName: 'Den Namen nennen',
    tellAll: 'Jetzt alle Namen nennen',
    drop: 'Weglassen',
    restore: 'Zurückholen',
    swap: 'Andere Flasche',
    mend: 'Berichtigen',
    add: 'Probe dazunehmen',
    order: 'Andere Reihenfolge',
    droppedNow: (name) => `${name} wird heute Abend weggelassen.`,
    closedNow: 'Das Gespräch ist geschlossen.',
    sure: {
      open: 'Das Gespräch über dieses Glas jetzt eröffnen? Alles Geschriebene wird versiegelt, so wie es dasteht; was später dazukommt, wird gekennzeichnet.',
      'open-all':
        'Das Gespräch über alle bisher verkosteten Gläser eröffnen? Alles Geschriebene wird versiegelt, so wie es dasteht; was später dazukommt, wird gekennzeichnet.',
      tell: 'Allen jetzt den Namen dieses Glases nennen? Das lässt sich nicht zurücknehmen.',
      'tell-all':
        'Allen jetzt die Namen aller Gläser dieser Runde nennen, ohne eines nach dem anderen? Das lässt sich nicht zurücknehmen.',
    },
  },

  doorway: {
    title: 'Einlass und Nachzügler',
    legend: 'Wer Platz nehmen darf',
    open: 'Offen',
    openHint: 'alle, die den Code haben',
    ask: 'Mich fragen',
    askHint: 'du lässt alle einzeln ein',
    closed: 'Geschlossen',
    closedHint: 'niemand mehr',
    secondHost: 'Link für das Gerät eines zweiten Gastgebers',
    secondHostHint:
      'Scann den Code mit dem zweiten Gerät. Es darf alles, was dieses hier darf, aber nur für diesen Abend.',
    secondHostLabel: 'Ein QR-Code, der diesen Abend auf dem Gerät eines zweiten Gastgebers öffnet',
  },

  screens: {
    title: 'Ein Bildschirm für den Raum',
    address: 'Öffne auf dem Fernseher oder Projektor diese Adresse und gib den Code ein:',
    asks: (number) => `Ein Bildschirm möchte dazukommen: ${number}`,
    check: 'Lass ihn ein, wenn diese Zahl auf deinem Bildschirm im Raum steht.',
    letIn: 'Einlassen',
    notOurs: 'Nicht unserer',
    named: (what, number) => `${what}: Bildschirm ${number}`,
    shown: (screens) => `${several(screens, 'Bildschirm zeigt', 'Bildschirme zeigen')} den Abend.`,
    off: 'Alle Bildschirme abschalten',
    isOff: 'Alle Bildschirme sind abgeschaltet.',
  },

  more: {
    title: 'Mehr',
    mendTitle: 'Titel berichtigen',
    pacing: 'Wer das Tempo vorgibt',
    pacings: { host: 'Du', steps: 'Schritte laufen', clock: 'Die Uhr', room: 'Der Raum' },
    pacingHints: {
      host: 'bis du es sagst',
      steps: 'die Schritte eines Glases laufen von selbst und warten an seinem Ende',
      clock: 'bis die Zeit um ist',
      room: 'bis die meisten bereit sind',
    },
    gates: 'Pausen, Gespräche und Namen warten immer auf dich.',
    waitForRemote: 'Auf die Gäste zu Hause warten',
    waitForRemoteHint: 'niemand geht weiter, bevor sie bereit sind',
    share: 'Wie viele bereit sein müssen',
    shares: { '0.5': 'die Hälfte', '0.75': 'drei von vier', '1': 'alle' },
    light: 'Licht des Raums',
    lights: { auto: 'Wie das Gerät', linen: 'Leinen', cellar: 'Keller' },
    lightHints: { auto: 'von selbst hell oder dunkel', linen: 'für helle Räume', cellar: 'für dunkle Räume' },
    hand: 'Deine Hand',
    hands: { right: 'Rechts', left: 'Links' },
    keys: 'Tastenkürzel',
    finish: 'Den Abend beenden',
    pouring: 'Einschenken',
    paper: 'Papier',
    home: 'Alle Abende',
  },

  finish: {
    title: 'Den Abend beenden?',
    body: 'Die Gäste bekommen ihre Notizen mit den Namen aller verkosteten Gläser. Du kannst den Abend wieder öffnen.',
    untasted: (glasses) => `${several(glasses, 'Glas wurde', 'Gläser wurden')} nicht verkostet.`,
    talked: 'Besprochen, obwohl niemand das Gespräch eröffnet hat?',
    talkedHint:
      'In deinen Rückblick kommen nur Gläser, deren Gespräch eröffnet wurde. Schalte ein, worüber am Tisch gesprochen wurde: Diese Notizen werden versiegelt, so wie sie dastehen, und was die Gäste teilen oder mitzählen lassen, kommt hinein. Private Seiten bleiben privat.',
    go: 'Beenden',
    stay: 'Weitermachen',
  },

  cover: {
    hold: 'halten, um den Namen zu sehen',
    switch: 'Namen abdecken',
    switchHint: 'Blinde Gläser zeigen nur ihren Code. Halte den Finger darauf, um den Namen zu sehen.',
  },

  keys: {
    title: 'Tastenkürzel',
    list: [
      { keys: ['Leertaste', '→', 'Bild ab'], does: 'Weiter, wie der große Knopf' },
      { keys: ['←', 'Bild auf'], does: 'Zurück' },
      { keys: ['H'], does: 'Anhalten und fortsetzen' },
      { keys: ['?'], does: 'Diese Liste' },
    ],
    remote: 'Ein Presenter sendet „Bild auf“ und „Bild ab“ und geht deshalb auch.',
  },
};
