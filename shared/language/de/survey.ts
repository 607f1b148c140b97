// German, not yet reviewed by a native speaker.
import type { SurveyWords } from '../en/survey.ts';

export const surveyWords: SurveyWords = {
  language: 'de',
  title: (tasting) => (tasting === '' ? 'Vor der Verkostung' : `Vor „${tasting}“`),
  lead: (host) =>
    `Fünf Fragen und eine danach, was du nicht verträgst, damit ${host === '' ? 'dein Gastgeber' : host} einen Abend wählen kann, der zum ganzen Tisch passt. Es gibt keine falschen Antworten, und du kannst jede Frage auslassen.`,
  unnamed: 'Ganz ohne Namen. Dein Gastgeber sieht, wie sich die Antworten verteilen, nie, von wem sie sind.',
  questions: {
    'tastings-sat-through': {
      ask: 'Wie viele geleitete Verkostungen hast du schon mitgemacht?',
      answers: ['Noch keine', 'Eine oder zwei', 'Eine Handvoll', 'Mehr, als ich zählen kann'],
    },
    'words-for-a-glass': {
      ask: 'Wenn dir etwas im Glas gefällt, kannst du sagen, warum?',
      answers: ['Eher nicht', 'Mit etwas Hilfe', 'Mit eigenen Worten', 'So, dass andere es auch merken'],
    },
    'choosing-a-bottle': {
      ask: 'Wie wählst du eine Flasche aus?',
      answers: [
        'Jemand gibt sie mir',
        'Nach dem Etikett',
        'Nach dem Stil',
        'Danach, wer sie gemacht hat, und wie',
      ],
    },
    'two-side-by-side': {
      ask: 'Zwei Gläser stehen nebeneinander: Was passiert?',
      answers: [
        'Ich genieße beide',
        'Eins ist mir lieber',
        'Ich kann sie auseinanderhalten',
        'Ich kann sagen, was anders gemacht wurde',
      ],
    },
    'quiet-evening': {
      ask: 'Ein stiller Abend mit kleinen Schlucken und Notizen?',
      answers: ['Lieber nicht', 'Einmal, zum Ausprobieren', 'Gern', 'Je länger, desto besser'],
    },
  },
  skip: 'Diese doch auslassen',
  skipOf: (question) => `Diese doch auslassen: ${question}`,
  send: 'Antworten senden',
  sendAgain: 'Geänderte Antworten senden',
  none: 'Noch ist nichts beantwortet. Beantworte wenigstens eine Frage, oder schließ einfach diese Seite.',
  thanksTitle: 'Danke',
  thanks: 'Deine Antworten sind bei deinem Gastgeber. Bis zum Abend brauchst du nichts weiter zu tun.',
  change: 'Meine Antworten ändern',
  whenAndWhere: 'Wann und wo',
  notKept:
    'Dieses Handy kann nichts speichern: Ist diese Seite einmal zu, lassen sich die Antworten nicht mehr ändern.',
  looking: 'Einen Moment\u00a0…',
  begun: 'Der Abend hat begonnen, wir fragen nichts mehr. Komm mit deinem Code herein.',
  finished: 'Diese Verkostung ist vorbei, wir fragen nichts mehr.',
  comeIn: 'Zur Verkostung',
  noAnswer: 'Der Server deines Gastgebers antwortet nicht. Prüfe das Netz und versuch es noch einmal.',
  again: 'Noch einmal versuchen',
  noCode: 'Dieser Link ist unvollständig. Lass ihn dir vom Gastgeber noch einmal schicken.',
};
