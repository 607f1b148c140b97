// German, not yet reviewed by a native speaker.
import type { NotebookWords } from '../en/notebook.ts';

export const notebookWords: NotebookWords = {
  fetching: 'Deine Wörter werden geholt. Du kannst schon schreiben.',

  onlyWater: 'Ab jetzt bitte Wasser im Glas. Bleib dabei: Schau, riech und schreib mit.',
  fields: {
    look: 'Aussehen',
    colour: 'Farbe',
    nose: 'Nase',
    'nose-words': 'Wörter für die Nase',
    palate: 'Gaumen',
    'palate-words': 'Wörter für den Gaumen',
    structure: 'Wie viel wovon',
    finish: 'Abgang',
    'finish-words': 'Wörter für den Abgang',
    liking: 'Gefallen',
    place: 'Platz in deiner Rangfolge',
    guess: 'Tipp',
    'odd-one-out': 'Welches ist anders',
    review: 'Noch im Glas?',
    feelings: 'Gefühle',
    thoughts: 'Gedanken',
  },
  unfold: (sense) => `${sense}: Wörter und Stufen`,
  unfoldLook: 'Farbe',

  colour: {
    title: 'Welche Farbe kommt am nächsten?',
    hint: 'Halt das Glas vor etwas Weißes. Tippe noch einmal, um sie zurückzunehmen.',
    ranges: { white: 'Weiß', rose: 'Rosé', red: 'Rot' },
  },

  board: {
    titles: {
      'nose-words': 'Wo ist dir dieser Geruch begegnet?',
      'palate-words': 'Wo ist dir dieser Geschmack begegnet?',
      'finish-words': 'Was bleibt?',
    },
    hint: 'Öffne einen Ort und tippe auf ein Wort. Jedes Tippen macht es stärker; das vierte legt es ab.',
    yours: 'Deine Wörter',
    fromHost: 'Von deinem Gastgeber',
    allPlaces: 'Alle Orte',
    find: 'Wort suchen oder ein eigenes ergänzen',
    add: (word) => `„${word}“ ergänzen`,
    tooLong: 'Das ist zu lang für ein Wort. Höchstens 40 Zeichen, oder schreib es oben ins Feld.',
    full: 'Auf dieser Seite stehen sechzig Wörter. Leg eines ab, bevor du ein weiteres nimmst.',
    marked: (word, strength) => `${word}, ${strength}`,
    laidDown: (word) => `${word}: abgelegt`,
  },

  palatePages: { scales: 'Wie viel', places: 'Wo begegnet' },

  structure: {
    title: 'Wie viel wovon?',
    none: 'ohne Angabe',
  },

  liking: {
    title: 'Wie sehr gefällt es dir?',
    hint: 'Noch einmal tippen nimmt es zurück.',
    ends: (least, most) => `1: ${least}. 9: ${most}.`,
    steps: [
      'Gefällt mir außerordentlich',
      'Gefällt mir sehr',
      'Gefällt mir einigermaßen',
      'Gefällt mir ein wenig',
      'Gefällt mir weder noch missfällt es mir',
      'Missfällt mir ein wenig',
      'Missfällt mir einigermaßen',
      'Missfällt mir sehr',
      'Missfällt mir außerordentlich',
    ],
  },

  review: {
    where: (at, of) => `Wort ${at} von ${of}`,
    none: 'Für dieses Glas hast du keine Wörter gewählt. Lies stattdessen unten deine Zeilen.',
    done: 'Du bist alle deine Wörter durchgegangen.',
    again: 'Noch einmal von oben',
    back: 'Eins zurück',
    skip: 'Auslassen',
    page: 'Deine Seite',
  },

  reflect: {
    feelings: 'Wie geht es dir mit diesem Glas?',
    prompts: 'Ein Satz zum Weiterschreiben',
  },

  ranking: {
    title: 'Deine Rangfolge, das Beste oben',
    hint: 'Das Beste oben. Sind zwei gleich gut, lass eins auf dem anderen los oder tippe auf =.',
    up: (glass) => `${glass} eins nach oben`,
    down: (glass) => `${glass} eins nach unten`,
    tied: (glass) => `${glass}: so gut wie das darüber`,
    drag: 'Zum Verschieben hier halten',
    keep: 'Das ist meine Rangfolge',
    kept: 'Deine Rangfolge ist gespeichert. Du kannst sie noch ändern.',
    notKept: 'Gespeichert wird erst, wenn du ein Glas schiebst oder auf den Knopf tippst.',
    moved: (glass, place) => `${glass} ist Nummer ${place}.`,
    few: 'Es gibt keine zwei Gläser zum Vergleichen.',
  },

  trial: {
    pick: 'Welches ist anders?',
    hint: 'Koste von links nach rechts, dazwischen Wasser. Du darfst zurückgehen.',
    guessed: 'Ich habe geraten',
    guessedHint: 'Sag es, wenn du unsicher bist: Auch Geratenes ist eine gute Antwort.',
    unsure: 'Zwei sind gleich, eins nicht. Unsicher? Wähle trotzdem eins.',
    picked: (code) => `Du hast ${code} gewählt. Vor dem Gespräch sieht es niemand.`,
  },
};
