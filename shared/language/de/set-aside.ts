// German, not yet reviewed by a native speaker.
import type { SetAsideWords } from '../en/set-aside.ts';

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
  lostEnd: (steps) =>
    steps === 1
      ? 'Der letzte Schritt dieses Abends fehlt im Speicher. Schau, wo der Raum steht, dann geht es weiter.'
      : `Die letzten ${steps} Schritte dieses Abends fehlen im Speicher. Schau, wo der Raum steht, dann geht es weiter.`,
};
