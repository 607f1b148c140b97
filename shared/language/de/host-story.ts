// German, not yet reviewed by a native speaker.
import type { StoryWords } from '../en/host-story.ts';

const counted = (count: number, one: string, many: string): string =>
  count === 1 ? `1 ${one}` : `${count} ${many}`;

export const storyWords: StoryWords = {
  card: {
    title: 'Karte der Probe',
    choose: 'Welches Glas?',
    hold: 'Zum Ansehen halten',
    covered: (glass) =>
      `${glass}: Der Name ist noch geheim. Halte den Knopf gedrückt, um die Karte zu sehen.`,
    photo: (name) => `Das Etikett von ${name}`,
    years: (years) => `${counted(years, 'Jahr', 'Jahre')} alt`,
    abv: (abv) => `${new Intl.NumberFormat('de', { maximumFractionDigits: 1 }).format(abv)}\u00a0%\u00a0vol`,
    price: 'Preis',
    priceOf: (money) => `${money} die Flasche`,
    noStory: 'Noch keine Geschichte. Im Plan kannst du zu jeder Probe eine schreiben.',
    none: 'Gerade steht kein Glas zur Rede.',
  },
  screen: {
    title: 'Was der Bildschirm im Raum zeigt',
    picture: 'Ein kleines Bild vom Bildschirm im Raum',
    back: 'Seite zurück',
    on: 'Seite vor',
    at: (page, of) => `${page} von ${of}`,
    follow: 'Dem Raum folgen',
    dark: 'Dunkel',
    isDark: 'Der Bildschirm ist dunkel.',
    result: 'Ergebnis',
    glasses: 'Dieses Glas',
    people: 'Diese Person',
    nothing: 'Er folgt dem Raum. Seiten zum Auswählen gibt es im Gespräch und bei den Namen.',
    pages: {
      card: 'Name und Geschichte',
      guesses: 'Tipps',
      names: 'alle Namen',
      places: 'Rangfolge',
      structure: 'wie viel wovon',
      odd: 'das abweichende Glas',
    },
  },
};
