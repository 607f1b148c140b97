// German, not yet reviewed by a native speaker.
import type { ResultWords } from '../en/result.ts';

const small = 'Keine Eine Zwei Drei Vier Fünf Sechs Sieben Acht Neun Zehn Elf Zwölf'.split(' ');
const listed = new Intl.ListFormat('de', { type: 'conjunction' });
const oneDecimal = new Intl.NumberFormat('de', { maximumFractionDigits: 1 });
const inRow = (names: readonly string[]): string => listed.format(names);
const people = (count: number): string => (count === 1 ? '1 Person' : `${count} Personen`);

/** A chance as one would say it over a table. */
const byLuck = (luck: number): string => {
  const often = Math.round(luck * 100);
  return often < 1 ? 'an weniger als 1 von 100 Abenden' : `an etwa ${often} von 100 Abenden`;
};

export const resultWords: ResultWords = {
  titles: { order: 'Die Rangfolge des Raums', liking: 'Wie gut sie dem Raum gefielen' },
  soon: 'Das Ergebnis des Raums kommt gleich.',
  headline: {
    order: {
      'clear-favourite': (best) =>
        `${inRow(best)} ${best.length > 1 ? 'kamen' : 'kam'} klar auf den ersten Platz.`,
      'favourites-share': (best) =>
        best.length > 1
          ? `${inRow(best)} teilen sich den ersten Platz.`
          : `${inRow(best)} kam auf den ersten Platz, aber nicht klar vor allen anderen.`,
      'no-agreement-shown': (best) =>
        `Kein klarer Sieger: ${inRow(best)} ${best.length > 1 ? 'liegen' : 'liegt'} knapp vorn.`,
      'all-tied': () => 'Alle haben alle Gläser gleichgesetzt.',
      'not-compared': () => 'Jedes Glas für sich: Zu wenige haben eine ganze Rangfolge.',
    },
    liking: {
      'clear-favourite': (best) =>
        `${inRow(best)} ${best.length > 1 ? 'gefielen' : 'gefiel'} klar am besten.`,
      'favourites-share': (best) =>
        best.length > 1
          ? `${inRow(best)} gefielen am besten.`
          : `${inRow(best)} gefiel am besten, aber nicht klar besser als alle anderen.`,
      'no-agreement-shown': () => 'Kein Glas gefiel klar besser als die anderen.',
      'all-tied': () => 'Alle Gläser gefielen gleich gut.',
      'not-compared': () => 'Jedes Glas für sich: Zu wenige haben alle bewertet.',
    },
  },
  sure: ({ people: count, party, tooFewToShow, luck, meaning }) => {
    const who = `${small[count] ?? String(count)} ${count === 1 ? 'Person' : 'Personen'}`;
    if (tooFewToShow) return `${who} sind zu wenige für einen Beweis, auch wenn sich alle einig sind.`;
    const room = party ? `${who} sind eine Runde und kein Beweis` : `${who} haben geantwortet`;
    if (luck === null) return `${room}.`;
    const agreed = `der Zufall allein brächte so viel Einigkeit ${byLuck(luck)}`;
    return meaning === 'no-agreement-shown'
      ? `${room}, und die Geschmäcker gingen auseinander: ${agreed}.`
      : `${room}, doch ${agreed}.`;
  },
  counted: {
    order: (counted, given) => `${counted} von ${given} Rangfolgen zählen.`,
    liking: (counted, given) => `Es zählen die Bewertungen von ${counted} von ${given} Gästen.`,
  },
  tooFew: {
    order:
      'Weniger als drei lassen ihre Rangfolge zählen, deshalb bleibt sie bei jedem von euch: Einen oder zwei könnte man erkennen. Das ist völlig in Ordnung.',
    liking:
      'Weniger als drei lassen ihre Bewertungen zählen, deshalb bleiben sie bei jedem von euch: Einen oder zwei könnte man erkennen. Das ist völlig in Ordnung.',
  },
  tooFewHere: 'weniger als drei zählen',
  mean: (value) => oneDecimal.format(value),
  axis: {
    order: (of) =>
      `Jeder Punkt: wer es dorthin setzte, je mehr, desto größer. Der Strich ist der mittlere Platz, von 1 (am besten) bis ${of}.`,
    liking: () =>
      'Jeder Punkt: wer es so bewertete, je mehr, desto größer. Der Strich ist das Mittel, von 1 bis 9 (gefällt außerordentlich).',
  },
  row: {
    order: (name, mean, of, spread) =>
      `${name}: mittlerer Platz ${mean} von ${of}. ${inRow(spread.map(({ at, guests }) => `Platz ${at} (${people(guests)})`))}.`,
    liking: (name, mean, of, spread) =>
      `${name}: Mittel ${mean} von ${of}. ${inRow(spread.map(({ at, guests }) => `${at} (${people(guests)})`))}.`,
  },
  asTold: 'So, wie es die Runde am Abend gehört hat; was sich seither geändert hat, ist nicht darin.',
  rowTooFew: (name) => `${name}: Weniger als drei lassen es zählen.`,
};
