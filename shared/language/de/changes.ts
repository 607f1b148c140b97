// German, not yet reviewed by a native speaker.
import type { ChangesWords } from '../en/changes.ts';

/** The words for changing the plan while the evening runs, in German. */
export const changesWords: ChangesWords = {
  swap: {
    title: (glass) => `Eine andere Flasche für ${glass}`,
    numbers: 'Nummer und Code bleiben. Matten, Fläschchen und Notizblätter stimmen also weiter.',
    emptied: 'Dieses Glas wird neu eingeschenkt. Was die Gäste dazu geschrieben haben, bleibt.',
    go: 'Tauschen',
    done: (glass) => `${glass} hat eine andere Flasche. Schenk es neu ein.`,
  },
  mend: {
    title: (glass) => `${glass} berichtigen`,
    numbers:
      'Nummer und Code bleiben. Auf Papier mit Namen, etwa dem Ablaufplan, steht das Alte, bis du es neu druckst.',
    uncovered: 'Hier steht alles offen: Halt das Tablet zu dir.',
    go: 'So behalten',
    done: (glass) => `${glass} ist überall berichtigt.`,
  },
  heading: {
    label: 'Titel des Abends',
    paper: 'Er ändert sich sofort auf allen Bildschirmen. Gedrucktes bleibt, wie es ist.',
    done: 'Der Titel ist berichtigt, überall.',
  },
  add: {
    title: 'Eine Probe dazunehmen',
    numbers: (glass) => `Das wird ${glass}. Alle anderen Nummern bleiben.`,
    code: (code) => `Schreib ${code} auf die Gläser und Fläschchen: Auf Papier steht es noch nirgends.`,
    last: 'Sie kommt zuletzt. Unter „Andere Reihenfolge“ rückst du sie an eine andere Stelle.',
    go: 'Dazunehmen',
    done: (glass) => `${glass} ist dabei.`,
  },
  order: {
    title: 'Die Gläser, die noch kommen',
    numbers:
      'Jedes Glas behält seine Nummer: Glas 5 bleibt auf Matten, Fläschchen und Blättern Glas 5, wann immer es kommt.',
    up: (glass) => `${glass} früher`,
    down: (glass) => `${glass} später`,
    go: 'So soll es sein',
    done: 'Die Gläser kommen in anderer Reihenfolge.',
    moved: 'Der Raum ist inzwischen weiter. Das hier kommt jetzt noch.',
  },
  cue: {
    minutes: 'Minuten',
    minutesWrong: 'Eine Dauer von 5 Sekunden bis 120 Minuten, zum Beispiel 1,5.',
    guarded: (seconds) => `Nie kürzer als ${seconds}\u00a0s: Dieser Schritt schont den Gaumen.`,
    say: 'Laut sagen',
    go: 'Behalten',
  },
};
