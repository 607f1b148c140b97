import type { CountedAnswer, Counting, Sharing } from '../../wire/sharing.ts';

/** What guests are asked before anything of theirs leaves their page. Another language is one more file of this shape. */
export const consentWords = {
  question: (glasses: number) =>
    glasses === 1
      ? 'What of this glass goes to the table?'
      : `What of these ${glasses} glasses goes to the table?`,
  lead: 'Nothing goes without your tap. You can take it back at any time.',
  hints: {
    named: 'The table reads it, and that it is yours.',
    unnamed: 'The table reads what you wrote before the talk.',
    private: 'Nobody else reads it.',
  } satisfies Record<Sharing, string>,
  lastTime: 'as last time',
  finer: 'Glass by glass, or only some senses',
  only: 'Only these senses; tap none for all of them',
  verdict: 'Liking and ranking',
  parts: 'What goes',

  counting: {
    question: {
      order: 'Does your ranking count in the room’s result?',
      liking: 'Does your liking count in the room’s result?',
      'odd-one-out': 'Does your pick count in the room’s result?',
      guess: 'Does your guess count in the room’s result?',
    } satisfies Record<CountedAnswer, string>,
    choices: { counts: 'Counts without my name', 'only-for-me': 'Only for me' } satisfies Record<
      Counting,
      string
    >,
    title: 'What counts in the results',
    lead: 'Until you say that it counts, it is only for you.',
  },
};

export type ConsentWords = typeof consentWords;
