// German, not yet reviewed by a native speaker.

import { countingIn } from '../counting.ts';
import type { GuessWords } from '../en/guess.ts';
import { moneyIn } from '../money.ts';

const years = (count: number): string => countingIn('de')(count, 'Jahr', 'Jahre');
const decimal = new Intl.NumberFormat('de', { maximumFractionDigits: 1 });
const money = moneyIn('de');
const part = new Intl.NumberFormat('de', { style: 'percent', maximumFractionDigits: 0 });

export const guessWords: GuessWords = {
  title: 'Dein Tipp',
  lead: 'Was ist in diesem Glas? Tippe, was du magst, bis die Namen fallen. Vorher sieht es niemand.',
  none: 'Kein Tipp',
  facts: {
    style: { wine: 'Rebsorte', spirit: 'Art der Spirituose', beer: 'Bierstil' },
    origin: 'Land',
    region: 'Gegend',
    vintage: 'Jahrgang',
    age: 'Alter',
    abv: 'Stärke',
    price: 'Preis der Flasche',
  },
  noRegion: 'Bei der Gegend unsicher',
  less: (fact) => `${fact}: weniger`,
  more: (fact) => `${fact}: mehr`,
  takeBack: (fact) => `Kein Tipp zu: ${fact}`,
  values: {
    age: years,
    abv: (abv) => `${decimal.format(abv)}\u00a0%\u00a0vol`,
    price: (minor, currency) => money(minor, currency),
    orOlder: (value) => `${value} oder älter`,
    orMore: (value) => `${value} oder mehr`,
    orLess: (value) => `${value} oder weniger`,
  },
  sure: {
    title: {
      style: 'Wie sicher bist du dir bei der ersten Antwort?',
      origin: 'Wie sicher bist du dir beim Land?',
    },
    steps: { 25: 'Nur so ein Gefühl', 50: 'Halb und halb', 75: 'Ziemlich sicher', 95: 'Ganz sicher' },
  },
  told: {
    title: 'Wie nah du dran warst',
    beside: (guess, truth) => `${guess}; es ist ${truth}`,
    right: 'richtig',
    wrong: 'etwas anderes',
    bothRight: 'Land und Gegend richtig',
    countryRight: 'Land richtig',
    countryWrong: 'ein anderes Land',
    tooYoung: (count) => `${years(count)} zu jung`,
    tooOld: (count) => `${years(count)} zu alt`,
    tooWeak: (points) => `${decimal.format(points)}\u00a0%\u00a0vol zu schwach`,
    tooStrong: (points) => `${decimal.format(points)}\u00a0%\u00a0vol zu stark`,
    tooCheap: (share) => `${part.format(share)} zu billig`,
    tooDear: (share) => `${part.format(share)} zu teuer`,
  },

  room: {
    title: 'Was die Runde getippt hat',
    counts: (counted, of) => `${counted} von ${countingIn('de')(of, 'Tipp', 'Tipps')}`,
    few: 'Weniger als drei Gäste lassen ihren Tipp zählen, deshalb gibt es nichts zu zeigen.',
    people: (count) => countingIn('de')(count, 'Gast', 'Gäste'),
    others: 'Etwas anderes',
    chance: (times) => `Mit Zufall allein läge eine Runde einmal in ${times} Fällen so nah.`,
    likely: 'Mit Zufall allein läge eine Runde oft so nah.',
    rarely: 'Mit Zufall allein läge eine Runde fast nie so nah.',
    nearest: (names) => `Am nächsten dran: ${names}`,
    line: (fact, truth, spread) =>
      `${fact}, ${truth}: ${spread.map(([value, guests]) => `${value} (${guests})`).join(', ')}.`,
    row: (value, people, truth) => `${value}: ${people}${truth ? ', und richtig' : ''}`,
  },

  counting: {
    title: 'Zählt dein Tipp für die Runde?',
    counts: 'Er zählt, ohne meinen Namen',
    own: 'Nur für mich',
    nearest: 'Nennt mich, wenn ich am nächsten dran bin',
    stays: 'Sobald der Name des Glases fällt, bleibt ein Tipp gezählt, der bis dahin zählt.',
    unname: 'Meinen Namen hier wegnehmen',
  },

  recap: {
    title: 'Was die Runde erkannt hat',
    none: 'Zu wenige Gäste lassen ihre Tipps zählen, um etwas zu sagen.',
    said: (told, untold) =>
      [
        ...(told.length === 0 ? [] : [`Näher als der Zufall: ${told.join(', ')}.`]),
        ...(untold.length === 0 ? [] : [`Nicht erkennbar näher als der Zufall: ${untold.join(', ')}.`]),
      ].join(' '),
    columns: { fact: 'Was', glasses: 'Gläser', guesses: 'Tipps', nearer: 'Näher als' },
    share: (share) => part.format(share),
  },

  progress: {
    near: (share) => `Tipps: näher als ${part.format(share)} der Auswahl`,
    sure: (score) =>
      `Sicherheit: ${decimal.format(score * 100)} Punkte daneben; wer immer „Halb und halb“ sagt, hat 25`,
    trend: {
      few: 'Ab zwei Abenden mit Tipps zeigt sich, ob du näher kommst.',
      nearer: (times) => `Du kommst näher heran. Zufällig liefen Abende einmal in ${times} Fällen so gut.`,
      maybe: (times) =>
        `Vielleicht kommst du näher heran. Zufällig liefen Abende aber einmal in ${times} Fällen so gut.`,
      not: 'Bisher kommen deine Tipps nicht näher. Das sagt noch wenig.',
    },
  },
};
