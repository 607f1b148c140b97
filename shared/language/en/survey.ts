import type { CrowdQuestion } from '../../../core/planning/theme/crowd.ts';

interface AskedQuestion {
  readonly ask: string;
  /** By score, from 0. */
  readonly answers: readonly [string, string, string, string];
}

/** The page on which guests say, before the evening, how used they are to tasting. In English. */
export const surveyWords = {
  language: 'en',
  title: (tasting: string) => (tasting === '' ? 'Before the tasting' : `Before “${tasting}”`),
  lead: (host: string) =>
    `Five questions and one about what you must not have, so that ${host === '' ? 'your host' : host} can choose an evening that suits the whole table. There are no wrong answers, and you may skip any.`,
  unnamed: 'No names. Your host sees how the answers spread, never who gave them.',
  questions: {
    'tastings-sat-through': {
      ask: 'How many guided tastings have you been to?',
      answers: ['None yet', 'One or two', 'A handful', 'More than I can count'],
    },
    'words-for-a-glass': {
      ask: 'When you like what is in a glass, can you say why?',
      answers: ['Not really', 'With some help', 'In my own words', 'So that others notice it too'],
    },
    'choosing-a-bottle': {
      ask: 'How do you choose a bottle?',
      answers: ['Somebody hands it to me', 'By its label', 'By its style', 'By who made it, and how'],
    },
    'two-side-by-side': {
      ask: 'Two glasses side by side: what happens?',
      answers: [
        'I enjoy them both',
        'I have a favourite',
        'I can tell them apart',
        'I can say how they were made differently',
      ],
    },
    'quiet-evening': {
      ask: 'A quiet evening of small sips and notes?',
      answers: ['Rather not', 'Once, to try it', 'Gladly', 'The longer the better'],
    },
  } satisfies Record<CrowdQuestion, AskedQuestion>,
  skip: 'Skip this one after all',
  skipOf: (question: string) => `Skip this one after all: ${question}`,
  send: 'Send my answers',
  sendAgain: 'Send the changed answers',
  none: 'You have not answered anything yet. Answer at least one question, or just close this page.',
  thanksTitle: 'Thank you',
  thanks: 'Your host has your answers. That is all until the evening.',
  change: 'Change my answers',
  whenAndWhere: 'When and where',
  notKept: 'This phone cannot save anything: once you close this page you cannot change your answers.',
  looking: 'One moment…',
  begun: 'The evening has started, so there are no more questions. Come in with your code.',
  finished: 'This tasting is over, so there are no more questions.',
  comeIn: 'To the tasting',
  noAnswer: 'No answer from your host’s server. Check the network and try again.',
  again: 'Try again',
  noCode: 'This link is incomplete. Ask your host to send it again.',
};
export type SurveyWords = typeof surveyWords;
