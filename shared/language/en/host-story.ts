import { several } from '../counting.ts';
/** What the host tells of a pour, and what the room's screens are given to. Another language is one more file of this shape. */
export const storyWords = {
  card: {
    title: 'Card of the pour',
    choose: 'Which glass?',
    hold: 'Hold to look',
    covered: (glass: string) => `${glass}: the name is still secret. Hold the button down to see the card.`,
    photo: (name: string) => `The label of ${name}`,
    years: (years: number) => `${several(years, 'year', 'years')} old`,
    abv: (abv: number) =>
      `${new Intl.NumberFormat('en', { maximumFractionDigits: 1 }).format(abv)}\u00a0%\u00a0vol`,
    price: 'Price',
    priceOf: (money: string) => `${money} a bottle`,
    noStory: 'No story yet. You can write one for each pour in the plan.',
    none: 'No glass is on the table now.',
  },
  screen: {
    title: 'What the room’s screen shows',
    picture: 'A small picture of the room’s screen',
    back: 'Page back',
    on: 'Page forward',
    at: (page: number, of: number) => `${page} of ${of}`,
    follow: 'Follow the room',
    dark: 'Dark',
    isDark: 'The screen is dark.',
    result: 'Result',
    glasses: 'This glass',
    people: 'This person',
    nothing: 'It follows the room. Pages to choose come with the talk and with the names.',
    pages: {
      card: 'name and story',
      guesses: 'guesses',
      names: 'all names',
      places: 'ranking',
      structure: 'how much of each',
      odd: 'odd one out',
    },
  },
};

export type StoryWords = typeof storyWords;
