// German, not yet reviewed by a native speaker.
import type { SetAsideWords } from '../en/set-aside.ts';

export const setAsideWords: SetAsideWords = {
  mark: 'Beiseitegelegt',
  why: {
    'plan-unreadable': () => 'Der Plan lässt sich nicht lesen.',
    'event-unreadable': (number) => `Schritt ${number} des Ablaufs lässt sich nicht lesen.`,
    'event-altered': (number) => `Schritt ${number} des Ablaufs ist nicht mehr so, wie er gespeichert wurde.`,
    'event-missing': (number) => `Schritt ${number} des Ablaufs fehlt.`,
    'log-damaged': () => 'Der Ablauf liegt auf einer beschädigten Stelle der Platte.',
    faulty: () => 'Beim Leiten ist zweimal ein Fehler des Programms aufgetreten.',
  },
  others:
    'Alle anderen Abende gehen weiter. Sichere diesen, wie er liegt, oder spiel eine Sicherung der ganzen Ablage ein.',
  faultyHint:
    'Was gespeichert war, ist noch da. Versuch es noch einmal; kommt der Fehler wieder, sichere den Abend und sag es dem, der den Server betreibt.',
  save: 'Sichern, wie er liegt',
  retry: 'Noch einmal versuchen',
  remove: 'Löschen',
  removeSure: 'Diesen Abend mit allem löschen, auch mit den Notizen der Gäste? Es gibt kein Zurück.',
  removeGo: 'Endgültig löschen',
  keep: 'Behalten',
  gone: 'Der Abend ist gelöscht.',
  saved: 'Gesichert. Notizen der Gäste stehen nicht in der Datei.',
  woken: 'Er lässt sich wieder öffnen.',
  lostEnd: (steps) =>
    steps === 1
      ? 'Der letzte Schritt dieses Abends fehlt in der Ablage. Schau, wo die Runde steht, dann geht es weiter.'
      : `Die letzten ${steps} Schritte dieses Abends fehlen in der Ablage. Schau, wo die Runde steht, dann geht es weiter.`,
};
