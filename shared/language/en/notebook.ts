import type { NoteField } from '../../notes/entry.ts';

/** What the notebook, the ranking and the odd-one-out say. Another language is one more file of this shape. */
export const notebookWords = {
  fetching: 'Loading your notes. You can start writing.',

  /** Every part of a page, as it is called in a file that is taken home. */
  onlyWater: 'From here on, please have water in your glass. Stay with us: look, nose and write along.',
  fields: {
    look: 'Look',
    colour: 'Colour',
    nose: 'Nose',
    'nose-words': 'Words for the nose',
    palate: 'Palate',
    'palate-words': 'Words for the palate',
    structure: 'How much of each',
    finish: 'Finish',
    'finish-words': 'Words for the finish',
    liking: 'Liking',
    place: 'Your ranking',
    guess: 'Guess',
    'odd-one-out': 'Odd one out',
    review: 'Still in the glass?',
    feelings: 'Feelings',
    thoughts: 'Thoughts',
  } satisfies Record<NoteField, string>,
  unfold: (sense: string) => `${sense}: words and marks`,
  unfoldLook: 'Colour',

  colour: {
    title: 'Which colour comes nearest?',
    hint: 'Hold the glass against something white. Tap again to undo.',
    ranges: { white: 'White', rose: 'Rosé', red: 'Red' },
  },

  board: {
    titles: {
      'nose-words': 'Where have you met this smell?',
      'palate-words': 'Where have you met this taste?',
      'finish-words': 'What stays?',
    },
    hint: 'Open a place and tap a word. Tap again for stronger; a fourth tap removes it.',
    yours: 'Your words',
    fromHost: 'From your host',
    allPlaces: 'All places',
    find: 'Find a word, or add your own',
    add: (word: string) => `Add “${word}”`,
    tooLong: 'That is too long for one word. Keep it to 40 letters, or write it in the field above.',
    full: 'This page has sixty words. Remove one before you add another.',
    marked: (word: string, strength: string) => `${word}, ${strength}`,
    laidDown: (word: string) => `${word}: removed`,
  },

  palatePages: { scales: 'How much', places: 'Where met' },

  structure: {
    title: 'How much of each?',
    none: 'not marked',
  },

  liking: {
    title: 'How much do you like it?',
    hint: 'Tap again to undo.',
    ends: (least: string, most: string) => `1: ${least}. 9: ${most}.`,
    /** The 9-point liking scale, best first. */
    steps: [
      'Like extremely',
      'Like very much',
      'Like moderately',
      'Like slightly',
      'Neither like nor dislike',
      'Dislike slightly',
      'Dislike moderately',
      'Dislike very much',
      'Dislike extremely',
    ],
  },

  review: {
    where: (at: number, of: number) => `Word ${at} of ${of}`,
    none: 'You have not picked any words for this glass. Read your own lines below instead.',
    done: 'You have gone through all your words.',
    again: 'Start again',
    back: 'One back',
    skip: 'Skip',
    page: 'Your page',
  },

  reflect: {
    feelings: 'How do you feel with this glass?',
    prompts: 'A sentence to finish',
  },

  ranking: {
    title: 'Your ranking, best on top',
    hint: 'Best on top. Drop one on another, or tap =, if they are equally good.',
    up: (glass: string) => `Move ${glass} up`,
    down: (glass: string) => `Move ${glass} down`,
    tied: (glass: string) => `${glass}: as good as the one above`,
    drag: 'Hold here to move it',
    keep: 'This is my ranking',
    kept: 'Your ranking is saved. You can still change it.',
    notKept: 'Nothing is saved until you move a glass or tap the button.',
    moved: (glass: string, place: number) => `${glass} is number ${place}.`,
    few: 'Ranking needs at least two glasses.',
  },

  trial: {
    pick: 'Which one is different?',
    hint: 'Taste from left to right, with water in between. You may go back.',
    guessed: 'I guessed',
    guessedHint: 'Say so if you are not sure: a guess is a good answer too.',
    unsure: 'Two are the same and one is not. Not sure? Pick one anyway.',
    picked: (code: string) => `You picked ${code}. Nobody sees it before the talk.`,
  },
};

export type NotebookWords = typeof notebookWords;
