// German, not yet reviewed by a native speaker.
import type { SetAsideWords } from '../en/set-aside.ts';

const and = new Intl.ListFormat('de', { type: 'conjunction' });

export const setAsideWords: SetAsideWords = {
  mark: 'Beiseitegelegt',
  why: {
    'plan-unreadable': () => 'Der Plan lässt sich nicht lesen.',
    'event-unreadable': (number) => `Schritt ${number} des Protokolls lässt sich nicht lesen.`,
    'event-altered': (number) =>
      `Schritt ${number} des Protokolls ist nicht mehr so, wie er gespeichert wurde.`,
    'event-missing': (number) => `Schritt ${number} des Protokolls fehlt.`,
    'log-damaged': () => 'Das Protokoll liegt auf einer beschädigten Stelle der Festplatte.',
    faulty: () => 'Beim Leiten ist zweimal ein Fehler des Programms aufgetreten.',
  },
  others:
    'Alle anderen Abende gehen weiter. Speichere diesen, wie er ist, oder spiel eine Sicherung aller Abende ein.',
  faultyHint:
    'Was gespeichert war, ist noch da. Versuch es noch einmal; kommt der Fehler wieder, speichere den Abend und sag es der Person, die den Server betreibt.',
  save: 'Speichern, wie er ist',
  retry: 'Noch einmal versuchen',
  remove: 'Löschen',
  removeSure:
    'Diesen Abend mit allem löschen, auch mit den Notizen der Gäste? Das lässt sich nicht rückgängig machen.',
  removeGo: 'Endgültig löschen',
  keep: 'Behalten',
  gone: 'Der Abend ist gelöscht.',
  saved: 'Gespeichert. Die Notizen der Gäste stehen nicht in der Datei.',
  woken: 'Er lässt sich wieder öffnen.',
  damaged:
    'Die Datei mit allen Abenden ist beschädigt. Bitte die Person, die den Server betreibt, eine Sicherung einzuspielen. Speichere bis dahin, was du brauchst, und ändere so wenig wie möglich.',
  parts: {
    plan: 'der Plan',
    'pour-run': 'was schon eingeschenkt ist',
    kits: 'wer die Technik zu Hause probiert hat',
    survey: 'eine Antwort auf deine Fragen',
    links: 'ein Link dazu',
    list: 'was diese Liste darüber sagt',
    answers: 'was einem Gerät geantwortet wurde',
    notes: 'was ein Gast geschrieben oder gewählt hat',
    words: 'die vier Wörter eines Gastes',
    photos: 'ein Foto',
  },
  altered: (parts) =>
    `Etwas ist nicht mehr so, wie es gespeichert wurde: ${and.format(parts)}. Sieh es durch; was du neu speicherst, stimmt wieder.`,
  lostEnd: (steps) =>
    steps === 1
      ? 'Der letzte Schritt dieses Abends fehlt im Speicher. Schau, wo der Raum steht, dann geht es weiter.'
      : `Die letzten ${steps} Schritte dieses Abends fehlen im Speicher. Schau, wo der Raum steht, dann geht es weiter.`,
};
