// German, not yet reviewed by a native speaker.
import type { BeforeEveningWords } from '../en/before-evening.ts';

/** Was vor dem Abend zu tun ist, der Reihe nach. */
export const beforeEveningWords: BeforeEveningWords = {
  lead: 'Der Reihe nach. Hake ab, was getan ist.',
  summary: (done, of) => `${done} von ${of} getan`,
  whenDone: 'getan',
  whenOpen: 'offen',
  steps: {
    survey: {
      name: 'Fragen, wie geübt die Gäste sind',
      when: 'zwei Wochen vorher',
      hint: 'Vier Fragen, ohne Namen. Sie sagen, wie viele Proben passen.',
      go: 'Zur Umfrage',
    },
    invitation: {
      name: 'Einladen',
      when: 'zwei Wochen vorher',
      hint: 'Der Text und die Kalenderdatei, mit Adresse und Code.',
      go: 'Zur Einladung',
    },
    vials: {
      name: 'Fläschchen füllen und verschicken',
      when: 'eine Woche davor',
      hint: 'Ein Paket für jeden Gast zu Hause, abgehakt dort, wo du einschenkst. Auf den Etiketten stehen nur Nummern.',
      go: 'Fläschchen füllen',
    },
    ahead: {
      name: 'Vorab verkosten',
      when: 'in den Tagen davor',
      hint: 'Jede Flasche einmal, mit einer Notiz und einem Foto vom Etikett.',
      go: 'Vorab verkosten',
    },
    paper: {
      name: 'Drucken',
      when: 'am Tag davor',
      hint: 'Matten, Fläschchen, Notizblätter und der Ablaufplan. Drucke, sobald die Reihenfolge steht.',
      go: 'Zum Papier',
    },
    pouring: {
      name: 'Einschenken',
      when: 'eine Stunde davor',
      hint: 'Glas für Glas, auf Wunsch mit einem zweiten Handy.',
      go: 'Zum Einschenken',
    },
  },
  answered: (guests) => `${guests === 1 ? '1 Gast hat' : `${guests} Gäste haben`} geantwortet.`,
  needsDate: 'Lege zuerst das Datum fest: Die Einladung nennt es.',
};
