// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { GuestWords } from '../en/guest.ts';

const several = countingIn('de');

const list = (parts: readonly string[]): string =>
  new Intl.ListFormat('de', { style: 'long', type: 'conjunction' }).format(parts);

export const guestWords: GuestWords = {
  language: 'de',
  app: 'Quietpour',

  door: {
    title: 'Komm herein',
    code: 'Code der Verkostung',
    codeHint: 'Buchstaben und Ziffern, von deinem Gastgeber oder der Tischkarte.',
    codeShort: 'Der Code ist nicht vollständig. Er hat sechs oder neun Buchstaben und Ziffern.',
    go: 'Eintreten',
    keptTitle: 'Dein Platz wartet',
    keptUntitled: 'Eine Verkostung auf diesem Handy',
    back: (title) => `Zurück zu ${title}`,
    evenings: 'Alle meine Abende auf diesem Handy',
    brokenLink:
      'Dieser Link zum Platz ist unvollständig. Lass ihn dir auf dem anderen Handy noch einmal zeigen, oder komm mit dem Code herein.',
    noSeat: 'Dieses Handy hat noch keinen Platz. Komm mit dem Code herein.',
    looking: 'Deine Verkostung wird gesucht\u00a0…',
  },

  invitation: {
    hostedBy: (host) => `mit ${host}`,
    name: 'Dein Name',
    nameHint: 'So, wie dich der Tisch nennen soll.',
    nameMissing: 'Bitte gib einen Namen ein, damit dein Gastgeber weiß, wer hier sitzt.',
    nameLong: 'Der Name ist zu lang. Bitte höchstens 60 Zeichen.',
    hand: 'Mit welcher Hand schreibst du?',
    right: 'Rechts',
    left: 'Links',
    where: 'Wo bist du?',
    atTable: 'Am Tisch',
    atHome: 'Zu Hause',
    sit: 'Platz nehmen',
    otherCode: 'Anderer Code',
    notYet: 'Die Türen sind noch zu. Bleib auf dieser Seite; sie schaut von selbst wieder nach.',
    closed: 'Die Türen sind zu. Bitte deinen Gastgeber, sie dir zu öffnen.',
    finished:
      'Diese Verkostung ist vorbei. Wenn du einen Platz hattest, öffne diese Seite auf dem Handy, das du benutzt hast.',
    ask: 'Dein Gastgeber lässt alle einzeln ein.',
    age: (age) => `Ab ${age} Jahren. Dein Gastgeber fragt vielleicht nach dem Ausweis.`,
  },

  cautions: {
    title: 'Vor dem ersten Glas',
    list: [
      'Spuck jeden Schluck aus; zum Verkosten muss nichts hinunter.',
      'Trink zwischen den Gläsern Wasser.',
      'Iss vorher etwas, und auch in den Pausen.',
      'Lass jemanden fahren, der nicht verkostet hat, heute Abend und morgen früh. Auch Spucken ändert daran nichts.',
      'Nur ab dem gesetzlichen Mindestalter. Jedes Glas darfst du auslassen.',
      'Verträgst du etwas nicht? Sag es jetzt: Es kann in einem Glas sein, und im Brot ist Gluten.',
      'Nicht in Schwangerschaft oder Stillzeit. Bei Medikamenten oder Krankheit frag vorher in der Arztpraxis oder Apotheke.',
      'Wenn du nicht oder nicht mehr trinkst: Schauen, riechen und schreiben darfst du gern.',
    ],
    law: 'Es gilt das Gesetz an deinem Ort, und deine Ärztin oder dein Arzt weiß mehr als diese Seite.',
    accept: 'Habe ich gelesen',
  },

  glass: {
    of: (position, total) => `Glas ${position} von ${total}`,
    nth: (position) => `Glas ${position}`,
    coded: (code) => `Nr. ${code}`,
    arc: (current, total) =>
      current === null
        ? `Dein Platz: ${several(total, 'Glas', 'Gläser')}`
        : `Dein Platz: Glas ${current} von ${total} ist in deiner Hand`,
    timeLabel: 'Zeit für diesen Schritt',
    time: { running: 'übrig', held: 'von deinem Gastgeber angehalten', over: 'Zeit um, aber keine Eile' },
    spitAndWater: 'Spuck in den Becher, dann ein Schluck Wasser.',
    onlyWater: 'Üben mit reinem Wasser',
    reminder: {
      water: 'Dein Gastgeber erinnert dich: Trink etwas Wasser.',
      spit: 'Dein Gastgeber erinnert dich: Bitte spuck aus.',
      quiet: 'Dein Gastgeber bittet um Ruhe: noch kein Wort über das Glas.',
      nudge: 'Nimm dir die Zeit, die du brauchst, und tippe dann auf „Bereit“.',
    },
    waterDue: 'Es ist eine Weile her: Trink etwas Wasser.',
    staysOn: 'Stell den Bildschirm auf „immer an“, wenn du kannst. Schläft er ein, geht nichts verloren.',
    breakUntil: (clock) => `Weiter geht es gegen ${clock}.`,
    callLink: 'Anderer Anruf',
    waitingRoom: 'Dein Gastgeber lässt dich gleich ein. Lass diese Seite offen.',
    left: 'Du hast den Tisch verlassen. Deine Notizen bleiben.',
    comeBack: 'Möchtest du zurück? Sag es deinem Gastgeber.',
    starting: 'Wir bringen dich an deinen Platz\u00a0…',
  },

  kit: {
    title: 'Dein Paket zu Hause',
    items: {
      vials: 'Fläschchen, nach ihren Nummern geordnet',
      lids: 'Etwas, um die Gläser abzudecken',
      water: 'Wasser und einfaches Brot',
      'spit-cup': 'Ein Becher zum Spucken',
      'white-paper': 'Ein weißes Blatt Papier',
    },
  },

  rules: {
    title: 'Die Regeln am Tisch',
    list: [
      'Alle spucken.',
      'Über Aussehen, Geruch und Geschmack spricht niemand vor dem Gespräch.',
      'Es gibt keine falschen Wörter.',
      'Niemand liest deine Notizen, außer du teilst sie.',
    ],
    accept: 'Einverstanden',
    accepted: 'Danke. Wir gehen weiter, wenn alle so weit sind.',
  },

  signals: {
    ready: 'Bereit',
    moreTime: 'Mehr Zeit',
    needsHost: 'Komm bitte',
    given: {
      ready: 'Dein Gastgeber sieht, dass du bereit bist.',
      'more-time': 'Dein Gastgeber sieht, dass du mehr Zeit möchtest.',
      'needs-host': 'Dein Gastgeber sieht, dass du ihn brauchst.',
    },
    taken: 'Zurückgenommen.',
  },

  banner: {
    roomAt: (where) => `Der Raum ist jetzt hier: ${where}`,
    keepWriting: 'Deine Worte bleiben.',
    go: 'Dorthin',
  },

  spoken: {
    cue: (parts) => parts.map((part) => (/[.?!]$/.test(part) ? part : `${part}.`)).join(' '),
    start: (seconds) =>
      seconds >= 90
        ? `${several(Math.round(seconds / 60), 'Minute', 'Minuten')}.`
        : `${several(seconds, 'Sekunde', 'Sekunden')}.`,
    marks: {
      60: 'Noch eine Minute.',
      20: 'Noch zwanzig Sekunden.',
      0: 'Die Zeit ist um.',
    },
    writeOn: 'Schreib ruhig noch zu Ende.',
  },

  fields: { look: 'Aussehen', nose: 'Nase', palate: 'Gaumen', finish: 'Abgang', thoughts: 'Gedanken' },
  fieldHints: {
    look: 'Farbe, Klarheit, was am Glas haftet',
    nose: 'Was dir in den Sinn kommt; es gibt keine falschen Wörter',
    palate: 'Geschmack, Gefühl im Mund, Wärme',
    finish: 'Was bleibt, und wie lange',
    thoughts: 'Eine Erinnerung, eine Stimmung, wer das probieren sollte',
  },
  inField: (field, glass) => `${field}, ${glass}`,

  saved: {
    empty: 'Das liest nur du.',
    saved: 'Gespeichert',
    onPhone: 'Auf diesem Handy, noch nicht gespeichert',
    waiting: 'Noch nicht gespeichert: Lass diese Seite offen',
    tooLong: (over) =>
      `Um ${several(over, 'Zeichen', 'Zeichen')} zu lang. Bitte kürze es; es bleibt auf diesem Handy.`,
    refused: (why) => `Nicht gespeichert; es bleibt auf diesem Handy. ${why}`,
    later: 'Das Gespräch hat begonnen: Neues wird als später ergänzt gekennzeichnet.',
  },

  notes: {
    title: 'Meine Notizen',
    open: 'Meine Notizen',
    back: 'Zurück in den Raum',
    none: 'Noch kein Glas',
    noneHint: 'Jedes Glas bekommt hier seine Seite, sobald der Raum dort ist.',
    private: 'Diese Seite siehst nur du.',
    choose: 'Welches Glas?',
  },

  missed: {
    title: 'Nachholen',
    notice: (positions) => `Du hast ${list(positions)} verpasst; in einer Pause ist Zeit dafür.`,
    inBreak: 'Das hast du verpasst. Wenn du magst, probier es jetzt: langsam, mit Spucken und Wasser.',
    tick: (glass) => `${glass}: erledigt`,
    write: 'Notieren',
  },

  pour: {
    years: (years) => `${several(years, 'Jahr', 'Jahre')} alt`,
    abv: (abv) => `${new Intl.NumberFormat('de', { maximumFractionDigits: 1 }).format(abv)}\u00a0%\u00a0vol`,
    more: 'Mehr darüber',
    labels: {
      front: (name) => `Frontetikett von ${name}`,
      back: (name) => `Rückenetikett von ${name}`,
    },
  },

  keepsake: {
    title: 'Dein Abend',
    care: 'Trink jetzt etwas Wasser. Lass jemanden fahren, der nicht verkostet hat, heute Abend und morgen früh.',
    open: 'Meine Notizen mitnehmen',
    unnamed: 'noch ohne Namen',
  },

  seat: { open: 'Mein Platz', spoken: 'Gesprochene Hinweise' },

  link: {
    connecting: 'Der Raum wird gesucht\u00a0…',
    lost: 'Keine Verbindung, neuer Versuch. Deine Worte bleiben auf diesem Handy.',
    lostKeepsNothing: 'Keine Verbindung, neuer Versuch. Lass diese Seite offen.',
    noAnswer: 'Der Raum antwortet nicht. Bitte versuch es gleich noch einmal.',
    refusedTitle: 'Dieser Platz lässt sich nicht öffnen',
    wrongProtocol: 'Diese Seite ist veraltet. Lade sie neu; deine Worte bleiben.',
    reload: 'Neu laden',
    toDoor: 'Mit dem Code hereinkommen',
    dismissed: {
      removed: 'Dein Gastgeber hat diesen Platz geschlossen. Deine Notizen bleiben; bitte sprich ihn an.',
      'key-withdrawn': 'Dieser Link öffnet den Platz nicht mehr. Bitte deinen Gastgeber um einen neuen.',
      'tasting-deleted': 'Der Gastgeber hat diese Verkostung gelöscht, mit allem, was dazugehört.',
      'too-many-devices':
        'Dein Platz ist auf fünf neueren Geräten offen. Lade diese Seite neu, um hier weiterzumachen.',
      'server-stopping': 'Eine kurze technische Pause. Lass diese Seite offen.',
    },
  },

  close: 'Schließen',
};
