// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { KeepsakeWords } from '../en/keepsake.ts';

const several = countingIn('de');

export const keepsakeWords: KeepsakeWords = {
  title: 'Dein Abend',
  thanks: (name) => `Danke, dass du da warst, ${name}.`,
  lead: 'Das sind deine eigenen Notizen. Nimm sie mit.',
  fetching: 'Deine Notizen werden geholt\u00a0…',
  again: 'Noch einmal versuchen',
  unsaved: 'Einige Wörter sind erst auf diesem Handy. Lass diese Seite offen, bis sie gespeichert sind.',
  notesOf: (name) => `Notizen von ${name}`,
  withHost: (host) => `mit ${host}`,
  unnamed: 'noch ohne Namen',
  noNotes: 'keine Notizen',
  glass: 'Glas',
  code: 'Nr.',
  name: 'Name',
  facts: 'Angaben',
  reading: 'Zum Lesen zu Hause',

  trial: {
    title: 'Das abweichende Glas',
    none: 'nichts gewählt',
    picked: (code, glasses) => `Du hast ${code} gewählt, aus ${glasses.join(', ')}.`,
    guessed: 'Es war geraten.',
    right: 'Es war das abweichende.',
    wrong: (code) => `Das abweichende war ${code}.`,
    open: 'Welches es war, ist noch nicht verraten.',
  },

  take: {
    page: 'Als Seite speichern',
    download: 'Als Text speichern',
    share: 'Teilen\u00a0…',
    copy: 'Als Text kopieren',
    print: 'Drucken',
    other: 'Für eine Tabelle oder ein Programm',
    csv: 'Tabelle (CSV)',
    json: 'Daten (JSON)',
    copied: 'Kopiert.',
    copyByHand: 'Dieses Handy kopiert nur von Hand: Der Text ist unten markiert.',
    notShared:
      'Teilen hat hier nicht funktioniert. Du kannst die Notizen stattdessen herunterladen oder kopieren.',
    text: 'Deine Notizen als Text',
    fileName: 'meine-verkostung',
  },

  link: {
    title: 'Dein privater Link',
    hint: 'Er öffnet diese Seite auf jedem Gerät, solange dein Gastgeber den Abend behält. Schick ihn dir selbst: Manche Browser vergessen eine Seite nach sieben Tagen ohne Besuch. Wer ihn hat, liest deine Notizen.',
    show: 'Meinen Link zeigen',
    label: 'Link zu deinen Notizen',
    copy: 'Link kopieren',
    byHand: 'Dieses Handy kopiert nur von Hand: Halte den Link gedrückt, um ihn zu markieren.',
    remove: 'Meine Notizen und diesen Link löschen',
    sure: 'Deine Notizen löschen?',
    sureBody:
      'Alles, was du an diesem Abend notiert hast, wird gelöscht, auf diesem Handy und auf dem Server deines Gastgebers, und der Link öffnet nichts mehr. Das lässt sich nicht rückgängig machen: Lade vorher herunter, was du behalten willst. Dein Name bleibt in der Gästeliste des Gastgebers.',
    keep: 'Behalten',
    gone: 'Deine Notizen und der Link sind gelöscht.',
    notNow: (why) => `Es wurde nichts gelöscht. ${why}`,
  },

  evenings: {
    title: 'Meine Abende',
    open: 'Meine Abende auf diesem Handy',
    lead: 'Woran sich dieses Handy erinnert. Jeder Abend bleibt bei seinem Gastgeber; hier siehst du sie nebeneinander. Vergisst sie dieser Browser, holt der private Link jeden Abend zurück.',
    none: 'Noch kein Abend',
    noneHint: 'Sobald du mit diesem Handy an einer Verkostung teilgenommen hast, steht sie hier.',
    untitled: 'Eine Verkostung',
    unreachable: 'gerade nicht erreichbar',
    glasses: (count) => several(count, 'Glas mit Notizen', 'Gläser mit Notizen'),
    words: (count) => several(count, 'verschiedenes Wort', 'verschiedene Wörter'),
    perGlass: (count) => `${several(count, 'Wort', 'Wörter')} je Glas`,
    fresh: (count) => `davon ${count} neu für dich`,
    odd: (right, of) => `abweichendes Glas gefunden: ${right} von ${of}`,
    best: (name) => `am liebsten: ${name}`,
    goTo: 'Öffnen',
    forget: 'Hier vergessen',
    forgetHint: 'Das entfernt den Abend nur von diesem Handy; mit deinem Link kommt er zurück.',
    back: 'Zurück',
    chart: 'Verschiedene Wörter je Abend, der älteste zuerst',
  },
};
