// German, not yet reviewed by a native speaker.
import type { CareWords } from '../en/host-care.ts';

const either = new Intl.ListFormat('de', { type: 'disjunction' });

/** What the host reads when somebody is drunk, unwell or arrives drunk, in German. */
export const careWords: CareWords = {
  title: 'Jemandem geht es schlecht, oder es war zu viel',
  call: (number) => `${number} anrufen`,
  or: (numbers) => `Oder ${either.format(numbers)}.`,
  checkNumber: 'Prüf die Nummer vor dem Abend.',
  source: (title) => `Quelle: ${title}.`,
  fromMemory: (title) => `Quelle, aus dem Gedächtnis: ${title}.`,
  numbersElsewhere:
    'Im Plan steht kein Land. Anderswo gilt vielleicht eine andere Nummer: Schlag sie vor dem Abend nach.',
  callIn: {
    DE: (number) => `${number} anrufen, Europa`,
    US: (number) => `${number} anrufen, Nordamerika`,
    GB: (number) => `${number} anrufen, Vereinigtes Königreich`,
  },
  steps: [
    'Ruf sofort an, wenn jemand nicht zu wecken ist, langsam oder mit langen Pausen atmet, blass, bläulich oder kalt ist, einen Krampf hat oder sich im Halbschlaf übergibt. Ebenso, wenn jemand schlecht Luft bekommt oder Gesicht oder Zunge anschwellen. Bist du unsicher, ruf an.',
    'Lass niemanden allein, auch nicht zum Ausschlafen.',
    'Schenk nichts mehr ein. Gib Wasser in kleinen Schlucken, etwas zu essen, einen Stuhl und eine Jacke. Kein Kaffee, keine kalte Dusche.',
    'Wer bewusstlos wird und atmet, kommt in die stabile Seitenlage. Bleib dabei.',
    'Klär den Heimweg: mit jemandem, der nichts getrunken hat, oder im Taxi bis zur Tür, zu einem Menschen, der sich kümmert. Nicht selbst fahren, nicht allein gehen.',
    'Wer betrunken ankommt, bekommt nichts eingeschenkt: mit Wasser dabeibleiben, oder du sorgst für den Heimweg.',
  ],
  noMore: 'Nichts mehr einschenken für',
  noMoreHint:
    'Das Handy geht alle Schritte weiter mit und bittet um Wasser. Wer einschenkt, sieht, dass dieser Platz ausgelassen wird. Sonst erfährt es niemand.',
  stop: 'Nichts mehr einschenken',
  stopFor: (name) => `Nichts mehr einschenken: ${name}`,
  pourAgain: 'Wieder einschenken',
  pourAgainTo: (name) => `Wieder einschenken: ${name}`,
  somebodyElse: 'Jemand anderes',
  notMedical: 'Das ist kein ärztlicher Rat. Das Recht am Ort und die Auflagen deiner Genehmigung gehen vor.',
};
