// German, not yet reviewed by a native speaker.
import type { ConsentWords } from '../en/consents.ts';

export const consentWords: ConsentWords = {
  question: (glasses) =>
    glasses === 1
      ? 'Was von diesem Glas kommt auf den Tisch?'
      : `Was von diesen ${glasses} Gläsern kommt auf den Tisch?`,
  lead: 'Nichts geht ohne dein Tippen. Du kannst es jederzeit zurücknehmen.',
  hints: {
    named: 'Die Runde liest es, und dass es von dir ist.',
    unnamed: 'Die Runde liest, was du vor dem Gespräch notiert hast.',
    private: 'Niemand sonst liest es.',
  },
  lastTime: 'wie beim letzten Mal',
  finer: 'Glas für Glas, oder nur manche Sinne',
  only: 'Nur diese Sinne; ohne Auswahl alle',
  verdict: 'Gefallen und Rangfolge',
  parts: 'Was auf den Tisch kommt',

  counting: {
    question: {
      order: 'Zählt deine Rangfolge im Ergebnis der Runde?',
      liking: 'Zählt dein Gefallen im Ergebnis der Runde?',
      'odd-one-out': 'Zählt deine Wahl im Ergebnis der Runde?',
      guess: 'Zählt dein Tipp im Ergebnis der Runde?',
    },
    choices: { counts: 'Zählt ohne Namen', 'only-for-me': 'Nur für mich' },
    title: 'Was in den Ergebnissen zählt',
    lead: 'Solange du nicht sagst, dass es zählt, ist es nur für dich.',
  },
};
